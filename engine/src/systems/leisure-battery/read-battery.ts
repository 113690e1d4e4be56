import type { ReadLevel } from "../contract.ts";
import type { LeisureBatterySpec } from "./spec.ts";

/** rest voltage of a 12 V lead-acid battery at 100, 90 … 10 % (operating manual, 2018, p. 42; other tables differ by up to 0.1 V) */
const REST_V = [12.7, 12.58, 12.46, 12.36, 12.28, 12.2, 12.12, 12.02, 11.88, 11.72] as const;
/** sd of a rest voltage read on a panel, V: sources differ by 0.1 V and the battery has rarely rested */
const DEFAULT_SD_V = 0.1;
const DEFAULT_SD_PCT = 5;

/** State of charge of rested lead-acid from its voltage, 0 to 1, linear between the printed rows. */
export function stateOfCharge(volts: number): number {
  if (volts >= REST_V[0]) return 1;
  for (let k = 1; k < REST_V.length; k++) {
    const high = REST_V[k - 1]!;
    const low = REST_V[k]!;
    if (volts >= low) return 1 - k / 10 + (0.1 * (volts - low)) / (high - low);
  }
  return Math.max(0, 0.1 - (REST_V[9] - volts) / 5);
}

/**
 * Usable energy, Wh above the cut-off, from what a panel shows: V at rest (lead-acid only), % or Ah of the
 * rated capacity that is left, or Wh above the cut-off. Null for volts of lithium iron phosphate: its
 * voltage is flat and says nothing.
 */
export function readBattery(
  spec: LeisureBatterySpec,
  value: number,
  unit: string,
  sd: number | null,
): ReadLevel | null {
  const rated = spec.ratedAh * 12;
  const usable = rated * spec.usableShare;
  const fromShare = (share: number, sdShare: number): ReadLevel => ({
    level: Math.min(usable, Math.max(0, share * rated - (rated - usable))),
    sd: sdShare * rated,
  });
  if (unit === "V" && spec.chemistry !== "lfp") {
    const error = sd ?? DEFAULT_SD_V;
    const slope = (stateOfCharge(value + error) - stateOfCharge(value - error)) / 2;
    return fromShare(stateOfCharge(value), Math.max(slope, 0.02));
  }
  if (unit === "%") return fromShare(value / 100, (sd ?? DEFAULT_SD_PCT) / 100);
  if (unit === "Ah") return fromShare(value / spec.ratedAh, (sd ?? 0.05 * spec.ratedAh) / spec.ratedAh);
  if (unit === "Wh") return { level: Math.min(usable, value), sd: sd ?? 0.05 * rated };
  return null;
}
