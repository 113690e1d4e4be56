import { Temporal } from "../../base/time.ts";
import type { StockHold, StockInput, StockItem } from "./types.ts";

/** Half open, milliseconds of the epoch; `ready` is the end with the turnaround. */
export interface HeldSpan {
  readonly start: number;
  readonly ready: number;
}
export interface Held extends HeldSpan {
  readonly hold: StockHold;
}

type Clock = Pick<StockInput, "timeZone" | "turnaroundMinutes">;

export function spanOf(from: string, to: string, clock: Clock): HeldSpan {
  const at = (local: string) =>
    Temporal.PlainDateTime.from(local).toZonedDateTime(clock.timeZone).epochMilliseconds;
  return { start: at(from), ready: at(to) + clock.turnaroundMinutes * 60_000 };
}

export const localAt = (epochMs: number, timeZone: string): string =>
  Temporal.Instant.fromEpochMilliseconds(epochMs)
    .toZonedDateTimeISO(timeZone)
    .toPlainDateTime()
    .toString({ smallestUnit: "minute" });

export const touches = (a: HeldSpan, b: HeldSpan): boolean => a.start < b.ready && b.start < a.ready;

/** Good through the last day of the hire: neither over its date nor retired by then. */
export function isGood(item: StockItem, to: string): boolean {
  const day = to.slice(0, 10);
  return (item.expiresOn ?? day) >= day && (item.retiredOn === undefined || item.retiredOn > day);
}

/** How many of an item nobody has at any moment of a period. */
export function freeOf(item: StockItem, span: HeldSpan, held: readonly Held[]): number {
  const mine = held.filter((each) => each.hold.itemId === item.id && touches(each, span));
  const moments = [span.start, ...mine.map(({ start }) => start).filter((start) => start > span.start)];
  const most = moments.map((moment) =>
    mine
      .filter(({ start, ready }) => start <= moment && moment < ready)
      .reduce((sum, { hold }) => sum + hold.count, 0),
  );
  return Math.max(0, item.count - Math.max(...most));
}
