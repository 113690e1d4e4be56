import type { MainsUse, PhysicsContext, Running, Setting, SystemPhysics } from "../contract.ts";
import { createMode, createRunning, fitsPost, numberSetting } from "../running.ts";
import type { AirConditioningSpec } from "./spec.ts";

/** what hirers leave it at: common practice, no source */
const USUAL_C = 26;
/** far above any cabin, so that the heat to get there is never cut off at nothing, K */
const FAR_K = 60;

/**
 * Heat is taken out of the cabin and power out of the post, in proportion: a need of two stores. It runs while
 * parked at a post that carries it, until the cabin is at its setting (`coolC`, °C, or `source: "off"`). Its power and what it
 * takes out are held constant; that both fall and rise with the outside air is left out, as is the moisture.
 */
function startCooling(spec: AirConditioningSpec, { n, dtH, setting, post }: PhysicsContext): Running {
  const mode = createMode("cool", n, ["mains230", "cabinHeat"], []);
  mode.needs[0]!.fill(spec.mainsW * dtH);
  mode.needs[1]!.fill(spec.coolingW * dtH);
  const setC = numberSetting(setting.coolC, USUAL_C);
  const [near, far] = [new Float64Array(n).fill(setC + FAR_K), new Float64Array(n).fill(setC + 2 * FAR_K)];
  const [heatNear, heatFar] = [new Float64Array(n), new Float64Array(n)];
  return createRunning(n, [mode], (view, demand) => {
    if (setting.source === "off" || view.driving || view.postAmperes <= 0) return false;
    if (!fitsPost(post, spec.mainsW, view.postAmperes, false)) return false;
    // the heat to reach a temperature rises in a straight line with it: below nothing it is heat to take out
    view.heatToReach(near, heatNear);
    view.heatToReach(far, heatFar);
    for (let i = 0; i < n; i++) {
      const takeOutWh = heatFar[i]! - 2 * heatNear[i]!;
      demand[i] = Math.min(Math.max(takeOutWh / (spec.coolingW * dtH), 0), 1);
    }
    return true;
  });
}

function mainsOf({ mainsW, startA }: AirConditioningSpec, setting: Setting): MainsUse {
  if (setting.source === "off") return { loads: [] };
  return { loads: [{ stagesW: [mainsW], lasts: "hours", instead: "waits", wanted: "hot", startA }] };
}

export const physics: SystemPhysics<AirConditioningSpec> = {
  stores: () => [],
  start: (spec, context) => [startCooling(spec, context)],
  mains: mainsOf,
};
