import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { CassetteToiletSpec } from "./spec.ts";

export const faults: SystemFaults<CassetteToiletSpec> = {
  symptoms: (spec) => [willNotComeOut, bladeStuck, noFlush(spec), leaks, lightWrong, smells],
};

const willNotComeOut: Symptom = {
  id: "cassetteToilet.willNotComeOut",
  dangerous: false,
  causes: [
    cause("cassetteToilet.bladeOpen", 5),
    cause("cassetteToilet.catchHolds", 2),
    cause("cassetteToilet.notLevel", 1),
    callFor("cassetteToilet.jammed", 1),
  ],
  checks: [
    tryThis("cassetteToilet.openAndClose", ["cassetteToilet.bladeOpen"], 2, 0),
    tryThis("cassetteToilet.liftCatch", ["cassetteToilet.catchHolds"], 2, 0, {
      after: ["cassetteToilet.openAndClose"],
    }),
    tryThis("cassetteToilet.parkLevel", ["cassetteToilet.notLevel"], 10, 0),
    tryThis("cassetteToilet.freeIt", ["cassetteToilet.jammed"], 30, 2),
  ],
};

const bladeStuck: Symptom = {
  id: "cassetteToilet.bladeStuck",
  dangerous: false,
  causes: [
    cause("cassetteToilet.sealDry", 5),
    cause("cassetteToilet.cassetteNotHome", 2),
    callFor("cassetteToilet.bladeBroken", 1),
  ],
  checks: [
    tryThis("cassetteToilet.pushHome", ["cassetteToilet.cassetteNotHome"], 2, 0),
    tryThis("cassetteToilet.wetBlade", ["cassetteToilet.sealDry"], 10, 0),
    tryThis("cassetteToilet.changeBlade", ["cassetteToilet.bladeBroken"], 45, 2),
  ],
};

const noFlush = (spec: CassetteToiletSpec): Symptom => {
  const own = spec.flushFrom === "own";
  return {
    id: "cassetteToilet.noFlush",
    dangerous: false,
    causes: [
      own
        ? cause("cassetteToilet.flushTankEmpty", 4)
        : causeIn("freshWater", "cassetteToilet.noWater", 4, {
            worseWhen: { store: "freshWater", times: 4 },
            leadsTo: "freshWater.nothingComes",
          }),
      causeIn("leisureBattery", "cassetteToilet.noPower", 2, {
        worseWhen: { store: "battery12", times: 3 },
        leadsTo: "leisureBattery.allDead",
      }),
      callFor("cassetteToilet.flushPump", 1),
    ],
    checks: [
      own
        ? tryThis("cassetteToilet.fillFlushTank", ["cassetteToilet.flushTankEmpty"], 3, 0)
        : tryThis("cassetteToilet.doTapsRun", ["cassetteToilet.noWater"], 1, 0, {
            mentions: ["freshWater"],
          }),
      tryThis("cassetteToilet.readBattery", ["cassetteToilet.noPower"], 1, 0, {
        mentions: ["leisureBattery"],
      }),
      tryThis("cassetteToilet.doLightsWork", ["cassetteToilet.noPower"], 1, 0, { mentions: ["lights"] }),
      tryThis("cassetteToilet.testPump", ["cassetteToilet.flushPump"], 20, 2),
    ],
  };
};

const leaks: Symptom = {
  id: "cassetteToilet.leaks",
  dangerous: false,
  causes: [
    cause("cassetteToilet.overfull", 3, { store: "cassette", times: 5 }),
    cause("cassetteToilet.cassetteNotHome", 3),
    cause("cassetteToilet.sealDirty", 3),
    callFor("cassetteToilet.sealWorn", 1),
  ],
  checks: [
    tryThis("cassetteToilet.pushHome", ["cassetteToilet.cassetteNotHome"], 2, 0),
    tryThis("cassetteToilet.emptyNow", ["cassetteToilet.overfull"], 15, 0),
    tryThis("cassetteToilet.wipeSeal", ["cassetteToilet.sealDirty"], 5, 1, {
      after: ["cassetteToilet.emptyNow"],
    }),
    tryThis("cassetteToilet.changeSeal", ["cassetteToilet.sealWorn"], 30, 2),
  ],
};

const lightWrong: Symptom = {
  id: "cassetteToilet.lightWrong",
  dangerous: false,
  causes: [
    cause("cassetteToilet.floatStuck", 4),
    cause("cassetteToilet.cassetteNotHome", 2),
    callFor("cassetteToilet.lightBroken", 1),
  ],
  checks: [
    tryThis("cassetteToilet.pushHome", ["cassetteToilet.cassetteNotHome"], 2, 0),
    tryThis("cassetteToilet.rinseFloat", ["cassetteToilet.floatStuck"], 15, 0),
    tryThis("cassetteToilet.testLight", ["cassetteToilet.lightBroken"], 20, 2),
  ],
};

const smells: Symptom = {
  id: "cassetteToilet.smells",
  dangerous: false,
  causes: [cause("cassetteToilet.bladeLeftOpen", 3), cause("cassetteToilet.fluidSpent", 4)],
  checks: [
    tryThis("cassetteToilet.shutBlade", ["cassetteToilet.bladeLeftOpen"], 1, 0),
    tryThis("cassetteToilet.emptyAndDose", ["cassetteToilet.fluidSpent"], 15, 0),
  ],
};
