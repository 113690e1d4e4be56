import type { Finding } from "../../base/finding.ts";
import { type IsoInstant, Temporal } from "../../base/time.ts";
import { makeFinding } from "../make-finding.ts";
import type { ConditionResult, Difference } from "./types.ts";

export interface SecondLookInput {
  /** what could not be judged, as the comparison of the rounds gives it */
  readonly secondLooks: ConditionResult["secondLooks"];
  /** when the walk-round back was signed, else when the vehicle came back */
  readonly from: IsoInstant;
  /** the window signed for, hours */
  readonly hours: number;
  readonly now: IsoInstant;
}
export interface SecondLook {
  /** ids of the checks that could not be judged at the return and were not looked at since */
  readonly due: readonly string[];
  /** end of the window; what is found later is not charged */
  readonly until: IsoInstant;
  readonly isOver: boolean;
  /** nothing is settled and no deposit goes back: a look is due and its window is open */
  readonly holds: boolean;
}

/**
 * The second look after the wash: it holds the settlement while its window is open, and not longer. Once the
 * window is over nothing more can be charged for what was not seen, so there is nothing left to wait for.
 */
export function readSecondLook({ secondLooks, from, hours, now }: SecondLookInput): SecondLook {
  const end = Temporal.Instant.from(from).add({ hours });
  const due = secondLooks.filter(({ when }) => when === "back").map(({ checkId }) => checkId);
  const isOver = Temporal.Instant.compare(Temporal.Instant.from(now), end) > 0;
  return {
    due,
    until: end.toString({ smallestUnit: "millisecond" }),
    isOver,
    holds: due.length > 0 && !isOver,
  };
}

/** What the second look means for the settlement; nothing where none is due. */
export function secondLookFindings({ due, isOver }: SecondLook): readonly Finding[] {
  if (due.length === 0) return [];
  const more = { facts: { count: due.length } };
  return isOver
    ? [makeFinding("defects", "condition.windowOver", "note", "policy", more)]
    : [
        makeFinding("defects", "condition.holdsDeposit", "unchecked", "policy", {
          ...more,
          mends: ["condition.lookAgain"],
        }),
      ];
}

/** A look that said "too wet or dirty", and a mark, as far as this needs them. */
export interface SeenAt {
  readonly recordId: string;
  readonly at: IsoInstant;
}
export interface LateInput {
  readonly differences: readonly Difference[];
  /** when each record of the round back was made */
  readonly seen: readonly SeenAt[];
  /** when the round back was first signed; null while nobody has */
  readonly signedAt: IsoInstant | null;
  /** what was kept open at the signature: checks, with the part and the side that they are on */
  readonly keptOpen: readonly {
    readonly checkId: string;
    readonly part: string | null;
    readonly view: string;
  }[];
  readonly until: IsoInstant;
}

/**
 * Ids of differences that were found too late to be charged: after the round back was signed, unless the place
 * was kept open for a second look and that look was made within its window.
 */
export function foundTooLate({ differences, seen, signedAt, keptOpen, until }: LateInput): readonly string[] {
  if (signedAt === null) return [];
  const at = new Map(seen.map((each) => [each.recordId, each.at]));
  return differences
    .filter((difference) => {
      const times = difference.backRecords.map((id) => at.get(id) ?? "");
      const first = times.toSorted()[0] ?? "";
      if (first <= signedAt) return false;
      return first > until || !keptOpen.some((open) => isOfPlace(difference, open));
    })
    .map(({ id }) => id);
}

function isOfPlace(difference: Difference, open: LateInput["keptOpen"][number]): boolean {
  if (difference.checkId === open.checkId) return true;
  if (difference.kind !== "mark") return false;
  return difference.part === open.part || (open.part === null && difference.view === open.view);
}
