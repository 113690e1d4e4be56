import type { Cause, FaultCheck, Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, stopAndCall, tryThis } from "../fault-finding.ts";
import type { HeatingSpec } from "./spec.ts";

export const faults: SystemFaults<HeatingSpec> = {
  symptoms: (spec) => {
    const burns = spec.source !== "electric";
    return [
      noHeat(spec),
      ...(spec.source === "gas" || spec.source === "diesel" ? [] : [electricDead]),
      ...(burns ? [blowsCold(spec), stopAndCall("heating.exhaustInside", "heating.exhaustLeaks")] : []),
    ];
  },
};

const onGas = ({ source }: HeatingSpec): boolean => source === "gas" || source === "gasElectric";

const electricDead: Symptom = {
  id: "heating.electricDead",
  dangerous: false,
  causes: [
    causeIn("hookUp", "heating.noMains", 4, { leadsTo: "hookUp.noMains" }),
    causeIn("hookUp", "heating.postTooSmall", 3, { leadsTo: "hookUp.tripsAgain" }),
    cause("heating.notOnElectric", 3),
    callFor("heating.element", 1),
  ],
  checks: [
    tryThis("heating.mainsThere", ["heating.noMains"], 2, 0, { mentions: ["hookUp"] }),
    tryThis("heating.selectElectric", ["heating.notOnElectric"], 1, 0),
    tryThis("heating.lowerStage", ["heating.postTooSmall"], 5, 0, { after: ["heating.mainsThere"] }),
    tryThis("heating.measureElement", ["heating.element"], 20, 2),
  ],
};

/** What may be missing from a heater with a flame, and how it is seen. */
function supply(spec: HeatingSpec): {
  readonly causes: readonly Cause[];
  readonly checks: readonly FaultCheck[];
} {
  if (onGas(spec))
    return {
      causes: [
        causeIn("lpg", "heating.gasOut", 4, {
          worseWhen: { store: "lpg", times: 5 },
          leadsTo: "lpg.nothingLights",
        }),
      ],
      checks: [
        tryThis("heating.gasOpen", ["heating.gasOut"], 2, 0, { mentions: ["lpg"] }),
        tryThis("heating.anotherGasThing", ["heating.gasOut"], 2, 0, {
          mentions: ["lpg", "cooking"],
          after: ["heating.gasOpen"],
        }),
      ],
    };
  return {
    causes: [causeIn("fuel", "heating.fuelLow", 3, { worseWhen: { store: "fuel", times: 5 } })],
    checks: [tryThis("heating.readFuel", ["heating.fuelLow"], 1, 0, { mentions: ["fuel"] })],
  };
}

function noHeat(spec: HeatingSpec): Symptom {
  const burns = spec.source !== "electric";
  const { causes, checks } = burns ? supply(spec) : { causes: [], checks: [] };
  return {
    id: "heating.noHeat",
    dangerous: false,
    causes: [
      ...causes,
      ...(burns
        ? [
            causeIn("leisureBattery", "heating.batteryLow", 3, {
              worseWhen: { store: "battery12", times: 5 },
              leadsTo: "leisureBattery.flatMornings",
            }),
            cause("heating.flueBlocked", 1),
            cause("heating.windowOpen", 1),
          ]
        : []),
      cause("heating.notSet", 3),
      cause("heating.lockedOut", 3),
      callFor("heating.fuse", 1),
    ],
    checks: [
      tryThis("heating.setTwenty", ["heating.notSet"], 5, 0),
      ...checks,
      ...(burns
        ? [
            tryThis("heating.readBattery", ["heating.batteryLow"], 1, 0, { mentions: ["leisureBattery"] }),
            tryThis("heating.lookAtFlue", ["heating.flueBlocked"], 2, 0),
            tryThis("heating.shutWindow", ["heating.windowOpen"], 1, 0),
          ]
        : []),
      tryThis("heating.readCode", ["heating.lockedOut"], 1, 0),
      tryThis("heating.offAndOn", ["heating.lockedOut"], 10, 1, {
        after: ["heating.readCode", ...(burns ? ["heating.lookAtFlue"] : [])],
      }),
      tryThis("heating.changeFuse", ["heating.fuse"], 15, 2),
    ],
  };
}

/** The fan turns but there is no flame: what holds a heater off that is set right. */
function blowsCold(spec: HeatingSpec): Symptom {
  const { causes, checks } = supply(spec);
  return {
    id: "heating.blowsCold",
    dangerous: false,
    causes: [
      cause("heating.justStarted", 3),
      cause("heating.windowOpen", 3),
      ...causes,
      callFor("heating.noFlame", 1),
    ],
    checks: [
      tryThis("heating.waitFive", ["heating.justStarted"], 5, 0),
      tryThis("heating.shutWindow", ["heating.windowOpen"], 1, 0),
      ...checks,
      tryThis("heating.engineerLooks", ["heating.noFlame"], 45, 2),
    ],
  };
}
