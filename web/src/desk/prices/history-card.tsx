import type { Schemas } from "../../api/client.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { damageText, pounds, thingName } from "./price-words.ts";

type Change = Schemas["FirmPrices"]["changes"][number];
type Line = Change["lines"][number];

/** Versions shown at first, and lines shown before the rest is folded away. */
const SHOWN = 12;

const priceText = (pence: number | null): string =>
  pence === null ? t("firmPrices.none") : moneyText(pounds(pence));

function lineText({ name, kind, upToMm, wasPence, isPence }: Line): string {
  const about =
    kind === null
      ? thingName(name)
      : `${thingName(name)}, ${damageText({ kind, ...(upToMm === null ? {} : { upToMm }) }).toLowerCase()}`;
  return wasPence === isPence
    ? t("firmPrices.wearChanged", { about })
    : t("firmPrices.wasIs", { about, was: priceText(wasPence), is: priceText(isPence) });
}

/** Who changed which price, from which day on; the newest first. */
export function HistoryCard({ changes }: { readonly changes: readonly Change[] }) {
  return (
    <section className="card stack-tight" aria-labelledby="prices-history-title">
      <h2 id="prices-history-title">{t("firmPrices.history")}</h2>
      {changes.length === 0 && <p>{t("firmPrices.noHistory")}</p>}
      <ul className="stack-tight">
        {changes.slice(0, SHOWN).map(({ versionId, validFrom, writtenAt, by, lines }) => (
          <li key={versionId}>
            <details>
              <summary className="fold">
                {t("firmPrices.changed", {
                  n: lines.length,
                  from: dateText(validFrom, "full"),
                  at: dateText(writtenAt, "full"),
                  by: by ?? "none",
                })}
              </summary>
              <ul>
                {lines.map((line) => (
                  <li key={`${line.list} ${line.name} ${line.kind} ${line.upToMm}`}>{lineText(line)}</li>
                ))}
              </ul>
            </details>
          </li>
        ))}
      </ul>
      {changes.length > SHOWN && (
        <p className="quiet">{t("firmPrices.olderChanges", { n: changes.length - SHOWN })}</p>
      )}
    </section>
  );
}
