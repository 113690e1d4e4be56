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
import { type CompiledRunning, returnUnused, settleRunning } from "../../stores/settle.ts";
import type { Keeping, Running } from "../../systems/contract.ts";
import type { FittedPhysics } from "./fit-systems.ts";
import type { SystemView } from "./step-view.ts";
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
  readonly runnings: readonly { readonly one: CompiledRunning; readonly view: SystemView }[];
  /** in the order of settlement, without those that come after all */
  readonly settled: readonly CompiledRunning[];
  readonly again: readonly CompiledRunning[];
  readonly onDemand: readonly CompiledRunning[];
  readonly limitsOut: readonly Kept<"limitOut">[];
  readonly limitsIn: readonly Kept<"limitIn">[];
  readonly losses: readonly Kept<"lose">[];
  readonly watched: readonly { readonly one: CompiledRunning; readonly without: Without }[];
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
): (stop: number, driving: boolean, atPost: boolean) => StepLists {
  const known: (StepLists | undefined)[] = [];
  // where nothing is set otherwise a stop is as the road
  const places = Array.from({ length: stops }, (_, stop) =>
    all.some(({ byStop }) => byStop.has(stop)) ? stop : ON_THE_ROAD,
  );
  return (stop, driving, atPost) => {
    const place = stop < 0 ? ON_THE_ROAD : places[stop]!;
    const at = 4 * (place + 1) + (driving ? 2 : 0) + (atPost ? 1 : 0);
    known[at] ??= layOut(all, place, without, driving, atPost);
    return known[at];
  };
}

const ON_THE_ROAD = -1;

/** Lays the lists out for one place, without what is never wanted there. */
function layOut(
  all: readonly AtWork[],
  stop: number,
  without: readonly Without[],
  driving: boolean,
  atPost: boolean,
): StepLists {
  const mayRun = (only: Running["only"]) =>
    only === "driving" ? driving : only === "atPost" ? atPost : true;
  const work = all.map((each) => {
    const here = { ...each, ...each.byStop.get(stop) };
    return { ...here, running: here.running.filter(({ running: { only } }) => mayRun(only)) };
  });
  const runnings = work.flatMap(({ running, view }) => running.map((one) => ({ one, view })));
  const kept = <Part extends KeepingPart>(part: Part) =>
    work.flatMap(({ keeping, view, lost }): Kept<Part>[] => {
      const does = keeping?.[part];
      return keeping === null || does === undefined
        ? []
        : [{ store: indexOf(keeping.store), view, lost, does: does as NonNullable<Keeping[Part]> }];
    });
  return {
    runnings,
    settled: runnings.flatMap(({ one }) => (one.running.afterAll === true ? [] : [one])),
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

/** One step of the whole ensemble: everybody prepares on the state at its start, then all settle in their order. */
export function runStep(lists: StepLists, ensemble: Ensemble, place: number): void {
  const { runnings, settled, again, onDemand, losses, watched } = lists;
  beginStep(ensemble);
  for (let k = 0; k < losses.length; k++) rememberStart(ensemble, losses[k]!.store);
  for (let k = 0; k < runnings.length; k++) {
    const { one, view } = runnings[k]!;
    one.isWanted = one.prepare(view, one.demand);
  }
  setBounds(lists, ensemble);
  for (let k = 0; k < watched.length; k++) {
    const { one, without } = watched[k]!;
    if (one.isWanted) addUp(one.running.demand, without.asked, without.askedAt, place);
  }
  for (let k = 0; k < settled.length; k++) settleRunning(settled[k]!, ensemble);
  // before anything charges again: what an inverter only held would make room for more than a battery takes
  for (let k = 0; k < onDemand.length; k++) returnUnused(onDemand[k]!, ensemble);
  for (let k = 0; k < again.length; k++) settleRunning(again[k]!, ensemble);
  for (let k = 0; k < watched.length; k++) {
    const { one, without } = watched[k]!;
    if (one.isWanted) addUp(one.running.demand, without.unmet, without.unmetAt, place);
  }
  for (let k = 0; k < losses.length; k++) lose(losses[k]!, ensemble);
}

function setBounds({ limitsOut, limitsIn }: StepLists, ensemble: Ensemble): void {
  const { scratchA } = ensemble;
  for (let k = 0; k < limitsOut.length; k++) {
    const { store, view, does } = limitsOut[k]!;
    does(view, scratchA);
    boundOut(ensemble, store, scratchA);
  }
  for (let k = 0; k < limitsIn.length; k++) {
    const { store, view, does } = limitsIn[k]!;
    does(view, scratchA);
    boundIn(ensemble, store, scratchA);
  }
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
