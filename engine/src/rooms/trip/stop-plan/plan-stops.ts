import { figure } from "../../../base/figure.ts";
import type { RoomAnswer } from "../../../base/finding.ts";
import type { Trip } from "../../situation.ts";
import { forecastTrip } from "../forecast-trip.ts";
import { liveTrip, storesAtStart } from "../live-trip.ts";
import { planTrip, type TripPlan } from "../plan-trip.ts";
import { markPosts } from "../timeline.ts";
import type { TripForecast, TripInput } from "../types.ts";
import { applyDecisions, isAsked, withoutPlan } from "./apply-decisions.ts";
import { type Decision, hasUseFor, listDecisions } from "./decisions.ts";
import { dropWhatDoesNotPay, keepServing } from "./keep-serving.ts";
import { findLeastChange } from "./least-change.ts";
import { TripLiver } from "./live-chances.ts";
import { type Candidate, effortOf, searchPlan, totalOf, WITHIN } from "./search-plan.ts";
import type { Act, StopCard, StopPlan } from "./types.ts";
import { ENOUGH_FOR, type WaterByLeg, WaterRecorder, waterByLeg } from "./water-by-leg.ts";

/** lives in the search; the answer itself is lived as often as the forecast */
const LIVES = 40;
const LIVES_LONG = 24;
const LONG_STEPS = 1400;
/** work of the search in life-steps and in steps, so that it ends in about two seconds on an ordinary computer */
const MOST_WORK = 3_000_000;
const STEP_WORK = 12;
const LEAST_RUNS = 20;
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
  const ready = readyToPlan(asked);
  const lives = Math.min(asked.timeline.steps > LONG_STEPS ? LIVES_LONG : LIVES, raw.runs ?? LIVES);
  const liver = new TripLiver(ready, lives);
  const most = Math.max(LEAST_RUNS, Math.floor(MOST_WORK / (asked.timeline.steps * (lives + STEP_WORK))));
  const decisions = listDecisions(ready, false);
  const asAsked = { trip: asked.input.trip, chosen: askedOf(asked.input.trip, decisions) };
  const found = searchPlan(liver, ready.input.trip, decisions, most);
  const first = forecastTrip({ ...raw, trip: asAsked.trip });
  const { plan, answer } = choosePlan(raw, liver, ready, decisions, { found, asAsked, first: first.result });
  const { trip } = plan;
  const pence = (one: Candidate) =>
    figure(
      Math.round(totalOf(liver, one)),
      "pence",
      "-",
      { lives, effort: effortOf(one.chosen) },
      "computed",
    );
  const litres = (value: number | undefined) =>
    value === undefined ? null : figure(value, "L", "-", { enoughFor: ENOUGH_FOR }, "computed");
  return {
    result: {
      objective: { asAsked: pence(asAsked), withPlan: pence(plan) },
      cards: trip.stops.map((stop, k) => cardOf(asked.input.trip, trip, k, litres(stop.leaveWithWaterL))),
      departWith: trip.departWith,
      departWithWater: litres(plan.water?.atDeparture),
      chances: chancesOf(first.result, answer.result),
      lastsShownPct: { asAsked: first.result.lastsShownPct, withPlan: answer.result.lastsShownPct },
      trip,
      forecast: answer.result,
      otherPitches: findLeastChange(liver, ready, decisions, plan, most),
      search: { lives, evaluations: liver.evaluations, proven: found.proven, within: WITHIN },
    },
    findings: answer.findings,
  };
}

const askedOf = (trip: Trip, decisions: readonly Decision[]): ReadonlySet<Decision> =>
  new Set(decisions.filter((one) => isAsked(trip, one)));

interface Choice {
  readonly found: Candidate;
  readonly asAsked: Candidate;
  readonly first: TripForecast;
}
interface Planned extends Candidate {
  readonly water: WaterByLeg | null;
}

/**
 * A plan may save effort, but never at the price of a trip that lasts less often than as asked: the first that lasts
 * often enough. Where even that costs more than to stay with what was asked, it stays.
 */
