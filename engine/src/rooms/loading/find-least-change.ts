import { axleLoads } from "../../formulas/mass.ts";
import type { LoadPlace } from "../situation.ts";
import { type ChangeModel, changeGroups } from "./change-groups.ts";
import { searchLeastChange } from "./least-change.ts";
import type { MassLine } from "./load-lines.ts";
import type { LeastChange, LoadChangeStep, LoadInput, LoadResult } from "./types.ts";

type Checked = Pick<LoadResult, "total" | "front" | "rear" | "tyres" | "places">;
type Loads = LeastChange["after"];
const OBJECTIVE = "leastTrouble";

/**
 * The least change that makes the load legal and keeps every place within its label: less water, fewer
 * cylinders, things that can stay behind, less luggage, things stowed further forward; or none. A person never
 * stays behind.
 */
export function findLeastChange(input: LoadInput, lines: readonly MassLine[], checked: Checked): LeastChange {
  const now: Loads = {
    totalKg: checked.total.load.value,
    frontKg: checked.front.load.value,
    rearKg: checked.rear.load.value,
  };
  const model: ChangeModel = { input, lines, limited: limitedPlaces(checked) };
  const excess = excesses(checked);
  const none = { objective: OBJECTIVE, trouble: 0, steps: [], after: now } as const;
  if (excess.every((over) => over <= 1e-9)) return { ...none, outcome: "notNeeded", complete: true };
  const { choice, complete } = searchLeastChange(excess, changeGroups(model));
  if (choice === null) return { ...none, outcome: "none", complete };
  const steps = inOrder(choice.acts);
  return {
    objective: OBJECTIVE,
    trouble: choice.trouble,
    outcome: "found",
    steps,
    after: after(input, lines, now, steps),
    complete,
  };
}

const limitedPlaces = ({ places }: Checked): readonly LoadPlace[] =>
  places.filter(({ limit }) => limit !== null).map(({ place }) => place);

/** By how much each load is over its limit, kg: total, front and rear (axle or tyres, the lesser), then the labels. */
function excesses({ total, front, rear, tyres, places }: Checked): readonly number[] {
  const least = (axle: "front" | "rear", limitKg: number) =>
    Math.min(limitKg, tyres?.[axle].limit.value ?? Infinity);
  return [
    total.load.value - total.limit.value,
    front.load.value - least("front", front.limit.value),
    rear.load.value - least("rear", rear.limit.value),
    ...places.flatMap(({ load, limit }) => (limit === null ? [] : [load.value - limit.value])),
  ];
}

const ORDER: readonly LoadChangeStep["kind"][] = [
  "leaveItem",
  "lessOfItem",
  "moveItem",
  "lessWater",
  "fewerCylinders",
];

const inOrder = (steps: readonly LoadChangeStep[]): LoadChangeStep[] =>
  [...steps].sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));

/** The loads once the steps are done, kg. */
function after(
  { vehicle, load }: LoadInput,
  lines: readonly MassLine[],
  now: Loads,
  steps: readonly LoadChangeStep[],
): Loads {
  const placeOf = (step: LoadChangeStep): number | null => {
    if (step.kind === "lessWater") return lines.find(({ kind }) => kind === "water")?.atM ?? null;
    if (step.kind === "fewerCylinders") return lines.find(({ kind }) => kind === "cylinder")?.atM ?? null;
    return lines.find(({ id }) => id === step.id)?.atM ?? null;
  };
  const masses = steps.flatMap((step) => {
    const atM = placeOf(step) ?? 0;
    if (step.kind !== "moveItem") return [{ massKg: -step.byKg, behindFrontAxleM: atM }];
    const massKg = load.items.find(({ id }) => `item.${id}` === step.id)?.massKg ?? 0;
    return [
      { massKg: -massKg, behindFrontAxleM: atM },
      { massKg, behindFrontAxleM: step.behindFrontAxleM },
    ];
  });
  const { frontKg, rearKg } = axleLoads(vehicle.dimensions.wheelbaseM, masses);
  return {
    totalKg: now.totalKg + frontKg + rearKg,
    frontKg: now.frontKg + frontKg,
    rearKg: now.rearKg + rearKg,
  };
}
