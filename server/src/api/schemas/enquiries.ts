import { discountSchema } from "@setfair/engine";
import * as z from "zod";
import { figureSchema, idSchema, instantSchema, localSchema, moneySchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

named("Discount", discountSchema);

export { discountSchema };

export const LOST_REASONS = [
  "price",
  "datesTaken",
  "tooSmall",
  "licence",
  "insurance",
  "pets",
  "elsewhere",
  "noAnswer",
  "plansChanged",
  "illness",
  "other",
] as const;
export type LostReason = (typeof LOST_REASONS)[number];
export const lostReasonSchema = z.enum(LOST_REASONS);

const lineSchema = z.object({
  hireId: idSchema,
  reference: z.string(),
  customer: z.string(),
  telephone: z.string(),
  people: z.int(),
  from: localSchema,
  to: localSchema,
});
const couldSchema = z.object({
  id: idSchema,
  name: z.string(),
  registration: z.string(),
  /** the dates at which it could; the asked ones where nothing must move */
  from: localSchema,
  to: localSchema,
  price: moneySchema.nullable(),
});
export const waitingSchema = named(
  "Waiting",
  z.object({
    ...lineSchema.shape,
    since: instantSchema,
    /** of dates and vehicle of the hire, and of what would do: what a save is based on */
    versions: z.object({ hire: z.int(), waiting: z.int() }),
    /** classes that would do; any where empty */
    classes: z.array(z.string()),
    /** days by which both ends may move */
    flexDays: z.int(),
    /** vehicles that could serve them now */
    could: z.array(couldSchema),
  }),
);
export const endingSchema = named(
  "Ending",
  z.object({
    ...lineSchema.shape,
    as: z.enum(["lost", "cancelled", "noShow"]),
    code: lostReasonSchema.nullable(),
    reason: z.string(),
    at: instantSchema,
    keep: moneySchema.nullable(),
    refund: moneySchema.nullable(),
  }),
);
export const enquiriesSchema = named(
  "Enquiries",
  z.object({
    waiting: z.array(waitingSchema),
    /** classes that the depot's vehicles are of */
    classes: z.array(z.string()),
    ended: z.array(endingSchema),
    /** of the ended ones here, by reason */
    reasons: z.array(z.object({ as: z.string(), code: z.string(), count: z.int() })),
  }),
);
export const enquiriesQuerySchema = z.object({
  /** the waiting list alone, or with what ended */
  part: z.enum(["waiting", "all"]).default("all"),
});
export const waitSchemaBody = named(
  "WaitFor",
  z.strictObject({
    classes: z.array(textSchema(40)).max(20),
    flexDays: z.int().min(0).max(14),
  }),
);
export const takeHireSchema = named(
  "TakeHire",
  z.strictObject({
    vehicleId: idSchema,
    extras: z
      .array(z.strictObject({ id: idSchema, count: z.int().min(1).max(20) }))
      .max(30)
      .optional(),
    /** other dates that were agreed */
    from: localSchema.optional(),
    to: localSchema.optional(),
  }),
);

/** What ending a hire today costs under the scale that it was accepted with. */
export const endingPreviewSchema = named(
  "EndingPreview",
  z.object({
    /** null where nothing was accepted yet: nothing is kept */
    charge: z
      .object({
        daysBefore: figureSchema,
        keepPercent: figureSchema,
        step: z.object({ atLeastDaysBefore: z.int(), keepPercent: z.number() }).nullable(),
        keep: moneySchema,
        paid: moneySchema,
        refund: moneySchema,
        owed: moneySchema,
      })
      .nullable(),
    termsId: z.string().nullable(),
    /** who waits and could be served once this vehicle is free */
    nextInLine: z.array(z.object({ hireId: idSchema, reference: z.string(), customer: z.string() })),
  }),
);
