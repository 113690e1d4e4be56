import type { PhysicsContext, Running, StepView } from "../contract.ts";
import { createMode, createRunning } from "../running.ts";
import type { HotWaterSpec } from "./spec.ts";

/** heat capacity of water, Wh per litre and kelvin (4.186 kJ/kgK) */
export const WATER_WH_L_K = 1.163;
/** temperature of the water that flows in, °C: common practice, no source */
export const COLD_C = 10;
/** it can be shut again, by hand, once it is this warm around it, °C: from memory, 7 to 8 */
const SHUTS_ABOVE_C = 8;
/** with less heat than this share of water as it flows in, there is no water in the heater: it opens before any gets so cold */
const EMPTY_SHARE = 0.2;
/** of the pump, Wh for each litre: 45 W at 7 L/min (practice) */
const PUMP_WH_L = 0.107;
/** hour of the day by which a pump that was left on has emptied the tank, and hours in which people shut the valve and fill up the heater: practice */
const FOUND_AT_H = 7;
const SHUT_AT_H = [9, 18] as const;

/** Whether the heater has been emptied, by the heat in it, Wh. */
export function isEmptied({ frostValveC, litres }: HotWaterSpec, heatWh: number): boolean {
  return frostValveC > 0 && heatWh < EMPTY_SHARE * COLD_C * WATER_WH_L_K * litres;
}

/** Whether the valve opens: cold around it. On the road the cab's own heater keeps the living part from it. */
export function opens({ frostValveC }: HotWaterSpec, { driving }: StepView, cabinC: number): boolean {
  return !driving && cabinC < frostValveC;
}

const isStepOf = ({ clockH, dtH }: StepView, hour: number) => Math.abs(clockH - hour - 1e-9) <= dtH / 2;

/**
 * What an open frost valve lets out beside the heater's own water: with the pump left on, the tank (setting
 * `pumpOffAtNight`, false). It is booked in the morning when it is found, so that the hour at which the van grew
 * cold, and with it the length of a step, does not matter. The pump needs the battery: where that is empty the
 * tank keeps its water.
 */
function startDrain(spec: HotWaterSpec, { n, setting }: PhysicsContext): Running {
  const mode = createMode("frostValve", n, ["freshWater", "battery12"], []);
  const isPumpOn = setting.pumpOffAtNight !== true;
  return createRunning(n, [mode], (view, demand) => {
    if (!isPumpOn || view.driving || !isStepOf(view, FOUND_AT_H)) return false;
    const heat = view.level("hotWaterHeat");
    const level = view.level("freshWater");
    for (let i = 0; i < n; i++) {
      demand[i] = isEmptied(spec, heat[i]!) ? 1 : 0;
      mode.needs[0]![i] = level[i]!;
      mode.needs[1]![i] = level[i]! * PUMP_WH_L;
    }
    return true;
  });
}

/** Once it is warm again somebody shuts the valve, and the heater fills from the tank. */
function startRefill(spec: HotWaterSpec, { n }: PhysicsContext): Running {
  const mode = createMode("refill", n, ["freshWater", "battery12"], ["hotWaterHeat"]);
  mode.needs[0]!.fill(spec.litres);
  mode.needs[1]!.fill(spec.litres * PUMP_WH_L);
  mode.gives[0]!.fill(COLD_C * WATER_WH_L_K * spec.litres);
  return createRunning(n, [mode], (view, demand) => {
    if (view.driving || view.people === 0 || !SHUT_AT_H.some((hour) => isStepOf(view, hour))) return false;
    const heat = view.level("hotWaterHeat");
    for (let i = 0; i < n; i++)
      demand[i] = isEmptied(spec, heat[i]!) && view.cabinC[i]! >= SHUTS_ABOVE_C ? 1 : 0;
    return true;
  });
}

/** The frost valve of a heater that has one. */
export function startFrostValve(spec: HotWaterSpec, context: PhysicsContext): readonly Running[] {
  return spec.frostValveC > 0 ? [startDrain(spec, context), startRefill(spec, context)] : [];
}
