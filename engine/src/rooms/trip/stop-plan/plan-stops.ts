import { figure } from "../../../base/figure.ts";
import type { RoomAnswer } from "../../../base/finding.ts";
import type { Trip } from "../../situation.ts";
import { forecastTrip } from "../forecast-trip.ts";
import { liveTrip, storesAtStart } from "../live-trip.ts";
import { planTrip, type TripPlan } from "../plan-trip.ts";
import { markPosts } from "../timeline.ts";
import type { TripForecast, TripInput } from "../types.ts";
import { applyDecisions } from "./apply-decisions.ts";
import { type Decision, type Group, groupOf, listDecisions } from "./decisions.ts";
import { TripLiver } from "./live-chances.ts";
import { effortOf, type Found, isAsked, searchPlan, WITHIN } from "./search-plan.ts";
import type { Act, OtherPitch, StopCard, StopPlan } from "./types.ts";
import { ENOUGH_FOR, type WaterByLeg, WaterRecorder, waterByLeg } from "./water-by-leg.ts";

/** lives in the search; the answer itself is lived as often as the forecast */
const LIVES = 40;
const LIVES_LONG = 24;
const LONG_STEPS = 1400;
/** work of the search in life-steps and in steps, so that it ends in about two seconds on an ordinary computer */
const MOST_WORK = 3_000_000;
const STEP_WORK = 12;
const LEAST_RUNS = 20;
/** a store that is in trouble more often than this calls for other pitches */
const WORKS_BELOW = 0.2;
/** chance that the trip lasts which a plan may give away for less effort */
const TOLERATED = 0.03;

/**
 * At which stop to fill, empty, change the cylinder, plug in and heat less, and with how much water to drive: the
 * plan with the least effort + cost × chance of trouble, found by living the trip with the same draws again and
 * again. Where no plan works with these pitches it says which of them would have to be others.
 * Throws BadInput that names the field.
 */
export function planStops(raw: TripInput): RoomAnswer<StopPlan> {
  const asked = planTrip(raw);
  const ready = withFullStores(asked);
  const lives = Math.min(asked.timeline.steps > LONG_STEPS ? LIVES_LONG : LIVES, raw.runs ?? LIVES);
  const liver = new TripLiver(ready, lives);
  const most = Math.max(LEAST_RUNS, Math.floor(MOST_WORK / (asked.timeline.steps * (lives + STEP_WORK))));
  const decisions = listDecisions(ready, false);
  const before = liver.live(asked.input.trip);
  const found = keepServing(
    liver,
    ready,
    asked.input.trip,
    decisions,
    searchPlan(liver, ready.input.trip, decisions, most),
  );
  const water = leastWater(ready, found.trip, lives);
  const carried = water === null ? found.trip : carrying(liver, ready, found.trip, water);
  const otherPitches = findLeastChange(liver, ready, decisions, found, most);
  const first = forecastTrip({ ...raw, trip: asked.input.trip });
  // a plan may save effort, but never at the price of a trip that lasts less often than as asked
  const candidates = [
    carried,
    found.trip,
    withAllAsked(ready.input.trip, asked.input.trip, decisions, found),
  ];
  const { trip, answer: second } = firstGoodEnough(raw, candidates, first.result.lastsChance - TOLERATED);
  const askedEffort = effortOf(decisions.filter((one) => isAsked(asked.input.trip, one)));
  const askedTotal = askedEffort + [...before.trouble.values()].reduce((a, b) => a + b, 0);
  const pence = (value: number) => figure(Math.round(value), "p", "-", { lives }, "computed");
  const litres = (value: number | undefined) =>
    value === undefined ? null : figure(value, "L", "-", { enoughFor: ENOUGH_FOR, lives }, "computed");
  return {
    result: {
      objective: { asAsked: pence(askedTotal), withPlan: pence(found.total) },
      cards: trip.stops.map((stop, k) => cardOf(asked.input.trip, trip, k, litres(stop.leaveWithWaterL))),
      departWith: trip.departWith,
      departWithWater: water === null ? null : litres(water.atDeparture),
      chances: chancesOf(first.result, second.result),
      lastsShownPct: { asAsked: first.result.lastsShownPct, withPlan: second.result.lastsShownPct },
      trip,
      forecast: second.result,
      otherPitches,
      search: { lives, evaluations: liver.evaluations, proven: found.proven, within: WITHIN },
    },
    findings: second.findings,
  };
}

/** Groups of the stores that are in trouble too often whatever the plan does. */
function hopelessGroups(liver: TripLiver, trip: Trip): ReadonlySet<Group> {
  const { byStore } = liver.live(trip);
  return new Set([...byStore].filter(([, chance]) => chance >= WORKS_BELOW).map(([id]) => groupOf(id)));
}

/** these are served at every stop that offers it, once their first trouble cannot be averted */
const SERVED: ReadonlySet<Group> = new Set<Group>(["water", "waste", "cassette"]);

/**
 * A search that pays for the first trouble only sees no use in what comes after it. Where that trouble stays, what
 * was asked for that store stays too, and tanks are still filled and emptied wherever the pitch offers it.
 */
