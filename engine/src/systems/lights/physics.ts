import { fillAll } from "../../stores/fill-all.ts";
import type { PhysicsContext, Running, SystemPhysics } from "../contract.ts";
import { createMode, createRunning, habitFactor, shareOfDay, type Window } from "../running.ts";
import type { LightsSpec } from "./spec.ts";

/** share of all lights that burn while people are awake in the dark: common practice, no source */
const LIT_SHARE = 0.5;
/** outside irradiance under which lights are on, W/m² */
const DARK_WM2 = 20;
const AWAKE: readonly Window[] = [{ fromH: 6.5, toH: 23, share: 16.5 }];
/** `otherW` is the mean over an evening of five hours */
const EVENING: readonly Window[] = [{ fromH: 18, toH: 23, share: 5 }];
/** control panel and alarms, W, day and night: from memory */
const PANEL_W = 1;

function startLights(spec: LightsSpec, { n, dtH, people }: PhysicsContext): Running {
  const mode = createMode("on", n, ["battery12"], ["cabinHeat"]);
  const need = mode.needs[0]!;
  const give = mode.gives[0]!;
  const factor = habitFactor(n, "lights", 0.2, 0.15);
  return createRunning(n, [mode], (view, demand) => {
    fillAll(demand, 1);
    const here = view.driving ? 0 : view.people / people;
    const litH = shareOfDay(AWAKE, view.clockH, dtH) * here;
    const otherWh = spec.otherW * shareOfDay(EVENING, view.clockH, dtH) * here;
    const habit = factor(view);
    const { irradianceWm2 } = view;
    const darkWh = spec.ledW * LIT_SHARE * litH;
    for (let i = 0; i < n; i++) {
      const lit = irradianceWm2[i]! < DARK_WM2 ? darkWh : 0;
      const energy = PANEL_W * dtH + (lit + otherWh) * habit[i]!;
      need[i] = energy;
      give[i] = energy;
    }
    return true;
  });
}

/** Lights in the dark while people are awake and aboard, small consumers in the evening, the panel always. */
export const physics: SystemPhysics<LightsSpec> = {
  stores: () => [],
  start: (spec, context) => [startLights(spec, context)],
};
