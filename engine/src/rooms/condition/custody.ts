import type { IsoInstant } from "../../base/time.ts";

/** Who can have the keys of a vehicle. */
export const HOLDERS = ["hirer", "depot", "keySafe", "workshop", "driver"] as const;
export type Holder = (typeof HOLDERS)[number];

/** The keys passed to somebody. */
export interface KeysPassed {
  readonly at: IsoInstant;
  readonly holder: Holder;
  /** name, as written down */
  readonly who: string;
  /** what was said of the vehicle then */
  readonly note: string | null;
  readonly hireId: string | null;
  /** the record that says so; null where it follows from a hire */
  readonly recordId: string | null;
}
/** Something recorded at the vehicle. */
export interface Seen {
  readonly at: IsoInstant;
  readonly kind: "mark" | "photograph" | "reading";
}
/** One time in which the same person had the keys. */
export interface CustodyLine extends KeysPassed {
  /** when they passed on; null while they are there still */
  readonly until: IsoInstant | null;
  readonly marks: number;
  readonly photographs: number;
  readonly readings: number;
}

/**
 * Who had the keys, from when until when, and how much was recorded in that time; oldest first, without a gap:
 * the keys are with whoever took them last. Of the same instant the one given first came first.
 */
export function readCustody(passed: readonly KeysPassed[], seen: readonly Seen[]): readonly CustodyLine[] {
  const inOrder = passed.toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  return inOrder.map((line, k) => {
    const until = inOrder[k + 1]?.at ?? null;
    const here = seen.filter(({ at }) => at >= line.at && (until === null || at < until));
    const count = (kind: Seen["kind"]) => here.filter((each) => each.kind === kind).length;
    return {
      ...line,
      until,
      marks: count("mark"),
      photographs: count("photograph"),
      readings: count("reading"),
    };
  });
}