function keepServing(
  liver: TripLiver,
  ready: TripPlan,
  asked: Trip,
  decisions: readonly Decision[],
  found: Found,
): Found {
  const hopeless = hopelessGroups(liver, found.trip);
  const more = decisions.filter(
    (one) =>
      hopeless.has(one.group) &&
      !found.chosen.has(one) &&
      (isAsked(asked, one) || (one.kind === "act" && SERVED.has(one.group))),
  );
  if (more.length === 0) return found;
  const chosen = new Set([...found.chosen, ...more]);
  const trip = applyDecisions(ready.input.trip, decisions, chosen);
  const served = { ...found, chosen, trip, total: found.total + effortOf(more) };
  // water that is filled again may fill the waste tank in turn
  return keepServing(liver, ready, asked, decisions, served);
}

/** The first that lasts often enough; else the last. */
function firstGoodEnough(raw: TripInput, candidates: readonly Trip[], least: number) {
  let lived = { trip: candidates[0]!, answer: forecastTrip({ ...raw, trip: candidates[0]! }) };
  for (const trip of candidates.slice(1)) {
    if (lived.answer.result.lastsChance >= least) break;
    lived = { trip, answer: forecastTrip({ ...raw, trip }) };
  }
  return lived;
}

function withAllAsked(ready: Trip, asked: Trip, decisions: readonly Decision[], { chosen }: Found): Trip {
  return applyDecisions(
    ready,
    decisions,
    new Set(decisions.filter((one) => chosen.has(one) || isAsked(asked, one))),
  );
}

/** What the depot sends off full or empty anyway; gas and fuel stay as asked. */
function withFullStores(plan: TripPlan): TripPlan {
  const { input, tracked } = plan;
  const want = { battery12: 1, freshWater: 1, wasteWater: 0, cassette: 0 } as const;
  const departWith = { ...input.trip.departWith };
  for (const [store, share] of Object.entries(want) as [keyof typeof want, number][])
    if (tracked.includes(store)) departWith[store] = share;
  return { ...plan, input: { ...input, trip: { ...input.trip, departWith } } };
}

/** Null where there is no water tank. */
function leastWater(plan: TripPlan, trip: Trip, lives: number): WaterByLeg | null {
  const { input, systems, timeline, people } = plan;
  const tank = storesAtStart(input.vehicle, systems, trip).get("freshWater");
  if (tank === undefined) return null;
  const recorder = new WaterRecorder(timeline);
  const { seed, spread } = input;
  const options = { runs: lives, people, seed, spread, restarts: [] };
  const posts = { ...timeline, postAmperes: markPosts(trip, timeline.stops, timeline.steps) };
  liveTrip(input.vehicle, systems, trip, posts, options, recorder);
  return waterByLeg(trip, timeline, recorder, tank.capacity);
}

/** The trip with no more water aboard than needed, unless that brings the tank into trouble. */
function carrying(liver: TripLiver, plan: TripPlan, trip: Trip, water: WaterByLeg): Trip {
  const tank = storesAtStart(plan.input.vehicle, plan.systems, trip).get("freshWater")!.capacity;
  const lighter: Trip = {
    ...trip,
    departWith: { ...trip.departWith, freshWater: Math.min(1, water.atDeparture / tank) },
    stops: trip.stops.map((stop, k) => ({ ...stop, leaveWithWaterL: water.onLeaving[k]! })),
  };
  const chance = (one: Trip) => liver.live(one).byStore.get("freshWater") ?? 0;
  return chance(lighter) <= chance(trip) + 0.03 ? lighter : trip;
}

function findLeastChange(
  liver: TripLiver,
  plan: TripPlan,
  decisions: readonly Decision[],
  found: Found,
  most: number,
): readonly OtherPitch[] {
  const groups = hopelessGroups(liver, found.trip);
  if (groups.size === 0) return [];
  const rest = decisions.filter(({ group }) => !groups.has(group));
  const start = applyDecisions(plan.input.trip, rest, new Set(rest.filter((one) => found.chosen.has(one))));
  const open = listDecisions(plan, true).filter(({ group }) => groups.has(group));
  const other = searchPlan(liver, start, open, most);
  return plan.input.trip.stops.flatMap(({ place }, stop): OtherPitch[] => {
    const needs = [...other.chosen].flatMap((one) =>
      one.kind === "act" && one.stop === stop && one.missing !== null ? [one.missing] : [],
    );
    return needs.length === 0 ? [] : [{ stop, name: place.name, needs }];
  });
}

function cardOf(
  asked: Trip,
  planned: Trip,
  stop: number,
  leaveWithWater: StopCard["leaveWithWater"],
): StopCard {
  const [was, is] = [asked.stops[stop]!, planned.stops[stop]!];
  const missing = (from: readonly Act[], of: readonly Act[]) => from.filter((act) => !of.includes(act));
  return {
    stop,
    name: is.place.name,
    acts: is.acts,
    added: missing(is.acts, was.acts),
    dropped: missing(was.acts, is.acts),
    settings: is.settings ?? null,
    leaveWithWater,
  };
}

function chancesOf(first: TripForecast, second: TripForecast): StopPlan["chances"] {
  return first.stores.map(({ store, trouble }) => ({
    store,
    asAsked: trouble.chance,
    withPlan: second.stores.find((one) => one.store === store)?.trouble.chance ?? 0,
  }));
}
