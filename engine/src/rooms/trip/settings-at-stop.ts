import { type Figure, figure } from "../../base/figure.ts";
import { COLD_OUTSIDE_C } from "../../systems/running.ts";
import type { FittedPhysics } from "./fit-systems.ts";
import type { TripPlan } from "./plan-trip.ts";
import type { PostForecast } from "./posts/types.ts";
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

/** The systems of a vehicle that people set by hand, with what each runs on off the post. */
export function setByHand(
  systems: TripPlan["systems"],
): readonly { readonly system: FittedPhysics; readonly from: From }[] {
  return Object.entries(OFF_THE_POST).flatMap(([kind, off]) =>
    systems
      .filter((system) => system.kind === kind)
      .map((system) => ({ system, from: off(system.spec, systems) })),
  );
}

/**
 * How to set what is set by hand at one stop: the heater where a night is cold enough for it, the fridge where it can
 * run on more than one thing. The post feeds what fits beside the rest, as `posts` of the forecast says.
 */
export function settingsAtStop(
  { input }: TripPlan,
  { stop, coldestNightC }: Pick<StopForecast, "stop" | "coldestNightC">,
  posts: readonly PostForecast[],
  byHand: ReturnType<typeof setByHand>,
): StopSetting[] {
  const post = posts.find((one) => one.stop === stop);
  const here = input.trip.stops[stop]!.settings;
  const isCold = coldestNightC !== null && coldestNightC.p10 < COLD_OUTSIDE_C;
  return byHand.flatMap(({ system, from: off }): StopSetting[] => {
    if (system.kind === "heating" ? !isCold : system.spec.type !== "absorption") return [];
    const kept = post?.kept.find((load) => load.system === system.id && load.stage.value > 0) ?? null;
    const set = here?.[system.id] ?? input.trip.settings[system.id];
    const isPart = kept !== null && kept.stage.value < kept.full.value && (off === "gas" || off === "fuel");
    return [
      {
        system: system.id,
        kind: system.kind,
        from: kept === null ? off : "mains",
        stage: kept?.stage ?? null,
        rest: isPart ? off : null,
        dayC: celsius(set?.dayC),
        nightC: celsius(set?.nightC),
      },
    ];
  });
}

const celsius = (value: unknown): Figure | null =>
  typeof value === "number" ? figure(value, "°C", "-", {}, "declared") : null;
