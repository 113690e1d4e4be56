import { look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { InverterSpec } from "./spec.ts";

const BOX = { part: "inverter.box" } as const;

export const checks: SystemChecks<InverterSpec> = {
  checks: () => [
    look("inverter.carriesLoad", TURNAROUND, "inside", BOX),
    look("inverter.vents", OUT_AND_BACK, "inside", { ...BOX, charge: "damage" }),
  ],
};
