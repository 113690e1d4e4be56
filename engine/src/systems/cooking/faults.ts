import type { Symptom, SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { CookingSpec } from "./spec.ts";

export const faults: SystemFaults<CookingSpec> = {
  symptoms: (spec) => (spec.energy === "gas" ? [goesOut, yellowFlame] : [plateCold]),
};

const goesOut: Symptom = {
  id: "cooking.goesOut",
  dangerous: false,
  causes: [
    cause("cooking.knobHeldShort", 5),
    cause("cooking.littleGas", 3, { store: "lpg", times: 5 }),
    cause("cooking.tapShut", 2),
    cause("cooking.sensor", 1),
  ],
  checks: [
    tryThis("cooking.holdTen", ["cooking.knobHeldShort"], 1, 0),
    tryThis("cooking.openTap", ["cooking.tapShut"], 1, 0),
    tryThis("cooking.gasThere", ["cooking.littleGas"], 3, 0, { mentions: ["lpg"] }),
    tryThis("cooking.changeSensor", ["cooking.sensor"], 30, 2),
  ],
};

const yellowFlame: Symptom = {
  id: "cooking.yellowFlame",
  dangerous: false,
  causes: [
    cause("cooking.littleGas", 3, { store: "lpg", times: 4 }),
    cause("cooking.dirtyBurner", 3),
    cause("cooking.wrongPressure", 1),
  ],
  checks: [
    tryThis("cooking.airTheVan", ["cooking.dirtyBurner"], 1, 0),
    tryThis("cooking.gasThere", ["cooking.littleGas"], 3, 0, {
      mentions: ["lpg"],
      after: ["cooking.airTheVan"],
    }),
    tryThis("cooking.setPressure", ["cooking.wrongPressure"], 30, 2),
  ],
};

const plateCold: Symptom = {
  id: "cooking.plateCold",
  dangerous: false,
  causes: [
    cause("cooking.wrongPan", 3),
    cause("cooking.noPower", 4, { store: "battery12", times: 3 }),
    cause("cooking.childLock", 2),
  ],
  checks: [
    tryThis("cooking.ironPan", ["cooking.wrongPan"], 1, 0),
    tryThis("cooking.unlock", ["cooking.childLock"], 1, 0),
    tryThis("cooking.powerThere", ["cooking.noPower"], 2, 0),
  ],
};
