import * as z from "zod/mini";

const isoDate = z.iso.date();

/** One dated rule as data. `off` says why a known rule is not applied. */
export const ruleSchema = z.strictObject({
  id: z
    .string()
    .check(z.regex(/^[a-z][a-zA-Z0-9]*(\.[a-zA-Z0-9]+)+$/, "expected an id like licence.gb.b.maxMamKg")),
  value: z.union([z.number(), z.string(), z.boolean()]),
  unit: z.string(),
  /** first day on which it holds */
  validFrom: isoDate,
  /** last day on which it holds */
  validTo: z.optional(isoDate),
  readOn: isoDate,
  source: z.string().check(z.minLength(3)),
  /** read: in the source itself · secondary: somebody's account of it · memory: to be confirmed */
  confidence: z.enum(["read", "secondary", "memory"]),
  country: z.string().check(z.regex(/^[A-Z]{2}$/)),
  off: z.optional(z.string()),
  note: z.optional(z.string()),
});
export type Rule = z.infer<typeof ruleSchema>;
