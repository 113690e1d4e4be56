import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { AlarmsSpec } from "./spec.ts";

export const faults: SystemFaults<AlarmsSpec> = {
  symptoms: () => [
    { id: "alarms.sounds", dangerous: true, causes: [cause("alarms.treatAsReal", 1)], checks: [] },
    {
      id: "alarms.chirps",
      dangerous: false,
      causes: [cause("alarms.cellLow", 5), cause("alarms.tooOld", 1)],
      checks: [
        tryThis("alarms.changeCell", ["alarms.cellLow"], 5, 0),
        tryThis("alarms.readDate", ["alarms.tooOld"], 1, 0),
      ],
    },
  ],
};
