import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { LeisureBatterySpec } from "./spec.ts";

export const faults: SystemFaults<LeisureBatterySpec> = {
  symptoms: (spec) => [flatMornings(spec), allDead(spec)],
};

const flatMornings = (spec: LeisureBatterySpec): Symptom => ({
  id: "leisureBattery.flatMornings",
  dangerous: false,
  causes: [
    cause("leisureBattery.usedUp", 4, { store: "battery12", times: 4 }),
    causeIn("charging", "leisureBattery.noDrivingCharge", 2, { leadsTo: "charging.notOnTheRoad" }),
    causeIn("hookUp", "leisureBattery.noMainsCharge", 2, { leadsTo: "charging.notOnMains" }),
    causeIn("fridge", "leisureBattery.fridgeOnBattery", 2),
    causeIn("heating", "leisureBattery.heaterAllNight", 2),
    cause("leisureBattery.consumerLeftOn", 2),
    cause("leisureBattery.wornOut", 1),
    ...(spec.chemistry === "lfp" ? [cause("leisureBattery.tooColdToCharge", 1)] : []),
  ],
  checks: [
    tryThis("leisureBattery.readPanel", ["leisureBattery.usedUp", "leisureBattery.wornOut"], 10, 0),
    tryThis("leisureBattery.whatIsOn", ["leisureBattery.consumerLeftOn"], 3, 0),
    tryThis("leisureBattery.fridgeSetting", ["leisureBattery.fridgeOnBattery"], 1, 0, {
      mentions: ["fridge"],
    }),
    tryThis("leisureBattery.heaterSetting", ["leisureBattery.heaterAllNight"], 1, 0, {
      mentions: ["heating"],
    }),
    tryThis("leisureBattery.plugInAndRead", ["leisureBattery.noMainsCharge"], 15, 0, {
      after: ["leisureBattery.readPanel"],
      mentions: ["hookUp"],
    }),
    tryThis("leisureBattery.driveOneHour", ["leisureBattery.noDrivingCharge"], 60, 0, {
      after: ["leisureBattery.readPanel"],
      mentions: ["charging"],
    }),
    ...(spec.chemistry === "lfp"
      ? [tryThis("leisureBattery.warmTheVan", ["leisureBattery.tooColdToCharge"], 60, 0)]
      : []),
    tryThis(
      "leisureBattery.fusesAtBattery",
      ["leisureBattery.noDrivingCharge", "leisureBattery.noMainsCharge"],
      15,
      2,
    ),
    tryThis("leisureBattery.swapBattery", ["leisureBattery.wornOut"], 60, 2),
  ],
});

const allDead = (spec: LeisureBatterySpec): Symptom => ({
  id: "leisureBattery.allDead",
  dangerous: false,
  causes: [
    cause("leisureBattery.masterOff", 4),
    cause("leisureBattery.cutOff", 3, { store: "battery12", times: 5 }),
    ...(spec.isolator ? [cause("leisureBattery.isolatorOff", 2)] : []),
    callFor("leisureBattery.mainFuse", 1),
  ],
  checks: [
    tryThis("leisureBattery.pressMaster", ["leisureBattery.masterOff"], 1, 0),
    tryThis("leisureBattery.readDead", ["leisureBattery.cutOff"], 1, 0, {
      after: ["leisureBattery.pressMaster"],
    }),
    ...(spec.isolator ? [tryThis("leisureBattery.turnIsolator", ["leisureBattery.isolatorOff"], 2, 1)] : []),
    tryThis("leisureBattery.startEngine", ["leisureBattery.cutOff"], 10, 0, {
      after: ["leisureBattery.pressMaster"],
      mentions: ["charging"],
    }),
    tryThis("leisureBattery.plugInAndWait", ["leisureBattery.cutOff"], 15, 0, {
      after: ["leisureBattery.pressMaster"],
      mentions: ["hookUp"],
    }),
    tryThis("leisureBattery.testMainFuse", ["leisureBattery.mainFuse"], 15, 2),
  ],
});
