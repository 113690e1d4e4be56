import { useState } from "react";
import type { Schemas } from "../../api/client.ts";
import { ChoiceField, classes, ScrollX, SelectField } from "../../parts/index.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { monthText } from "./month-day-field.tsx";

type Preview = Schemas["TermsPreview"];
type Day = Preview["days"][number];

const SHADES = 5;
const WHAT = ["night", "week"] as const;
const gbp = (pence: number) => ({ currency: "GBP" as const, pence });

/** Which of the shades a price has between the least and the most of the year. */
function shadeOf(pence: number, least: number, most: number): number {
  if (most === least) return 0;
  return Math.min(SHADES - 1, Math.floor(((pence - least) / (most - least)) * SHADES));
}

/** The prices of a year, a month a row and a day a cell; the number stands in every cell, the shade beside it. */
export function YearPreview({ preview }: { readonly preview: Preview }) {
  const [chosen, setChosen] = useState<string | null>(null);
  const [what, setWhat] = useState<(typeof WHAT)[number]>("night");
  const vehicleClass =
    chosen !== null && preview.classes.includes(chosen) ? chosen : (preview.classes[0] ?? "");
  const priceOf = (day: Day) => (what === "night" ? day.nightPence : day.weekPence)[vehicleClass];
  const prices = preview.days.flatMap((day) => priceOf(day) ?? []);
  const [least, most] = [Math.min(...prices), Math.max(...prices)];
  const months = [...new Set(preview.days.map(({ date }) => date.slice(0, 7)))];
  return (
    <section className="card stack-tight" aria-labelledby="year-title">
      <h2 id="year-title">{t("rates.year")}</h2>
      <div className="sheet-fields">
        <SelectField
          label={t("rates.classShown")}
          value={vehicleClass}
          options={preview.classes.map((id) => ({ value: id, label: t("rates.class", { id }) }))}
          onChange={setChosen}
        />
        <ChoiceField
          label={t("rates.shown")}
          value={what}
          options={WHAT.map((id) => ({ value: id, label: t("rates.shownAs", { id }) }))}
          onChange={setWhat}
        />
      </div>
      {prices.length > 0 && (
        <p className="quiet num">
          {t("rates.leastMost", { least: moneyText(gbp(least)), most: moneyText(gbp(most)) })}
        </p>
      )}
      <ScrollX label={t("rates.year")}>
        <table className="year">
          <caption className="visually-hidden">{t("rates.yearCaption")}</caption>
          <thead>
            <tr>
              <th scope="col">{t("rates.month")}</th>
              {Array.from({ length: 31 }, (_, k) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a day of the month is its number
                <th key={k} scope="col">
                  {k + 1}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {months.map((month) => (
              <tr key={month}>
                <th scope="row">{monthText(month.slice(5))}</th>
                {Array.from({ length: 31 }, (_, k) => {
                  const date = `${month}-${String(k + 1).padStart(2, "0")}`;
                  const day = preview.days.find((each) => each.date === date);
                  const pence = day === undefined ? undefined : priceOf(day);
                  return <DayCell key={date} day={day} pence={pence} least={least} most={most} />;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollX>
      <p className="quiet">{t("rates.yearKey")}</p>
    </section>
  );
}

interface DayCellProps {
  readonly day: Day | undefined;
  readonly pence: number | undefined;
  readonly least: number;
  readonly most: number;
}

function DayCell({ day, pence, least, most }: DayCellProps) {
  if (day === undefined) return <td className="year-none" />;
  const title = t("rates.dayTitle", {
    date: dateText(day.date, "day"),
    season: day.season ?? "none",
    nights: day.minimumNights,
    over: day.under.length === 0 ? "none" : day.under.join(", "),
  });
  if (pence === undefined)
    return (
      <td className="year-gap" title={title}>
        {t("rates.noPrice")}
      </td>
    );
  return (
    <td
      className={classes("num", `year-${shadeOf(pence, least, most)}`, day.minimumNights > 3 && "year-long")}
      title={title}
    >
      {Math.round(pence / 100)}
    </td>
  );
}
