import type { Keeping, PhysicsContext, StepView, SystemPhysics } from "../contract.ts";
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
  const frostStops = spec.chemistry === "lfp";
  const closing = (1 - Math.exp(-rate * dtH)) / chemistry.efficiency;
  return {
    store: "battery12",
    limitIn: (view, mostIn) => {
      const level = view.level("battery12");
      const { cabinC } = view;
      for (let i = 0; i < n; i++) {
        const gap = (usable - level[i]!) * closing;
        const accepted = Math.min(gap, bulkWh);
        mostIn[i] = frostStops && cabinC[i]! < 0 ? 0 : accepted;
      }
    },
    lose: (view, netIn, loss) => loseCharge(spec, 1 - chemistry.efficiency, view, netIn, loss),
  };
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
      const faster = peukertFactor(spec, -net / ampereHours) / capacityFactor(spec.chemistry, cabinC[i]!);
      loss[i] = -net * (faster > 1 ? faster - 1 : 0);
    }
  }
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
