import type { VehicleDescription } from "../../vehicle/description.ts";
import type { Difference } from "../condition/types.ts";
import type { TurnaroundJob, TurnaroundSkill } from "./types.ts";

type Step = readonly [code: string, minutes: number, skill: TurnaroundSkill, fits: readonly string[]];

/** In the order in which they are done; minutes for one person: common practice, no source. */
const STEPS: readonly Step[] = [
  ["wasteEmpty", 10, "yard", ["wasteWater"]],
  ["cassetteClean", 15, "cleaner", ["cassetteToilet"]],
  ["freshFlush", 15, "yard", ["freshWater"]],
  ["strip", 10, "cleaner", []],
  ["dryClean", 25, "cleaner", []],
  ["wetClean", 35, "cleaner", []],
  ["kitchenCount", 10, "cleaner", ["cooking"]],
  ["appliances", 20, "yard", ["heating", "fridge", "cooking"]],
  ["alarmsTest", 5, "yard", ["alarms"]],
  ["gasCheck", 10, "yard", ["lpg"]],
  ["waterRefill", 10, "yard", ["freshWater"]],
  ["batteryRest", 5, "yard", ["leisureBattery"]],
  ["dampSpots", 10, "yard", []],
  ["tyresAndNuts", 10, "yard", ["tyres"]],
  ["fluids", 5, "yard", []],
  ["exteriorWash", 25, "cleaner", []],
  ["sealReady", 5, "yard", []],
];

const MENDING: Readonly<
  Record<Difference["kind"], readonly [code: string, minutes: number, skill: TurnaroundSkill] | null>
> = {
  mark: ["lookAtMark", 15, "technician"],
  count: ["replaceKit", 5, "yard"],
  look: ["lookAgain", 10, "technician"],
  reading: null,
};

/** What came back short is filled up before the next hire. */
const REFILLS: Readonly<Record<string, readonly [code: string, minutes: number]>> = {
  fuel: ["refillFuel", 20],
  lpg: ["refillGas", 15],
  def: ["refillDef", 10],
};

/** What the desk decided that a mark or a thing wants; without a decision somebody looks at it first. */
export const MENDINGS = ["repair", "orderPart", "nothing"] as const;
export type Mending = (typeof MENDINGS)[number];

const DECIDED: Readonly<
  Record<Mending, readonly [code: string, minutes: number, skill: TurnaroundSkill] | null>
> = {
  repair: ["repair", 60, "technician"],
  orderPart: ["orderPart", 10, "technician"],
  nothing: null,
};

/** What each job of a turnaround takes where the depot says nothing else: minutes for one person, in the order in which they are done; common practice, no source. */
export const USUAL_JOB_MINUTES: Readonly<Record<string, number>> = Object.fromEntries([
  ...STEPS.map(([code, minutes]) => [code, minutes] as const),
  ...Object.values(REFILLS),
  ...[...Object.values(MENDING), ...Object.values(DECIDED)].flatMap((how) =>
    how === null ? [] : [[how[0], how[1]] as const],
  ),
]);

function howToMend(difference: Difference, decided: Mending | undefined) {
  if (decided !== undefined) return DECIDED[decided];
  if (difference.kind !== "reading") return MENDING[difference.kind];
  const refill = difference.change.value < 0 ? REFILLS[difference.charge ?? ""] : undefined;
  return refill === undefined ? null : ([...refill, "yard"] as const);
}

/**
 * What has to be done between a return and the next hire: the usual order for what this vehicle is fitted
 * with, and one job for each difference that the return showed. The vehicle is ready when all are done; the
 * seal comes last. `own`: minutes that the depot has entered, by the code of a job; the usual ones hold for the rest.
 */
export function composeTurnaround(
  vehicle: VehicleDescription,
  differences: readonly Difference[],
  decided: Readonly<Record<string, Mending | undefined>> = {},
  own: Readonly<Record<string, number>> = {},
): readonly TurnaroundJob[] {
  const fitted = new Set<string>(vehicle.systems.map(({ kind }) => kind));
  const steps = STEPS.filter(([, , , fits]) => fits.length === 0 || fits.some((kind) => fitted.has(kind)));
  const usual = steps.map(([code, minutes, skill], k): TurnaroundJob => {
    const before = steps[k - 1]?.[0];
    return { id: code, code, about: null, minutes, skill, after: before === undefined ? [] : [before] };
  });
  const mending = differences.flatMap((difference): TurnaroundJob[] => {
    const how = howToMend(difference, decided[difference.id]);
    if (how === null) return [];
    const [code, minutes, skill] = how;
    return [{ id: `${code}.${difference.id}`, code, about: difference.id, minutes, skill, after: [] }];
  });
  const seal = usual.at(-1);
  const rest = seal === undefined ? usual : usual.slice(0, -1);
  const last =
    seal === undefined ? [] : [{ ...seal, after: [...seal.after, ...mending.map(({ id }) => id)] }];
  return [...mending, ...rest, ...last].map((job) => ({ ...job, minutes: own[job.code] ?? job.minutes }));
}
