import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { HotWaterSpec } from "./spec.ts";

export const faults: SystemFaults<HotWaterSpec> = {
  symptoms: (spec) => [
    {
      id: "hotWater.cold",
      dangerous: false,
      causes: [
        cause("hotWater.modeOff", 4),
        cause("hotWater.noWater", 2, { store: "freshWater", times: 4 }),
        cause("hotWater.airInBoiler", 2),
        cause("hotWater.noSupply", 2),
      ],
      checks: [
        tryThis("hotWater.setMode", ["hotWater.modeOff"], 20, 0),
        tryThis("hotWater.openHotTap", ["hotWater.airInBoiler", "hotWater.noWater"], 2, 0, {
          mentions: ["freshWater"],
        }),
        tryThis("hotWater.otherSource", ["hotWater.noSupply"], 20, 1),
      ],
    },
    ...(spec.frostValveC > 0
      ? [
          {
            id: "hotWater.lostOvernight",
            dangerous: false,
            causes: [cause("hotWater.frostValveOpened", 8), cause("hotWater.drainOpen", 2)],
            checks: [
              tryThis("hotWater.warmAndClose", ["hotWater.frostValveOpened"], 30, 0),
              tryThis("hotWater.shutDrains", ["hotWater.drainOpen"], 3, 0, { mentions: ["freshWater"] }),
            ],
          },
        ]
      : []),
  ],
};
