import { GATES } from "@setfair/engine";
import { problemAt } from "../../api/failure.ts";
import { NumberField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import type { PieceProps } from "./piece-props.ts";

/** hours: the longest lead time is a year and a day */
const MOST_HOURS = 8784;

/** From how many hours before the keys each gate counts; what is known to refuse counts at once all the same. */
export function GateHours({ value, usual, change, failure, mayWrite }: PieceProps) {
  const { leadHours } = value;
  const daysOf = (hours: number) => Math.round(hours / 24);
  return (
    <section className="card stack" aria-labelledby="gates-title">
      <h2 id="gates-title">{t("times.gates")}</h2>
      <p className="quiet">{t("times.gatesNote")}</p>
      <div className="sheet-fields">
        {GATES.map((gate) => {
          const hours = leadHours[gate] ?? 0;
          const says = hours >= 48 ? t("times.inDays", { n: daysOf(hours) }) : "";
          const other =
            hours === usual.leadHours[gate] ? "" : t("times.usualHours", { n: usual.leadHours[gate] ?? 0 });
          const note = [says, other].filter((text) => text !== "").join("; ");
          return mayWrite ? (
            <NumberField
              key={gate}
              label={t(`gate.${gate}`)}
              unit="h"
              note={note === "" ? undefined : note}
              value={hours}
              min={0}
              max={MOST_HOURS}
              onChange={(n) => change({ leadHours: { ...leadHours, [gate]: n ?? 0 } })}
              error={problemAt(failure, `leadHours.${gate}`)}
            />
          ) : (
            <p key={gate}>{t("times.saidHours", { label: t(`gate.${gate}`), n: hours })}</p>
          );
        })}
      </div>
    </section>
  );
}
