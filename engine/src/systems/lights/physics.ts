import { fillAll } from "../../stores/fill-all.ts";
import type { PhysicsContext, Running, SystemPhysics, Window } from "../contract.ts";
import { createMode, createRunning, habitFactor, shareOfDay } from "../running.ts";
import type { LightsSpec } from "./spec.ts";

/** share of all lights that burn while people are awake in the dark: common practice, no source */
const LIT_SHARE = 0.5;
/** outside irradiance under which all lights that burn are on, and above which none, W/m²: one by one, common practice, no source */
const DARK_WM2 = 10;
const BRIGHT_WM2 = 30;
const AWAKE: readonly Window[] = [{ fromH: 6.5, toH: 23, share: 16.5 }];
/** `otherW` is the mean over an evening of five hours */
const EVENING: readonly Window[] = [{ fromH: 18, toH: 23, share: 5 }];
/** control panel and alarms, W, day and night: from memory */
const PANEL_W = 1;

function startLights(spec: LightsSpec, { n, dtH, people }: PhysicsContext): Running {
  const mode = createMode("on", n, ["battery12"], ["cabinHeat"]);
  const need = mode.needs[0]!;
  const give = mode.gives[0]!;
  const perWm2 = 1 / (BRIGHT_WM2 - DARK_WM2);
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
      const lit = Math.min(1, Math.max(0, (BRIGHT_WM2 - irradianceWm2[i]!) * perWm2));
      const energy = PANEL_W * dtH + (darkWh * lit + otherWh) * habit[i]!;
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
