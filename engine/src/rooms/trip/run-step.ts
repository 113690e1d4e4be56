/** One step of the whole ensemble, and the lists that it goes through. */
import {
  beginStep,
  bookLoss,
  boundIn,
  boundOut,
  type Ensemble,
  indexOf,
  rememberStart,
} from "../../stores/ensemble.ts";
import { fillAll } from "../../stores/fill-all.ts";
import { type CompiledRunning, returnUnused, settleRunning } from "../../stores/settle.ts";
import type { Port } from "../../stores/settle-mode.ts";
import type { Keeping, Running } from "../../systems/contract.ts";
import type { FittedPhysics } from "./fit-systems.ts";
import type { SystemView } from "./step-view.ts";
import type { TimesOfDay } from "./times-of-day.ts";
import type { Without } from "./without.ts";

export interface Variant {
  readonly running: readonly CompiledRunning[];
  readonly keeping: Keeping | null;
}

export interface AtWork extends Variant {
  readonly fitted: FittedPhysics | null;
  readonly view: SystemView;
  /** where it is set otherwise at a stop */
  readonly byStop: ReadonlyMap<number, Variant>;
  readonly again: boolean;
  readonly lost: Float64Array;
}

/** Counters for what a system may have to go without. */
export function withoutOf({ fitted, running }: AtWork, n: number, stops: number): Without[] {
  return running.flatMap(({ running: { goesWithout } }): Without[] =>
    goesWithout === undefined || fitted === null
      ? []
      : [
          {
            id: fitted.id,
            what: goesWithout,
            asked: new Float64Array(n),
            unmet: new Float64Array(n),
            askedAt: new Float64Array(stops + 1),
            unmetAt: new Float64Array(stops + 1),
          },
        ],
  );
}

function addUp(demand: Float64Array, lives: Float64Array, places: Float64Array, place: number): void {
  for (let i = 0; i < demand.length; i++) {
    lives[i] = lives[i]! + demand[i]!;
    places[place] = places[place]! + demand[i]! / demand.length;
  }
}

type KeepingPart = "limitOut" | "limitIn" | "lose";

/** What a step goes through, laid out once: the lists are walked thousands of times. */
export interface StepLists {
  readonly runnings: readonly Asked[];
  /** those of them that want something in this step, without what comes after all; filled anew in each */
  readonly wanted: Asked[];
  /** what draws of the battery, and the place of the first of them that does not come after all */
  readonly onBattery: readonly Taker[];
  readonly firstOnBattery: number;
  readonly again: readonly CompiledRunning[];
  readonly onDemand: readonly CompiledRunning[];
  readonly limitsOut: readonly Kept<"limitOut">[];
  readonly limitsIn: readonly Kept<"limitIn">[];
  readonly losses: readonly Kept<"lose">[];
  readonly watched: readonly { readonly one: CompiledRunning; readonly without: Without }[];
}

/** One that is asked, in the order of settlement, whether it wants anything. */
interface Asked {
  readonly one: CompiledRunning;
  readonly view: SystemView;
  /** its place in that order */
  readonly at: number;
  /** bit of the times of the day at which it may want anything */
  readonly times: number;
  readonly afterAll: boolean;
  /** what holds it, where it makes its supply on demand */
  readonly held: Held | null;
}

/** What makes a supply on demand is held, in each step, to what is wanted of it. */
interface Held {
  readonly hold: NonNullable<Running["hold"]>;
  readonly view: SystemView;
  readonly takers: readonly Taker[];
}

/** A system that may draw of a supply: Wh at full activity. */
interface Taker {
  readonly one: CompiledRunning;
  readonly limit: Float64Array;
  readonly amount: Float64Array;
  /** what else it needs; −1 where nothing */
  readonly other: Port;
}

interface Kept<Part extends KeepingPart> {
  readonly store: number;
  readonly view: SystemView;
  readonly lost: Float64Array;
  readonly does: NonNullable<Keeping[Part]>;
}

/** The lists of each place and moment of a trip, laid out when they are first gone through. */
export function layOuts(
  all: readonly AtWork[],
  stops: number,
  without: readonly Without[],
  times: TimesOfDay,
): (stop: number, driving: boolean, atPost: boolean) => StepLists {
  const known: (StepLists | undefined)[] = [];
  // where nothing is set otherwise a stop is as the road
  const places = Array.from({ length: stops }, (_, stop) =>
    all.some(({ byStop }) => byStop.has(stop)) ? stop : ON_THE_ROAD,
  );
  return (stop, driving, atPost) => {
    const place = stop < 0 ? ON_THE_ROAD : places[stop]!;
    const at = 4 * (place + 1) + (driving ? 2 : 0) + (atPost ? 1 : 0);
    known[at] ??= layOut(all, place, without, times, driving, atPost);
    return known[at];
  };
}

