import { fillAll } from "../../stores/fill-all.ts";
import type { MainsUse, PhysicsContext, Running, Setting, SystemPhysics } from "../contract.ts";
import { createMode, createRunning, fitsPost } from "../running.ts";
import type { ChargingSpec } from "./spec.ts";

/** voltage while charging, V; efficiency of charger and converter: from memory */
const CHARGE_V = 14;
const CHARGER_EFFICIENCY = 0.88;
const CONVERTER_EFFICIENCY = 0.9;

function startCharging(spec: ChargingSpec, { n, dtH, setting, post }: PhysicsContext): Running[] {
  const mains = createMode("mains", n, ["mains230"], ["battery12"]);
  mains.gives[0]!.fill(spec.mainsChargerA * CHARGE_V * dtH);
  mains.needs[0]!.fill(mainsW(spec) * dtH);
  const engine = createMode("engine", n, ["engine12"], ["battery12"]);
  const efficiency = spec.drivingCharge === "dcdc" ? CONVERTER_EFFICIENCY : 1;
  engine.gives[0]!.fill(spec.drivingChargeA * CHARGE_V * dtH);
  engine.needs[0]!.fill((spec.drivingChargeA * CHARGE_V * dtH) / efficiency);
  const on = setting.on !== false;
  const drives = on && spec.drivingCharge !== "none" && spec.drivingChargeA > 0;
  return [
    createRunning(
      n,
      [mains],
      (view, demand) => {
        if (!on || view.postAmperes <= 0 || spec.mainsChargerA <= 0) return false;
        if (!fitsPost(post, mainsW(spec), view.postAmperes, false)) return false;
        fillAll(demand, 1);
        return true;
      },
      { only: "atPost" },
    ),
    createRunning(
      n,
      [engine],
      (view, demand) => {
        if (!drives || !view.driving) return false;
        fillAll(demand, 1);
        return true;
      },
      { only: "driving" },
    ),
  ];
}

/** What the charger draws from the post at its full current, W. */
const mainsW = ({ mainsChargerA }: ChargingSpec) => (mainsChargerA * CHARGE_V) / CHARGER_EFFICIENCY;

function mainsOf(spec: ChargingSpec, setting: Setting): MainsUse {
  if (setting.on === false || spec.mainsChargerA === 0) return { loads: [] };
  return { loads: [{ stagesW: [mainsW(spec)], lasts: "hours", instead: "waits", wanted: "always" }] };
}

/** The charger on 230 V, where the post carries it at its full current, and the charge from the running engine. How much the battery takes is the battery's own limit. Settings of the hire: `on` (true). */
export const physics: SystemPhysics<ChargingSpec> = {
  stores: () => [],
  start: startCharging,
  mains: mainsOf,
};
