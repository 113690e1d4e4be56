import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { CookingSpec } from "./spec.ts";

export const faults: SystemFaults<CookingSpec> = {
  symptoms: (spec) => (spec.energy === "gas" ? [goesOut, noSpark, yellowFlame] : [plateCold]),
};

const goesOut: Symptom = {
  id: "cooking.goesOut",
  dangerous: false,
  causes: [
    cause("cooking.knobHeldShort", 5),
    causeIn("lpg", "cooking.littleGas", 3, {
      worseWhen: { store: "lpg", times: 5 },
      leadsTo: "lpg.weakInCold",
    }),
    cause("cooking.tapShut", 2),
    callFor("cooking.sensor", 1),
  ],
  checks: [
    tryThis("cooking.holdTen", ["cooking.knobHeldShort"], 1, 0),
    tryThis("cooking.openTap", ["cooking.tapShut"], 1, 0),
    tryThis("cooking.gasThere", ["cooking.littleGas"], 3, 0, { mentions: ["lpg"] }),
    tryThis("cooking.changeSensor", ["cooking.sensor"], 30, 2),
  ],
};

const noSpark: Symptom = {
  id: "cooking.noSpark",
  dangerous: false,
  causes: [
    causeIn("leisureBattery", "cooking.noPower", 3, {
      worseWhen: { store: "battery12", times: 5 },
      leadsTo: "leisureBattery.flatMornings",
    }),
    cause("cooking.wetBurner", 3),
    cause("cooking.lighterWorn", 2),
  ],
  checks: [
    tryThis("cooking.readBattery", ["cooking.noPower"], 1, 0, { mentions: ["leisureBattery"] }),
    tryThis("cooking.dryBurner", ["cooking.wetBurner"], 3, 0),
    tryThis("cooking.useMatch", ["cooking.lighterWorn"], 1, 1, { after: ["cooking.dryBurner"] }),
  ],
};

const yellowFlame: Symptom = {
  id: "cooking.yellowFlame",
  dangerous: false,
  causes: [
    causeIn("lpg", "cooking.littleGas", 3, {
      worseWhen: { store: "lpg", times: 4 },
      leadsTo: "lpg.weakInCold",
    }),
    cause("cooking.dirtyBurner", 3),
    callFor("cooking.wrongPressure", 1),
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
    causeIn("leisureBattery", "cooking.noPower", 4, {
      worseWhen: { store: "battery12", times: 3 },
      leadsTo: "leisureBattery.flatMornings",
    }),
    causeIn("hookUp", "cooking.noMains", 2, { leadsTo: "hookUp.noMains" }),
    cause("cooking.childLock", 2),
  ],
  checks: [
    tryThis("cooking.ironPan", ["cooking.wrongPan"], 1, 0),
    tryThis("cooking.unlock", ["cooking.childLock"], 1, 0),
    tryThis("cooking.powerThere", ["cooking.noPower"], 2, 0, { mentions: ["leisureBattery"] }),
    tryThis("cooking.mainsThere", ["cooking.noMains"], 2, 0, { mentions: ["hookUp"] }),
  ],
};
