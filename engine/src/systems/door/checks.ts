import { look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { DoorSpec } from "./spec.ts";

const DOOR = { part: "door.door" } as const;

export const checks: SystemChecks<DoorSpec> = {
  checks: (spec) => [
    look("door.door", OUT_AND_BACK, spec.side, { ...DOOR, photograph: true, charge: "damage" }),
    ...(spec.flyScreen
      ? [look("door.flyScreen", OUT_AND_BACK, spec.side, { ...DOOR, charge: "damage" })]
      : []),
    look("door.opensFromInside", TURNAROUND, spec.side, DOOR),
  ],
};
