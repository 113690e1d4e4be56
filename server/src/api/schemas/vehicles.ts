import { dueDateSchema, vehicleDescriptionSchema, vehicleTicketSchema } from "@setfair/engine";
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
    /** MAM less the mass in running order and the options, kg; with the latest weighbridge ticket */
    payloadKg: z.number(),
    /** kinds of the systems fitted, in the order of the description */
    fitted: z.array(z.string()),
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
    /** the ticket that the masses behind `derived` come from */
    weighed: z
      .object({
        ticketId: idSchema,
        /** something was fitted or taken out since: the masses hold, their doubt is that of a stated mass */
        isOlderThanFitting: z.boolean(),
      })
      .nullable(),
    tickets: z.array(z.lazy(() => ticketRowSchema)),
    /** the version written last, whatever its date: a new one is based on its `versionId` */
    newest: z.object({
      versionId: idSchema,
      description: descriptionSchema,
      vehicleClass: z.string(),
      maxDogs: z.int(),
    }),
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

export const ticketSchema = named("VehicleTicket", vehicleTicketSchema);

/** A weighbridge ticket as kept. */
export const ticketRowSchema = named(
  "KeptTicket",
  z.object({
    id: idSchema,
    ticket: ticketSchema,
    by: z.string(),
    at: z.string(),
    withdrawnAt: z.string().nullable(),
  }),
);

/** One thing that differs from the version before (engine: DescriptionChange). */
export const changeSchema = named(
  "DescriptionChange",
  z.object({
    what: z.enum(["system", "field"]),
    kind: z.string().nullable(),
    change: z.enum(["fitted", "removed"]).optional(),
    field: z.string().optional(),
    from: z.union([z.string(), z.number(), z.boolean()]).nullable().optional(),
    to: z.union([z.string(), z.number(), z.boolean()]).nullable().optional(),
  }),
);

/** Every version of a description, newest first. */
export const vehicleVersionsSchema = named(
  "VehicleVersions",
  z.object({
    id: idSchema,
    name: z.string(),
    versions: z.array(
      z.object({
        versionId: idSchema,
        validFrom: dateSchema,
        at: z.string(),
        by: z.string().nullable(),
        /** a later one was written for the same day */
        isReplaced: z.boolean(),
        isInForce: z.boolean(),
        changes: z.array(changeSchema),
      }),
    ),
  }),
);

export const vehicleVersionSchema = named(
  "VehicleVersion",
  z.object({ versionId: idSchema, validFrom: dateSchema, description: descriptionSchema }),
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
