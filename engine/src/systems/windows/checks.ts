import { countOf, look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { WindowsSpec } from "./spec.ts";

export const checks: SystemChecks<WindowsSpec> = {
  checks: (spec) => [
    ...(spec.hinged > 0
      ? [
          look("windows.panesNearside", OUT_AND_BACK, "nearside", {
            part: "windows.nearside",
            photograph: true,
            charge: "damage",
          }),
        ]
      : []),
    ...(spec.hinged > 1
      ? [
          look("windows.panesOffside", OUT_AND_BACK, "offside", {
            part: "windows.offside",
            photograph: true,
            charge: "damage",
          }),
        ]
      : []),
    ...(spec.rooflights > 0
      ? [
          look("windows.rooflights", OUT_AND_BACK, "roof", {
            part: "windows.rooflight",
            photograph: true,
            charge: "damage",
          }),
        ]
      : []),
    ...(spec.blinds > 0
      ? [countOf("windows.blinds", OUT_AND_BACK, "inside", spec.blinds, { charge: "missingItem" })]
      : []),
    look("windows.damp", TURNAROUND, "inside"),
    look("windows.openAndShut", TURNAROUND, "inside"),
    look("windows.cleaned", TURNAROUND, "inside"),
  ],
};
