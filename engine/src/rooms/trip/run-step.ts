/** One step of the whole ensemble, and the lists that it goes through. */
import { beginStep, bookLoss, boundStep, type Ensemble, indexOf } from "../../stores/ensemble.ts";
import { type CompiledRunning, returnUnused, settleRunning } from "../../stores/settle.ts";
import type { Keeping } from "../../systems/contract.ts";
import type { FittedPhysics } from "./fit-systems.ts";
import type { SystemView } from "./step-view.ts";

/** What was asked for and not served, in activity: by life, and by stop the mean over the lives (last: the road). */
export interface Without {
  readonly id: string;
  readonly what: string;
  readonly asked: Float64Array;
  readonly unmet: Float64Array;
  readonly askedAt: Float64Array;
  readonly unmetAt: Float64Array;
}

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

/** What a step goes through, laid out once: the lists are walked thousands of times. */
export interface StepLists {
  readonly runnings: readonly { readonly one: CompiledRunning; readonly view: SystemView }[];
  readonly again: readonly CompiledRunning[];
  readonly onDemand: readonly CompiledRunning[];
  readonly limits: readonly Kept<"limit">[];
  readonly losses: readonly Kept<"lose">[];
  readonly watched: readonly { readonly demand: Float64Array; readonly without: Without }[];
}

interface Kept<What extends "limit" | "lose"> {
  readonly store: number;
  readonly view: SystemView;
  readonly lost: Float64Array;
  readonly does: NonNullable<Keeping[What]>;
}

/** Lays the lists out for one place. @param stop index of the stop, −1 on the road */
export function layOut(all: readonly AtWork[], stop: number, without: readonly Without[]): StepLists {
  const work = all.map((each) => ({ ...each, ...each.byStop.get(stop) }));
  const runnings = work.flatMap(({ running, view }) => running.map((one) => ({ one, view })));
  const kept = <What extends "limit" | "lose">(what: What) =>
    work.flatMap(({ keeping, view, lost }): Kept<What>[] => {
      const does = keeping?.[what];
      return keeping === null || does === undefined
        ? []
        : [{ store: indexOf(keeping.store), view, lost, does: does as NonNullable<Keeping[What]> }];
    });
  return {
    runnings,
    again: work.flatMap(({ running, again }) => (again ? running : [])),
    onDemand: runnings.flatMap(({ one }) => (one.granted === null ? [] : [one])),
    limits: kept("limit"),
    losses: kept("lose"),
    watched: work.flatMap(({ fitted, running }) =>
      running.flatMap(({ running: { goesWithout, demand } }) => {
        const found = without.find(({ id, what }) => id === fitted?.id && what === goesWithout);
        return found === undefined ? [] : [{ demand, without: found }];
      }),
    ),
  };
}

/** One step of the whole ensemble: everybody prepares on the state at its start, then all settle in their order. */
export function runStep(lists: StepLists, ensemble: Ensemble, place: number): void {
  beginStep(ensemble);
  const { scratchA, scratchB, n } = ensemble;
  const { runnings, again, onDemand, limits, losses, watched } = lists;
  for (let k = 0; k < runnings.length; k++) runnings[k]!.one.running.prepare(runnings[k]!.view);
  for (const { store, view, does } of limits) {
    does(view, scratchA, scratchB);
    boundStep(ensemble, store, scratchA, scratchB);
  }
  for (const { demand, without } of watched) addUp(demand, without.asked, without.askedAt, place);
  for (let k = 0; k < runnings.length; k++) settleRunning(runnings[k]!.one, ensemble);
  for (const one of again) settleRunning(one, ensemble);
  for (const { demand, without } of watched) addUp(demand, without.unmet, without.unmetAt, place);
  for (const one of onDemand) returnUnused(one, ensemble);
  for (const { store, view, lost, does } of losses) {
    const level = ensemble.level[store]!;
    const start = ensemble.atStart[store]!;
    for (let i = 0; i < n; i++) scratchA[i] = level[i]! - start[i]!;
    does(view, scratchA, scratchB);
    lost[store] = lost[store]! + bookLoss(ensemble, store, scratchB);
  }
}
