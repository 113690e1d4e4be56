import { MARK_CLASSES } from "@setfair/engine";
import * as z from "zod";
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
  }),
);
export const differencesSchema = named(
  "Differences",
  z.object({
    differences: z.array(differenceSchema),
    /** existing marks, questions, second looks, what was not looked at (engine: ConditionResult) */
    result: roomResultSchema,
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
        }),
      )
      .min(1)
      .max(100),
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
