import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { WindowsSpec } from "./spec.ts";

export const faults: SystemFaults<WindowsSpec> = {
  symptoms: (spec) => [
    ...(spec.blinds > 0
      ? [
          {
            id: "windows.blindStuck",
            dangerous: false,
            causes: [cause("windows.railCrooked", 4), cause("windows.cordBroken", 1)],
            checks: [
              tryThis("windows.evenRail", ["windows.railCrooked"], 2, 0),
              tryThis("windows.leaveBlind", ["windows.cordBroken"], 1, 0, { after: ["windows.evenRail"] }),
            ],
          },
        ]
      : []),
    {
      id: "windows.drips",
      dangerous: false,
      causes: [cause("windows.condensation", 5), cause("windows.notLatched", 3), cause("windows.seal", 1)],
      checks: [
        tryThis("windows.latchAll", ["windows.notLatched"], 2, 0),
        tryThis("windows.airOut", ["windows.condensation"], 20, 0),
        tryThis("windows.reseal", ["windows.seal"], 60, 2),
      ],
    },
  ],
};
