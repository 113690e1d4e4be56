import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, tryThis } from "../fault-finding.ts";
import type { BikeRackSpec } from "./spec.ts";

export const faults: SystemFaults<BikeRackSpec> = {
  symptoms: () => [rattles, lampsHidden],
};

const rattles: Symptom = {
  id: "bikeRack.rattles",
  dangerous: false,
  causes: [cause("bikeRack.strapLoose", 5), cause("bikeRack.boltLoose", 2)],
  checks: [
    tryThis("bikeRack.tightenStraps", ["bikeRack.strapLoose"], 5, 0),
    tryThis("bikeRack.bikesOff", ["bikeRack.boltLoose"], 10, 1, { after: ["bikeRack.tightenStraps"] }),
    tryThis("bikeRack.tightenBolts", ["bikeRack.boltLoose"], 20, 2),
  ],
};

const lampsHidden: Symptom = {
  id: "bikeRack.lampsHidden",
  dangerous: false,
  causes: [
    cause("bikeRack.boardUnplugged", 4),
    cause("bikeRack.bikesInTheWay", 3),
    callFor("bikeRack.boardBulb", 1),
  ],
  checks: [
    tryThis("bikeRack.plugBoard", ["bikeRack.boardUnplugged"], 2, 0),
    tryThis("bikeRack.moveBikes", ["bikeRack.bikesInTheWay"], 10, 0),
    tryThis("bikeRack.changeBulb", ["bikeRack.boardBulb"], 20, 2),
  ],
};