const ON_THE_ROAD = -1;

/** Lays the lists out for one place, without what is never wanted there. */
function layOut(
  all: readonly AtWork[],
  stop: number,
  without: readonly Without[],
  times: TimesOfDay,
  driving: boolean,
  atPost: boolean,
): StepLists {
  const mayRun = (only: Running["only"]) =>
    only === "driving" ? driving : only === "atPost" ? atPost : true;
  const work = all.map((each) => {
    const here = { ...each, ...each.byStop.get(stop) };
    return { ...here, running: here.running.filter(({ running: { only } }) => mayRun(only)) };
  });
  const both = work.flatMap(({ running, view }) => running.map((one) => ({ one, view })));
  const runnings = both.map(
    ({ one, view }, at): Asked => ({
      one,
      view,
      at,
      times: times.bitOf(one),
      afterAll: one.running.afterAll === true,
      held: heldOf(one, view, both),
    }),
  );
  const kept = <Part extends KeepingPart>(part: Part) =>
    work.flatMap(({ keeping, view, lost }): Kept<Part>[] => {
      const does = keeping?.[part];
      return keeping === null || does === undefined
        ? []
        : [{ store: indexOf(keeping.store), view, lost, does: does as NonNullable<Keeping[Part]> }];
    });
  const onBattery = runnings.flatMap(({ one }) =>
    one.running.onDemand === true ? [] : takersOf(one, BATTERY),
  );
  const first = onBattery.find(({ one }) => one.running.afterAll !== true)?.one;
  return {
    runnings,
    wanted: [...runnings],
    onBattery,
    firstOnBattery: runnings.findIndex(({ one }) => one === first),
    again: work.flatMap(({ running, again }) =>
      running.filter((one) => again || one.running.afterAll === true),
    ),
    onDemand: runnings.flatMap(({ one }) => (one.granted === null ? [] : [one])),
    limitsOut: kept("limitOut"),
    limitsIn: kept("limitIn"),
    losses: kept("lose"),
    watched: work.flatMap(({ fitted, running }) =>
      running.flatMap((one) => {
        const { goesWithout } = one.running;
        const found = without.find(({ id, what }) => id === fitted?.id && what === goesWithout);
        return found === undefined ? [] : [{ one, without: found }];
      }),
    ),
  };
}

function heldOf(
  { running: { hold }, modes }: CompiledRunning,
  view: SystemView,
  runnings: readonly Pick<Asked, "one">[],
): Held | null {
  if (hold === undefined) return null;
  const supply = modes[0]?.givenSupply ?? -1;
  return { hold, view, takers: runnings.flatMap(({ one: each }) => takersOf(each, supply)) };
}

/** The modes of a system that draw of a store. */
function takersOf(one: CompiledRunning, from: number): Taker[] {
  const takers: Taker[] = [];
  for (const { limit, first, second } of one.modes) {
    if (first.store === from) takers.push({ one, limit, amount: first.amount, other: second });
    if (second.store === from) takers.push({ one, limit, amount: second.amount, other: first });
  }
  return takers;
}

const BATTERY = indexOf("battery12");

/**
 * Where the battery does not last the step, all that runs on it goes out together: each has the same share of what
 * it wants, the time until then. Served one after the other, the first would have the whole step.
 */
function shareTheLast({ onBattery }: StepLists, { level, floor, scratchA, scratchB, n }: Ensemble): void {
  const [there, least] = [level[BATTERY]!, floor[BATTERY]!];
  const [left, wanted] = [scratchA, scratchB];
  for (let i = 0; i < n; i++) left[i] = there[i]! - least[i]!;
  wanted.fill(0);
  for (let k = 0; k < onBattery.length; k++) {
    const taker = onBattery[k]!;
    if (!taker.one.isWanted) continue;
    for (let i = 0; i < n; i++) wanted[i] = wanted[i]! + drawOf(taker, i);
  }
  for (let i = 0; i < n; i++) left[i] = wanted[i]! > left[i]! ? Math.max(0, left[i]!) / wanted[i]! : 1;
  for (let k = 0; k < onBattery.length; k++) {
    const { one } = onBattery[k]!;
    // a system with two sources that both need the battery is there twice
    if (!one.isWanted || onBattery[k - 1]?.one === one) continue;
    const { demand } = one;
    for (let i = 0; i < n; i++) demand[i] = demand[i]! * left[i]!;
  }
}

