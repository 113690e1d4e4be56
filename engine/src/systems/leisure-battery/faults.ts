import type { Symptom, SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { LeisureBatterySpec } from "./spec.ts";

export const faults: SystemFaults<LeisureBatterySpec> = {
  symptoms: (spec) => [flatMornings(spec), allDead(spec)],
};

const flatMornings = (spec: LeisureBatterySpec): Symptom => ({
  id: "leisureBattery.flatMornings",
  dangerous: false,
  causes: [
    cause("leisureBattery.usedUp", 4, { store: "battery12", times: 4 }),
    cause("leisureBattery.noDrivingCharge", 2),
    cause("leisureBattery.noMainsCharge", 2),
    cause("leisureBattery.consumerLeftOn", 2),
    cause("leisureBattery.wornOut", 1),
    ...(spec.chemistry === "lfp" ? [cause("leisureBattery.tooColdToCharge", 1)] : []),
  ],
  checks: [
    tryThis("leisureBattery.readPanel", ["leisureBattery.usedUp", "leisureBattery.wornOut"], 1, 0),
    tryThis("leisureBattery.whatIsOn", ["leisureBattery.consumerLeftOn"], 3, 0),
    tryThis("leisureBattery.driveOneHour", ["leisureBattery.noDrivingCharge"], 60, 0, {
      after: ["leisureBattery.readPanel"],
      mentions: ["charging"],
    }),
    tryThis("leisureBattery.plugInAndRead", ["leisureBattery.noMainsCharge"], 15, 0, {
      after: ["leisureBattery.readPanel"],
      mentions: ["hookUp"],
    }),
    tryThis(
      "leisureBattery.fusesAtBattery",
      ["leisureBattery.noDrivingCharge", "leisureBattery.noMainsCharge"],
      15,
      2,
    ),
    ...(spec.chemistry === "lfp"
      ? [tryThis("leisureBattery.warmTheVan", ["leisureBattery.tooColdToCharge"], 60, 0)]
      : []),
  ],
});

const allDead = (spec: LeisureBatterySpec): Symptom => ({
  id: "leisureBattery.allDead",
  dangerous: false,
  causes: [
    cause("leisureBattery.masterOff", 4),
    cause("leisureBattery.cutOff", 3, { store: "battery12", times: 5 }),
    ...(spec.isolator ? [cause("leisureBattery.isolatorOff", 2)] : []),
    cause("leisureBattery.mainFuse", 1),
  ],
  checks: [
    tryThis("leisureBattery.pressMaster", ["leisureBattery.masterOff"], 1, 0),
    ...(spec.isolator ? [tryThis("leisureBattery.turnIsolator", ["leisureBattery.isolatorOff"], 2, 1)] : []),
    tryThis("leisureBattery.startEngine", ["leisureBattery.cutOff"], 10, 0, {
      after: ["leisureBattery.pressMaster"],
      mentions: ["charging"],
    }),
    tryThis("leisureBattery.testMainFuse", ["leisureBattery.mainFuse"], 15, 2),
  ],
});
