import { DUE, EVERY_TIME, look, read, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { LeisureBatterySpec } from "./spec.ts";

const BATTERY = { part: "leisureBattery.battery" } as const;
/** at rest; a usual panel reads to a tenth */
const VOLTS = { unit: "V", min: 9, max: 15, tolerance: 0.1, step: 0.1, source: "practice" } as const;
const SHARE = { unit: "share", min: 0, max: 1, tolerance: 0.05, step: 0.01, source: "practice" } as const;

export const checks: SystemChecks<LeisureBatterySpec> = {
  checks: (spec) => [
    spec.chemistry === "lfp"
      ? read("leisureBattery.charge", EVERY_TIME, "inside", SHARE)
      : read("leisureBattery.restVolts", EVERY_TIME, "inside", VOLTS),
    look("leisureBattery.terminals", TURNAROUND, "cab", BATTERY),
    ...(spec.chemistry === "flooded"
      ? [
          look("leisureBattery.acidLevel", TURNAROUND, "cab", BATTERY),
          restock("leisureBattery.water", "cab", 1),
        ]
      : []),
    look("leisureBattery.loadTest", DUE, "cab", BATTERY),
  ],
};
