import { keyedNormal, purposeKey } from "../../base/random.ts";
import type { TripWeather, WeatherNote } from "../../climate/trip-weather.ts";
import { liveWeather } from "../../climate/weather.ts";
import { cabinCapacityWh, cabinHeatWh, startCabin } from "../../stores/cabin.ts";
import { createEnsemble, type Ensemble, indexOf, type StoreAtStart } from "../../stores/ensemble.ts";
import { type CompiledRunning, compileRunning } from "../../stores/settle.ts";
import { STORE_IDS, type StoreId } from "../../stores/stores.ts";
import type { PhysicsContext } from "../../systems/contract.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import type { Trip } from "../situation.ts";
import { doActs, fillOnTheWay, type Restart, restartLevels } from "./do-acts.ts";
import { type FittedPhysics, startSystem } from "./fit-systems.ts";
import { shareElements, sharePosts, sharesDiffer } from "./posts/share-post.ts";
import { isWarmth } from "./rate-use.ts";
import { type AtWork, layOuts, runStep, type Variant, withoutOf } from "./run-step.ts";
import { SETTLES_AGAIN } from "./settlement-order.ts";
import { SharedStep, SystemView } from "./step-view.ts";
import type { Timeline } from "./timeline.ts";
import { TimesOfDay } from "./times-of-day.ts";
import { NARROWED_STORES } from "./types.ts";
import type { Without } from "./without.ts";

export interface LiveOptions {
  readonly runs: number;
  readonly people: number;
  readonly seed: number;
  readonly spread: boolean;
  readonly restarts: readonly Restart[];
  /** the weather of these days and runs, where it has been drawn before; a search lives the same weather again and again */
  readonly weather?: TripWeather;
  /** draws that are the same in every life, by `system.purpose` (`body.loss` for the cabin): to see what one of them moves */
  readonly fixed?: ReadonlyMap<string, number>;
  /** where a trip is taken up that was the same up to there; what the systems drew is then counted from there on */
  readonly from?: TakenUp;
  /** the boundary of steps at which it ends; the return where left out */
  readonly until?: number;
}

/** The beginning of a step of a trip lived before, with as many lives and the same draws. */
export interface TakenUp {
  readonly step: number;
  /** puts back what stores held and what was gone without */
  restore(live: LiveState): void;
}

/** Called at every boundary of steps, before the acts that are done there and after them. */
export interface Recorder {
  before(step: number, live: LiveState): void;
  after(step: number, live: LiveState): void;
}

export interface LiveState {
  readonly ensemble: Ensemble;
  readonly outsideC: Float64Array;
  readonly cabinC: Float64Array;
  readonly without: readonly Without[];
  /** sum over the lives of what heating has drawn so far of a store by its index, in its unit */
  readonly warmthDrawn: (store: number) => number;
}

/** Systems at work with what they drew and gave over the trip. */
export interface SystemTotals {
  readonly id: string;
  readonly kind: string;
  /** sums over lives by index of the store, in its unit */
  readonly drawn: Float64Array;
  readonly given: Float64Array;
  /** what was drawn for it once per trip */
  readonly habits: readonly string[];
}

export interface Lived {
  readonly ensemble: Ensemble;
  readonly totals: readonly SystemTotals[];
  readonly weather: readonly WeatherNote[];
  readonly without: readonly Without[];
}

/** sd of the logarithm of the cabin's loss between lives: wind, doors, how the maker's figure is met (practice) */
const LOSS_SD = 0.1;
const START_CABIN_C = 15;
/** after a reading that the forecast did not expect, the systems at that store are this much less certain */
const WIDENED = 2;

/** Levels and capacities at departure, by what holds each store and how full the hire says it is. */
export function storesAtStart(
  vehicle: VehicleDescription,
  systems: readonly FittedPhysics[],
  trip: Trip,
): ReadonlyMap<StoreId, StoreAtStart> {
  const held = new Map<StoreId, StoreAtStart>();
  for (const { store, capacity, initial } of systems.flatMap(({ shares }) => shares)) {
    const before = held.get(store) ?? { capacity: 0, level: 0 };
    held.set(store, { capacity: before.capacity + capacity, level: before.level + capacity * initial });
  }
  for (const [store, share] of Object.entries(trip.departWith)) {
    const id = store as StoreId;
    const before = held.get(id);
    if (before !== undefined && share !== undefined)
      held.set(id, { ...before, level: before.capacity * share });
  }
  held.set("cabinHeat", {
    capacity: cabinCapacityWh(vehicle.body),
    level: cabinHeatWh(vehicle.body, START_CABIN_C),
  });
  return held;
}

