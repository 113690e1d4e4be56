import type { PhysicsContext, Running, StepView, Window } from "../contract.ts";
import { createMode, createRunning, isAnyBelow } from "../running.ts";
import type { HotWaterSpec } from "./spec.ts";

/** heat capacity of water, Wh per litre and kelvin (4.186 kJ/kgK) */
export const WATER_WH_L_K = 1.163;
/** temperature of the water that flows in, °C: common practice, no source */
export const COLD_C = 10;
/** it can be shut again, by hand, once it is warm around it: nowhere below the first, everywhere from the second on, °C (from memory, 7 to 8) */
const SHUTS_FROM_C = 7;
const SHUTS_C = 8;
/** K by which the place of the valve may be warmer or colder than the cabin: common practice, no source */
const OFF_BY_K = 2;
/** share of the battery from which it keeps the pump going for as long as that takes: practice */
const PUMPS_WELL_FROM = 0.3;
/** hour of the day by which a pump that was left on has emptied the tank, and hours in which people shut the valve and fill up the heater: practice */
const FOUND_AT_H = 7;
const SHUT_AT_H = 9;
const SHUT_LATE_AT_H = 18;
const at = (hour: number): Window => ({ fromH: hour, toH: hour, share: 1 });
const FOUND = [at(FOUND_AT_H)];
const SHUT = [at(SHUT_AT_H), at(SHUT_LATE_AT_H)];

const within = (share: number) => Math.min(1, Math.max(0, share));

/**
 * How far the valve is open by the cabin's temperature, 0 to 1: the share of vans in which it is, since nobody knows
 * how warm it is just at the valve. Open or shut alone would turn a hundredth of a kelvin into a tank of water.
 * On the road the cab's own heater keeps the living part from it.
 */
function openShare({ frostValveC }: HotWaterSpec, { driving }: StepView, cabinC: number): number {
  if (driving || frostValveC <= 0) return 0;
  return within((frostValveC + OFF_BY_K - cabinC) / (2 * OFF_BY_K));
}

/** Above this temperature the valve is shut for certain, °C. */
export const shutFromC = ({ frostValveC }: HotWaterSpec) => frostValveC + OFF_BY_K;

/** Share of the heater's water that is in it still, 0 to 1, by the litres there. */
export function filledShare({ litres }: HotWaterSpec, thereL: number): number {
  return litres > 0 ? thereL / litres : 0;
}

/** Likewise once the valve has let go of what it lets go of just now. */
export function staysShare(spec: HotWaterSpec, view: StepView, thereL: number, cabinC: number): number {
  return Math.min(filledShare(spec, thereL), 1 - openShare(spec, view, cabinC));
}

/** Share of what is to be pumped that a life's battery lets the pump do: less the nearer it is to its end, nothing where it is empty. */
function pumpedShare(view: StepView, i: number): number {
  const full = view.capacity("battery12")[i]!;
  return full > 0 ? within(view.level("battery12")[i]! / (PUMPS_WELL_FROM * full)) : 0;
}

/** Whether an hour of the day falls into the step around a clock time. Asked at every step: no list, no view. */
const isStepOf = (clockH: number, halfH: number, hour: number) => Math.abs(clockH - hour - 1e-9) <= halfH;

/** The heater's own water goes, and its heat with it. */
function startEmptying(spec: HotWaterSpec, { n }: PhysicsContext): Running {
  const mode = createMode("frostValve", n, ["heaterWater", "hotWaterHeat"], []);
  const shutC = shutFromC(spec);
  return createRunning(n, [mode], (view, demand) => {
    if (!isAnyBelow(view.cabinC, shutC) || view.driving) return false;
    const there = view.level("heaterWater");
    const heat = view.level("hotWaterHeat");
    let isOpen = false;
    for (let i = 0; i < n; i++) {
      const goes = there[i]! - staysShare(spec, view, there[i]!, view.cabinC[i]!) * spec.litres;
      demand[i] = goes > 0 ? 1 : 0;
      if (!(goes > 0)) continue;
      isOpen = true;
      mode.needs[0]![i] = goes;
      mode.needs[1]![i] = heat[i]! * (goes / there[i]!);
    }
    return isOpen;
  });
}

/**
 * What an open frost valve lets out beside the heater's own water: with the pump left on, the tank (setting
 * `pumpOffAtNight`, false). It is booked in the morning when it is found, so that the hour at which the van grew
 * cold, and with it the length of a step, does not matter. The pump needs the battery: it gets less out the nearer
 * that is to its end, and where it is empty the tank keeps its water. What it draws for it, some 10 Wh, is left out.
 */
function startDrain(spec: HotWaterSpec, { n, dtH, setting }: PhysicsContext): Running {
  const mode = createMode("tank", n, ["freshWater"], []);
  const isPumpOn = setting.pumpOffAtNight !== true;
  return createRunning(
    n,
    [mode],
    (view, demand) => {
      if (!isPumpOn || !isStepOf(view.clockH, dtH / 2, FOUND_AT_H) || view.driving) return false;
      const there = view.level("heaterWater");
      const level = view.level("freshWater");
      let isOpen = false;
      for (let i = 0; i < n; i++) {
        demand[i] = (1 - staysShare(spec, view, there[i]!, view.cabinC[i]!)) * pumpedShare(view, i);
        mode.needs[0]![i] = level[i]!;
        if (demand[i]! > 0) isOpen = true;
      }
      return isOpen;
    },
    { times: FOUND },
  );
}

/** Once it is warm again somebody shuts the valve, and the heater fills from the tank, with water as it flows in. */
function startRefill(spec: HotWaterSpec, { n, dtH }: PhysicsContext): Running[] {
  const mode = createMode("refill", n, ["freshWater"], ["heaterWater"]);
  mode.needs[0]!.fill(spec.litres);
  mode.gives[0]!.fill(spec.litres);
  const heat = createMode("refillHeat", n, [], ["hotWaterHeat"]);
  heat.gives[0]!.fill(COLD_C * WATER_WH_L_K * spec.litres);
  const filled = new Float64Array(n);
  let isFilling = false;
  const filling = createRunning(
    n,
    [mode],
    (view, demand) => {
      isFilling = false;
      const { clockH } = view;
      if (!isStepOf(clockH, dtH / 2, SHUT_AT_H) && !isStepOf(clockH, dtH / 2, SHUT_LATE_AT_H)) return false;
      if (view.driving || view.people === 0) return false;
      const there = view.level("heaterWater");
      const tank = view.level("freshWater");
      for (let i = 0; i < n; i++) {
        const shut = within((view.cabinC[i]! - SHUTS_FROM_C) / (SHUTS_C - SHUTS_FROM_C));
        const missing = (1 - filledShare(spec, there[i]!)) * pumpedShare(view, i);
        filled[i] = Math.min(shut * missing, tank[i]! / spec.litres);
        demand[i] = filled[i]!;
        if (filled[i]! > 0) isFilling = true;
      }
      return isFilling;
    },
    { times: SHUT },
  );
  const warmth = createRunning(
    n,
    [heat],
    (_view, demand) => {
      if (isFilling) demand.set(filled);
      return isFilling;
    },
    { times: SHUT },
  );
  return [filling, warmth];
}

/** The frost valve of a heater that has one. */
export function startFrostValve(spec: HotWaterSpec, context: PhysicsContext): readonly Running[] {
  if (spec.frostValveC <= 0 || spec.litres <= 0) return [];
  return [startEmptying(spec, context), startDrain(spec, context), ...startRefill(spec, context)];
}
