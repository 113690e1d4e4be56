import { memo } from "react";
import { classes } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { type Bar, type DiaryRow, isWeekend, plusDays } from "./diary-model.ts";

export const DAY_PX = 40;
export const ROW_PX = 46;
export const HEAD_PX = 52;

export interface RowProps {
  readonly row: DiaryRow;
  readonly index: number;
  readonly top: number;
  readonly namePx: number;
  readonly start: string;
  readonly firstDay: number;
  readonly lastDay: number;
  /** day of the cursor where it stands in this row */
  readonly cursor: number | null;
  readonly selectedFrom: number | null;
  readonly selectedTo: number | null;
  readonly isTarget: boolean;
  readonly lateBefore: number;
  readonly say: (row: DiaryRow, day: number) => string;
}

/** The days that are drawn: those in view, and the cursor's wherever it is, so that it keeps the focus. */
function daysIn(first: number, last: number, cursor: number | null): readonly number[] {
  const days = Array.from({ length: last - first + 1 }, (_, k) => first + k);
  if (cursor === null || (cursor >= first && cursor <= last)) return days;
  return cursor < first ? [cursor, ...days] : [...days, cursor];
}

/** One vehicle: its name, its days as cells, and over them what holds it. */
export const Row = memo(function Row(props: RowProps) {
  const { row, index, top, namePx, firstDay, lastDay, cursor, selectedFrom, selectedTo } = props;
  const left = (day: number) => namePx + day * DAY_PX;
  return (
    // a grid of divs, as the pattern of ARIA has it: rows and columns are drawn only while in view
    // biome-ignore lint/a11y/useFocusableInteractive: the cells take the focus, not the row
    // biome-ignore lint/a11y/useSemanticElements: a table cannot be drawn in parts both ways
    <div
      role="row"
      aria-rowindex={index + 2}
      className={classes("diary-row", props.isTarget && "diary-row-target")}
      style={{ top }}
    >
      {/* biome-ignore lint/a11y/useSemanticElements: as above */}
      {/* biome-ignore lint/a11y/useFocusableInteractive: as above */}
      <div role="rowheader" aria-colindex={1} className="diary-name" style={{ width: namePx }}>
        <strong>{row.vehicle.name}</strong>
        <span className="quiet nowrap">{row.vehicle.registration}</span>
      </div>
      {daysIn(firstDay, lastDay, cursor).map((day) => {
        const isSelected =
          selectedFrom !== null && selectedTo !== null && day >= selectedFrom && day <= selectedTo;
        return (
          // biome-ignore lint/a11y/useSemanticElements: as above
          <div
            key={day}
            id={`day-${index}-${day}`}
            role="gridcell"
            aria-colindex={day + 2}
            aria-label={props.say(row, day)}
            aria-selected={isSelected || day === cursor}
            tabIndex={day === cursor ? 0 : -1}
            data-day={day}
            className={classes(
              "diary-day",
              isWeekend(plusDays(props.start, day)) && "diary-day-weekend",
              isSelected && "diary-day-selected",
            )}
            style={{ left: left(day) }}
          >
            {row.due.has(day) && (
              <span className="diary-due" aria-hidden="true">
                {t("diary.dueMark", { kind: row.due.get(day)?.[0] ?? "" })}
              </span>
            )}
          </div>
        );
      })}
      {row.bars
        .filter(({ start, ready }) => start <= lastDay + 1 && ready >= firstDay)
        .map((bar) => (
          <BarShape key={bar.key} bar={bar} left={left} lateBefore={props.lateBefore} />
        ))}
    </div>
  );
});

function shapeOf({ hire, block, end }: Bar, lateBefore: number): string {
  if (block !== null) return "diary-bar-block";
  const stage = hire?.stage;
  if (stage === "enquiry" || stage === "quote") return "diary-bar-asked";
  if (stage === "booked") return "diary-bar-booked";
  if (stage === "handedOver" || stage === "onHire")
    return end < lateBefore ? "diary-bar-road diary-bar-late" : "diary-bar-road";
  return "diary-bar-over";
}

/** A hire with its turnaround behind it, or a period off the road; the cells below say it in words. */
function BarShape({
  bar,
  left,
  lateBefore,
}: {
  readonly bar: Bar;
  readonly left: (day: number) => number;
  readonly lateBefore: number;
}) {
  const { start, end, ready, hire, block } = bar;
  const from = Math.max(0, start);
  return (
    <div aria-hidden="true">
      {ready > end && (
        <div className="diary-tail" style={{ left: left(end), width: (ready - end) * DAY_PX }} />
      )}
      <div
        className={classes("diary-bar", shapeOf(bar, lateBefore))}
        data-bar={bar.key}
        style={{ left: left(from), width: Math.max(6, (end - from) * DAY_PX - 1) }}
        title={hire === null ? (block?.note ?? "") : `${hire.customer} ${hire.reference}`}
      >
        <span className="diary-bar-text">
          {hire !== null
            ? `${hire.pinned ? "● " : ""}${hire.customer}`
            : t("diary.blockKind", { kind: block?.kind ?? "other" })}
        </span>
      </div>
    </div>
  );
}
