import { INCIDENT_CAUSES, NOTICES, partySchema } from "@setfair/engine";
import * as z from "zod";
import {
  dateSchema,
  factsSchema,
  figureSchema,
  findingSchema,
  hashSchema,
  idSchema,
  instantSchema,
  localSchema,
  moneySchema,
  textSchema,
} from "./common.ts";
import { named } from "./named.ts";

export const CHANGE_KINDS = [
  "vehicle",
  "extension",
  "late",
  "early",
  "party",
  "driverAbsent",
  "teamIll",
  "noShow",
  "breakdown",
  "accident",
  "notice",
] as const;
export const CHANGE_PAPERS = ["letter", "agreement"] as const;
export const CREW_SKILLS = ["desk", "cleaner", "yard", "technician"] as const;

const note = z.string().trim().max(500).default("");
/** another hire gives way: it goes to this vehicle */
const moves = z
  .array(z.strictObject({ hireId: idSchema, vehicleId: idSchema }))
  .max(10)
  .default([]);
const incident = {
  what: textSchema(500),
  where: textSchema(200),
  at: localSchema,
  drivable: z.boolean(),
  /** whose cause it is; unknown is decided later */
  cause: z.enum(INCIDENT_CAUSES),
  /** nights that could not be used */
  nightsLost: z.int().min(0).max(365).default(0),
  /** when the insurer was told; null while nobody has */
  insurerToldAt: localSchema.nullable().default(null),
};

/** What has changed, one procedure each. */
export const hireChangeSchema = named(
  "HireChange",
  z.discriminatedUnion("kind", [
    z.strictObject({
      kind: z.literal("vehicle"),
      vehicleId: idSchema,
      reason: textSchema(300),
      /** the vehicle that it had stays off the road until then; null where it may go out again */
      offTheRoadTo: localSchema.nullable().default(null),
    }),
    z.strictObject({ kind: z.literal("extension"), to: localSchema, moves }),
    z.strictObject({ kind: z.literal("late"), eta: localSchema, moves }),
    z.strictObject({
      kind: z.literal("early"),
      to: localSchema,
      backPence: z.int().min(0).max(10_000_000).default(0),
    }),
    z.strictObject({ kind: z.literal("party"), party: partySchema }),
    z.strictObject({ kind: z.literal("driverAbsent"), driverId: idSchema }),
    z.strictObject({ kind: z.literal("teamIll"), skill: z.enum(CREW_SKILLS) }),
    z.strictObject({ kind: z.literal("noShow"), reason: textSchema(500) }),
    z.strictObject({ kind: z.literal("breakdown"), ...incident }),
    z.strictObject({ kind: z.literal("accident"), ...incident }),
    z.strictObject({
      kind: z.literal("notice"),
      notice: z.enum(NOTICES),
      reference: textSchema(80),
      registration: textSchema(20),
      /** minute of what it is about */
      at: localSchema,
      /** day on which it was given to us */
      givenOn: dateSchema,
      note,
    }),
  ]),
);

/** Text `changes.<group>.<code>`. */
const line = z.object({ code: z.string(), facts: factsSchema });

export const changeEffectsSchema = named(
  "ChangeEffects",
  z.object({
    kind: z.enum(CHANGE_KINDS),
    /** of everything below: what is confirmed is what was seen */
    hash: hashSchema,
    canConfirm: z.boolean(),
    /** why it cannot be done, where no gate says it */
    stops: z.array(line),
    /** what the gates say of the hire as it would be and did not say before */
    findings: z.array(findingSchema),
    voided: z.array(line),
    /** by: a civil day or time */
    toDo: z.array(
      line.extend({
        by: z.string().nullable(),
        late: z.boolean(),
        /** the crossing leaves before it can be had by its usual lead time: when, in the depot's civil time */
        misses: z.string().optional(),
      }),
    ),
    money: z
      .object({
        before: moneySchema,
        after: moneySchema,
        /** more for the hirer to pay; negative goes back */
        hirer: moneySchema,
        /** what we carry */
        ours: moneySchema,
      })
      .nullable(),
    /** cards to brief again; text `card.<id>.title` */
    brief: z
      .object({
        again: z.array(z.object({ id: z.string(), why: z.enum(["new", "different"]) })),
        same: z.int(),
        minutes: figureSchema,
      })
      .nullable(),
    /** other people whom it touches, in the order in which to ring them */
    people: z.array(
      z.object({
        hireId: idSchema,
        reference: z.string(),
        customer: z.string(),
        telephone: z.string(),
        code: z.string(),
        facts: factsSchema,
        /** vehicles that this hire could go to instead */
        offers: z.array(z.object({ vehicleId: idSchema, name: z.string(), registration: z.string() })),
      }),
    ),
    /** what to say and to know */
    says: z.array(line),
  }),
);

export const confirmChangeSchema = named(
  "ConfirmChange",
  z.strictObject({ change: hireChangeSchema, seen: hashSchema }),
);

const changeDoneSchema = named(
  "ChangeDone",
  z.object({
    id: idSchema,
    kind: z.enum(CHANGE_KINDS),
    at: instantSchema,
    by: z.string(),
    /** as it was entered */
    change: hireChangeSchema.nullable().optional(),
    toDo: z.array(line.extend({ by: z.string().nullable() })),
    papers: z.array(z.enum(CHANGE_PAPERS)),
    /** the hire that goes on with another vehicle */
    continuedBy: z.object({ hireId: idSchema, reference: z.string() }).nullable(),
  }),
);

export const hireChangesSchema = named(
  "HireChanges",
  z.object({
    /** changes that make sense at this stage */
    possible: z.array(z.enum(CHANGE_KINDS)),
    /** vehicles that it could go to; the one it has is not among them */
    vehicles: z.array(
      z.object({
        id: idSchema,
        name: z.string(),
        registration: z.string(),
        free: z.boolean(),
        fits: z.boolean(),
      }),
    ),
    done: z.array(changeDoneSchema),
  }),
);
export const changePaperParams = z.object({ id: idSchema, change: idSchema, paper: z.enum(CHANGE_PAPERS) });
