import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, may } from "./shared.ts";

export const depotOperations = {
  readDepot: operation({
    method: "GET",
    url: "/depot",
    tag: "depot",
    summary: "Hours, turnaround, people on a usual day, school holidays",
    access: may("terms.see"),
    answer: s.depotSettingsSchema,
  }),
  firstSteps: operation({
    method: "GET",
    url: "/first-steps",
    tag: "depot",
    summary: "What a new firm has still to enter before its first hire",
    access: may("terms.write"),
    answer: s.firstStepsSchema,
  }),
  readDepotTimes: operation({
    method: "GET",
    url: "/depot/times",
    tag: "depot",
    summary: "How long things take at this depot, and from when each gate counts",
    access: may("terms.see"),
    answer: s.depotTimesSchema,
  }),
  putDepotTimes: operation({
    method: "PUT",
    url: "/depot/times",
    tag: "depot",
    summary: "Other times of the depot; they hold at once",
    access: may("terms.write"),
    query: basedOn,
    body: s.putDepotTimesSchema,
    answer: s.depotTimesSchema,
  }),
  readDepotFigures: operation({
    method: "GET",
    url: "/depot/figures",
    tag: "depot",
    summary:
      "Days of messages to hirers, life of a hirer's link, km a day by which a due distance is foreseen",
    access: may("terms.see"),
    answer: s.depotFiguresSchema,
  }),
  putDepotFigures: operation({
    method: "PUT",
    url: "/depot/figures",
    tag: "depot",
    summary: "Other figures; they hold at once, for what has not gone out or been made",
    access: may("terms.write"),
    query: basedOn,
    body: s.putDepotFiguresSchema,
    answer: s.depotFiguresSchema,
  }),
  putDepot: operation({
    method: "PUT",
    url: "/depot",
    tag: "depot",
    summary: "Change them; refused where somebody changed them meanwhile",
    access: may("terms.write"),
    body: s.putDepotSchema,
    answer: s.depotSettingsSchema,
  }),
} as const;
