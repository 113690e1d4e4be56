import type { PostShare, Setting } from "../../../systems/contract.ts";
import type { Stop, Trip } from "../../situation.ts";
import { elementsOf, type FittedPhysics } from "../fit-systems.ts";
import { listLoads, type Outside } from "./list-loads.ts";
import { stagesTogether } from "./size-post.ts";

/** Nights that everything for the cold is wanted in, and a place where it never is. */
const COLD: Outside = { coldC: Number.NEGATIVE_INFINITY, hotC: Number.NEGATIVE_INFINITY };
const WARM: Outside = { coldC: Number.POSITIVE_INFINITY, hotC: Number.POSITIVE_INFINITY };

type StagesW = ReadonlyMap<string, number>;

/**
 * What the 230 V of a post leaves to each system as all are set, by its id: the same sizing that tells people which
 * stage to choose, so that the forecast lives what the card says. The post is taken as nobody turns the stages
 * during a stop: a load that comes first keeps its power whether it draws at the moment or not.
 */
export function sharePosts(
  systems: readonly FittedPhysics[],
  settingOf: (id: string) => Setting,
): (id: string) => PostShare {
  const [cold, warm] = [new Map<number, StagesW>(), new Map<number, StagesW>()];
  const stagesAt = (postAmperes: number, isCold: boolean): StagesW => {
    const known = isCold ? cold : warm;
    let found = known.get(postAmperes);
    if (found === undefined) {
      found = sizeAll(systems, settingOf, postAmperes, isCold);
      known.set(postAmperes, found);
    }
    return found;
  };
  const stageOf = (id: string, postAmperes: number, isCold: boolean) =>
    stagesAt(postAmperes, isCold).get(id) ?? Number.POSITIVE_INFINITY;
  return (id) => {
    // asked at every step of a stop, always of the same post
    let of = Number.NaN;
    let [coldW, warmW] = [0, 0];
    return {
      stageW: (postAmperes, isCold) => {
        if (postAmperes !== of) {
          of = postAmperes;
          coldW = stageOf(id, postAmperes, true);
          warmW = stageOf(id, postAmperes, false);
        }
        return isCold ? coldW : warmW;
      },
    };
  };
}

function sizeAll(
  systems: readonly FittedPhysics[],
  settingOf: (id: string) => Setting,
  postAmperes: number,
  isCold: boolean,
): StagesW {
  const mains = listLoads(systems, settingOf, isCold ? COLD : WARM);
  const on = stagesTogether(postAmperes, mains);
  const stages = new Map(on.map(({ of, stageW }) => [of.system!, stageW]));
  // what is the same element as another's has that one's stage
  for (const { of, stageW } of on)
    for (const { id, kind } of systems)
      if (of.load.sameAs?.includes(kind) === true && !stages.has(id)) stages.set(id, stageW);
  return stages;
}

/**
 * Appliances whose one set of elements serves two systems: by id of both, where the first of them says what it takes of
 * a step, Wh by life.
 */
export function shareElements(
  systems: readonly FittedPhysics[],
  n: number,
): ReadonlyMap<string, Float64Array> {
  const shared = new Map<string, Float64Array>();
  for (const { id, kinds } of elementsOf(systems)) {
    const taken = new Float64Array(n);
    for (const one of systems) if (one.id === id || kinds.includes(one.kind)) shared.set(one.id, taken);
  }
  return shared;
}

/** Whether others that draw on a post are set at a stop so that they draw otherwise than on the trip, for a system that draws on it too. */
export function sharesDiffer(
  fitted: FittedPhysics,
  systems: readonly FittedPhysics[],
  trip: Trip,
  here: NonNullable<Stop["settings"]>,
): boolean {
  if (fitted.physics.mains === undefined) return false;
  return systems.some(({ id, spec, physics: { mains } }) => {
    const set = here[id];
    if (mains === undefined || set === undefined) return false;
    const usual = trip.settings[id] ?? {};
    return JSON.stringify(mains(spec, usual)) !== JSON.stringify(mains(spec, { ...usual, ...set }));
  });
}
