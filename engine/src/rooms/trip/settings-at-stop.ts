import { type Figure, figure } from "../../base/figure.ts";
import { COLD_OUTSIDE_C } from "../../systems/running.ts";
import type { FittedPhysics } from "./fit-systems.ts";
import type { TripPlan } from "./plan-trip.ts";
import type { LoadKept, PostForecast } from "./posts/types.ts";
import type { StopForecast, StopSetting } from "./types.ts";

type From = StopSetting["from"];
type Source = { readonly [field: string]: string | number | boolean };

/** What a system that people set by hand runs on where no post feeds it. */
const OFF_THE_POST: Readonly<Record<string, (spec: Source, systems: TripPlan["systems"]) => From>> = {
  heating: ({ source }, systems) => {
    const name = String(source);
    if (name.startsWith("gas")) return "gas";
    if (name.startsWith("diesel")) return "fuel";
    return systems.some(({ kind, spec }) => kind === "inverter" && spec.runs === "everything")
      ? "inverter"
      : "none";
  },
  fridge: ({ type }) => (type === "absorption" ? "gas" : "battery"),
};

/**
 * How to set what is set by hand at one stop: the heater where a night is cold enough for it, the fridge where it can
 * run on more than one thing. The post feeds what fits beside the rest, as `posts` of the forecast says.
 */
export function settingsAtStop(
  { input, systems }: TripPlan,
  { stop, coldestNightC }: Pick<StopForecast, "stop" | "coldestNightC">,
  posts: readonly PostForecast[],
): StopSetting[] {
  const post = posts.find((one) => one.stop === stop);
  const set = { ...input.trip.settings, ...input.trip.stops[stop]!.settings };
  const isCold = coldestNightC !== null && coldestNightC.p10 < COLD_OUTSIDE_C;
  const inOrder = Object.entries(OFF_THE_POST).flatMap(([kind, off]) =>
    systems.filter((system) => system.kind === kind).map((system) => ({ system, off })),
  );
  return inOrder.flatMap(({ system, off }): StopSetting[] => {
    if (system.kind === "heating" ? !isCold : system.spec.type !== "absorption") return [];
    const kept = post?.kept.find((load) => load.system === system.id && load.stage.value > 0) ?? null;
    const degrees = (name: "dayC" | "nightC") => celsius(set[system.id]?.[name]);
    return [
      {
        ...onWhat(system, kept, off(system.spec, systems)),
        dayC: degrees("dayC"),
        nightC: degrees("nightC"),
      },
    ];
  });
}

function onWhat({ id, kind }: FittedPhysics, kept: LoadKept | null, off: From) {
  const name = { system: id, kind };
  if (kept === null) return { ...name, from: off, stage: null, rest: null };
  const isPart = kept.stage.value < kept.full.value && (off === "gas" || off === "fuel");
  return { ...name, from: "mains" as const, stage: kept.stage, rest: isPart ? off : null };
}

const celsius = (value: unknown): Figure | null =>
  typeof value === "number" ? figure(value, "°C", "-", {}, "declared") : null;
