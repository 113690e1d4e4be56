import { insurancePolicySchema, MISSING_KINDS, RECHECK_REASONS, ruleSchema } from "@setfair/engine";
import * as z from "zod";
import {
  dateSchema,
  findingSchema,
  gateSchema,
  hashSchema,
  idSchema,
  instantSchema,
  textSchema,
} from "./common.ts";
import { named } from "./named.ts";

named("Rule", ruleSchema);
const country = z.string().regex(/^[A-Z]{2}$/, "expected a two-letter code");
const value = z.union([z.number(), z.string().max(200), z.boolean()]);

/** One rule as it ships, as the depot holds it, and what the depot did to it. */
export const ruleLineSchema = named(
  "RuleLine",
  z.object({
    id: z.string(),
    country: z.string(),
    topic: z.string(),
    /** as it holds on the day asked for; null where no version does */
    now: z.nullable(ruleSchema),
    /** every dated version as it ships; stays visible whatever the depot did */
    shipped: z.array(ruleSchema),
    /** the depot's own versions that stand, with who wrote them */
    own: z.array(z.object({ rule: ruleSchema, by: z.string(), at: instantSchema })),
    /** when the depot read it again, last first */
    readAgain: z.array(
      z.object({ readOn: dateSchema, source: z.string(), by: z.string(), at: instantSchema }),
    ),
    /** the only values that rooms and texts know; null where any of the kind will do */
    values: z.array(z.string()).nullable(),
    /** switched off: not applied, with the reason, and not to be changed here */
    off: z.string().nullable(),
    due: z
      .object({
        reasons: z.array(z.enum(RECHECK_REASONS)),
        dueOn: dateSchema,
        firstHire: dateSchema.nullable(),
        hires: z.int(),
      })
      .nullable(),
  }),
);
export const rulesQuerySchema = z.object({
  /** words of the id, the source, the note */
  q: z.string().max(80).optional(),
  country: country.optional(),
  topic: z.string().max(30).optional(),
  /** only what falls due for checking, soonest first */
  due: z.enum(["true", "false"]).default("false"),
  /** a rule read longer ago is old */
  months: z.coerce.number().int().min(1).max(60).default(12),
});
export const rulesAnswerSchema = named(
  "RulesAnswer",
  z.object({
    /** of this set of rules, wherever a result is kept */
    bookId: hashSchema,
    rules: z.array(ruleLineSchema),
    countries: z.array(z.string()),
    topics: z.array(z.string()),
    counts: z.object({ all: z.int(), due: z.int(), overdue: z.int(), own: z.int() }),
  }),
);
export const correctRuleSchema = named(
  "CorrectRule",
  z.strictObject({
    value,
    validFrom: dateSchema,
    validTo: dateSchema.optional(),
    readOn: dateSchema,
    source: textSchema(300),
    confidence: z.enum(["read", "secondary", "memory"]),
    /** why sources do not agree; left out: settled */
    unsettled: textSchema(300).optional(),
    note: textSchema(500).optional(),
    leadDays: z.int().min(0).max(365).optional(),
  }),
);
export const confirmRuleSchema = named(
  "ConfirmRule",
  z.strictObject({ readOn: dateSchema, source: textSchema(300) }),
);
export const withdrawRuleSchema = named("WithdrawRule", z.strictObject({ validFrom: dateSchema }));

/** What was not checked for a hire, or rests on nothing firm; text under `missing.<kind>`. */
export const missingRulesSchema = named(
  "MissingRules",
  z.object({
    bookId: hashSchema,
    missing: z.array(
      z.object({
        kind: z.enum(MISSING_KINDS),
        gate: gateSchema,
        about: z.string(),
        /** code of the finding, where the kind is that */
        finding: findingSchema.nullable(),
        /** where a rule is meant: its source in words */
        source: z.string().nullable(),
      }),
    ),
  }),
);

export const insurancePreviewSchema = named(
  "InsurancePreview",
  z.strictObject({ policy: insurancePolicySchema }),
);
export const insurancePreviewAnswerSchema = named(
  "InsurancePreviewAnswer",
  z.object({
    /** drivers of hires that are booked and begin under these criteria */
    drivers: z.array(
      z.object({
        hireId: idSchema,
        reference: z.string(),
        customer: z.string(),
        from: z.string(),
        driver: z.string(),
        today: z.enum(["accept", "refer", "refuse"]).nullable(),
        proposed: z.enum(["accept", "refer", "refuse"]),
        findings: z.array(findingSchema),
      }),
    ),
    asked: z.int(),
  }),
);
