import { dateText, t } from "../../parts/words.ts";
import { type Bar, barsOn, type DiaryRow, plusDays } from "./diary-model.ts";

/** The text for a key, made once. */
function keep<Key>(made: Map<Key, string>, key: Key, make: () => string): string {
  const known = made.get(key) ?? make();
  made.set(key, known);
  return known;
}

/**
 * What a screen reader says of each day; kept, since a day is drawn again and again while scrolling. Formatting is
 * what costs: what holds a vehicle is put in words once, not once for each of its days.
 */
export function makeCellWords(start: string): (row: DiaryRow, day: number) => string {
  const dates = new Map<number, string>();
  const bars = new Map<Bar, string>();
  const said = new WeakMap<DiaryRow, Map<number, string>>();
  let free: string | null = null;
  const statesOf = (row: DiaryRow, day: number): readonly string[] => {
    const held = barsOn(row, day).map((bar) => keep(bars, bar, () => barText(bar)));
    if (held.length > 0) return held;
    free ??= t("diary.free");
    return [free];
  };
  return (row, day) => {
    const ofRow = said.get(row) ?? new Map<number, string>();
    said.set(row, ofRow);
    return keep(ofRow, day, () => {
      const date = keep(dates, day, () => dateText(plusDays(start, day), "day"));
      const due = (row.due.get(day) ?? []).map((kind) => t("diary.dueBy", { kind }));
      return [date, ...statesOf(row, day), ...due].join(", ");
    });
  };
}

function barText({ hire, block }: Bar): string {
  if (hire === null) return t("diary.blockKind", { kind: block?.kind ?? "other" });
  const { customer, stage, to } = hire;
  return t("diary.cellHire", { customer, stage: t(`stage.${stage}`), to: dateText(to, "dayTime") });
}
