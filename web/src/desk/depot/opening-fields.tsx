import { sameEveryDay, WEEKDAYS, type Weekday } from "@setfair/engine";
import { problemAt } from "../../api/failure.ts";
import { Button, TextField, TickField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import type { Settings } from "./piece-props.ts";
import "./opening.css";

/** A day that is opened again begins with these, to be typed over. */
const USUAL = { opens: "09:00", closes: "17:00" };

type Hours = Pick<Settings, "hours">;

/** The hours, alone or within a larger form. */
interface OpeningProps {
  readonly value: Hours;
  readonly change: (part: Hours) => void;
  readonly failure: unknown;
  /** where they stand in what is sent */
  readonly at?: string;
}

/** Hours for each day of the week; a day without a tick is closed. */
export function OpeningFields(props: OpeningProps) {
  const { value, change } = props;
  const { hours } = value;
  const { monday } = hours.week;
  return (
    <section className="card stack" aria-labelledby="opening-title">
      <h2 id="opening-title">{t("opening.title")}</h2>
      <p className="quiet">{t("opening.lead")}</p>
      <div className="opening-week">
        {WEEKDAYS.map((day) => (
          <DayLine key={day} {...props} day={day} />
        ))}
      </div>
      {monday !== null && (
        <div>
          <Button
            look="quiet"
            onPress={() => change({ hours: { ...hours, week: { ...sameEveryDay(monday).week } } })}
          >
            {t("opening.asMonday")}
          </Button>
        </div>
      )}
    </section>
  );
}

function DayLine({ value, change, failure, at = "hours", day }: OpeningProps & { readonly day: Weekday }) {
  const { hours } = value;
  const own = hours.week[day];
  const put = (next: typeof own) => change({ hours: { ...hours, week: { ...hours.week, [day]: next } } });
  return (
    <div className="opening-day">
      <TickField
        value={own !== null}
        onChange={(isOpen) => put(isOpen ? (hours.week.monday ?? USUAL) : null)}
      >
        {t("opening.isOpen", { day })}
      </TickField>
      {own !== null &&
        (["opens", "closes"] as const).map((end) => (
          <TextField
            key={end}
            label={t(`opening.${end}`, { day })}
            value={own[end]}
            onChange={(text) => put({ ...own, [end]: text })}
            error={problemAt(failure, `${at}.week.${day}.${end}`)}
          />
        ))}
    </div>
  );
}
