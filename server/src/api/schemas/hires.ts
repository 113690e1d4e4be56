import { driverSchema, loadPlanSchema, partySchema, tripSchema } from "@setfair/engine";
import * as z from "zod";
import { HIRE_STAGES } from "../../store/types.ts";
import { differenceSchema, settlementStateSchema } from "./after.ts";
import {
  dateSchema,
  factsSchema,
  findingSchema,
  hashSchema,
  idSchema,
  instantSchema,
  localSchema,
  moneySchema,
  roomResultSchema,
  textSchema,
} from "./common.ts";
import { discountSchema, endingPreviewSchema } from "./enquiries.ts";
import { glassSchema, glassStateSchema } from "./glass.ts";
import { paymentSchema } from "./money.ts";
import { named } from "./named.ts";

named("Party", partySchema);
named("Driver", driverSchema);
named("Trip", tripSchema);
named("LoadPlan", loadPlanSchema);

export { driverSchema, loadPlanSchema, partySchema, tripSchema };

export const stageSchema = named("Stage", z.enum(HIRE_STAGES));

export const customerSchema = named(
  "Customer",
  z.strictObject({
    name: textSchema(80),
    telephone: textSchema(30),
    /** empty where the hirer has none or has not said it: nothing is sent then */
    email: z
      .string()
      .trim()
      .max(200)
      .refine(
        (text) => text === "" || z.email().safeParse(text).success,
        "a mail address such as name@example.org, or nothing",
      ),
    address: textSchema(300).optional(),
  }),
);

/** What the caller asks for beside party and dates. */
export const askedSchema = named(
  "Asked",
  z.strictObject({
    /** where to, beside the depot's own country */
    countries: z
      .array(z.string().regex(/^[A-Z]{2}$/, "expected a two-letter country code (ISO 3166-1)"))
      .max(20),
    extras: z.array(z.strictObject({ id: idSchema, count: z.int().min(1).max(20) })).max(30),
    drivers: z.int().min(1).max(6),
  }),
);

export const newHireSchema = named(
  "NewHire",
  z.strictObject({
    customer: customerSchema,
    party: partySchema,
    from: localSchema,
    to: localSchema,
    /** in the customer's own words */
    wishes: z.string().max(2000).optional(),
    vehicleId: idSchema.optional(),
    asked: askedSchema.optional(),
  }),
);

export const hireSummarySchema = named(
  "HireSummary",
  z.object({
    id: idSchema,
    reference: z.string(),
    stage: stageSchema,
    customer: z.string(),
    people: z.int(),
    dogs: z.int(),
    from: localSchema,
    to: localSchema,
    vehicle: z.object({ id: idSchema, name: z.string(), registration: z.string() }).nullable(),
    /** may the keys go? null after they went */
    glass: glassStateSchema.nullable(),
    /** gates that fall due later, the signatures at the keys left out: while there are any, "ready" is said of the rest only */
    gatesLater: z.int(),
    /** the worst due finding, for one line on a list; after the keys the worst of what is to act on */
    worst: findingSchema.nullable(),
    /** the keys should have gone, or the vehicle should be back */
    late: z.enum(["out", "back"]).nullable(),
    /** after the keys: how much is to act on */
    toActOn: z.int(),
    owedPence: z.int().optional(),
  }),
);

export const hireListSchema = named(
  "HireList",
  z.object({
    hires: z.array(hireSummarySchema),
    /** give it as `after` for the next page; null at the end */
    next: z.string().nullable(),
  }),
);
export const hireListQuerySchema = z.object({
  /** words of the name, the registration, the number or the telephone; newest first */
  q: z.string().max(80).optional(),
  stage: stageSchema.optional(),
  /** in hand (enquiry to on the road) the soonest first, back and over the newest first, or all of both */
  which: z.enum(["inHand", "over", "all"]).default("all"),
  /** with those that were lost, cancelled or not taken */
  ended: z.enum(["true", "false"]).default("false"),
  /** hires that touch these days, both included */
  from: dateSchema.optional(),
  to: dateSchema.optional(),
  after: z.string().max(400).optional(),
  limit: z.coerce.number().int().min(1).max(100).default(25),
});

/** What the hire waits for, and whose move it is; text under `waits.<code>`. */
export const waitSchema = named(
  "Wait",
  z.object({
    code: z.string(),
    whose: z.enum(["desk", "yard", "hirer", "manager", "insurer", "nobody"]),
    facts: factsSchema,
  }),
);

export const quoteStateSchema = named(
  "QuoteState",
  z.object({
    at: instantSchema,
    /** accepted by the customer: frozen as shown */
    acceptedAt: instantSchema.nullable(),
    /** what somebody took off */
    discount: z.nullable(discountSchema).optional(),
    /** the quote (engine: Quote); null where it could not be priced, and the findings say why */
    result: roomResultSchema,
    findings: z.array(findingSchema),
    total: moneySchema.nullable(),
  }),
);

