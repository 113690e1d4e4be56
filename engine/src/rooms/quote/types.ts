import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import type { RoomAnswer } from "../../base/finding.ts";
import type { Money } from "../../base/money.ts";
import { isoDateSchema, isoLocalSchema, partySchema } from "../situation.ts";

const text = (max: number) => z.string().check(z.minLength(1), z.maxLength(max));
const whole = (min: number, max: number) => z.int().check(z.minimum(min), z.maximum(max));
/** whole pence including VAT */
const pence = whole(0, 100_000_000);
const percent = z.number().check(z.minimum(0), z.maximum(100));
const monthDay = z
  .string()
  .check(z.regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, "expected a day of the year MM-DD"));
export const vatKindSchema = z.enum(["standard", "exempt", "outsideScope"]);
export type VatKind = z.infer<typeof vatKindSchema>;

/** Loses value evenly over its life to `leastShare`. */
const wearing = z.strictObject({
  lifeYears: z.number().check(z.positive(), z.maximum(40)),
  leastShare: z.number().check(z.minimum(0), z.maximum(1)),
});

/**
 * The hire terms of a depot, one version from `validFrom`. All prices are whole pence including VAT.
 * A hire keeps the version that it was booked under.
 */
export const termsSchema = z.strictObject({
  id: text(60),
  validFrom: isoDateSchema,
  currency: z.literal("GBP"),
  /** the first season whose days hold a night gives its rate; spans may cross the new year */
  seasons: z
    .array(
      z.strictObject({
        id: text(40),
        spans: z.array(z.strictObject({ from: monthDay, to: monthDay })).check(z.minLength(1)),
        /** by vehicle class of the depot */
        nightPence: z.record(z.string(), pence),
        minimumNights: whole(1, 60),
      }),
    )
    .check(z.minLength(1)),
  maximumNights: whole(1, 365),
  /** longest step reached gives its reduction on the nights */
  longHire: z.array(z.strictObject({ fromNights: whole(2, 365), reductionPercent: percent })),
  allowance: z.strictObject({
    kmPerNight: z.number().check(z.minimum(0), z.maximum(2000)),
    excessPencePerKm: z.number().check(z.minimum(0), z.maximum(1000)),
    gracePercent: percent,
  }),
  drivers: z.strictObject({ included: whole(1, 8), extraPenceEach: pence }),
  /** charged on every hire: part of the first price */
  compulsory: z.array(z.strictObject({ id: text(40), pence, vat: vatKindSchema })),
  /** abroad, charged on every hire that leaves the country: part of the first price */
  abroad: z.strictObject({ home: text(2), pence, vat: vatKindSchema }),
  extras: z.array(
    z.strictObject({
      id: text(40),
      pence,
      per: z.enum(["hire", "night"]),
      capPence: z.optional(pence),
      stock: whole(0, 1000),
      vat: vatKindSchema,
    }),
  ),
  bookingDepositPercent: percent,
  /** days before the keys by which the balance is due; 28 where left out (common practice, no source) */
  balanceDaysBefore: z.optional(whole(0, 365)),
  security: z.strictObject({
    homePence: pence,
    abroadPence: pence,
    excessPence: pence,
    authorisationDays: whole(1, 90),
    releaseWorkingDays: whole(0, 28),
  }),
  cancellation: z.array(z.strictObject({ atLeastDaysBefore: whole(0, 365), keepPercent: percent })),
  /** reductions that a person may give, each with the most that a role may give, in percent of the nights; a role that is not named may give none */
  discounts: z.optional(
    z
      .array(z.strictObject({ id: text(40), mostPercent: z.record(z.string(), percent) }))
      .check(z.maxLength(20)),
  ),
  /** hours that the papers state and both sign for: in which the hirer may add marks after the handover, and in which the depot looks again at what was too wet or dirty at the return */
  windows: z.optional(z.strictObject({ additionsHours: whole(1, 168), secondLookHours: whole(1, 168) })),
  /** a charge decided later than this many days after the return needs a second person; 10 where left out (common practice, no source) */
  secondSignatureAfterDays: z.optional(whole(0, 60)),
  /** days for which a quote holds */
  quoteDays: whole(1, 90),
  tariff: z.strictObject({
    fuelPencePerLitre: z.record(z.string(), z.number().check(z.minimum(0), z.maximum(1000))),
    fuelServicePence: pence,
    defPencePerLitre: z.number().check(z.minimum(0), z.maximum(2000)),
    lpgPencePerKg: z.number().check(z.minimum(0), z.maximum(2000)),
    cleaningPencePerHour: pence,
    wasteNotEmptiedPence: pence,
    cassetteNotEmptiedPence: pence,
    latePencePerHour: pence,
    lateGraceMinutes: whole(0, 240),
    /** for dealing with a fine or a toll, each; where left out none may be charged */
    noticeFeePence: z.optional(pence),
    /** work on a repair: charged in full, or reduced with the age of the part like the parts; in full where left out */
    labour: z.optional(z.enum(["inFull", "asParts"])),
    /** value new of a thing, by the id of its check, else the kind of its system, else the check's `charge` */
    kit: z.record(z.string(), z.strictObject({ newPence: pence, ...wearing.shape })),
    /** published repair matrix: `of` is a part, a check, a kind of system or a check's `charge`, the first that has a line; then by kind and size of mark */
    damage: z.array(
      z.strictObject({
        of: text(60),
        kind: z.enum(["scratch", "dent", "tear", "stain", "crack", "missing"]),
        upToMm: z.optional(whole(1, 5000)),
        pence,
        part: z.enum(["repair", "replace"]),
        ...wearing.shape,
      }),
    ),
  }),
});
export type Terms = z.infer<typeof termsSchema>;

