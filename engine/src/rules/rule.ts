import * as z from "zod/mini";

const isoDate = z.iso.date();

const kg = z.number().check(z.positive(), z.maximum(50_000));
const metres = z.number().check(z.positive(), z.maximum(5));

/** To which vehicles a rule applies; without it, to all. A rule that names a case goes before the one that holds for all. */
export const ruleCaseSchema = z.strictObject({
  /** the mass that the rule looks at: plated maximum, what the chassis permits, or unladen */
  mass: z.optional(z.enum(["mam", "technical", "unladen"])),
  aboveKg: z.optional(kg),
  toKg: z.optional(kg),
  category: z.optional(z.enum(["M1", "N1"])),
  heightToM: z.optional(metres),
  /** or higher than this, whatever the mass */
  orHeightAboveM: z.optional(metres),
  /** something stands out behind: bicycles, a rack, a box */
  overhang: z.optional(z.boolean()),
  /** the plate does not show UK with the flag */
  plateLacksUk: z.optional(z.boolean()),
});
export type RuleCase = z.infer<typeof ruleCaseSchema>;

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
  when: z.optional(ruleCaseSchema),
  /** days that it takes to get the paper, sticker or tag */
  leadDays: z.optional(z.int().check(z.minimum(0), z.maximum(365))),
  /** sources conflict or the case was not found: why; the stricter figure stands until it is settled */
  unsettled: z.optional(z.string().check(z.minLength(3))),
  off: z.optional(z.string()),
  note: z.optional(z.string()),
});
export type Rule = z.infer<typeof ruleSchema>;
