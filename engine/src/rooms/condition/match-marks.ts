import type { ConditionRecord } from "./types.ts";

type Mark = Extract<ConditionRecord["content"], { kind: "mark" }>;
export type MarkRecord = ConditionRecord & { readonly content: Mark };

/** how far two entries of one mark may lie apart on the drawing, as a share of its size: common practice, no source */
const SAME_PLACE = 0.06;
/** a mark that grew by more than this and half as much again is a new one: common practice, no source */
const GROWTH_MM = 10;

export const isMark = (record: ConditionRecord): record is MarkRecord => record.content.kind === "mark";

/**
 * Pairs each mark of the back round with one of the out round that it is: same view, part and kind, the same
 * place, and not grown. Nearest pairs first, each mark once.
 */
export function matchMarks(
  out: readonly MarkRecord[],
  back: readonly MarkRecord[],
): ReadonlyMap<MarkRecord, MarkRecord> {
  const pairs = back
    .flatMap((later) =>
      out
        .filter((earlier) => isSame(earlier.content, later.content))
        .map((earlier) => ({ earlier, later, apart: apart(earlier.content, later.content) })),
    )
    .sort((a, b) => a.apart - b.apart);
  const matched = new Map<MarkRecord, MarkRecord>();
  const used = new Set<MarkRecord>();
  for (const { earlier, later } of pairs) {
    if (matched.has(later) || used.has(earlier)) continue;
    matched.set(later, earlier);
    used.add(earlier);
  }
  return matched;
}

/** a mark so near to one that was charged and not mended is taken as that one, to the hirer's good: common practice, no source */
const NEAR_CHARGED = 0.15;

/**
 * Record ids of marks that were charged already: of the same part and kind and near to a mark that another hire
 * was charged for and that nobody has mended. Wider than the match of the two rounds, since a place is touched by hand.
 */
export function chargedBefore(
  marks: readonly MarkRecord[],
  charged: readonly MarkRecord[],
): readonly string[] {
  return marks
    .filter(({ content }) =>
      charged.some(
        (before) =>
          before.content.view === content.view &&
          before.content.part === content.part &&
          before.content.markKind === content.markKind &&
          apart(before.content, content) <= NEAR_CHARGED,
      ),
    )
    .map(({ recordId }) => recordId);
}

const apart = (a: Mark, b: Mark) => Math.hypot(a.xShare - b.xShare, a.yShare - b.yShare);

function isSame(earlier: Mark, later: Mark): boolean {
  const isHere =
    earlier.view === later.view &&
    earlier.part === later.part &&
    earlier.markKind === later.markKind &&
    apart(earlier, later) <= SAME_PLACE;
  const grew =
    earlier.sizeMm !== undefined &&
    later.sizeMm !== undefined &&
    later.sizeMm > earlier.sizeMm * 1.5 + GROWTH_MM;
  return isHere && !grew;
}