function choosePlan(
  raw: TripInput,
  liver: TripLiver,
  ready: TripPlan,
  decisions: readonly Decision[],
  { found, asAsked, first }: Choice,
): { readonly plan: Planned; readonly answer: RoomAnswer<TripForecast> } {
  const served = keepServing(liver, ready.input.trip, asAsked.trip, decisions, found);
  const paying = dropWhatDoesNotPay(liver, ready.input.trip, asAsked.trip, decisions, served, found);
  const with_ = (chosen: ReadonlySet<Decision>): Candidate => ({
    chosen,
    trip: applyDecisions(ready.input.trip, decisions, chosen),
  });
  const stay = keepServing(liver, ready.input.trip, asAsked.trip, decisions, with_(asAsked.chosen));
  const isDearer = totalOf(liver, paying) > totalOf(liver, stay);
  const starts = [isDearer ? stay : paying, with_(new Set([...found.chosen, ...asAsked.chosen]))];
  const candidates = starts.flatMap((one) => [
    () => carrying(liver, ready, one),
    () => ({ ...one, water: null }),
  ]);
  let best: { plan: Planned; answer: RoomAnswer<TripForecast> } | null = null;
  for (const candidate of candidates) {
    const plan = candidate();
    const answer = forecastTrip({ ...raw, trip: plan.trip });
    best = { plan, answer };
    if (answer.result.lastsChance >= first.lastsChance - TOLERATED) break;
  }
  return best!;
}

/** What the depot sends off full or empty anyway, and nothing of a plan that was taken before or of no use here; gas and fuel stay as asked. */
function readyToPlan(plan: TripPlan): TripPlan {
  const { input, tracked, systems } = plan;
  const want = { battery12: 1, freshWater: 1, wasteWater: 0, cassette: 0 } as const;
  const departWith = { ...input.trip.departWith };
  for (const [store, share] of Object.entries(want) as [keyof typeof want, number][])
    if (tracked.includes(store)) departWith[store] = share;
  const stops = input.trip.stops.map((stop) => ({
    ...stop,
    acts: stop.acts.filter((act) => hasUseFor(plan, act)),
  }));
  const heater = systems.find(({ kind }) => kind === "heating")?.id;
  const trip = withoutPlan({ ...input.trip, stops, departWith }, heater);
  return { ...plan, input: { ...input, trip } };
}

/** Null where there is no water tank. As many lives as the forecast has, so that it is enough in each of them. */
function leastWater(plan: TripPlan, trip: Trip): WaterByLeg | null {
  const { input, systems, timeline, people } = plan;
  const tank = storesAtStart(input.vehicle, systems, trip).get("freshWater");
  if (tank === undefined) return null;
  const recorder = new WaterRecorder(timeline);
  const { seed, spread, runs } = input;
  const options = { runs, people, seed, spread, restarts: [] };
  const posts = { ...timeline, postAmperes: markPosts(trip, timeline.stops, timeline.steps) };
  liveTrip(input.vehicle, systems, trip, posts, options, recorder);
  return waterByLeg(trip, timeline, recorder, tank.capacity);
}

/** The trip with no more water aboard than needed, unless that brings the tank into trouble. */
function carrying(liver: TripLiver, plan: TripPlan, { trip, chosen }: Candidate): Planned {
  const water = leastWater(plan, trip);
  if (water === null) return { trip, chosen, water };
  const tank = storesAtStart(plan.input.vehicle, plan.systems, trip).get("freshWater")!.capacity;
  const lighter: Trip = {
    ...trip,
    departWith: { ...trip.departWith, freshWater: Math.min(1, water.atDeparture / tank) },
    stops: trip.stops.map((stop, k) => ({ ...stop, leaveWithWaterL: water.onLeaving[k]! })),
  };
  const chance = (one: Trip) => liver.live(one).byStore.get("freshWater") ?? 0;
  return chance(lighter) <= chance(trip) + TOLERATED
    ? { trip: lighter, chosen, water }
    : { trip, chosen, water: null };
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