/** Lives the trip `runs` times in one sweep over its steps. */
export function liveTrip(
  vehicle: VehicleDescription,
  systems: readonly FittedPhysics[],
  trip: Trip,
  timeline: Timeline,
  options: LiveOptions,
  recorder: Recorder,
): Lived {
  const { runs, seed, spread } = options;
  const ensemble = createEnsemble(runs, storesAtStart(vehicle, systems, trip));
  const weather = options.weather ?? liveWeather(timeline.days, { runs, seed, spread });
  const lossKey = purposeKey("body.loss");
  const factor = new Float64Array(runs).map((_, i) =>
    spread ? Math.exp(LOSS_SD * (options.fixed?.get("body.loss") ?? keyedNormal(seed, i, 0, lossKey))) : 1,
  );
  const cabin = startCabin(vehicle.body, runs, timeline.dtH, factor);
  const shared = new SharedStep(ensemble, timeline.dtH, cabin, seed, spread, options.fixed);
  const work = setToWork(vehicle, systems, trip, shared, options, cabin);
  const stopAt = stopsBySteps(timeline);
  const isEventful = eventsBySteps(timeline, options.restarts);
  const without = work.flatMap((each) => withoutOf(each, runs, trip.stops.length));
  shared.without = without;
  shared.drawing = drawingOf(work);
  shared.warmthDrawn = warmthOf(work);
  const times = new TimesOfDay(work.flatMap(runningsOf));
  const timesNow = times.bySteps(timeline);
  const listsAt = layOuts(work, trip.stops.length, without, times);
  const cabinHeat = ensemble.level[indexOf("cabinHeat")]!;
  options.from?.restore(shared);
  const first = options.from?.step ?? 0;
  const last = options.until ?? timeline.steps;
  cabin.temperature(cabinHeat, shared.cabinC);
  fillWeather(weather, timeline, Math.max(0, first - 1), shared);
  for (let step = first; step <= last; step++) {
    recorder.before(step, shared);
    if (isEventful[step] === 1) {
      doActs(trip, timeline, step, ensemble);
      fillOnTheWay(vehicle, systems, trip, timeline.driveKm.get(step) ?? 0, ensemble);
      restartLevels(options, step, ensemble);
    }
    recorder.after(step, shared);
    if (step === last) break;
    fillStep(shared, timeline, step);
    fillWeather(weather, timeline, step, shared);
    const stop = stopAt[step]!;
    const lists = listsAt(stop, shared.driving, timeline.postAmperes[step]! > 0);
    runStep(lists, ensemble, stop < 0 ? trip.stops.length : stop, timesNow[step]!);
    cabin.temperature(cabinHeat, shared.cabinC);
  }
  return { ensemble, totals: work.map(total), weather: weather.notes, without };
}

function fillWeather(
  weather: TripWeather,
  { day, clockH, dtH }: Timeline,
  step: number,
  { outsideC, irradianceWm2 }: SharedStep,
): void {
  weather.fill(day[step]!, clockH[step]!, dtH, outsideC, irradianceWm2);
}

function setToWork(
  vehicle: VehicleDescription,
  systems: readonly FittedPhysics[],
  trip: Trip,
  shared: SharedStep,
  { restarts, people }: LiveOptions,
  cabin: ReturnType<typeof startCabin>,
): readonly AtWork[] {
  const { ensemble } = shared;
  const context = {
    n: ensemble.n,
    dtH: shared.dtH,
    people,
    vehicle: {
      floorAreaM2: vehicle.body.floorAreaM2,
      consumptionLPer100Km: vehicle.consumption.litresPer100Km,
    },
  };
  const shares = sharePosts(systems, (id) => trip.settings[id] ?? {});
  const elements = shareElements(systems, ensemble.n);
  const widened = new Set(restarts.map(({ store }) => store));
  const body: AtWork = {
    fitted: null,
    view: new SystemView(shared, "body", 1),
    running: [compileRunning(cabin.running, ensemble)],
    keeping: cabin.keeping,
    byStop: new Map(),
    again: false,
    lost: new Float64Array(ensemble.level.length),
  };
  return [
    body,
    ...systems.map((fitted): AtWork => {
      const elementWh = elements.get(fitted.id);
      const own = { ...context, ...(elementWh === undefined ? {} : { elementWh }) };
      const atPost = { ...own, post: shares(fitted.id) };
      const { running, keeping } = startSystem(fitted, atPost, trip.settings[fitted.id]);
      const touches = running.some(({ modes }) =>
        modes.some(({ needStores, giveStores }) =>
          [...needStores, ...giveStores].some((store) => widened.has(store)),
        ),
      );
      return {
        fitted,
        view: new SystemView(shared, fitted.id, (touches ? WIDENED : 1) * widthOf(fitted)),
        running: running.map((one) => compileRunning(one, ensemble)),
        keeping,
        byStop: variantsOf(fitted, systems, own, trip, ensemble),
        again: SETTLES_AGAIN.has(fitted.kind),
        lost: new Float64Array(ensemble.level.length),
      };
    }),
  ];
}

