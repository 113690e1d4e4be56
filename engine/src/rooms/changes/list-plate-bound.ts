import { figure } from "../../base/figure.ts";
import type { IsoDate, IsoLocal } from "../../base/time.ts";
import { addDays } from "../../base/years.ts";
import { ruleAt } from "../../rules/rule-at.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import type { AbroadTask, Crossing } from "../rules/abroad-types.ts";
import type { ChangeLine, ChangeTask } from "./types.ts";

export interface PlateBoundInput {
  readonly oldVehicle: VehicleDescription;
  readonly newVehicle: VehicleDescription;
  readonly today: IsoDate;
  /** civil time at which the keys of the new vehicle are to go */
  readonly keysAt: string;
  /** what was signed for the vehicle before: agreement, briefing, condition */
  readonly signed: readonly string[];
  readonly walkedOut: boolean;
  /** the vehicle-on-hire certificate, or the original document, of the vehicle before is with the hire */
  readonly hasCertificate: boolean;
  /** first day abroad; null for a hire that stays at home */
  readonly firstAbroad: IsoDate | null;
  /** what was got or is to be got for the vehicle before, and for the new one */
  readonly oldTasks: readonly AbroadTask[];
  readonly newTasks: readonly AbroadTask[];
  /** `leavesAt`: civil time of the depot, where the crossing's own time is known */
  readonly crossings: readonly (Crossing & { readonly leavesAt?: IsoLocal })[];
  readonly kitAboard: number;
  readonly children: number;
  readonly hasLoadPlan: boolean;
  readonly hasTrip: boolean;
  /** findings that were let pass for the vehicle before */
  readonly overrides: number;
}

/** Things that travel with the people and are not written on a plate. */
const isThing = (task: AbroadTask): boolean => task.ruleId.startsWith("kit.");
const line = (code: string, facts: ChangeLine["facts"] = {}): ChangeLine => ({ code, facts });

/**
 * Everything that names the plate or the size of the vehicle before: what becomes void, and what has to be got
 * for the new one, each with the last day on which it can still be had.
 */
export function listPlateBound(input: PlateBoundInput): {
  readonly voided: readonly ChangeLine[];
  readonly toDo: readonly ChangeTask[];
} {
  const toDo = [...tasksOf(input)].map((task) => withCrossing(task, input));
  return { voided: [...voidedOf(input)], toDo };
}

/** By its usual lead time something is there at the end of that day: a crossing that leaves earlier is missed. */
function withCrossing(task: ChangeTask, { crossings, today }: PlateBoundInput): ChangeTask {
  const { leadDays } = task.facts;
  const next = crossings.map(leaves).sort()[0];
  if (next === undefined || typeof leadDays !== "number" || leadDays === 0) return task;
  return addDays(today, leadDays) >= next.slice(0, 10) ? { ...task, misses: next } : task;
}

const leaves = ({ on, leavesAt }: PlateBoundInput["crossings"][number]): string => leavesAt ?? on;

function* voidedOf(input: PlateBoundInput): Iterable<ChangeLine> {
  const plate = { registration: input.oldVehicle.registration };
  if (input.signed.includes("agreement")) {
    yield line("agreement", plate);
    yield line("liability", plate);
  }
  if (input.walkedOut) yield line("walkRound", plate);
  if (input.hasCertificate) yield line("certificate", plate);
  for (const task of input.oldTasks)
    if (task.done && !isThing(task)) yield line("country", { ...itemOf(task), ...plate });
  if (input.kitAboard > 0) yield line("kitAboard", { count: input.kitAboard, ...plate });
  if (input.overrides > 0) yield line("overrides", { count: input.overrides });
  if (input.hasTrip) yield line("forecast");
}

const itemOf = ({ country, ruleId }: AbroadTask) => ({ country, item: ruleId.replaceAll(".", "_") });

function* tasksOf(input: PlateBoundInput): Iterable<ChangeTask> {
  const { today, keysAt, newVehicle } = input;
  const plate = { registration: newVehicle.registration };
  const task = (code: string, by: string, facts: ChangeLine["facts"] = {}): ChangeTask => ({
    code,
    facts,
    by,
    late: by.slice(0, 10) < today,
  });
  yield task("agreement", keysAt, plate);
  yield task("insurer", keysAt, plate);
  yield task("walkRound", keysAt, plate);
  if (input.firstAbroad !== null) {
    const lead = ruleAt("paper.gb.foreignDays", input.firstAbroad)?.leadDays ?? 0;
    yield task("certificate", addDays(input.firstAbroad, -lead), { leadDays: lead, ...plate });
  }
  for (const each of input.newTasks) {
    // what the route keeps out of is nothing to get for the new plate either
    if (isThing(each) || each.avoided) continue;
    yield {
      ...task("country", each.doBy, { ...itemOf(each), leadDays: each.leadDays, ...plate }),
      late: each.doBy < today,
    };
  }
  for (const crossing of input.crossings) {
    const { kind, on, at, zone } = crossing;
    const port = at === undefined ? "none" : zone === undefined ? at : `${at} ${zone}`;
    yield task("crossing", leaves(crossing), { kind, on, port, ...plate, ...sizesOf(input) });
  }
  if (input.children > 0) yield task("childSeats", keysAt, { count: input.children });
  if (input.kitAboard > 0) yield task("kitAboard", keysAt, { count: input.kitAboard });
  if (input.hasLoadPlan) yield task("load", keysAt);
}

function sizesOf({ oldVehicle, newVehicle }: PlateBoundInput) {
  const metres = (value: number) => figure(value, "m", "-", {}, "declared");
  return {
    oldLength: metres(oldVehicle.dimensions.lengthM),
    newLength: metres(newVehicle.dimensions.lengthM),
    oldHeight: metres(oldVehicle.dimensions.heightM),
    newHeight: metres(newVehicle.dimensions.heightM),
  };
}
