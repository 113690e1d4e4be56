import type { Keeping, PhysicsContext, StepView, SystemPhysics } from "../contract.ts";
import { isAnyBelow } from "../running.ts";
import { readBattery } from "./read-battery.ts";
import type { LeisureBatterySpec } from "./spec.ts";

/** Nominal voltage at which stored energy and ampere-hours are exchanged in the forecast, V. */
export const NOMINAL_V = 12;

/** From memory (common practice, no source): editable defaults, not checks. */
const BY_CHEMISTRY = {
  // bulk current as a share of rated Ah; charge energy efficiency; share of charge above which the current tapers
  agm: { bulkPerAh: 0.25, efficiency: 0.85, taperFrom: 0.8 },
  gel: { bulkPerAh: 0.2, efficiency: 0.85, taperFrom: 0.8 },
  flooded: { bulkPerAh: 0.2, efficiency: 0.82, taperFrom: 0.8 },
  lfp: { bulkPerAh: 0.5, efficiency: 0.96, taperFrom: 0.97 },
} as const;

/** voltage at which a lead-acid battery takes its bulk charge, V */
const CHARGE_V = 14;

/** a capacity factor below all there are */
const COLDEST = 0.5;
/** share of the battery above which nothing but an inverter, which looks for itself, can empty it within a step */
const NEAR_END = 0.25;

/** lithium iron phosphate takes no charge at 0 °C and below, and all of it from here on, °C: from memory (common practice, no source) */
const LFP_FULL_FROM_C = 5;

/** What the forecast may draw: the share above the cut-off, Wh at the nominal voltage. */
export function usableWh(spec: LeisureBatterySpec): number {
  return spec.usableShare * spec.ratedAh * NOMINAL_V;
}

/**
 * Capacity of lead-acid at a temperature against 25 °C for discharges longer than an hour: −16, −12, −10, −6,
 * −1, 0, +3 % at 0 … 30 °C by 5 (the table of the formula book), carried down to −42 % at −20 °C from memory.
 * Lithium iron phosphate: 80 % at 0 °C, 70 % at −20 °C (a maker's article; weak), linear between and to 25 °C.
 */
export function capacityFactor(chemistry: LeisureBatterySpec["chemistry"], celsius: number): number {
  if (chemistry === "lfp") {
    if (celsius >= 25) return 1;
    return celsius >= 0 ? 0.8 + (0.2 * celsius) / 25 : Math.max(0.6, 0.8 + (0.1 * celsius) / 20);
  }
  if (celsius <= 0) return 0.84 + 0.013 * Math.max(celsius, -20);
  if (celsius >= 30) return 1.03;
  const k = Math.floor(celsius / 5);
  return LEAD[k]! + ((LEAD[k + 1]! - LEAD[k]!) * (celsius - 5 * k)) / 5;
}
const LEAD = [0.84, 0.88, 0.9, 0.94, 0.99, 1, 1.03] as const;

/**
 * How much faster than stated the charge goes at a current (hour-rated Peukert form, t = H (C / (I H))^k):
 * (I H / C)^(k−1), not below 1, since a gain below the rated current is not credited.
 */
export function peukertFactor(spec: LeisureBatterySpec, amperes: number): number {
  const ratio = (amperes * spec.ratedHours) / spec.ratedAh;
  return ratio > 1 ? ratio ** (spec.peukert - 1) : 1;
}

function keepBattery(spec: LeisureBatterySpec, { n, dtH }: PhysicsContext): Keeping {
  const chemistry = BY_CHEMISTRY[spec.chemistry];
  const ratedWh = spec.ratedAh * NOMINAL_V;
  const usable = usableWh(spec);
  const bulkWh = chemistry.bulkPerAh * spec.ratedAh * CHARGE_V * dtH;
  // in the taper the current falls with what is missing, so the gap closes exponentially
  const rate =
    (chemistry.bulkPerAh * spec.ratedAh * CHARGE_V * chemistry.efficiency) /
    ((1 - chemistry.taperFrom) * ratedWh);
  const middleC = new Float64Array(n);
  const ampereHours = NOMINAL_V * dtH;
  const nearEnd = NEAR_END * usable;
  const closing = 1 - Math.exp(-rate * dtH);
  // what it stores in a step at its bulk current, and what is missing where the taper begins
  const storedWh = bulkWh * chemistry.efficiency;
  const taperWh = storedWh / (rate * dtH);
  return {
    store: "battery12",
    limitOut: (view, mostOut) => {
      const level = view.level("battery12");
      if (!isAnyBelow(level, nearEnd)) return false;
      const { cabinC } = view;
      for (let i = 0; i < n; i++) {
        const there = level[i]!;
        mostOut[i] = there < nearEnd ? lastOf(spec, there, ampereHours, cabinC[i]!) : there;
      }
      return true;
    },
    limitIn: (view, mostIn) => {
      const level = view.level("battery12");
      for (let i = 0; i < n; i++) {
        const gap = usable - level[i]!;
        if (gap >= taperWh + storedWh) mostIn[i] = bulkWh;
        else if (gap <= taperWh) mostIn[i] = (gap * closing) / chemistry.efficiency;
        else {
          // the step begins at the bulk current and ends in the taper
          const bulk = (gap - taperWh) / storedWh;
          const tapered = taperWh * (1 - Math.exp(-rate * dtH * (1 - bulk)));
          mostIn[i] = bulk * bulkWh + tapered / chemistry.efficiency;
        }
      }
      if (spec.chemistry === "lfp") holdInCold(view, mostIn, bulkWh, middleC);
    },
    lose: (view, netIn, loss) => loseCharge(spec, 1 - chemistry.efficiency, view, netIn, loss),
    shareDown: (view, need, floor, share) => shareDown(spec, view, need, floor, share),
  };
}

