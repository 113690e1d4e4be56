import { fillAll } from "../../stores/fill-all.ts";
import type { PhysicsContext, Running, SystemPhysics } from "../contract.ts";
import { createMode, createRunning } from "../running.ts";
import type { HookUpSpec } from "./spec.ts";

const POST_V = 230;
/** loop resistance of a flexible cord at 60 °C, mV per ampere and metre (BS 7671 table 4F3B), by area */
const LOOP_MV_A_M: readonly (readonly [areaMm2: number, mvAM: number])[] = [
  [1, 46],
  [1.25, 37],
  [1.5, 32],
  [2.5, 19],
  [4, 12],
  [6, 8],
];
/** what a lead left on its drum may carry, W: the label of a sample reel; no general rule was found */
const WOUND_W = 500;

/** Most power at the inlet, W: the lesser of post and inlet, less the drop in the lead; 500 W with the lead on its drum. */
export function inletPowerW(spec: HookUpSpec, postAmperes: number, leadOnDrum: boolean): number {
  const amperes = Math.min(postAmperes, spec.inletA);
  const loop = LOOP_MV_A_M.findLast(([area]) => area <= spec.leadAreaMm2) ?? LOOP_MV_A_M[0]!;
  const drop = (loop[1] * amperes * spec.leadLengthM) / 1000;
  const power = (POST_V - drop) * amperes;
  return leadOnDrum ? Math.min(power, WOUND_W) : power;
}

function startHookUp(spec: HookUpSpec, { n, dtH, setting }: PhysicsContext): Running {
  const mode = createMode("post", n, [], ["mains230"]);
  return createRunning(n, [mode], (view, demand) => {
    if (view.postAmperes <= 0) return false;
    const power = inletPowerW(spec, view.postAmperes, setting.leadOnDrum === true);
    fillAll(demand, 1);
    fillAll(mode.gives[0]!, power * dtH);
    return power > 0;
  });
}

/** The post fills the 230 V supply of each step; what nobody takes is gone. Settings of the hire: `leadOnDrum` (false). */
export const physics: SystemPhysics<HookUpSpec> = {
  stores: () => [],
  start: (spec, context) => [startHookUp(spec, context)],
};
