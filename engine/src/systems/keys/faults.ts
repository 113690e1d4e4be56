import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { KeysSpec } from "./spec.ts";

export const faults: SystemFaults<KeysSpec> = {
  symptoms: () => [
    {
      id: "keys.doorWillNotLock",
      dangerous: false,
      causes: [cause("keys.bodyTwisted", 3), cause("keys.latchNotHome", 3), cause("keys.fuse", 1)],
      checks: [
        tryThis("keys.shutHard", ["keys.latchNotHome"], 1, 0),
        tryThis("keys.parkLevel", ["keys.bodyTwisted"], 10, 0),
        tryThis("keys.changeFuse", ["keys.fuse"], 15, 2),
      ],
    },
    {
      id: "keys.engineWillNotStart",
      dangerous: false,
      causes: [
        cause("keys.cabBatteryFlat", 4, { store: "starterBattery", times: 4 }),
        cause("keys.keyNotRead", 3),
        cause("keys.notInNeutral", 2),
      ],
      checks: [
        tryThis("keys.clutchDown", ["keys.notInNeutral"], 1, 0),
        tryThis("keys.holdKeyClose", ["keys.keyNotRead"], 1, 0),
        tryThis("keys.lookAtCabLights", ["keys.cabBatteryFlat"], 1, 0),
        tryThis("keys.jumpStart", ["keys.cabBatteryFlat"], 30, 2, { after: ["keys.lookAtCabLights"] }),
      ],
    },
  ],
};
