import { dateText, t } from "../../parts/words.ts";
import { barsOn, type DiaryRow, plusDays } from "./diary-model.ts";

/** What a screen reader says of each day; kept, since a day is drawn again and again while scrolling. */
export function makeCellWords(start: string): (row: DiaryRow, day: number) => string {
  const dates = new Map<number, string>();
  const said = new WeakMap<DiaryRow, Map<number, string>>();
  const dateOf = (day: number) => {
    const known = dates.get(day) ?? dateText(plusDays(start, day), "day");
    dates.set(day, known);
    return known;
  };
  return (row, day) => {
    const ofRow = said.get(row) ?? new Map<number, string>();
    said.set(row, ofRow);
    const known = ofRow.get(day);
    if (known !== undefined) return known;
    const text = [dateOf(day), ...statesOf(row, day)].join(", ");
    ofRow.set(day, text);
    return text;
  };
}

function statesOf(row: DiaryRow, day: number): readonly string[] {
  const due = (row.due.get(day) ?? []).map((kind) => t("diary.dueBy", { kind }));
  const bars = barsOn(row, day).map(({ hire, block }) =>
    hire !== null
      ? t("diary.cellHire", {
          customer: hire.customer,
          stage: t(`stage.${hire.stage}`),
          to: dateText(hire.to, "dayTime"),
        })
      : t("diary.blockKind", { kind: block?.kind ?? "other" }),
  );
  return [...(bars.length === 0 ? [t("diary.free")] : bars), ...due];
}
