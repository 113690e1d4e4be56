import { problemAt } from "../../api/failure.ts";
import { Button, DateField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { replaced } from "../replaced.ts";
import { useSignedIn } from "../session.ts";
import { isOver } from "./is-over.ts";
import type { PieceProps, Settings } from "./piece-props.ts";

type Holiday = Settings["schoolHolidays"][number];

/** First and last days, one line each; what is over is folded away. */
export function HolidayFields(props: PieceProps) {
  const { value, change } = props;
  const { schoolHolidays } = value;
  const { today } = useSignedIn();
  const places = schoolHolidays.map((holiday, place) => ({ holiday, place }));
  const over = places.filter(({ holiday }) => isOver(holiday, today));
  return (
    <section className="card stack" aria-labelledby="holidays-title">
      <h2 id="holidays-title">{t("depot.holidays")}</h2>
      <p className="quiet">{t("depot.holidaysNote")}</p>
      {schoolHolidays.length === 0 && <p>{t("depot.noHolidays")}</p>}
      {over.length > 0 && (
        <details>
          <summary className="fold">{t("depot.holidaysOver", { n: over.length })}</summary>
          <div className="stack">
            {over.map(({ holiday, place }) => (
              <HolidayLine key={place} {...props} holiday={holiday} place={place} />
            ))}
          </div>
        </details>
      )}
      {places
        .filter(({ holiday }) => !isOver(holiday, today))
        .map(({ holiday, place }) => (
          <HolidayLine key={place} {...props} holiday={holiday} place={place} />
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

function HolidayLine({
  value,
  change,
  failure,
  holiday,
  place,
}: PieceProps & { readonly holiday: Holiday; readonly place: number }) {
  const put = (next: Holiday | null) =>
    change({
      schoolHolidays: replaced(value.schoolHolidays, place, next),
    });
  return (
    <div className="span-row">
      {(["from", "to"] as const).map((end) => (
        <DateField
          key={end}
          label={t(end === "from" ? "depot.first" : "depot.last")}
          value={holiday[end]}
          onChange={(day) => put({ ...holiday, [end]: day })}
          error={problemAt(failure, `schoolHolidays.${place}.${end}`)}
        />
      ))}
      <Button look="quiet" onPress={() => put(null)}>
        {t("depot.removeHoliday")}
      </Button>
    </div>
  );
}
