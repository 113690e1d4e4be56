import { useVirtualizer } from "@tanstack/react-virtual";
import { type PointerEvent, useEffect, useMemo, useRef, useState } from "react";
import { classes } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { makeCellWords } from "./cell-words.ts";
import { type DiaryModel, daysBetween, isWeekend, plusDays } from "./diary-model.ts";
import { DAY_PX, HEAD_PX, ROW_PX, Row } from "./diary-row.tsx";
import { type KeyActs, type Place, useDiaryKeys } from "./use-diary-keys.ts";
import { useDiaryPointer } from "./use-diary-pointer.ts";

export interface GridProps extends Pick<KeyActs, "goDate" | "open" | "today" | "until"> {
  readonly model: DiaryModel;
  readonly cursor: Place;
  /** first and last selected day in the cursor's row */
  readonly selection: readonly [number, number];
  readonly namePx: number;
  readonly onGo: (place: Place, extend: boolean) => void;
  readonly onDrop: (hireId: string, row: number) => void;
  /** civil time now */
  readonly now: string;
}

/** Days behind the cursor in the first view. */
const DAYS_BEFORE = 2;

/** Vehicles down, days across; only what is in view is drawn. */
export function DiaryGrid(props: GridProps) {
  const { model, cursor, selection, namePx, onGo } = props;
  const scroller = useRef<HTMLDivElement>(null);
  const wantsFocus = useRef(false);
  const shownFrom = useRef("");
  const [target, setTarget] = useState<number | null>(null);
  const rows = useVirtualizer({
    count: model.rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => ROW_PX,
    paddingStart: HEAD_PX,
    scrollPaddingStart: HEAD_PX,
    overscan: 3,
    useFlushSync: false,
    rangeExtractor: ({ startIndex, endIndex, overscan, count }) =>
      withOne(Math.max(0, startIndex - overscan), Math.min(count - 1, endIndex + overscan), cursor.row),
  });
  const days = useVirtualizer({
    horizontal: true,
    count: model.days,
    getScrollElement: () => scroller.current,
    estimateSize: () => DAY_PX,
    paddingStart: namePx,
    scrollPaddingStart: namePx,
    overscan: 1,
    useFlushSync: false,
  });
  const [firstDay, lastDay] = wholeWeeks(days.getVirtualItems(), model.days);
  const say = useMemo(() => makeCellWords(model.start), [model.start]);
  const go = (place: Place, extend: boolean) => {
    wantsFocus.current = true;
    onGo(place, extend);
  };
  // the cursor is brought into view wherever it went, and takes the focus where a key moved it
  // biome-ignore lint/correctness/useExhaustiveDependencies: the virtualisers are the same objects each time
  useEffect(() => {
    rows.scrollToIndex(cursor.row, { align: "auto" });
    // first seen, the days to come fill the view; from then on it moves no more than it must
    if (shownFrom.current === model.start) days.scrollToIndex(cursor.day, { align: "auto" });
    else days.scrollToIndex(Math.max(0, cursor.day - DAYS_BEFORE), { align: "start" });
    shownFrom.current = model.start;
    if (!wantsFocus.current) return;
    wantsFocus.current = false;
    requestAnimationFrame(() =>
      document.getElementById(`day-${cursor.row}-${cursor.day}`)?.focus({ preventScroll: true }),
    );
  }, [cursor.row, cursor.day, model.start]);
  const onKeyDown = useDiaryKeys({ ...props, go });
  const placeAt = (event: PointerEvent): Place | null => placeOf(event, scroller.current, namePx, model);
  const pointer = useDiaryPointer({ placeAt, go, setTarget, onDrop: props.onDrop, onOpen: props.open });
  const lateBefore = daysBetween(model.start, props.now.slice(0, 10)) + hoursOf(props.now) / 24;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a table cannot be drawn in parts both ways
    <div
      role="grid"
      aria-label={t("diary.title")}
      aria-rowcount={model.rows.length + 1}
      aria-colcount={model.days + 1}
      aria-multiselectable="true"
      className={classes("diary-scroll", target !== null && "diary-dragging")}
      ref={scroller}
      onKeyDown={onKeyDown}
      {...pointer}
    >
      <div
        className="diary-canvas"
        style={{ width: namePx + model.days * DAY_PX, height: HEAD_PX + model.rows.length * ROW_PX }}
      >
        <Head model={model} firstDay={firstDay} lastDay={lastDay} namePx={namePx} today={props.today} />
        <Shades model={model} firstDay={firstDay} lastDay={lastDay} namePx={namePx} />
        {rows.getVirtualItems().map(({ index, start }) => {
          const row = model.rows[index];
          if (row === undefined) return null;
          const isHere = index === cursor.row;
          return (
            <Row
              key={row.vehicle.id}
              row={row}
              index={index}
              top={start}
              namePx={namePx}
              start={model.start}
              firstDay={firstDay}
              lastDay={lastDay}
              cursor={isHere ? cursor.day : null}
              selectedFrom={isHere ? selection[0] : null}
              selectedTo={isHere ? selection[1] : null}
              isTarget={target === index}
              lateBefore={lateBefore}
              say={say}
            />
          );
        })}
        <div className="diary-now" style={{ left: namePx + lateBefore * DAY_PX }} aria-hidden="true" />
      </div>
    </div>
  );
}

