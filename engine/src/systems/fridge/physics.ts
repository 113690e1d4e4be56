import { fillAll } from "../../stores/fill-all.ts";
import type { MainsUse, Mode, PhysicsContext, Running, Setting, SystemPhysics } from "../contract.ts";
import { createMode, createRunning, fitsPost, habitFactor } from "../running.ts";
import type { FridgeSpec } from "./spec.ts";

/** share of the time the cooling runs in a cabin of 25 °C, and the least: from memory */
const DUTY_AT_25C = { absorption: 0.65, compressor: 0.35 } as const;
const LEAST_DUTY = 0.08;
const INSIDE_C = 5;
const SPREAD_TRIP = 0.12;
const SPREAD_DAY = 0.08;

/** Settings of the hire: `source` (`auto`, `mains`, `engine`, `gas`, `off`). */
function sourceOf({ setting }: { readonly setting: Setting }): string {
  return typeof setting.source === "string" ? setting.source : "auto";
}

/** The fridge works against the cabin: the running share rises in proportion to cabin less inside temperature. */
function startFridge(spec: FridgeSpec, context: PhysicsContext): Running {
  const { n, dtH, post } = context;
  const source = sourceOf(context);
  const modes = spec.type === "absorption" ? absorptionModes(spec, n, dtH) : [compressorMode(spec, n, dtH)];
  const perKelvin = DUTY_AT_25C[spec.type] / (25 - INSIDE_C);
  const factor = habitFactor(n, "fridge", SPREAD_TRIP, SPREAD_DAY);
  let wasDriving: boolean | null = null;
  let filledAt = Number.NaN;
  return createRunning(n, modes, (view, demand) => {
    if (source === "off") return false;
    const habit = factor(view);
    for (let i = 0; i < n; i++) {
      const duty = perKelvin * (view.cabinC[i]! - INSIDE_C) * habit[i]!;
      demand[i] = duty < LEAST_DUTY ? LEAST_DUTY : Math.min(duty, 1);
    }
    if (spec.type === "absorption" && (view.driving !== wasDriving || view.postAmperes !== filledAt)) {
      wasDriving = view.driving;
      filledAt = view.postAmperes;
      setSources(modes, source, wasDriving, fitsPost(post, spec.mainsW, filledAt, false));
    }
    return true;
  });
}

function absorptionModes(spec: FridgeSpec, n: number, dtH: number) {
  const mains = createMode("mains", n, ["mains230"], []);
  const engine = createMode("engine", n, ["engine12"], []);
  const gas = createMode("gas", n, ["lpg"], []);
  mains.needs[0]!.fill(spec.mainsW * dtH);
  engine.needs[0]!.fill(spec.dcW * dtH);
  gas.needs[0]!.fill((spec.gasGramsPerHour / 1000) * dtH);
  return [mains, engine, gas];
}

function setSources(modes: readonly Mode[], source: string, driving: boolean, hasPost: boolean): void {
  const wanted = (id: string) => source === "auto" || source === id;
  fillAll(modes[0]!.limit, wanted("mains") && hasPost ? 1 : 0);
  fillAll(modes[1]!.limit, wanted("engine") && driving ? 1 : 0);
  fillAll(modes[2]!.limit, wanted("gas") && !driving ? 1 : 0);
}

function compressorMode(spec: FridgeSpec, n: number, dtH: number) {
  const mode = createMode("battery", n, ["battery12"], ["cabinHeat"]);
  mode.needs[0]!.fill(spec.dcW * dtH);
  mode.gives[0]!.fill(spec.dcW * dtH);
  return mode;
}

function mainsOf({ type, mainsW }: FridgeSpec, setting: Setting): MainsUse {
  const source = sourceOf({ setting });
  if (type !== "absorption" || mainsW === 0 || (source !== "auto" && source !== "mains"))
    return { loads: [] };
  return { loads: [{ stagesW: [mainsW], lasts: "hours", instead: "gas", wanted: "always" }] };
}

/** Absorption: 230 V where the post carries it, then 12 V with the engine running, then gas when parked. Compressor: always 12 V. */
export const physics: SystemPhysics<FridgeSpec> = {
  stores: () => [],
  start: (spec, context) => [startFridge(spec, context)],
  mains: mainsOf,
};
