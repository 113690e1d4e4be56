import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const upkeepOperations = {
  fleetDue: operation({
    method: "GET",
    url: "/upkeep",
    tag: "upkeep",
    summary: "What falls due on the fleet, nearest first, and open defects",
    access: may("vehicle.see"),
    query: s.fleetDueQuerySchema,
    answer: s.fleetDueSchema,
  }),
  readUpkeep: operation({
    method: "GET",
    url: "/vehicles/:id/upkeep",
    tag: "upkeep",
    summary: "Due-date book, history, damp, water, frost and defects of a vehicle",
    access: may("vehicle.see"),
    params: byId,
    answer: s.vehicleUpkeepSchema,
  }),
  addUpkeep: operation({
    method: "POST",
    url: "/vehicles/:id/upkeep",
    tag: "upkeep",
    summary: "Enter what was done or read, once and for ever; the next due date follows",
    access: may("upkeep.write"),
    params: byId,
    body: s.upkeepEntrySchema,
    answer: s.vehicleUpkeepSchema,
  }),
  addDefect: operation({
    method: "POST",
    url: "/vehicles/:id/defects",
    tag: "upkeep",
    summary: "Note a defect: safety stops the vehicle, comfort is told to the hirer",
    access: may("upkeep.write"),
    params: byId,
    body: s.newDefectSchema,
    answer: s.vehicleUpkeepSchema,
  }),
  closeDefect: operation({
    method: "POST",
    url: "/defects/:id/close",
    tag: "upkeep",
    summary: "Close a defect: who mended it and how",
    access: may("upkeep.write"),
    params: byId,
    body: s.closeDefectSchema,
    answer: s.vehicleUpkeepSchema,
  }),
  turnarounds: operation({
    method: "GET",
    url: "/yard/turnarounds",
    tag: "yard",
    summary: "Vehicles that came back: what is to be done to each, in which order",
    access: may("day.see"),
    answer: s.turnaroundsSchema,
  }),
} as const;
