import { fillAll } from "../../stores/fill-all.ts";
import type { PhysicsContext, Running, SystemPhysics } from "../contract.ts";
import { createMode, createRunning, habitFactor } from "../running.ts";
import type { SolarSpec } from "./spec.ts";

/** shade, dirt and standing under trees differ between trips and days: common practice, no source */
const SPREAD_TRIP = 0.1;
const SPREAD_DAY = 0.15;

/**
 * Output of the panel lying flat, W: Pdc = G/1000 · P · (1 + γ (Tc − 25)) (PVWatts, NREL TP-6A20-62641) with
 * the cell at Tc = Ta + (NOCT − 20) G / 800 (Ross), times the efficiency of controller and wiring.
 */
export function panelW(spec: SolarSpec, irradianceWm2: number, airC: number): number {
  const cellC = airC + ((spec.noctC - 20) * irradianceWm2) / 800;
  const power = (irradianceWm2 / 1000) * spec.peakW * (1 + spec.perKelvin * (cellC - 25)) * spec.efficiency;
  return Math.max(power, 0);
}

function startSolar(spec: SolarSpec, { n, dtH }: PhysicsContext): Running {
  const mode = createMode("sun", n, [], ["battery12"]);
  const factor = habitFactor(n, "shade", SPREAD_TRIP, SPREAD_DAY);
  const gives = mode.gives[0]!;
  return createRunning(n, [mode], (view, demand) => {
    const { irradianceWm2, outsideC } = view;
    const shade = factor(view);
    let isSunny = false;
    for (let i = 0; i < n; i++) {
      const g = irradianceWm2[i]!;
      if (g > 0) isSunny = true;
      gives[i] = g > 0 ? panelW(spec, g, outsideC[i]!) * Math.min(shade[i]!, 1.15) * dtH : 0;
    }
    if (isSunny) fillAll(demand, 1);
    return isSunny;
  });
}

export const physics: SystemPhysics<SolarSpec> = {
  stores: () => [],
  start: (spec, context) => [startSolar(spec, context)],
};
