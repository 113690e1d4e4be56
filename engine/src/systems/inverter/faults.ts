import type { SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { InverterSpec } from "./spec.ts";

export const faults: SystemFaults<InverterSpec> = {
  symptoms: (spec) => [
    {
      id: "inverter.dead",
      dangerous: false,
      causes: [
        cause("inverter.switchedOff", 4),
        cause("inverter.overloaded", 3),
        causeIn(spec.source, "inverter.batteryLow", 3, {
          worseWhen: {
            store: spec.source === "tractionBattery" ? "tractionBattery" : "battery12",
            times: 5,
          },
        }),
        cause("inverter.hot", 2),
        callFor("inverter.fuse", 1),
      ],
      checks: [
        tryThis("inverter.switchOn", ["inverter.switchedOff"], 1, 0),
        tryThis(
          spec.source === "tractionBattery" ? "inverter.readDriveBattery" : "inverter.readBattery",
          ["inverter.batteryLow"],
          1,
          0,
          { mentions: [spec.source] },
        ),
        tryThis("inverter.unplugAll", ["inverter.overloaded"], 3, 0),
        tryThis("inverter.letCool", ["inverter.hot"], 20, 0, { after: ["inverter.unplugAll"] }),
        tryThis("inverter.changeFuse", ["inverter.fuse"], 20, 2),
      ],
    },
  ],
};
