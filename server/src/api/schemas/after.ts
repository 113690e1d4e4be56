import * as z from "zod";
import {
  factsSchema,
  figureSchema,
  findingSchema,
  idSchema,
  instantSchema,
  moneySchema,
  roomResultSchema,
  textSchema,
} from "./common.ts";
import { named } from "./named.ts";

export const MARK_CLASSES = ["existing", "fairWear", "ours", "hirer", "unknown"] as const;
export const markClassSchema = named("MarkClass", z.enum(MARK_CLASSES));

/** One thing that is not as it left: a mark, a reading beyond its tolerance, a count that is short. */
export const differenceSchema = named(
  "Difference",
  z.object({
    id: idSchema,
    kind: z.enum(["mark", "reading", "count", "lateReturn", "distance"]),
    /** message id of the thing looked at, and its arguments */
    what: z.string(),
    facts: factsSchema,
    out: z.object({
      recordId: idSchema.nullable(),
      value: z.number().nullable(),
      photos: z.array(z.string()),
    }),
    back: z.object({
      recordId: idSchema.nullable(),
      value: z.number().nullable(),
      photos: z.array(z.string()),
    }),
    delta: figureSchema.nullable(),
    /** only marks: decided at the desk; unknown is not chargeable */
    class: markClassSchema.nullable(),
    classReason: z.string().nullable(),
    classBy: z.string().nullable(),
  }),
);
export const differencesSchema = named(
  "Differences",
  z.object({
    differences: z.array(differenceSchema),
    findings: z.array(findingSchema),
    result: roomResultSchema,
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
    /** frozen as shown when it was sent to the hirer */
    frozenAt: instantSchema.nullable(),
    frozenBy: z.string().nullable(),
    /** lines in whole pence with evidence (engine: Settlement) */
    result: roomResultSchema,
    findings: z.array(findingSchema),
    lines: z.array(
      z.object({
        id: idSchema,
        /** text under `settlement.<code>` */
        code: z.string(),
        facts: factsSchema,
        amount: moneySchema,
        evidence: z.array(z.string()),
      }),
    ),
    total: moneySchema,
    /** what goes back of the deposit held */
    release: moneySchema,
    releaseBy: z.string().nullable(),
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
