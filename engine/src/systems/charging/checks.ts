import { read, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { ChargingSpec } from "./spec.ts";

const CHARGING = { unit: "V", min: 9, max: 15.5, tolerance: 0.1, step: 0.1, source: "practice" } as const;

export const checks: SystemChecks<ChargingSpec> = {
  checks: (spec) => [
    ...(spec.mainsChargerA > 0
      ? [read("charging.voltsOnMains", TURNAROUND, "inside", CHARGING, { part: "charging.charger" })]
      : []),
    ...(spec.drivingCharge === "none"
      ? []
      : [read("charging.voltsEngineOn", TURNAROUND, "inside", CHARGING)]),
  ],
};
