import type { Symptom, SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { HeatingSpec } from "./spec.ts";

export const faults: SystemFaults<HeatingSpec> = {
  symptoms: (spec) => [
    noHeat(spec),
    ...(spec.source === "gasElectric" || spec.source === "electric" ? [electricDead] : []),
    ...(spec.source === "electric" ? [] : [exhaustInside]),
  ],
};

const exhaustInside: Symptom = {
  id: "heating.exhaustInside",
  dangerous: true,
  causes: [cause("heating.exhaustLeaks", 1)],
  checks: [],
};

const electricDead: Symptom = {
  id: "heating.electricDead",
  dangerous: false,
  causes: [
    cause("heating.noMains", 4),
    cause("heating.postTooSmall", 3),
    cause("heating.notOnElectric", 3),
    cause("heating.element", 1),
  ],
  checks: [
    tryThis("heating.mainsThere", ["heating.noMains"], 2, 0, { mentions: ["hookUp"] }),
    tryThis("heating.selectElectric", ["heating.notOnElectric"], 1, 0),
    tryThis("heating.lowerStage", ["heating.postTooSmall"], 2, 0, { after: ["heating.mainsThere"] }),
    tryThis("heating.measureElement", ["heating.element"], 20, 2),
  ],
};

function noHeat(spec: HeatingSpec): Symptom {
  const onGas = spec.source === "gas" || spec.source === "gasElectric";
  const burns = spec.source !== "electric";
  return {
    id: "heating.noHeat",
    dangerous: false,
    causes: [
      ...(onGas ? [cause("heating.gasOut", 4, { store: "lpg", times: 5 })] : []),
      ...(spec.source === "diesel" ? [cause("heating.fuelLow", 3, { store: "fuel", times: 5 })] : []),
      ...(burns
        ? [cause("heating.batteryLow", 3, { store: "battery12", times: 5 }), cause("heating.flueBlocked", 1)]
        : []),
      cause("heating.windowOpen", 1),
      cause("heating.lockedOut", 3),
      cause("heating.fuse", 1),
    ],
    checks: [
      ...(onGas
        ? [tryThis("heating.anotherGasThing", ["heating.gasOut"], 2, 0, { mentions: ["lpg", "cooking"] })]
        : []),
      ...(spec.source === "diesel"
        ? [tryThis("heating.readFuel", ["heating.fuelLow"], 1, 0, { mentions: ["fuel"] })]
        : []),
      ...(burns
        ? [
            tryThis("heating.readBattery", ["heating.batteryLow"], 1, 0, { mentions: ["leisureBattery"] }),
            tryThis("heating.lookAtFlue", ["heating.flueBlocked"], 2, 0),
          ]
        : []),
      tryThis("heating.shutWindow", ["heating.windowOpen"], 1, 0),
      tryThis("heating.offAndOn", ["heating.lockedOut"], 10, 1, {
        after: burns ? ["heating.lookAtFlue"] : [],
      }),
      tryThis("heating.changeFuse", ["heating.fuse"], 15, 2),
    ],
  };
}
