/** Schemas of what the rooms give, for `setfair schema`; the worked examples are checked against them. */
import { GATES } from "@setfair/engine";
import * as z from "zod/mini";

export const figureSchema = z.strictObject({
  value: z.number(),
  unit: z.string(),
  /** id in the formula book, or - where it was read or declared */
  formula: z.string(),
  inputs: z.record(z.string(), z.union([z.number(), z.string(), z.boolean(), z.null()])),
  basis: z.enum(["measured", "declared", "default", "from memory", "computed"]),
  source: z.optional(z.string()),
});
const facts = z.record(z.string(), z.union([figureSchema, z.string(), z.number()]));

export const findingSchema = z.strictObject({
  code: z.string(),
  gate: z.enum(GATES),
  severity: z.enum(["refuse", "refer", "unchecked", "condition", "note"]),
  basis: z.enum(["law", "safety", "cover", "policy", "physics"]),
  facts,
  sources: z.array(z.string()),
  mends: z.array(z.strictObject({ code: z.string(), facts })),
  about: z.optional(z.string()),
});

export const answerSchema = <Result extends z.ZodMiniType>(result: Result) =>
  z.strictObject({ result, findings: z.array(findingSchema) });

export const moneySchema = z.strictObject({ currency: z.literal("GBP"), pence: z.int() });
