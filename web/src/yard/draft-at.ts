import type { MarkDraft } from "./use-walk.ts";

/** A new mark in the middle of a part, where it is drawn now; in the middle of the drawing where it is not. */
export function draftAt(part: string | null): MarkDraft {
  const drawing = document.querySelector(".drawing svg");
  const group = part === null ? null : drawing?.querySelector(`[data-part="${CSS.escape(part)}"]`);
  const whole = drawing?.getBoundingClientRect();
  const box = group?.getBoundingClientRect();
  const share = (at: number, from: number, size: number) => Math.round(((at - from) / size) * 1000) / 1000;
  const middle =
    whole === undefined || box === undefined || whole.width === 0
      ? { xShare: 0.5, yShare: 0.5 }
      : {
          xShare: share(box.left + box.width / 2, whole.left, whole.width),
          yShare: share(box.top + box.height / 2, whole.top, whole.height),
        };
  return { ...middle, markKind: null, sizeMm: null, note: "" };
}
