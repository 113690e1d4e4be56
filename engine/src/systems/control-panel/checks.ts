import { look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { ControlPanelSpec } from "./spec.ts";

const PANEL = { part: "controlPanel.panel" } as const;

export const checks: SystemChecks<ControlPanelSpec> = {
  checks: (spec) => [
    look("controlPanel.works", OUT_AND_BACK, "inside", PANEL),
    look("controlPanel.sockets", TURNAROUND, "inside", PANEL),
    ...(spec.gauges === "none" ? [] : [look("controlPanel.gaugesMove", TURNAROUND, "inside", PANEL)]),
    ...(spec.masterSwitch ? [look("controlPanel.leftOff", TURNAROUND, "inside", PANEL)] : []),
  ],
};
