import { problemAt } from "../../api/failure.ts";
import { Button, DateField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { replaced } from "../replaced.ts";
import { useSignedIn } from "../session.ts";
import { isOver } from "./is-over.ts";
import type { PieceProps, Settings } from "./piece-props.ts";

type Closed = Settings["hours"]["closed"][number];

/** Public holidays and other closed days, one line each; what is over is folded away. */
export function ClosedDays(props: PieceProps) {
  const { hours } = props.value;
  const { today } = useSignedIn();
  const places = hours.closed.map((closed, place) => ({ closed, place }));
  const over = places.filter(({ closed }) => isOver(closed, today));
  const line = ({ closed, place }: { readonly closed: Closed; readonly place: number }) => (
    <ClosedLine key={place} {...props} closed={closed} place={place} />
  );
  const put = (closed: Closed[]) => props.change({ hours: { ...hours, closed } });
  return (
    <section className="card stack" aria-labelledby="closed-title">
      <h2 id="closed-title">{t("opening.closedDays")}</h2>
      <p className="quiet">{t("opening.closedDaysNote")}</p>
      {places.length === 0 && <p>{t("opening.noClosedDays")}</p>}
      {over.length > 0 && (
        <details>
          <summary className="fold">{t("opening.closedDaysOver", { n: over.length })}</summary>
          <div className="stack">{over.map(line)}</div>
        </details>
      )}
      {places.filter(({ closed }) => !isOver(closed, today)).map(line)}
      <div>
        <Button look="quiet" onPress={() => put([...hours.closed, { from: "", to: "", name: "" }])}>
          {t("opening.addClosed")}
        </Button>
      </div>
    </section>
  );
}

interface ClosedLineProps extends PieceProps {
  readonly closed: Closed;
  readonly place: number;
}

function ClosedLine({ value, change, failure, closed, place }: ClosedLineProps) {
  const { hours } = value;
  const put = (next: Closed | null) =>
    change({ hours: { ...hours, closed: replaced(hours.closed, place, next) } });
  const at = (field: string) => problemAt(failure, `hours.closed.${place}.${field}`);
  return (
    <div className="span-row">
      <DateField
        label={t("depot.first")}
        value={closed.from}
        // most closed days are one day
        onChange={(from) =>
          put({ ...closed, from, to: closed.to === "" || closed.to < from ? from : closed.to })
        }
        error={at("from")}
      />
      <DateField
        label={t("depot.last")}
        value={closed.to}
        onChange={(to) => put({ ...closed, to })}
        error={at("to")}
      />
      <TextField
        label={t("opening.closedName")}
        value={closed.name}
        onChange={(name) => put({ ...closed, name })}
        error={at("name")}
      />
      <Button look="quiet" onPress={() => put(null)}>
        {t("opening.removeClosed")}
      </Button>
    </div>
  );
}
