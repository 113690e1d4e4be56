import { vehicleDescriptionSchema } from "@setfair/engine";
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
    /** fully built description or only a plan: where it is now */
    now: z.enum(["atDepot", "onHire"]),
    nextOut: z.object({ hireId: idSchema, reference: z.string(), from: localSchema }).nullable(),
    /** the nearest due date and what it is of */
    due: z.array(z.object({ what: z.string(), on: dateSchema, days: z.int() })),
  }),
);

export const vehiclePageSchema = named(
  "VehiclePage",
  z.object({
    summary: vehicleSummarySchema,
    description: descriptionSchema,
    /** what follows from it: payload, axles, stores (engine: DerivedVehicle) */
    derived: roomResultSchema,
    findings: z.array(findingSchema),
    versions: z.array(z.object({ version: z.int(), validFrom: dateSchema, by: z.string(), at: z.string() })),
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
    dueDates: z.array(z.object({ what: z.string(), on: dateSchema })),
  }),
);

/** A mark on the vehicle that is known from an earlier walk-round. */
export const markSchema = named(
  "KnownMark",
  z.object({
    id: idSchema,
    view: z.string(),
    part: z.string().nullable(),
    /** where on the drawing, 0 to 1 from the left and from the top */
    x: z.number().nullable(),
    y: z.number().nullable(),
    what: z.string(),
    lengthMm: z.number().nullable(),
    class: z.string().nullable(),
    photos: z.array(z.string()),
    since: z.string(),
    hireId: idSchema.nullable(),
  }),
);

export const putVehicleSchema = named(
  "PutVehicle",
  z.strictObject({
    description: descriptionSchema,
    dueDates: z
      .array(z.strictObject({ what: z.string().min(1).max(40), on: dateSchema }))
      .max(40)
      .optional(),
  }),
);
