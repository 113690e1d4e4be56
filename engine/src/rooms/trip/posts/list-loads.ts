import type { MainsInlet, MainsLoad, Setting } from "../../../systems/contract.ts";
import { COLD_OUTSIDE_C } from "../../../systems/running.ts";
import type { FittedPhysics } from "../fit-systems.ts";
import { settlementRank } from "../settlement-order.ts";
import type { LoadName } from "./types.ts";

export interface FittedLoad extends LoadName {
  readonly load: MainsLoad;
}

export interface MainsOfVehicle {
  readonly inlet: MainsInlet | null;
  /** who comes first when there is too little */
  readonly loads: readonly FittedLoad[];
}

/** hotter than this some day, °C, the air conditioner counts: practice */
const HOT_DAY_C = 24;

/** What it is like outside at a stop: the coldest night of the cold tenth, the hottest hour of the hot tenth; null where unknown. */
export interface Outside {
  readonly coldC: number | null;
  readonly hotC: number | null;
}

/** Everything of the vehicle that draws on a post as it is set at a stop, and the way in. */
export function listLoads(
  systems: readonly FittedPhysics[],
  settingOf: (id: string) => Setting,
  outside: Outside,
): MainsOfVehicle {
  const uses = systems.flatMap(({ id, kind, spec, physics }) => {
    const use = physics.mains?.(spec, settingOf(id));
    return use === undefined ? [] : [{ id, kind, use }];
  });
  const wanted = uses
    .flatMap(({ id, kind, use }) => use.loads.map((load): FittedLoad => ({ system: id, kind, load })))
    .filter(({ load }) => isWanted(load, outside));
  const same = new Set(wanted.flatMap(({ load }) => load.sameAs ?? []));
  return {
    inlet: uses.map(({ use }) => use.inlet).find((inlet) => inlet !== undefined) ?? null,
    loads: wanted.filter(({ kind }) => !same.has(kind)).sort((a, b) => rankOf(a) - rankOf(b)),
  };
}

function rankOf({ kind }: FittedLoad): number {
  return settlementRank(kind as FittedPhysics["kind"]);
}

/** Whether what is wanted only in the cold, or only in the heat, counts; what is not known counts. */
export const countsThen = ({ coldC, hotC }: Outside) => ({
  cold: coldC === null || coldC < COLD_OUTSIDE_C,
  hot: hotC === null || hotC > HOT_DAY_C,
});

function isWanted({ wanted }: MainsLoad, outside: Outside): boolean {
  return wanted === "cold" || wanted === "hot" ? countsThen(outside)[wanted] : true;
}