/** What can be drawn of what is left: the rest is lost in drawing it. */
function lastOf(spec: LeisureBatterySpec, levelWh: number, ampereHours: number, cabinC: number): number {
  return levelWh > 0 ? drawnFor(spec, levelWh, ampereHours, capacityFactor(spec.chemistry, cabinC)) : 0;
}

/** Lithium iron phosphate takes less and less current as it grows cold. */
function holdInCold(view: StepView, mostIn: Float64Array, bulkWh: number, middleC: Float64Array): void {
  if (!isAnyBelow(view.cabinC, LFP_FULL_FROM_C + 1)) return;
  view.cabinMiddleC(middleC);
  for (let i = 0; i < mostIn.length; i++) {
    const share = middleC[i]! / LFP_FULL_FROM_C;
    mostIn[i] = Math.min(mostIn[i]!, share > 0 ? share * bulkWh : 0);
  }
}

function loseCharge(
  spec: LeisureBatterySpec,
  lostInCharging: number,
  view: StepView,
  netIn: Float64Array,
  loss: Float64Array,
): void {
  const ampereHours = NOMINAL_V * view.dtH;
  const { cabinC } = view;
  for (let i = 0; i < netIn.length; i++) {
    const net = netIn[i]!;
    if (net >= 0) {
      loss[i] = net * lostInCharging;
    } else {
      loss[i] = fallFor(spec, -net, ampereHours, capacityFactor(spec.chemistry, cabinC[i]!)) + net;
    }
  }
}

/**
 * Part of a need that takes the battery down to a share of its capacity. Once it is there the rest of the step falls by
 * what others draw alone, so that a step and two of half its length end at the same level.
 */
function shareDown(
  spec: LeisureBatterySpec,
  view: StepView,
  need: Float64Array,
  floor: number,
  share: Float64Array,
): void {
  const start = view.startLevel("battery12");
  const level = view.level("battery12");
  const capacity = view.capacity("battery12");
  const { cabinC } = view;
  const ampereHours = NOMINAL_V * view.dtH;
  let most = 0;
  for (let i = 0; i < share.length; i++) most = Math.max(most, need[i]! + start[i]! - level[i]!);
  const mostLost = fallFor(spec, most, ampereHours, COLDEST) / most;
  for (let i = 0; i < share.length; i++) {
    const wanted = need[i]!;
    const above = start[i]! - floor * capacity[i]!;
    const others = start[i]! - level[i]!;
    // far from the floor whatever is lost: nearly all steps
    if (above >= (wanted + others) * mostLost) {
      share[i] = 1;
      continue;
    }
    const cold = capacityFactor(spec.chemistry, cabinC[i]!);
    const fall = fallFor(spec, wanted + others, ampereHours, cold);
    if (fall <= above) {
      share[i] = 1;
    } else {
      const after = Math.max(0, fallFor(spec, others, ampereHours, cold));
      const down = above > 0 ? above + (1 - above / fall) * after : above;
      const drawn = drawnFor(spec, down, ampereHours, cold) - others;
      share[i] = Math.min(1, Math.max(0, drawn / wanted));
    }
  }
}

/** Wh by which the level falls where `drawnWh` are drawn evenly over a step: with what {@link loseCharge} books. */
function fallFor(spec: LeisureBatterySpec, drawnWh: number, ampereHours: number, cold: number): number {
  if (drawnWh <= 0) return drawnWh;
  return drawnWh * Math.max(1, peukertFactor(spec, drawnWh / ampereHours) / cold);
}

/** What may be drawn evenly over a step, Wh, for the level to fall by `fallWh`: the inverse of {@link fallFor}. */
function drawnFor(spec: LeisureBatterySpec, fallWh: number, ampereHours: number, cold: number): number {
  if (fallWh <= 0) return fallWh;
  // Wh in the step at the current up to which nothing is lost by the current
  const ratedWh = (ampereHours * spec.ratedAh) / spec.ratedHours;
  const byCold = fallWh * Math.min(1, cold);
  if (byCold <= ratedWh) return byCold;
  const byCurrent = (fallWh * cold * ratedWh ** (spec.peukert - 1)) ** (1 / spec.peukert);
  return Math.min(fallWh, Math.max(ratedWh, byCurrent));
}

/**
 * The battery of the living part. Its store is *usable energy*: the share of the rated capacity above the
 * cut-off, at 12 V nominal; 0 means that the cut-off has been reached, not that the battery is empty.
 * Cold, high current and charging cost extra, booked as the store's own loss.
 */
export const physics: SystemPhysics<LeisureBatterySpec> = {
  stores: (spec) => [{ store: "battery12", capacity: usableWh(spec), initial: 1 }],
  keep: keepBattery,
  read: readBattery,
};
