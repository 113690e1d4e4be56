import { type IsoDate, Temporal } from "../../base/time.ts";
import { addDays } from "../../base/years.ts";
import type { Rule } from "../../rules/rule.ts";

/**
 * Whether any day from `first` to `last` lies in a yearly span `MM-DD/MM-DD`, ends included; it may cross the new
 * year. `none` meets no day.
 */
export function spanMeets(span: string, first: IsoDate, last: IsoDate): boolean {
  if (span === "none") return false;
  const [start = "", end = ""] = span.split("/");
  const end_ = Temporal.PlainDate.from(last);
  for (
    let day = Temporal.PlainDate.from(first);
    Temporal.PlainDate.compare(day, end_) <= 0;
    day = day.add({ days: 1 })
  ) {
    const monthDay = day.toString().slice(5);
    if (start <= end ? monthDay >= start && monthDay <= end : monthDay >= start || monthDay <= end)
      return true;
  }
  return false;
}

/** The first and the last day of the span that the first day within it belongs to, from `first` to `last`; null where none does. */
export function spanAround(
  span: string,
  first: IsoDate,
  last: IsoDate,
): { readonly spanFrom: IsoDate; readonly spanTo: IsoDate } | null {
  const [start = "", end = ""] = span.split("/");
  for (let day = first; day <= last; day = addDays(day, 1)) {
    if (!spanMeets(span, day, day)) continue;
    const year = Number(day.slice(0, 4));
    const isOver = start > end && day.slice(5) <= end;
    const from = isOver ? year - 1 : year;
    return { spanFrom: `${from}-${start}`, spanTo: `${start > end ? from + 1 : from}-${end}` };
  }
  return null;
}

/** The span of a rule on those days alone on which the rule itself holds. */
export function spanOfRuleMeets(
  { value, validFrom, validTo }: Rule,
  enter: IsoDate,
  leave: IsoDate,
): boolean {
  const [, first = enter] = [enter, validFrom].sort();
  const [last = leave] = [leave, validTo ?? leave].sort();
  return spanMeets(String(value), first, last);
}