export const loadStateSchema = named(
  "LoadState",
  z.object({
    plan: z.nullable(loadPlanSchema),
    /** masses, axles, least change (engine: LoadResult); null while there is nothing to weigh */
    result: roomResultSchema,
    findings: z.array(findingSchema),
  }),
);
export const forecastStateSchema = named(
  "ForecastState",
  z.object({
    inputHash: hashSchema,
    engineVersion: z.string(),
    seed: z.int(),
    runs: z.int(),
    cached: z.boolean(),
    /** engine: the answer of forecastTrip */
    result: roomResultSchema,
    findings: z.array(findingSchema),
  }),
);
export const briefingStateSchema = named(
  "BriefingState",
  z.object({
    /** cards in order (engine: Briefing) */
    result: roomResultSchema,
    findings: z.array(findingSchema),
    /** ids of cards already signed for */
    signed: z.array(z.string()),
  }),
);

/** Empty texts once the person is erased. */
const hirerOfHireSchema = named(
  "HirerOfHire",
  z.object({
    name: z.string(),
    telephone: z.string().optional(),
    email: z.string().optional(),
    address: z.string().optional(),
  }),
);
/** How a hire ended, with the cancellation scale as it was applied. */
const endingOfHireSchema = named(
  "EndingOfHire",
  z.object({
    as: z.string(),
    code: z.string().nullable(),
    at: instantSchema,
    charge: endingPreviewSchema.shape.charge.optional(),
    termsId: z.string().nullable(),
  }),
);

export const hirePageSchema = named(
  "HirePage",
  z.object({
    hire: hireSummarySchema,
    version: z.int(),
    /** of what is kept whole: what a change of each is based on; 0 where nothing is kept yet */
    versions: z.object({
      party: z.int(),
      drivers: z.int(),
      trip: z.int(),
      load: z.int(),
      quote: z.int(),
      customer: z.int(),
      waiting: z.int(),
    }),
    wishes: z.string().nullable(),
    asked: askedSchema.nullable(),
    /** waits for a vehicle */
    waiting: z.object({ since: instantSchema, classes: z.array(z.string()), flexDays: z.int() }).nullable(),
    ending: endingOfHireSchema.nullable(),
    /** the keys go today or went, and nothing is settled yet */
    ofTheDay: z.boolean(),
    customer: hirerOfHireSchema,
    party: partySchema,
    vehicle: z
      .object({
        id: idSchema,
        versionId: idSchema,
        description: z.unknown().describe("engine: VehicleDescription"),
      })
      .nullable(),
    driverNames: z.array(z.object({ id: idSchema, name: z.string() })),
    drivers: z.array(driverSchema).optional(),
    trip: z.nullable(tripSchema),
    load: loadStateSchema.nullable(),
    /** hash of the forecast that is cached for this vehicle and trip; GET forecast brings it */
    forecastHash: hashSchema.nullable(),
    quote: quoteStateSchema.nullable().optional(),
    payments: z.array(paymentSchema).optional(),
    money: z
      .object({
        price: moneySchema,
        paid: moneySchema,
        owed: moneySchema,
        depositDue: moneySchema,
        depositHeld: moneySchema,
      })
      .optional(),
    glass: glassSchema.nullable(),
    conditions: z.array(findingSchema),
    records: z.object({
      count: z.int(),
      /** head of the depot's chain of receipts after the last record of this hire */
      head: z.string().nullable(),
      out: z.object({
        started: z.boolean(),
        marks: z.int(),
        photos: z.int(),
        readings: z.int(),
        signed: z.boolean(),
      }),
      back: z.object({
        started: z.boolean(),
        marks: z.int(),
        photos: z.int(),
        readings: z.int(),
        signed: z.boolean(),
      }),
      panelReadings: z.int(),
    }),
    /** what is still to be signed before the keys: agreement (with the statement of liability), briefing, condition */
    signaturesNeeded: z.array(z.string()),
    signatures: z.array(
      z.object({ what: z.string(), by: z.string(), at: instantSchema, recordId: idSchema, covers: z.int() }),
    ),
    waits: z.array(waitSchema),
    /** after the keys: what is to act on */
    onTheRoad: z.array(findingSchema),
    settlement: settlementStateSchema.nullable().optional(),
    differences: z.array(differenceSchema),
    hirerLink: z.object({ expires: instantSchema }).nullable(),
    history: z
      .array(
        z.object({
          at: instantSchema,
          by: z.string(),
          what: z.string(),
          facts: z.record(z.string(), z.unknown()),
        }),
      )
      .optional(),
  }),
);
