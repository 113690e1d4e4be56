import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const vehiclesOperations = {
  listVehicles: operation({
    method: "GET",
    url: "/vehicles",
    tag: "vehicles",
    summary: "The fleet",
    access: may("vehicle.see"),
    answer: z.object({ vehicles: z.array(s.vehicleSummarySchema) }),
  }),
  readVehicle: operation({
    method: "GET",
    url: "/vehicles/:id",
    tag: "vehicles",
    summary: "One vehicle and what follows from its description",
    access: may("vehicle.see"),
    params: byId,
    answer: s.vehiclePageSchema,
  }),
  putVehicle: operation({
    method: "PUT",
    url: "/vehicles/:id",
    tag: "vehicles",
    summary: "A new dated version of the description",
    access: may("vehicle.write"),
    params: byId,
    body: s.putVehicleSchema,
    answer: s.vehiclePageSchema,
  }),
} as const;
