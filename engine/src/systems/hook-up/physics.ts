import { fillAll } from "../../stores/fill-all.ts";
import type { MainsUse, PhysicsContext, Running, Setting, SystemPhysics } from "../contract.ts";
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

/** Voltage lost in the lead at a current, V; for an area between the sizes of the table the next smaller counts. */
function leadDropV({ leadAreaMm2, leadLengthM }: HookUpSpec, amperes: number): number {
  const loop = LOOP_MV_A_M.findLast(([area]) => area <= leadAreaMm2) ?? LOOP_MV_A_M[0]!;
  return (loop[1] * amperes * leadLengthM) / 1000;
}

/** Most power at the inlet, W: the lesser of post and inlet, less the drop in the lead; 500 W with the lead on its drum. */
export function inletPowerW(spec: HookUpSpec, postAmperes: number, leadOnDrum: boolean): number {
  const amperes = Math.min(postAmperes, spec.inletA);
  const power = (POST_V - leadDropV(spec, amperes)) * amperes;
  return leadOnDrum ? Math.min(power, WOUND_W) : power;
}

function startHookUp(spec: HookUpSpec, { n, dtH, setting }: PhysicsContext): Running {
  const mode = createMode("post", n, [], ["mains230"]);
  let filledFor = 0;
  let power = 0;
  return createRunning(
    n,
    [mode],
    (view, demand) => {
      const { postAmperes } = view;
      if (postAmperes <= 0) return false;
      if (postAmperes !== filledFor) {
        filledFor = postAmperes;
        power = inletPowerW(spec, postAmperes, setting.leadOnDrum === true);
        fillAll(mode.gives[0]!, power * dtH);
      }
      fillAll(demand, 1);
      return power > 0;
    },
    { only: "atPost" },
  );
}

function mainsOf(spec: HookUpSpec, setting: Setting): MainsUse {
  const isOnDrum = setting.leadOnDrum === true;
  const { inletA, leadLengthM, leadAreaMm2 } = spec;
  return {
    loads: [],
    inlet: {
      maxA: inletA,
      leadLengthM,
      leadAreaMm2,
      isOnDrum,
      dropV: (amperes) => leadDropV(spec, amperes),
      powerW: (postAmperes) => inletPowerW(spec, postAmperes, isOnDrum),
    },
  };
}

/** The post fills the 230 V supply of each step; what nobody takes is gone. Settings of the hire: `leadOnDrum` (false). */
export const physics: SystemPhysics<HookUpSpec> = {
  stores: () => [],
  start: (spec, context) => [startHookUp(spec, context)],
  mains: mainsOf,
};