/** What a mode would draw of the battery in a life, Wh: nothing where what else it needs is not there. */
function drawOf({ one: { demand }, limit, amount, other }: Taker, i: number): number {
  const activity = Math.min(demand[i]!, limit[i]!);
  if (other.store < 0) return activity * amount[i]!;
  const need = other.amount[i]!;
  return Math.min(activity, need > 0 ? other.level[i]! / need : 1) * amount[i]!;
}

/** Holds what makes a supply on demand to what is wanted of it. False where nobody wants any. */
function holdTo({ hold, view, takers }: Held, { scratchA, n }: Ensemble): boolean {
  let isWanted = false;
  for (let k = 0; k < takers.length; k++) {
    const { one, limit, amount } = takers[k]!;
    if (!one.isWanted) continue;
    if (!isWanted) scratchA.fill(0);
    isWanted = true;
    const { demand } = one;
    for (let i = 0; i < n; i++) scratchA[i] = scratchA[i]! + Math.min(demand[i]!, limit[i]!) * amount[i]!;
  }
  if (isWanted) hold(view, scratchA);
  return isWanted;
}

/**
 * One step of the whole ensemble: everybody prepares on the state at its start, then all settle in their order.
 * `timesNow`: bits of the times of the day that the step touches.
 */
export function runStep(lists: StepLists, ensemble: Ensemble, place: number, timesNow: number): void {
  const { runnings, wanted, firstOnBattery, again, onDemand, losses, watched } = lists;
  beginStep(ensemble);
  for (let k = 0; k < losses.length; k++) rememberStart(ensemble, losses[k]!.store);
  let count = 0;
  for (let k = 0; k < runnings.length; k++) {
    const asked = runnings[k]!;
    const { one } = asked;
    one.isWanted = (asked.times & timesNow) !== 0 && one.prepare(asked.view, one.demand);
    if (one.isWanted && !asked.afterAll) wanted[count++] = asked;
  }
  let isToShare = setBounds(lists, ensemble) && firstOnBattery >= 0;
  for (let k = 0; k < watched.length; k++) {
    const { one, without } = watched[k]!;
    if (one.isWanted) addUp(one.running.demand, without.asked, without.askedAt, place);
  }
  for (let k = 0; k < count; k++) {
    const { one, held, at } = wanted[k]!;
    if (isToShare && at >= firstOnBattery) {
      isToShare = false;
      shareTheLast(lists, ensemble);
    }
    if (held !== null) one.isWanted = holdTo(held, ensemble);
    settleRunning(one, ensemble);
  }
  // before anything charges again: what an inverter only held would make room for more than a battery takes
  for (let k = 0; k < onDemand.length; k++) returnUnused(onDemand[k]!, ensemble);
  for (let k = 0; k < again.length; k++) settleRunning(again[k]!, ensemble);
  for (let k = 0; k < watched.length; k++) {
    const { one, without } = watched[k]!;
    if (one.isWanted) addUp(one.running.demand, without.unmet, without.unmetAt, place);
  }
  for (let k = 0; k < losses.length; k++) lose(losses[k]!, ensemble);
}

/** True where the battery bounds what may be drawn of it: it may not last the step. */
function setBounds({ limitsOut, limitsIn }: StepLists, ensemble: Ensemble): boolean {
  const { scratchA } = ensemble;
  let isBatteryLow = false;
  for (let k = 0; k < limitsOut.length; k++) {
    const { store, view, does } = limitsOut[k]!;
    if (does(view, scratchA)) {
      boundOut(ensemble, store, scratchA);
      if (store === BATTERY) isBatteryLow = true;
    } else {
      fillAll(ensemble.floor[store]!, 0);
    }
  }
  for (let k = 0; k < limitsIn.length; k++) {
    const { store, view, does } = limitsIn[k]!;
    does(view, scratchA);
    boundIn(ensemble, store, scratchA);
  }
  return isBatteryLow;
}

/** The store's own loss, from the net of what came in within the step. */
function lose({ store, view, lost, does }: Kept<"lose">, ensemble: Ensemble): void {
  const { scratchA, scratchB, n } = ensemble;
  const level = ensemble.level[store]!;
  const start = ensemble.atStart[store]!;
  for (let i = 0; i < n; i++) scratchA[i] = level[i]! - start[i]!;
  does(view, scratchA, scratchB);
  bookLoss(ensemble, store, scratchB, lost);
}