/** What somebody takes off the price of the nights: a share of it or a sum, with the reason. */
export const discountSchema = z.strictObject({
  /** id of a discount in the terms */
  kind: text(40),
  percent: z.optional(percent),
  pence: z.optional(whole(1, 100_000_000)),
  reason: text(300),
});
export type Discount = z.infer<typeof discountSchema>;

export const quoteInputSchema = z.strictObject({
  terms: termsSchema,
  vehicleClass: text(40),
  from: isoLocalSchema,
  to: isoLocalSchema,
  today: isoDateSchema,
  party: partySchema,
  drivers: whole(1, 8),
  extras: z.array(z.strictObject({ id: text(40), count: whole(1, 20), free: z.optional(whole(0, 1000)) })),
  countries: z.array(
    z.string().check(z.regex(/^[A-Z]{2}$/, "expected a two-letter country code (ISO 3166-1)")),
  ),
  /** with the role of who gives it */
  discount: z.optional(z.strictObject({ ...discountSchema.shape, role: text(40) })),
});
export type QuoteInput = z.infer<typeof quoteInputSchema>;

export interface QuoteLine {
  /** text `quote.<code>` */
  readonly code:
    | "nights"
    | "longHire"
    | "longerPeriod"
    | "discount"
    | "compulsory"
    | "abroad"
    | "extraDriver"
    | "extra";
  /** season, extra or charge */
  readonly about: string;
  readonly count: number;
  readonly each: Money<"GBP">;
  readonly amount: Money<"GBP">;
  readonly vat: { readonly kind: VatKind; readonly ratePercent: number; readonly amount: Money<"GBP"> };
}
export interface Quote {
  readonly termsId: string;
  readonly nights: Figure;
  readonly lines: readonly QuoteLine[];
  /** everything compulsory and chosen, with VAT */
  readonly total: Money<"GBP">;
  readonly vat: Money<"GBP">;
  readonly bookingDeposit: Money<"GBP">;
  readonly balance: Money<"GBP">;
  readonly allowanceKm: Figure;
  readonly excessPencePerKm: Figure;
  readonly securityDeposit: Money<"GBP">;
  readonly excess: Money<"GBP">;
  readonly cancellation: Terms["cancellation"];
  /** last day on which this price holds */
  readonly holdsUntil: string;
}
export type QuoteHire = (input: QuoteInput) => RoomAnswer<Quote | null>;
