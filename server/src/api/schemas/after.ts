import { HOLDERS, MARK_CLASSES, MENDINGS } from "@setfair/engine";
import * as z from "zod";
import { SETTLEMENT_ENTRIES } from "../../store/types.ts";
import {
  findingSchema,
  idSchema,
  instantSchema,
  moneySchema,
  roomResultSchema,
  textSchema,
} from "./common.ts";
import { named } from "./named.ts";

export const markClassSchema = named("MarkClass", z.enum(MARK_CLASSES));

/** One thing that is not as it left, and what the desk decided about it. */
export const differenceSchema = named(
  "Difference",
  z.object({
    id: idSchema,
    kind: z.enum(["mark", "reading", "count", "look"]),
    /** engine: Difference, with its evidence */
    difference: roomResultSchema,
    /** decided at the desk on evidence; unknown is not chargeable */
    class: markClassSchema.nullable(),
    classReason: z.string().nullable(),
    classBy: z.string().nullable(),
    /** which incident it came of; the excess caps each by itself */
    incident: z.string().nullable(),
    /** what is to be done about it before the next hire */
    todo: z.enum(MENDINGS).nullable(),
    /** of the decision: what another is based on; 0 where nothing is decided */
    version: z.int(),
    /** photographs of the place from the walk-round out: of itself, else of its side */
    asItLeft: z.object({ of: z.enum(["place", "side"]).nullable(), photographs: z.array(z.string()) }),
  }),
);
/** Two entries of one thing in one round that do not agree: whoever signs says which holds, by an `answer` record. */
export const questionSchema = named(
  "ReadingQuestion",
  z.object({
    checkId: z.string(),
    when: z.enum(["out", "back"]),
    entries: z.array(
      z.object({
        id: idSchema,
        hash: z.string(),
        about: z.string(),
        value: z.number(),
        unit: z.string().nullable(),
        deviceId: z.string(),
        at: instantSchema,
        photographs: z.array(z.string()),
      }),
    ),
  }),
);
export const questionsSchema = named("ReadingQuestions", z.object({ questions: z.array(questionSchema) }));

/** What could not be judged at the return, and until when somebody may look again. */
export const secondLookSchema = named(
  "SecondLook",
  z.object({
    due: z.array(z.string()),
    until: instantSchema,
    isOver: z.boolean(),
    /** nothing is settled and no deposit goes back yet */
    holds: z.boolean(),
  }),
);

/** Who had the keys of a vehicle, newest first. */
export const custodySchema = named(
  "Custody",
  z.object({
    lines: z.array(
      z.object({
        at: instantSchema,
        until: instantSchema.nullable(),
        holder: z.enum(HOLDERS),
        who: z.string(),
        note: z.string().nullable(),
        hireId: z.string().nullable(),
        recordId: z.string().nullable(),
        /** recorded at the vehicle in that time */
        marks: z.int(),
        photographs: z.int(),
        readings: z.int(),
      }),
    ),
  }),
);

export const differencesSchema = named(
  "Differences",
  z.object({
    differences: z.array(differenceSchema),
    /** existing marks, questions, second looks, what was not looked at (engine: ConditionResult) */
    result: roomResultSchema,
    questions: z.array(questionSchema),
    secondLook: secondLookSchema,
    /** photographs of the walk-round out: what each shows, by check, part or side */
    outPhotographs: z.array(z.object({ sha256: z.string(), about: z.string() })),
    findings: z.array(findingSchema),
  }),
);

export const setClassesSchema = named(
  "SetClasses",
  z.strictObject({
    classes: z
      .array(
        z.strictObject({
          id: idSchema,
          class: markClassSchema,
          /** the evidence, in words */
          reason: textSchema(500),
          /** which incident it came of; the excess caps each by itself */
          incident: textSchema(80).nullable().optional(),
          /** what is to be done about it: a job of the turnaround */
          todo: z.enum(MENDINGS).nullable().optional(),
          /** version of the decision that was read; refused where another was made since */
          basedOn: z.int().min(0).optional(),
        }),
      )
      .min(1)
      .max(100),
  }),
);

export const settlementEntrySchema = named(
  "SettlementEntry",
  z.object({
    id: idSchema,
    kind: z.enum(SETTLEMENT_ENTRIES),
    about: z.string(),
    document: z.looseObject({}),
    by: z.string().nullable(),
    at: instantSchema,
  }),
);

export const settlementStateSchema = named(
  "SettlementState",
  z.object({
    /** frozen as shown when the desk settled */
    frozenAt: instantSchema.nullable(),
    frozenBy: z.string().nullable(),
    /** lines in whole pence, each with its evidence (engine: Settlement) */
    result: roomResultSchema,
    findings: z.array(findingSchema),
    total: moneySchema,
    depositReturned: moneySchema,
    /** day by which it goes back */
    releaseBy: z.string(),
    releasedAt: instantSchema.nullable(),
    /** day by which the depot answers on what it holds */
    promisedOn: z.string().nullable(),
    /** what costs, answers and charges taken back have made it less since it was shown */
    lowered: moneySchema,
    /** paid or kept beyond what is due now: to be paid back in the ledger */
    refundDue: moneySchema,
    /** what of the deposit can be kept and given back now, beyond what was */
    toKeep: moneySchema,
    toGiveBack: moneySchema,
    /** disputes, replies, costs and signatures, oldest first; `by` null is the hirer */
    entries: z.array(settlementEntrySchema),
  }),
);
export const returnSchema = named(
  "ReturnRequest",
  z.strictObject({
    at: z
      .string()
      .regex(/^\d{4}-\d{2}-\d{2}T([01]\d|2[0-3]):[0-5]\d$/, "expected a civil time YYYY-MM-DDTHH:MM"),
  }),
);