/** How far its habits are spread, by what was measured of the stores that it holds. */
function widthOf({ shares, rates }: FittedPhysics): number {
  const held = NARROWED_STORES.filter((store) => shares.some((share) => share.store === store));
  return Math.min(1, ...held.map((store) => rates[store]?.width ?? 1));
}

/**
 * The same system once more for each stop where it is set otherwise, or where others are so that a post leaves it
 * another share; its draws are keyed by its id and stay the same.
 */
function variantsOf(
  fitted: FittedPhysics,
  systems: readonly FittedPhysics[],
  context: Omit<PhysicsContext, "setting">,
  trip: Trip,
  ensemble: Ensemble,
): ReadonlyMap<number, Variant> {
  const found = new Map<number, Variant>();
  trip.stops.forEach(({ settings }, stop) => {
    if (settings === undefined) return;
    const here = settings[fitted.id];
    if (here === undefined && !sharesDiffer(fitted, systems, trip, settings)) return;
    const settingOf = (id: string) => ({ ...trip.settings[id], ...settings[id] });
    const atPost = { ...context, post: sharePosts(systems, settingOf)(fitted.id) };
    const { running, keeping } = startSystem(fitted, atPost, settingOf(fitted.id));
    found.set(stop, { running: running.map((one) => compileRunning(one, ensemble)), keeping });
  });
  return found;
}

function stopsBySteps({ steps, stops }: Timeline): Int16Array {
  const at = new Int16Array(steps).fill(-1);
  stops.forEach(({ arrive, leave }, stop) => {
    at.fill(stop, arrive, leave);
  });
  return at;
}

/** 1 for the steps at whose beginning anything is done at the stores; it is looked for there only. */
function eventsBySteps({ steps, actsAt, driveKm }: Timeline, restarts: readonly Restart[]): Uint8Array {
  const is = new Uint8Array(steps + 1);
  for (const step of [...actsAt.keys(), ...driveKm.keys(), ...restarts.map(({ step }) => step)]) is[step] = 1;
  return is;
}

function fillStep(shared: SharedStep, timeline: Timeline, step: number): void {
  shared.hour = step * timeline.dtH;
  shared.clockH = timeline.clockH[step]! + timeline.dtH / 2;
  shared.day = timeline.day[step]!;
  shared.driving = timeline.driving[step] === 1;
  shared.distanceKm = timeline.distanceKm[step]!;
  shared.people = timeline.people[step]!;
  shared.postAmperes = timeline.postAmperes[step]!;
}

function drawingOf(work: readonly AtWork[]): SharedStep["drawing"] {
  return new Map(
    work.flatMap(({ keeping }) =>
      keeping?.shareDown === undefined ? [] : [[keeping.store, keeping.shareDown] as const],
    ),
  );
}

/** What the heating has drawn so far, with what it draws where it is set otherwise. */
function warmthOf(work: readonly AtWork[]): LiveState["warmthDrawn"] {
  const all = work.filter(({ fitted }) => fitted !== null && isWarmth(fitted.kind)).flatMap(runningsOf);
  return (store) => all.reduce((sum, { drawSum }) => sum + drawSum[store]!, 0);
}

/** All that a system does, with what it does where it is set otherwise. */
function runningsOf({ running, byStop }: AtWork): readonly CompiledRunning[] {
  if (byStop.size === 0) return running;
  return [running, ...[...byStop.values()].map((variant) => variant.running)].flat();
}

function total(one: AtWork): SystemTotals {
  const { fitted, view, lost } = one;
  const all = runningsOf(one);
  return {
    id: fitted?.id ?? "body",
    kind: fitted?.kind ?? "body",
    drawn: addStores([...all.map(({ drawSum }) => drawSum), lost]),
    given: addStores(all.map(({ giveSum }) => giveSum)),
    habits: fitted === null ? ["loss"] : view.drawnPerTrip,
  };
}

function addStores(sums: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(STORE_IDS.length);
  for (const sum of sums) for (let s = 0; s < all.length; s++) all[s] = all[s]! + sum[s]!;
  return all;
}
