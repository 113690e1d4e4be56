import type { WalkRound, WalkRoundCheck } from "@setfair/engine";
import { nextNeeded, stillNeeds, type Walk } from "./walk-state.ts";

/** What one walk-round asks of a hand when nothing is found: touches of the screen, and what they are for. */
export interface TapCount {
  readonly taps: number;
  readonly photographs: number;
  readonly readings: number;
  readonly counts: number;
  /** looked at and passed with the side, without a touch of their own */
  readonly looks: number;
  readonly sides: number;
  readonly signatures: number;
}

/**
 * Seconds for each act, for one line on a page: **assumed**, gloves on and the tablet in one hand; nobody has timed
 * them yet. The acts are counted from the screens themselves.
 */
export const SECONDS = {
  tap: 1.5,
  photograph: 5,
  reading: 6,
  count: 6,
  look: 3,
  side: 8,
  signature: 20,
} as const;

/** Whole sides that are photographed from their fixed place, once each. */
const WHOLE_SIDES: readonly string[] = ["front", "nearside", "rear", "offside"];
/** open the viewfinder, release the shutter */
const PHOTOGRAPH_TAPS = 2;
const SIGNED_BY = 2;

interface Hand {
  answers: Map<string, { recordId: string; outcome: "same" | null; value: number | null; unit: null }>;
  photographs: Map<string, string[]>;
  taps: number;
  taken: number;
}

/** Goes round as the page leads: the photograph of the side, then whatever it still needs, then on. */
export function countTaps(round: WalkRound): TapCount {
  const hand: Hand = { answers: new Map(), photographs: new Map(), taps: 0, taken: 0 };
  const walk = (): Walk => ({
    answers: hand.answers,
    photographs: hand.photographs,
    marks: [],
    passed: new Set(),
    briefed: new Map(),
    told: new Set(),
    finished: false,
    signed: new Set(),
    late: null,
  });
  for (const step of round.steps) {
    if (WHOLE_SIDES.includes(step.view)) photograph(hand, `view.${step.view}`);
    let opened: string | null = null;
    for (let next = nextNeeded(walk(), step); next !== undefined; next = nextNeeded(walk(), step)) {
      // answered, the page opens the next thing by itself; only the first of a side is touched
      if (opened === null) hand.taps += 1;
      opened = next.id;
      answer(hand, next, stillNeeds(walk(), next) === "photograph");
    }
    // the side is passed, and with it whatever was only looked at
    hand.taps += 1;
  }
  const checks = round.steps.flatMap((step) => step.checks);
  const ofKind = (kind: WalkRoundCheck["kind"]) => checks.filter((check) => check.kind === kind).length;
  // from the summary to the signing, two strokes, signed
  hand.taps += 1 + SIGNED_BY + 1;
  return {
    taps: hand.taps,
    photographs: hand.taken,
    readings: ofKind("reading"),
    counts: ofKind("count"),
    looks: ofKind("look"),
    sides: round.steps.length,
    signatures: SIGNED_BY,
  };
}

function photograph(hand: Hand, about: string): void {
  hand.photographs.set(about, ["taken"]);
  hand.taps += PHOTOGRAPH_TAPS;
  hand.taken += 1;
}

function answer(hand: Hand, check: WalkRoundCheck, needsPhotograph: boolean): void {
  if (needsPhotograph) photograph(hand, check.id);
  // the viewfinder's second shutter answers a look with the same touch
  const isAnswered = check.kind === "look" && needsPhotograph;
  hand.taps += check.kind === "reading" ? digitsOf(check) + 1 : isAnswered ? 0 : 1;
  hand.answers.set(check.id, { recordId: check.id, outcome: "same", value: null, unit: null });
}

/** Digits that are typed for a usual value: half of the range, as finely as it is read. */
function digitsOf({ reading }: WalkRoundCheck): number {
  if (reading === undefined) return 0;
  const times = reading.unit === "share" ? 100 : 1;
  const half = ((reading.min + reading.max) / 2) * times;
  const step = reading.step * times;
  const decimals = step >= 1 ? 0 : Math.ceil(-Math.log10(step) - 1e-9);
  return half.toFixed(decimals).length;
}

/** Minutes by {@link SECONDS}; an estimate until somebody has timed them. */
export function minutesOf(count: TapCount): number {
  const seconds =
    count.taps * SECONDS.tap +
    count.photographs * SECONDS.photograph +
    count.readings * SECONDS.reading +
    count.counts * SECONDS.count +
    count.looks * SECONDS.look +
    count.sides * SECONDS.side +
    count.signatures * SECONDS.signature;
  return seconds / 60;
}
