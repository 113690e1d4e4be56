import type { Symptom, SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { FridgeSpec } from "./spec.ts";

export const faults: SystemFaults<FridgeSpec> = {
  symptoms: (spec) => (spec.type === "absorption" ? [warmAbsorption, ammonia] : [warmCompressor]),
};

const ammonia: Symptom = {
  id: "fridge.ammonia",
  dangerous: true,
  causes: [cause("fridge.coolantLeak", 1)],
  checks: [],
};

const warmAbsorption: Symptom = {
  id: "fridge.warm",
  dangerous: false,
  causes: [
    cause("fridge.wrongSource", 4),
    cause("fridge.notLevel", 3),
    cause("fridge.gasOut", 3, { store: "lpg", times: 5 }),
    cause("fridge.hotDay", 2),
    cause("fridge.parkedOn12", 2),
    cause("fridge.burnerOrElement", 1),
  ],
  checks: [
    tryThis("fridge.readSource", ["fridge.wrongSource", "fridge.parkedOn12"], 1, 0),
    tryThis("fridge.parkLevel", ["fridge.notLevel"], 10, 0),
    tryThis("fridge.anotherGasThing", ["fridge.gasOut"], 2, 0, { mentions: ["lpg", "cooking"] }),
    tryThis("fridge.freeVents", ["fridge.hotDay"], 2, 0),
    tryThis("fridge.tryOtherSource", ["fridge.burnerOrElement"], 120, 1, { after: ["fridge.readSource"] }),
    tryThis("fridge.cleanBurner", ["fridge.burnerOrElement"], 45, 2),
  ],
};

const warmCompressor: Symptom = {
  id: "fridge.warmCompressor",
  dangerous: false,
  causes: [
    cause("fridge.batteryLow", 4, { store: "battery12", times: 5 }),
    cause("fridge.setTooWarm", 3),
    cause("fridge.hotDay", 2),
    cause("fridge.fuse", 1),
  ],
  checks: [
    tryThis("fridge.readBattery", ["fridge.batteryLow"], 1, 0, { mentions: ["leisureBattery"] }),
    tryThis("fridge.setColder", ["fridge.setTooWarm"], 60, 0),
    tryThis("fridge.freeVents", ["fridge.hotDay"], 2, 0),
    tryThis("fridge.changeFuse", ["fridge.fuse"], 15, 2),
  ],
};
