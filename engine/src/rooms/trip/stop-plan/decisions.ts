import type { StoreId } from "../../../stores/stores.ts";
import { isOffered } from "../do-acts.ts";
import type { TripPlan } from "../plan-trip.ts";
import { ACT_EFFORT, COOL_NIGHT, FULL_GAS, OTHER_PITCH, POST_PER_NIGHT } from "./prices.ts";
import type { Act, PitchNeed } from "./types.ts";

/** Decisions of one group touch the same stores; groups are searched side by side. */
export const GROUPS = ["energy", "water", "waste", "cassette", "def"] as const;
export type Group = (typeof GROUPS)[number];

export type Decision = {
  readonly group: Group;
  readonly effort: number;
} & (
  | { readonly kind: "act"; readonly stop: number; readonly act: Act; readonly missing: PitchNeed | null }
  | { readonly kind: "coolNight"; readonly stop: number; readonly heater: string }
  | { readonly kind: "fullGas" }
);

const GROUP_OF_ACT: Readonly<Record<Act, Group | null>> = {
  plugIn: "energy",
  exchangeLpg: "energy",
  fillWater: "water",
  emptyWaste: "waste",
  emptyCassette: "cassette",
  fillDef: "def",
  // fuel is bought on the way, as the drive needs it
  fillFuel: null,
};
const NEED_OF_ACT: Readonly<Partial<Record<Act, PitchNeed>>> = {
  plugIn: "post",
  exchangeLpg: "lpgExchange",
  fillWater: "freshWater",
  emptyWaste: "wasteDrain",
  emptyCassette: "cassettePoint",
};
const STORE_OF_ACT: Readonly<Partial<Record<Act, StoreId>>> = {
  exchangeLpg: "lpg",
  fillWater: "freshWater",
  emptyWaste: "wasteWater",
  emptyCassette: "cassette",
  fillDef: "def",
};

/** Whether a vehicle has use for an act: what it empties or fills is aboard, what it plugs in has an inlet. */
export function hasUseFor({ systems, tracked }: Pick<TripPlan, "systems" | "tracked">, act: Act): boolean {
  if (act === "plugIn") return systems.some(({ kind }) => kind === "hookUp");
  const store = STORE_OF_ACT[act];
  return store === undefined || tracked.includes(store);
}

/** Which group pays for trouble of a store. */
export function groupOf(store: StoreId): Group {
  switch (store) {
    case "freshWater":
      return "water";
    case "wasteWater":
      return "waste";
    case "cassette":
      return "cassette";
    case "def":
      return "def";
    default:
      return "energy";
  }
}

/**
 * Everything that may be decided: each act at each stop where the vehicle has use for it and the pitch offers it
 * (with `otherPitches`: at a price also where it does not), cooler nights, full cylinders at the depot.
 */
export function listDecisions(plan: TripPlan, otherPitches: boolean): readonly Decision[] {
  const { input, systems, timeline, tracked } = plan;
  const heater = systems.find(({ kind }) => kind === "heating");
  const decisions: Decision[] = [];
  if (tracked.includes("lpg") && (input.trip.departWith.lpg ?? 1) < 1)
    decisions.push({ kind: "fullGas", group: "energy", effort: FULL_GAS });
  input.trip.stops.forEach((stop, index) => {
    const nights = nightsAt(plan, index);
    for (const [act, group] of Object.entries(GROUP_OF_ACT) as [Act, Group | null][]) {
      if (group === null || !hasUseFor(plan, act)) continue;
      const offered = isOffered(stop, act);
      if (!offered && !otherPitches) continue;
      const effort =
        ACT_EFFORT[act] + (act === "plugIn" ? POST_PER_NIGHT * nights : 0) + (offered ? 0 : OTHER_PITCH);
      const missing = offered ? null : (NEED_OF_ACT[act] ?? null);
      decisions.push({ kind: "act", group, stop: index, act, missing, effort });
    }
    if (heater !== undefined && nights > 0 && timeline.steps > 0)
      decisions.push({
        kind: "coolNight",
        group: "energy",
        stop: index,
        heater: heater.id,
        effort: COOL_NIGHT * nights,
      });
  });
  return decisions;
}

function nightsAt({ timeline }: TripPlan, stop: number): number {
  const { day, stops } = timeline;
  const { arrive, leave } = stops[stop]!;
  const last = day.length - 1;
  return day[Math.min(leave, last)]! - day[Math.min(arrive, last)]!;
}
