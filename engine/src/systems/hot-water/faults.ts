import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { HotWaterSpec } from "./spec.ts";

export const faults: SystemFaults<HotWaterSpec> = {
  symptoms: (spec) => [cold(spec), smells, ...(spec.frostValveC > 0 ? [lostOvernight] : [])],
};

function cold(spec: HotWaterSpec): Symptom {
  const gas = spec.source === "gas" || spec.source === "gasElectric";
  const mains = spec.source !== "gas" && spec.source !== "diesel";
  const diesel = spec.source.startsWith("diesel");
  return {
    id: "hotWater.cold",
    dangerous: false,
    causes: [
      cause("hotWater.modeOff", 4),
      causeIn("freshWater", "hotWater.noWater", 2, {
        worseWhen: { store: "freshWater", times: 4 },
        leadsTo: "freshWater.nothingComes",
      }),
      cause("hotWater.airInBoiler", 2),
      ...(gas
        ? [
            causeIn("lpg", "hotWater.noGas", 2, {
              worseWhen: { store: "lpg", times: 5 },
              leadsTo: "lpg.nothingLights",
            }),
          ]
        : []),
      ...(diesel ? [causeIn("fuel", "hotWater.noFuel", 2, { worseWhen: { store: "fuel", times: 5 } })] : []),
      ...(mains ? [causeIn("hookUp", "hotWater.noMains", 2, { leadsTo: "hookUp.noMains" })] : []),
      cause("hotWater.lockedOut", 1),
    ],
    checks: [
      tryThis("hotWater.openHotTap", ["hotWater.airInBoiler", "hotWater.noWater"], 2, 0, {
        mentions: ["freshWater"],
      }),
      tryThis("hotWater.runSteady", ["hotWater.airInBoiler"], 3, 0),
      tryThis("hotWater.setMode", ["hotWater.modeOff"], 20, 0),
      ...(gas ? [tryThis("hotWater.gasOpen", ["hotWater.noGas"], 2, 0, { mentions: ["lpg"] })] : []),
      ...(diesel ? [tryThis("hotWater.readFuel", ["hotWater.noFuel"], 1, 0, { mentions: ["fuel"] })] : []),
      ...(mains
        ? [tryThis("hotWater.mainsThere", ["hotWater.noMains"], 2, 0, { mentions: ["hookUp"] })]
        : []),
      ...(mains && spec.source !== "electric"
        ? [
            tryThis(
              "hotWater.otherSource",
              [gas ? "hotWater.noGas" : "hotWater.noFuel", "hotWater.noMains"],
              20,
              1,
            ),
          ]
        : []),
      tryThis("hotWater.offAndOn", ["hotWater.lockedOut"], 10, 1, { after: ["hotWater.setMode"] }),
    ],
  };
}

const smells: Symptom = {
  id: "hotWater.smells",
  dangerous: false,
  causes: [cause("hotWater.stale", 4), callFor("hotWater.needsCleaning", 1)],
  checks: [
    tryThis("hotWater.runThrough", ["hotWater.stale"], 10, 0),
    tryThis("hotWater.cleanIt", ["hotWater.needsCleaning"], 60, 2),
  ],
};

const lostOvernight: Symptom = {
  id: "hotWater.lostOvernight",
  dangerous: false,
  causes: [
    cause("hotWater.frostValveOpened", 8),
    cause("hotWater.drainOpen", 2),
    callFor("hotWater.valveBroken", 0.5),
  ],
  checks: [
    tryThis("hotWater.lookAtValve", ["hotWater.frostValveOpened"], 2, 0),
    tryThis("hotWater.warmAndClose", ["hotWater.frostValveOpened"], 30, 0, {
      after: ["hotWater.lookAtValve"],
    }),
    tryThis("hotWater.shutAllDrains", ["hotWater.drainOpen"], 3, 0),
    tryThis("hotWater.changeValve", ["hotWater.valveBroken"], 45, 2),
  ],
};
