import type { StoreId } from "../../../stores/stores.ts";
import type { Trip } from "../../situation.ts";
import { applyDecisions, isAsked } from "./apply-decisions.ts";
import { type Decision, type Group, groupOf } from "./decisions.ts";
import type { TripLiver } from "./live-chances.ts";
import { type Candidate, totalOf } from "./search-plan.ts";

/** a store that is in trouble more often than this calls for other pitches */
const WORKS_BELOW = 0.2;
/** these are served at every stop that offers it, once their first trouble cannot be averted */
const SERVED: ReadonlySet<Group> = new Set<Group>(["water", "waste", "cassette"]);

/** Stores that are in trouble too often whatever the plan does. */
function hopelessStores(liver: TripLiver, trip: Trip): readonly StoreId[] {
  const { byStore } = liver.live(trip);
  return [...byStore].filter(([, chance]) => chance >= WORKS_BELOW).map(([id]) => id);
}

export const hopelessGroups = (liver: TripLiver, trip: Trip): ReadonlySet<Group> =>
  new Set(hopelessStores(liver, trip).map(groupOf));

/**
 * A search that pays for the first trouble only sees no use in what comes after it. Where that trouble stays, what
 * was asked for that store stays too, and tanks are still filled and emptied wherever the pitch offers it.
 */
export function keepServing(
  liver: TripLiver,
  ready: Trip,
  asked: Trip,
  decisions: readonly Decision[],
  { trip, chosen }: Candidate,
): Candidate {
  const hopeless = hopelessGroups(liver, trip);
  const more = decisions.filter(
    (one) =>
      hopeless.has(one.group) &&
      !chosen.has(one) &&
      (isAsked(asked, one) || (one.kind === "act" && SERVED.has(one.group))),
  );
  if (more.length === 0) return { trip, chosen };
  const served = new Set([...chosen, ...more]);
  // water that is filled again may fill the waste tank in turn
  return keepServing(liver, ready, asked, decisions, {
    chosen: served,
    trip: applyDecisions(ready, decisions, served),
  });
}

/** Heat and power that the search added before all that was kept came to it, and that no longer pay, are dropped again. */
export function dropWhatDoesNotPay(
  liver: TripLiver,
  ready: Trip,
  asked: Trip,
  decisions: readonly Decision[],
  served: Candidate,
  found: Candidate,
): Candidate {
  if (served.chosen.size === found.chosen.size) return served;
  const added = [...found.chosen].filter((one) => one.group === "energy" && !isAsked(asked, one));
  let best = served;
  for (const one of added.toReversed()) {
    const chosen = new Set(best.chosen);
    chosen.delete(one);
    const without = { chosen, trip: applyDecisions(ready, decisions, chosen) };
    if (totalOf(liver, without) < totalOf(liver, best)) best = without;
  }
  return best;
}
