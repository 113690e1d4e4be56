import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, tryThis } from "../fault-finding.ts";
import type { BedsSpec } from "./spec.ts";

export const faults: SystemFaults<BedsSpec> = {
  symptoms: (spec) => [...(spec.upper ? [willNotMove] : []), sags],
};

const willNotMove: Symptom = {
  id: "beds.willNotMove",
  dangerous: false,
  causes: [
    cause("beds.latchShut", 4),
    cause("beds.uneven", 3),
    cause("beds.switchOff", 2),
    callFor("beds.fuse", 1),
  ],
  checks: [
    tryThis("beds.keySwitch", ["beds.switchOff"], 1, 0),
    tryThis("beds.openLatches", ["beds.latchShut"], 2, 0),
    tryThis("beds.evenOut", ["beds.uneven"], 3, 1, { after: ["beds.openLatches"] }),
    tryThis("beds.byHand", ["beds.fuse"], 20, 2),
  ],
};

const sags: Symptom = {
  id: "beds.sags",
  dangerous: false,
  causes: [cause("beds.slatOut", 4), cause("beds.slatBroken", 2)],
  checks: [
    tryThis("beds.putSlatBack", ["beds.slatOut"], 3, 0),
    tryThis("beds.moveSlat", ["beds.slatBroken"], 3, 0),
  ],
};
