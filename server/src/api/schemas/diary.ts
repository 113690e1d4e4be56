import { BLOCK_KINDS, DUE_KINDS } from "@setfair/engine";
import * as z from "zod";
import { availabilitySchema } from "./availability.ts";
import { dateSchema, findingSchema, idSchema, localSchema, moneySchema } from "./common.ts";
import { openingHoursSchema } from "./depot.ts";
import { stageSchema } from "./hires.ts";
import { named } from "./named.ts";

export const diaryQuerySchema = z.object({
  from: dateSchema,
  /** the last day, at most 800 days on */
  to: dateSchema,
});

export const blockSchema = named(
  "VehicleBlock",
  z.object({
    id: idSchema,
    vehicleId: idSchema,
    kind: z.enum(BLOCK_KINDS),
    note: z.string(),
    from: localSchema,
    to: localSchema,
  }),
);

export const diarySchema = named(
  "Diary",
  z.object({
    from: dateSchema,
    to: dateSchema,
    now: localSchema,
    hours: openingHoursSchema,
    turnaroundMinutes: z.int(),
    vehicles: z.array(
      z.object({
        id: idSchema,
        name: z.string(),
        registration: z.string(),
        vehicleClass: z.string(),
        /** last days on which what must be renewed is good */
        due: z.array(z.object({ kind: z.enum(DUE_KINDS), dueOn: dateSchema })),
      }),
    ),
    /** whatever has a vehicle then; enquiries and quotes hold none yet */
    hires: z.array(
      z.object({
        id: idSchema,
        reference: z.string(),
        customer: z.string(),
        stage: stageSchema,
        vehicleId: idSchema,
        from: localSchema,
        to: localSchema,
        /** stays on its vehicle when the diary is tidied */
        pinned: z.boolean(),
      }),
    ),
    blocks: z.array(blockSchema),
    schoolHolidays: z.array(z.object({ from: dateSchema, to: dateSchema })),
  }),
);

export const newBlockSchema = named(
  "NewVehicleBlock",
  z.strictObject({
    kind: z.enum(BLOCK_KINDS),
    note: z.string().trim().max(300).default(""),
    from: localSchema,
    to: localSchema,
  }),
);

export const hireVehiclesSchema = named(
  "HireVehicles",
  z.object({
    /** the one it has now */
    current: idSchema.nullable(),
    /** the class that was quoted, and what the accepted quote says */
    currentClass: z.string().nullable(),
    quoted: moneySchema.nullable(),
    pinned: z.boolean(),
    vehicles: availabilitySchema.shape.vehicles,
    classes: z.record(z.string(), z.string()),
  }),
);

export const moveHireSchema = named(
  "MoveHire",
  z.strictObject({
    vehicleId: idSchema,
    /** the vehicle it had when the move was looked at: where it has another now, the move is refused */
    was: idSchema.nullable(),
  }),
);
export const pinHireSchema = named("PinHire", z.strictObject({ pinned: z.boolean() }));

const moveSchema = z.object({
  hireId: idSchema,
  reference: z.string(),
  customer: z.string(),
  at: localSchema,
  from: idSchema,
  to: idSchema,
});
export const tidySchema = named(
  "DiaryTidy",
  z.object({
    moves: z.array(moveSchema),
    /** hires of `nights` that the free time would hold, before and after */
    nights: z.int(),
    before: z.int(),
    after: z.int(),
    /** how many bookings were looked at, and how many of them may not move */
    bookings: z.int(),
    staying: z.int(),
    findings: z.array(findingSchema),
  }),
);
export const applyTidySchema = named(
  "ApplyDiaryTidy",
  z.strictObject({
    moves: z
      .array(z.strictObject({ hireId: idSchema, from: idSchema, to: idSchema }))
      .min(1)
      .max(500),
  }),
);
