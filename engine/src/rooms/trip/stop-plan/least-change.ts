import type { Trip } from "../../situation.ts";
import type { TripPlan } from "../plan-trip.ts";
import { applyDecisions } from "./apply-decisions.ts";
import { type Decision, listDecisions } from "./decisions.ts";
import { hopelessGroups } from "./keep-serving.ts";
import type { TripLiver } from "./live-chances.ts";
import { type Candidate, effortOf, totalOf } from "./search-plan.ts";
import type { OtherPitch } from "./types.ts";

/** Trouble that no plan averts weighs so many times as much: the question is then what would help at all. Practice. */
const WEIGHT = 3;

/** Where the plan leaves a store in trouble: the pitches that would have to be others, and what they must offer. */
export function findLeastChange(
  liver: TripLiver,
  plan: TripPlan,
  decisions: readonly Decision[],
  planned: Candidate,
  most: number,
): readonly OtherPitch[] {
  const groups = new Set(hopelessGroups(liver, planned.trip));
  if (groups.size === 0) return [];
  // a full waste tank saves water: where it is emptied, the water has to last as well
  if (groups.has("waste")) groups.add("water");
  const rest = decisions.filter(({ group }) => !groups.has(group));
  const kept = new Set(rest.filter((one) => planned.chosen.has(one)));
  const start = applyDecisions(withLevelsOf(plan.input.trip, planned.trip), rest, kept);
  const open = listDecisions(plan, true).filter(({ group }) => groups.has(group));
  const chosen = dropWhatCanGo(liver, start, open, { most, weight: WEIGHT });
  return plan.input.trip.stops.flatMap(({ place }, stop): OtherPitch[] => {
    const needs = [...chosen].flatMap((one) =>
      one.kind === "act" && one.stop === stop && one.missing !== null ? [one.missing] : [],
    );
    return needs.length === 0 ? [] : [{ stop, name: place.name, needs }];
  });
}

/** The trip with the water of another on each leg: how full the waste tank becomes hangs on it. */
function withLevelsOf(trip: Trip, { departWith, stops }: Trip): Trip {
  return {
    ...trip,
    departWith,
    stops: trip.stops.map((stop, k) => {
      const { leaveWithWaterL } = stops[k]!;
      return leaveWithWaterL === undefined ? stop : { ...stop, leaveWithWaterL };
    }),
  };
}

/**
 * Begins with everything that could be done at pitches that offer everything, and drops what costs more than it
 * averts (trouble counted `weight` times): whole kinds of it first, then one thing after another from the last stop on. What is out is tried again
 * beside what is left. Ends when no single change is better, or after the work of `most` whole runs and one
 * more look at what is asked of other pitches.
 */
export function dropWhatCanGo(
  liver: TripLiver,
  trip: Trip,
  open: readonly Decision[],
  { most, weight }: { readonly most: number; readonly weight: number },
): ReadonlySet<Decision> {
  const until = liver.runs + most;
  const weighed = (one: Candidate) => {
    const effort = effortOf(one.chosen);
    return effort + weight * (totalOf(liver, one) - effort);
  };
  const candidate = (chosen: ReadonlySet<Decision>): Candidate => ({
    chosen,
    trip: applyDecisions(trip, open, chosen),
  });
  let best = candidate(new Set(open));
  const isBetter = (chosen: ReadonlySet<Decision>, isLast = false): boolean => {
    if (liver.runs >= until && !isLast) return false;
    const other = candidate(chosen);
    if (weighed(other) >= weighed(best)) return false;
    best = other;
    return true;
  };
  for (const kind of new Set(open.map(kindOf)))
    isBetter(new Set([...best.chosen].filter((one) => kindOf(one) !== kind)));
  const order = open.toSorted(lastStopFirst);
  for (let isMoving = true; isMoving; ) {
    isMoving = false;
    for (const one of order) {
      const chosen = new Set(best.chosen);
      const isOut = !chosen.delete(one);
      // nothing that costs more effort than all the trouble that is left can help
      if (isOut && one.effort >= weighed(best) - effortOf(best.chosen)) continue;
      if (isBetter(isOut ? chosen.add(one) : chosen)) isMoving = true;
    }
  }
  // nothing is asked of a pitch that has not been tried without, however long that takes
  for (const one of order) {
    if (one.kind === "act" && one.missing !== null && best.chosen.has(one))
      isBetter(new Set([...best.chosen].filter((other) => other !== one)), true);
  }
  return best.chosen;
}

const kindOf = (one: Decision): string =>
  one.kind === "act" ? `${one.act} ${one.missing === null ? "here" : "elsewhere"}` : one.kind;
const stopOf = (one: Decision): number => (one.kind === "fullGas" ? -1 : one.stop);
/** at one stop the dearest first */
const lastStopFirst = (a: Decision, b: Decision): number => stopOf(b) - stopOf(a) || b.effort - a.effort;
