import { DUTIES, type Duty } from "@setfair/engine";
import { ScrollX } from "../../parts/index.ts";
import { figureText, has, say, t } from "../../parts/words.ts";
import { countryName, holdsText, readText } from "./rule-words.ts";

const nameOf = (id: string): string => (has(id) ? say(id) : id);

function intervalText({ everyDays, everyMonths, everyKm, firstAfterMonths }: Duty): string {
  return [
    ...(everyMonths === undefined ? [] : [t("depot.everyMonths", { n: everyMonths })]),
    ...(everyDays === undefined ? [] : [t("depot.everyDays", { n: everyDays })]),
    ...(everyKm === undefined
      ? []
      : [t("depot.everyKm", { distance: figureText({ value: everyKm, unit: "km" }) })]),
    ...(firstAfterMonths === undefined ? [] : [t("depot.firstAfter", { n: firstAfterMonths })]),
  ].join(", ");
}

/** The duties that set due dates, as they ship: interval, on what they rest, where that was read. */
export function DutiesCard() {
  return (
    <details className="card">
      <summary className="fold">{t("depot.duties")}</summary>
      <p className="quiet">{t("depot.dutiesLead")}</p>
      <ScrollX label={t("depot.duties")}>
        <table className="dense hires-table rules-table">
          <thead>
            <tr>
              <th>{t("depot.duty")}</th>
              <th>{t("depot.interval")}</th>
              <th>{t("rules.source")}</th>
            </tr>
          </thead>
          <tbody>
            {DUTIES.map((duty) => (
              <tr key={duty.kind}>
                <td>
                  <strong>{nameOf(`due.${duty.kind}`)}</strong>
                  <div className="quiet">
                    {countryName(duty.country)} · {t("upkeep.status", { status: duty.status })}
                  </div>
                </td>
                <td>
                  {intervalText(duty)}
                  {duty.fits.length > 0 && (
                    <div className="quiet">
                      {t("depot.fitted", {
                        what: duty.fits.map((kind) => nameOf(`thing.${kind}`)).join(", "),
                      })}
                    </div>
                  )}
                </td>
                <td className="rules-source">
                  {duty.source}
                  <div className="quiet">
                    {readText(duty)} · {holdsText(duty)}
                  </div>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollX>
    </details>
  );
}
