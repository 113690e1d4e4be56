import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, stopAndCall, tryThis } from "../fault-finding.ts";
import type { FridgeSpec } from "./spec.ts";

export const faults: SystemFaults<FridgeSpec> = {
  symptoms: (spec) =>
    spec.type === "absorption"
      ? [warmAbsorption, willNotLight, warmOnTheRoad, stopAndCall("fridge.ammonia", "fridge.coolantLeak")]
      : [warmCompressor],
};

const warmAbsorption: Symptom = {
  id: "fridge.warm",
  dangerous: false,
  causes: [
    cause("fridge.wrongSource", 4),
    cause("fridge.notLevel", 3),
    causeIn("lpg", "fridge.gasOut", 3, {
      worseWhen: { store: "lpg", times: 5 },
      leadsTo: "lpg.nothingLights",
    }),
    causeIn("hookUp", "fridge.mainsOut", 2, { leadsTo: "hookUp.noMains" }),
    cause("fridge.hotDay", 2),
    cause("fridge.parkedOn12", 2),
    cause("fridge.justLoaded", 2),
    cause("fridge.burnerOrElement", 1),
  ],
  checks: [
    tryThis("fridge.readSource", ["fridge.wrongSource", "fridge.parkedOn12"], 1, 0),
    tryThis("fridge.gasOpen", ["fridge.gasOut"], 2, 0, { mentions: ["lpg"], after: ["fridge.readSource"] }),
    tryThis("fridge.mainsThere", ["fridge.mainsOut"], 2, 0, {
      mentions: ["hookUp"],
      after: ["fridge.readSource"],
    }),
    tryThis("fridge.anotherGasThing", ["fridge.gasOut"], 2, 0, {
      mentions: ["lpg", "cooking"],
      after: ["fridge.gasOpen"],
    }),
    tryThis("fridge.parkLevel", ["fridge.notLevel"], 10, 0),
    tryThis("fridge.freeVents", ["fridge.hotDay"], 2, 0),
    tryThis("fridge.giveItTime", ["fridge.justLoaded"], 240, 0),
    tryThis("fridge.tryOtherSource", ["fridge.burnerOrElement"], 120, 1, { after: ["fridge.readSource"] }),
    tryThis("fridge.cleanBurner", ["fridge.burnerOrElement"], 45, 2),
  ],
};

const willNotLight: Symptom = {
  id: "fridge.willNotLight",
  dangerous: false,
  causes: [
    causeIn("lpg", "fridge.gasOut", 4, {
      worseWhen: { store: "lpg", times: 5 },
      leadsTo: "lpg.nothingLights",
    }),
    cause("fridge.airInPipe", 3),
    causeIn("leisureBattery", "fridge.batteryLow", 2, {
      worseWhen: { store: "battery12", times: 5 },
      leadsTo: "leisureBattery.flatMornings",
    }),
    callFor("fridge.noSpark", 1),
  ],
  checks: [
    tryThis("fridge.gasOpen", ["fridge.gasOut"], 2, 0, { mentions: ["lpg"] }),
    tryThis("fridge.readBattery", ["fridge.batteryLow"], 1, 0, { mentions: ["leisureBattery"] }),
    tryThis("fridge.lightThreeTimes", ["fridge.airInPipe"], 5, 1, { after: ["fridge.gasOpen"] }),
    tryThis("fridge.cleanBurner", ["fridge.noSpark"], 45, 2),
  ],
};

const warmOnTheRoad: Symptom = {
  id: "fridge.warmOnTheRoad",
  dangerous: false,
  causes: [cause("fridge.notOn12", 4), cause("fridge.shortDrive", 2), callFor("fridge.relay", 1)],
  checks: [
    tryThis("fridge.setTo12", ["fridge.notOn12"], 1, 0),
    tryThis("fridge.howLongDriven", ["fridge.shortDrive"], 1, 0),
    tryThis("fridge.testRelay", ["fridge.relay"], 20, 2),
  ],
};

const warmCompressor: Symptom = {
  id: "fridge.warmCompressor",
  dangerous: false,
  causes: [
    causeIn("leisureBattery", "fridge.batteryLow", 4, {
      worseWhen: { store: "battery12", times: 5 },
      leadsTo: "leisureBattery.flatMornings",
    }),
    cause("fridge.setTooWarm", 3),
    cause("fridge.hotDay", 2),
    cause("fridge.justLoaded", 2),
    callFor("fridge.fuse", 1),
  ],
  checks: [
    tryThis("fridge.readBattery", ["fridge.batteryLow"], 1, 0, { mentions: ["leisureBattery"] }),
    tryThis("fridge.freeVents", ["fridge.hotDay"], 2, 0),
    tryThis("fridge.setColder", ["fridge.setTooWarm"], 60, 0),
    tryThis("fridge.giveItTime", ["fridge.justLoaded"], 240, 0),
    tryThis("fridge.changeFuse", ["fridge.fuse"], 15, 2),
  ],
};
