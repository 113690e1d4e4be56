import { specsOf } from "../../vehicle/specs-of.ts";
import { LOAD_DEFAULTS as D } from "./defaults.ts";
import { type Loads, type Removable, type Stepped, searchLeastChange } from "./least-change.ts";
import type { MassLine } from "./load-lines.ts";
import type { LeastChange, LoadChangeStep, LoadInput, LoadResult } from "./types.ts";

type Checked = Pick<LoadResult, "total" | "front" | "rear" | "tyres">;
const OBJECTIVE = "fewestThingsThenLeastKg";

/** The least change that makes the load legal: things that can come off, less water, fewer cylinders; or none. */
export function findLeastChange(input: LoadInput, lines: readonly MassLine[], checked: Checked): LeastChange {
  const loads: Loads = [checked.total.load.value, checked.front.load.value, checked.rear.load.value];
  const limits: Loads = [
    checked.total.limit.value,
    Math.min(checked.front.limit.value, checked.tyres?.front.limit.value ?? Infinity),
    Math.min(checked.rear.limit.value, checked.tyres?.rear.limit.value ?? Infinity),
  ];
  const excess: Loads = [loads[0] - limits[0], loads[1] - limits[1], loads[2] - limits[2]];
  if (excess.every((over) => over <= 1e-9)) {
    return { objective: OBJECTIVE, outcome: "notNeeded", steps: [], after: after(loads), complete: true };
  }
  const removables = [...things(lines), ...spareCylinders(input, lines)];
  const water = waterSteps(input, lines);
  const { choice, complete } = searchLeastChange(excess, removables, water);
  if (choice === null)
    return { objective: OBJECTIVE, outcome: "none", steps: [], after: after(loads), complete };
  const taken = removables.filter(({ id }) => choice.ids.includes(id)).map(({ takes }) => takes);
  const left = [...taken, scaled(water?.takes ?? [0, 0, 0], choice.amount)].reduce<Loads>(
    (rest, takes) => [rest[0] - takes[0], rest[1] - takes[1], rest[2] - takes[2]],
    loads,
  );
  return {
    objective: OBJECTIVE,
    outcome: "found",
    steps: stepsOf(input, lines, choice.ids, choice.amount),
    after: after(left),
    complete,
  };
}

const after = ([totalKg, frontKg, rearKg]: Loads) => ({ totalKg, frontKg, rearKg });
const scaled = (takes: Loads, by: number): Loads => [takes[0] * by, takes[1] * by, takes[2] * by];
const loadsOf = (line: MassLine): Loads => [line.massKg, line.frontKg, line.rearKg];

function things(lines: readonly MassLine[]): Removable[] {
  return lines
    .filter(({ removable, massKg }) => removable && massKg > 0)
    .map((line) => ({ id: line.id, takes: loadsOf(line) }));
}

/** Each exchange cylinder but the last may stay behind. */
function spareCylinders(input: LoadInput, lines: readonly MassLine[]): Removable[] {
  const lpg = specsOf(input.vehicle, "lpg")[0];
  const line = lines.find(({ kind }) => kind === "cylinder");
  if (lpg === undefined || line?.atM == null || lpg.arrangement !== "exchange") return [];
  const eachKg = lpg.kgEach + lpg.tareKgEach;
  const rearKg = (eachKg * line.atM) / input.vehicle.dimensions.wheelbaseM;
  const spare = Math.max(0, input.load.lpgCylinders - 1);
  return Array.from({ length: spare }, (_, k) => ({
    id: `cylinders.${k}`,
    takes: [eachKg, eachKg - rearKg, rearKg] as const,
  }));
}

function waterSteps(input: LoadInput, lines: readonly MassLine[]): Stepped | null {
  const line = lines.find(({ kind }) => kind === "water");
  const most = input.load.waterLitres - (input.leastWaterLitres ?? D.leastWaterLitres);
  if (line?.atM == null || most <= 0) return null;
  const steps = Array.from(
    { length: Math.floor(most / D.waterStepLitres) },
    (_, k) => (k + 1) * D.waterStepLitres,
  );
  const rear = (D.waterKgPerLitre * line.atM) / input.vehicle.dimensions.wheelbaseM;
  return {
    amounts: steps.at(-1) === most ? steps : [...steps, most],
    takes: [D.waterKgPerLitre, D.waterKgPerLitre - rear, rear],
  };
}

function stepsOf(
  input: LoadInput,
  lines: readonly MassLine[],
  ids: readonly string[],
  litres: number,
): LoadChangeStep[] {
  const left = lines
    .filter(({ id }) => ids.includes(id))
    .map((line): LoadChangeStep => ({ kind: "leaveItem", id: line.id, name: line.name, byKg: line.massKg }));
  const from = input.load.waterLitres;
  const water: LoadChangeStep[] =
    litres === 0
      ? []
      : [{ kind: "lessWater", fromLitres: from, toLitres: from - litres, byKg: litres * D.waterKgPerLitre }];
  const fewer = ids.filter((id) => id.startsWith("cylinders.")).length;
  const lpg = specsOf(input.vehicle, "lpg")[0];
  const have = input.load.lpgCylinders;
  const cylinders: LoadChangeStep[] =
    fewer === 0 || lpg === undefined
      ? []
      : [
          {
            kind: "fewerCylinders",
            from: have,
            to: have - fewer,
            byKg: fewer * (lpg.kgEach + lpg.tareKgEach),
          },
        ];
  return [...left, ...water, ...cylinders];
}
