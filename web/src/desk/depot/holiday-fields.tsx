import { problemAt } from "../../api/failure.ts";
import { Button, DateField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import type { PieceProps, Settings } from "./piece-props.ts";

type Holiday = Settings["schoolHolidays"][number];

/** First and last days, one line each. */
export function HolidayFields({ value, change, failure }: PieceProps) {
  const { schoolHolidays } = value;
  const put = (place: number, next: Holiday | null) =>
    change({
      schoolHolidays: schoolHolidays.flatMap((each, k) =>
        k !== place ? [each] : next === null ? [] : [next],
      ),
    });
  return (
    <section className="card stack" aria-labelledby="holidays-title">
      <h2 id="holidays-title">{t("depot.holidays")}</h2>
      <p className="quiet">{t("depot.holidaysNote")}</p>
      {schoolHolidays.length === 0 && <p>{t("depot.noHolidays")}</p>}
      {schoolHolidays.map((holiday, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a holiday is its place while its days are being typed
        <div key={k} className="span-row">
          {(["from", "to"] as const).map((end) => (
            <DateField
              key={end}
              label={t(end === "from" ? "depot.first" : "depot.last")}
              value={holiday[end]}
              onChange={(day) => put(k, { ...holiday, [end]: day })}
              error={problemAt(failure, `schoolHolidays.${k}.${end}`)}
            />
          ))}
          <Button look="quiet" onPress={() => put(k, null)}>
            {t("depot.removeHoliday")}
          </Button>
        </div>
      ))}
      <div>
        <Button
          look="quiet"
          onPress={() => change({ schoolHolidays: [...schoolHolidays, { from: "", to: "" }] })}
        >
          {t("depot.addHoliday")}
        </Button>
      </div>
    </section>
  );
}
