import type { ReadLevel } from "./contract.ts";

/** gauges of tanks read in steps of a quarter or a third: sd as a share of the capacity */
const GAUGE_SD = 0.08;

/** A tank or cylinder from its gauge in % of its capacity, or from a measured amount in the store's own unit. Null where the unit does not fit. */
export function readTank(
  capacity: number,
  ownUnit: string,
  value: number,
  unit: string,
  sd: number | null,
): ReadLevel | null {
  const bounded = (level: number) => Math.min(capacity, Math.max(0, level));
  if (unit === "%") {
    return {
      level: bounded((value / 100) * capacity),
      sd: sd === null ? GAUGE_SD * capacity : (sd / 100) * capacity,
    };
  }
  if (unit === ownUnit) return { level: bounded(value), sd: sd ?? 0.03 * capacity };
  return null;
}
