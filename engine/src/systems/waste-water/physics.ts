import type { MainsUse, PhysicsContext, Running, Setting, SystemPhysics } from "../contract.ts";
import { readTank } from "../read-level.ts";
import { createMode, createRunning, fitsPost } from "../running.ts";
import type { WasteWaterSpec } from "./spec.ts";

/** The heater of the tank comes on below this outside temperature and runs without a break at the other: from memory. */
const ON_BELOW_C = 5;
const FULL_AT_C = -20;

/** Share of the time that the tank's heater runs at an outside temperature, 0 to 1. */
export function heaterDuty(outsideC: number): number {
  return Math.min(1, Math.max(0, (ON_BELOW_C - outsideC) / (ON_BELOW_C - FULL_AT_C)));
}

function startHeater(spec: WasteWaterSpec, { n, dtH, setting, post }: PhysicsContext): Running {
  const store = spec.heatedFrom === "mains" ? "mains230" : "battery12";
  const mode = createMode("frost", n, [store], []);
  mode.needs[0]!.fill(spec.heaterW * dtH);
  const on = setting.on !== false;
  return createRunning(n, [mode], (view, demand) => {
    if (!on) return false;
    if (store === "mains230" && !fitsPost(post, spec.heaterW, view.postAmperes, true)) return false;
    const { outsideC } = view;
    for (let i = 0; i < n; i++) demand[i] = heaterDuty(outsideC[i]!);
    return true;
  });
}

function mainsOf({ heated, heaterW, heatedFrom }: WasteWaterSpec, setting: Setting): MainsUse {
  if (!heated || heaterW === 0 || heatedFrom !== "mains" || setting.on === false) return { loads: [] };
  return { loads: [{ stagesW: [heaterW], lasts: "hours", instead: "waits", wanted: "cold" }] };
}

/** The waste tank holds what the taps give; a heated one draws in the cold. Settings of the hire: `on` (true), the tank's heater. */
export const physics: SystemPhysics<WasteWaterSpec> = {
  stores: (spec) => [{ store: "wasteWater", capacity: spec.litres, initial: 0 }],
  mains: mainsOf,
  start: (spec, context) => (spec.heated && spec.heaterW > 0 ? [startHeater(spec, context)] : []),
  read: (spec, value, unit, sd) => readTank(spec.litres, "L", value, unit, sd),
};