const hoursOf = (local: string) => Number(local.slice(11, 13)) + Number(local.slice(14, 16)) / 60;

/** Days are drawn in runs of so many, so that a scroll draws every row again a few times a second, not in each frame. */
const RUN = 7;

/** The days in view as whole runs. */
function wholeWeeks(inView: readonly { readonly index: number }[], days: number): readonly [number, number] {
  const [first, last] = [inView[0]?.index ?? 0, inView.at(-1)?.index ?? -1];
  if (last < 0) return [0, -1];
  return [first - (first % RUN), Math.min(days - 1, last - (last % RUN) + RUN - 1)];
}

/** The rows in view and one more, in order. */
function withOne(first: number, last: number, one: number): number[] {
  const range = Array.from({ length: last - first + 1 }, (_, k) => first + k);
  if (one >= first && one <= last) return range;
  return one < first ? [one, ...range] : [...range, one];
}

/** The day and vehicle under the pointer; null over the names and the head. */
function placeOf(
  event: PointerEvent,
  scroller: HTMLDivElement | null,
  namePx: number,
  model: DiaryModel,
): Place | null {
  if (scroller === null) return null;
  const box = scroller.getBoundingClientRect();
  const [x, y] = [event.clientX - box.left, event.clientY - box.top];
  if (x < namePx || y < HEAD_PX) return null;
  const day = Math.floor((x + scroller.scrollLeft - namePx) / DAY_PX);
  const row = Math.floor((y + scroller.scrollTop - HEAD_PX) / ROW_PX);
  return day < 0 || day >= model.days || row < 0 || row >= model.rows.length ? null : { row, day };
}

interface Window {
  readonly model: DiaryModel;
  readonly firstDay: number;
  readonly lastDay: number;
  readonly namePx: number;
}

function Head({ model, firstDay, lastDay, namePx, today }: Window & { readonly today: string }) {
  const days = Array.from({ length: Math.max(0, lastDay - firstDay + 1) }, (_, k) => firstDay + k);
  return (
    // biome-ignore lint/a11y/useSemanticElements: as the grid itself
    // biome-ignore lint/a11y/useFocusableInteractive: as the grid itself
    <div role="row" aria-rowindex={1} className="diary-head">
      {/* biome-ignore lint/a11y/useSemanticElements: as the grid itself */}
      {/* biome-ignore lint/a11y/useFocusableInteractive: as the grid itself */}
      <div role="columnheader" aria-colindex={1} className="diary-corner" style={{ width: namePx }}>
        {t("diary.vehicle")}
      </div>
      {days.map((day) => {
        const date = plusDays(model.start, day);
        const closed = model.closed.get(day);
        const isFirst = date.endsWith("-01") || day === firstDay;
        return (
          // biome-ignore lint/a11y/useSemanticElements: as the grid itself
          // biome-ignore lint/a11y/useFocusableInteractive: as the grid itself
          <div
            key={day}
            role="columnheader"
            aria-colindex={day + 2}
            aria-label={[dateText(date, "long"), ...(closed === undefined ? [] : [closedText(closed)])].join(
              ", ",
            )}
            title={closed === undefined ? undefined : closedText(closed)}
            className={classes(
              "diary-date",
              isWeekend(date) && "diary-date-weekend",
              closed !== undefined && "diary-date-closed",
              date === today && "diary-date-today",
            )}
            style={{ left: namePx + day * DAY_PX }}
          >
            <span className="diary-month">{isFirst ? dateText(date, "short").slice(-8) : ""}</span>
            <span>{t("diary.weekday", { n: new Date(`${date}T00:00:00Z`).getUTCDay() })}</span>
            <strong>{Number(date.slice(8))}</strong>
          </div>
        );
      })}
    </div>
  );
}

const closedText = (name: string): string =>
  t("opening.dayClosed", { named: name === "" ? "no" : "yes", name });

/** School holidays and closed days lie quietly behind the days. */
function Shades({ model, firstDay, lastDay, namePx }: Window) {
  return (
    <div aria-hidden="true">
      {model.holidays
        .filter(({ from, to }) => from <= lastDay && to >= firstDay)
        .map(({ from, to }) => (
          <div
            key={from}
            className="diary-holiday"
            style={{ left: namePx + from * DAY_PX, width: (to - from + 1) * DAY_PX }}
          />
        ))}
      {[...model.closed.keys()]
        .filter((day) => day >= firstDay && day <= lastDay)
        .map((day) => (
          <div
            key={`closed ${day}`}
            className="diary-closed"
            style={{ left: namePx + day * DAY_PX, width: DAY_PX }}
          />
        ))}
    </div>
  );
}
