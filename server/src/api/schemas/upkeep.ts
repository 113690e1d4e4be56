import { DAMP_BANDS, DEFECT_CLASSES, DUE_KINDS, TURNAROUND_SKILLS } from "@setfair/engine";
import * as z from "zod";
import { dateSchema, idSchema, instantSchema, localSchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

const km = z.number().min(0).max(2_000_000);
const vehicle = z.object({ id: idSchema, name: z.string(), registration: z.string() });

export const dueLineSchema = named(
  "DueLine",
  z.object({
    kind: z.enum(DUE_KINDS),
    /** law: nobody overrides it · policy: a named person may · guidance: treated as policy */
    status: z.enum(["law", "policy", "guidance"]),
    source: z.string(),
    dueOn: dateSchema.nullable(),
    dueKm: km.nullable(),
    /** days left, negative when over; null where only the distance counts */
    days: z.int().nullable(),
    state: z.enum(["inDate", "soon", "over", "missing"]),
    /** the last time it was done */
    last: z
      .object({ on: dateSchema, who: z.string(), reference: z.string().nullable(), km: km.nullable() })
      .nullable(),
  }),
);

export const defectSchema = named(
  "Defect",
  z.object({
    id: idSchema,
    class: z.enum(DEFECT_CLASSES),
    what: z.string(),
    where: z.string(),
    notedBy: z.string(),
    at: instantSchema,
    hireId: idSchema.nullable(),
    photograph: z.string().nullable(),
    /** hirers who were told of it and signed, newest first */
    told: z.array(
      z.object({ hireId: idSchema, reference: z.string(), signer: z.string(), at: instantSchema }),
    ),
    closed: z.object({ at: instantSchema, by: z.string(), how: z.string() }).nullable(),
  }),
);

export const vehicleUpkeepSchema = named(
  "VehicleUpkeep",
  z.object({
    today: dateSchema,
    odometer: z.object({ km, on: dateSchema }).nullable(),
    due: z.array(dueLineSchema),
    /** newest first */
    history: z.array(
      z.object({
        id: idSchema,
        duty: z.enum(DUE_KINDS),
        on: dateSchema,
        who: z.string(),
        reference: z.string().nullable(),
        km: km.nullable(),
        dueOn: dateSchema.nullable(),
        dueKm: km.nullable(),
      }),
    ),
    /** newest first */
    damp: z.array(
      z.object({
        id: idSchema,
        on: dateSchema,
        position: z.string(),
        percent: z.number(),
        band: z.enum(DAMP_BANDS),
        meter: z.string(),
        weather: z.string(),
        who: z.string(),
      }),
    ),
    water: z.array(z.object({ id: idSchema, on: dateSchema, act: z.string(), who: z.string() })),
    /** the last word on frost: in use, drained, laid up */
    frost: z.object({ on: dateSchema, state: z.string(), who: z.string() }).nullable(),
    defects: z.array(defectSchema),
  }),
);

export const fleetDueSchema = named(
  "FleetDue",
  z.object({
    today: dateSchema,
    vehicles: z.array(
      z.object({
        vehicle,
        /** what is over or falls due within the asked days, nearest first */
        due: z.array(dueLineSchema),
        openDefects: z.object({ safety: z.int(), comfort: z.int() }),
      }),
    ),
  }),
);
export const fleetDueQuerySchema = z.object({ days: z.coerce.number().int().min(0).max(800).optional() });

const who = textSchema(120);
export const upkeepEntrySchema = named(
  "NewUpkeep",
  z.discriminatedUnion("kind", [
    z.object({
      kind: z.literal("done"),
      duty: z.enum(DUE_KINDS),
      on: dateSchema,
      who,
      reference: textSchema(200).nullable().optional(),
      km: km.nullable().optional(),
      /** as its papers say; worked out from the interval where left out */
      dueOn: dateSchema.nullable().optional(),
    }),
    z.object({
      kind: z.literal("damp"),
      on: dateSchema,
      who,
      position: textSchema(120),
      percent: z.number().min(0).max(100),
      meter: textSchema(120),
      weather: textSchema(120),
    }),
    z.object({ kind: z.literal("water"), on: dateSchema, who, act: z.enum(["flushed", "sanitised"]) }),
    z.object({
      kind: z.literal("frost"),
      on: dateSchema,
      who,
      state: z.enum(["inUse", "drained", "winterised", "laidUp"]),
    }),
  ]),
);
export const newDefectSchema = named(
  "NewDefect",
  z.object({
    class: z.enum(DEFECT_CLASSES),
    what: textSchema(200),
    where: textSchema(120),
    hireId: idSchema.nullable().optional(),
    photograph: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .nullable()
      .optional(),
  }),
);
export const closeDefectSchema = z.object({ how: textSchema(300) });

export const turnaroundSchema = named(
  "Turnaround",
  z.object({
    /** chain of its records: `<hireId>.turnaround` */
    id: idSchema,
    hireId: idSchema,
    reference: z.string(),
    vehicle,
    backAt: localSchema,
    /** when it goes out next, where that is known */
    nextOut: localSchema.nullable(),
    ready: z.boolean(),
    jobs: z.array(
      z.object({
        id: z.string(),
        code: z.string(),
        minutes: z.int(),
        skill: z.enum(TURNAROUND_SKILLS),
        done: z.boolean(),
        /** proposed beginning today; null when done or when the day holds no room for it */
        start: localSchema.nullable(),
      }),
    ),
  }),
);
export const turnaroundsSchema = named(
  "Turnarounds",
  z.object({ date: dateSchema, turnarounds: z.array(turnaroundSchema) }),
);
