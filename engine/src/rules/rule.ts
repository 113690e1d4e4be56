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
  fuel: z.optional(z.enum(["diesel", "petrol", "electric", "hydrogen"])),
  /** first registered on this day or later, or on a day before it */
  registeredFrom: z.optional(isoDate),
  registeredBefore: z.optional(isoDate),
  /** the chassis permits more than this, besides the mass that the case looks at */
  technicalAboveKg: z.optional(kg),
});
export type RuleCase = z.infer<typeof ruleCaseSchema>;

/** What a rule turns on and no description says, so that nobody checked it. */
export const FACTS_NOT_DESCRIBED = ["axles", "platedBefore", "speedIndex"] as const;
export type FactNotDescribed = (typeof FACTS_NOT_DESCRIBED)[number];

/** What must be so on the road besides the day: while it is not, a day within the rule's span breaks nothing. */
export const ruleBindsSchema = z.strictObject({
  /** only while ice, snow, slush or frost lies on the road */
  weather: z.optional(z.literal("wintryRoad")),
  /** only where signs ask for it (single roads, communes of the mountains), in zones of some towns, on motorways */
  roads: z.optional(z.enum(["signed", "signedMountains", "zones", "motorways"])),
  /** yearly span in which such weather is usual there: looked at only where nobody knows the weather */
  usually: z.optional(z.string().check(z.regex(/^\d{2}-\d{2}\/\d{2}-\d{2}$/))),
});
export type RuleBinds = z.infer<typeof ruleBindsSchema>;

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
  /** vehicles that it leaves out although its case is theirs */
  exempt: z.optional(ruleCaseSchema),
  binds: z.optional(ruleBindsSchema),
  /** facts that it turns on and that no description has: named as not checked */
  notChecked: z.optional(z.array(z.enum(FACTS_NOT_DESCRIBED))),
  /** days that it takes to get the paper, sticker or tag */
  leadDays: z.optional(z.int().check(z.minimum(0), z.maximum(365))),
  /** sources conflict or the case was not found: why; the stricter figure stands until it is settled */
  unsettled: z.optional(z.string().check(z.minLength(3))),
  off: z.optional(z.string()),
  note: z.optional(z.string()),
});
export type Rule = z.infer<typeof ruleSchema>;
