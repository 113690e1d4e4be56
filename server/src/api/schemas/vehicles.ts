import { dueDateSchema, vehicleDescriptionSchema } from "@setfair/engine";
import * as z from "zod";
import { dateSchema, findingSchema, idSchema, localSchema, roomResultSchema } from "./common.ts";
import { named } from "./named.ts";

export const descriptionSchema = named("VehicleDescription", vehicleDescriptionSchema);

export const vehicleSummarySchema = named(
  "VehicleSummary",
  z.object({
    id: idSchema,
    name: z.string(),
    registration: z.string(),
    bodyStyle: z.string(),
    belts: z.int(),
    berths: z.int(),
    mamKg: z.number(),
    now: z.enum(["atDepot", "onHire"]),
    nextOut: z.object({ hireId: idSchema, reference: z.string(), from: localSchema }).nullable(),
    /** due dates, nearest first, with the days left */
    due: z.array(z.object({ kind: z.string(), dueOn: dateSchema, days: z.int() })),
  }),
);

export const vehiclePageSchema = named(
  "VehiclePage",
  z.object({
    summary: vehicleSummarySchema,
    description: descriptionSchema,
    /** what follows from it: payload, axles, stores (engine: VehicleFigures) */
    derived: roomResultSchema,
    findings: z.array(findingSchema),
    versions: z.array(z.object({ versionId: idSchema, validFrom: dateSchema, at: z.string() })),
    hires: z.array(
      z.object({
        hireId: idSchema,
        reference: z.string(),
        customer: z.string(),
        from: localSchema,
        to: localSchema,
        stage: z.string(),
      }),
    ),
    marks: z.array(z.lazy(() => markSchema)),
    dueDates: z.array(dueDateSchema),
    vehicleClass: z.string(),
    maxDogs: z.int(),
  }),
);

/** A mark that is known from an earlier walk-round; the content is the engine's `mark` of the condition room. */
export const markSchema = named(
  "KnownMark",
  z.object({
    recordId: idSchema,
    hireId: idSchema.nullable(),
    since: z.string(),
    part: z.string(),
    view: z.string(),
    xShare: z.number(),
    yShare: z.number(),
    markKind: z.string(),
    sizeMm: z.number().nullable(),
    note: z.string().nullable(),
    photographs: z.array(z.string()),
  }),
);

export const putVehicleSchema = named(
  "PutVehicle",
  z.strictObject({
    description: descriptionSchema,
    dueDates: z.array(dueDateSchema).max(40).optional(),
    /** the depot's class of vehicle, by which it is priced */
    vehicleClass: z.string().min(1).max(40).optional(),
    /** most dogs that the depot takes in it */
    maxDogs: z.int().min(0).max(6).optional(),
  }),
);
