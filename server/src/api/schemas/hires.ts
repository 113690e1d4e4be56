import { driverSchema, loadPlanSchema, partySchema, tripSchema } from "@setfair/engine";
import * as z from "zod";
import { differenceSchema, settlementStateSchema } from "./after.ts";
import {
  dateSchema,
  factsSchema,
  findingSchema,
  gateSchema,
  hashSchema,
  idSchema,
  instantSchema,
  localSchema,
  moneySchema,
  roomResultSchema,
  textSchema,
} from "./common.ts";
import { paymentSchema } from "./money.ts";
import { named } from "./named.ts";

named("Party", partySchema);
named("Driver", driverSchema);
named("Trip", tripSchema);
named("LoadPlan", loadPlanSchema);

export { driverSchema, loadPlanSchema, partySchema, tripSchema };

export const STAGES = [
  "enquiry",
  "quoted",
  "booked",
  "handedOver",
  "onHire",
  "returned",
  "settled",
  "closed",
  "lost",
  "cancelled",
  "noShow",
] as const;
export const stageSchema = named("Stage", z.enum(STAGES));

export const customerSchema = named(
  "Customer",
  z.strictObject({
    name: textSchema(80),
    telephone: textSchema(30),
    email: z.email().max(200),
    address: textSchema(300).optional(),
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
  }),
);

export const glassStateSchema = named(
  "GlassState",
  z.enum(["cannotGo", "notYet", "goesWithConditions", "readyWithNotes", "ready"]),
);

export const gateStateSchema = named(
  "GateState",
  z.object({
    gate: gateSchema,
    /**
     * later: not due yet, does not darken · passed · note · condition · overridden · notChecked (due) ·
     * refer: someone else must decide · refuse
     */
    state: z.enum(["later", "passed", "note", "condition", "overridden", "notChecked", "refer", "refuse"]),
    /** civil date from which it counts; null where it counts from the start */
    dueFrom: z.string().nullable(),
    /** no room decides this gate yet: a named person looks and says so */
    byHand: z.boolean(),
    checkedByHand: z.object({ by: z.string(), at: instantSchema, note: z.string() }).nullable(),
    findings: z.array(
      z.object({
        /** for POST overrides */
        key: z.string(),
        finding: findingSchema,
        /** may be overridden at all, and by which action */
        overridable: z.enum(["never", "insurer", "manager"]),
        override: z.object({ by: z.string(), at: instantSchema, reason: z.string() }).nullable(),
      }),
    ),
  }),
);

export const glassSchema = named(
  "Glass",
  z.object({
    state: glassStateSchema,
    /** the glass as it stood before the last change, for the set-hand; null the first time */
    before: z.object({ state: glassStateSchema, at: instantSchema }).nullable(),
    gates: z.array(gateStateSchema).length(13),
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
    /** the worst due finding, for one line on a list */
    worst: findingSchema.nullable(),
    /** after the keys: how much is to act on */
    toActOn: z.int(),
    owedPence: z.int(),
  }),
);

export const hireListSchema = named(
  "HireList",
  z.object({ hires: z.array(hireSummarySchema), total: z.int(), page: z.int(), pageSize: z.int() }),
);
export const hireListQuerySchema = z.object({
  q: z.string().max(80).optional(),
  stage: stageSchema.optional(),
  page: z.coerce.number().int().min(1).max(100000).default(1),
  pageSize: z.coerce.number().int().min(1).max(100).default(25),
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
    id: idSchema,
    at: instantSchema,
    /** accepted by the customer: frozen as shown */
    acceptedAt: instantSchema.nullable(),
    /** the quote (engine: Quote) */
    result: roomResultSchema,
    findings: z.array(findingSchema),
    totalPence: z.int(),
  }),
);

export const tripStateSchema = named(
  "TripState",
  z.object({ trip: tripSchema, inputHash: hashSchema.nullable() }),
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

export const hirePageSchema = named(
  "HirePage",
  z.object({
    hire: hireSummarySchema,
    version: z.int(),
    wishes: z.string().nullable(),
    customer: customerSchema,
    party: partySchema,
    vehicle: z
      .object({
        id: idSchema,
        version: z.int(),
        description: z.unknown().describe("engine: VehicleDescription"),
      })
      .nullable(),
    drivers: z.array(driverSchema),
    trip: z.nullable(tripSchema),
    load: loadStateSchema.nullable(),
    /** hash of the forecast that is cached for this vehicle and trip; GET forecast brings it */
    forecastHash: hashSchema.nullable(),
    quote: quoteStateSchema.nullable(),
    payments: z.array(paymentSchema),
    money: z.object({
      price: moneySchema,
      paid: moneySchema,
      owed: moneySchema,
      depositDue: moneySchema,
      depositHeld: moneySchema,
    }),
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
    signatures: z.array(
      z.object({ what: z.string(), by: z.string(), at: instantSchema, recordId: idSchema, covers: z.int() }),
    ),
    waits: z.array(waitSchema),
    settlement: settlementStateSchema.nullable(),
    differences: z.array(differenceSchema),
    hirerLink: z.object({ expires: instantSchema }).nullable(),
    history: z.array(
      z.object({
        at: instantSchema,
        by: z.string(),
        what: z.string(),
        facts: z.record(z.string(), z.unknown()),
      }),
    ),
  }),
);

export const availabilityQuerySchema = named(
  "AvailabilityQuery",
  z.strictObject({ party: partySchema, from: localSchema, to: localSchema }),
);
export const availabilitySchema = named(
  "Availability",
  z.object({
    vehicles: z.array(
      z.object({
        id: idSchema,
        name: z.string(),
        registration: z.string(),
        possible: z.boolean(),
        findings: z.array(findingSchema),
        /** the nearest dates of the same length when it could, where the diary is what stops it */
        nearest: z.object({ from: localSchema, to: localSchema, shiftHours: z.number() }).nullable(),
        /** price as it would be quoted; null where it cannot be priced */
        price: moneySchema.nullable(),
      }),
    ),
  }),
);

export const setVehicleSchema = named("SetVehicle", z.strictObject({ vehicleId: idSchema }));
export const setDriversSchema = named(
  "SetDrivers",
  z.strictObject({ drivers: z.array(driverSchema).max(6) }),
);
export const quoteRequestSchema = named(
  "QuoteRequest",
  z.strictObject({
    /** extras by the id in the terms, with the number wanted */
    extras: z
      .array(z.strictObject({ id: idSchema, count: z.int().min(1).max(20) }))
      .max(30)
      .default([]),
    /** the customer accepted the quote as shown */
    accept: z.boolean().default(false),
  }),
);
export const overrideSchema = named(
  "OverrideRequest",
  z.strictObject({
    /** key of the finding, from the glass */
    key: z.string().min(1).max(200),
    reason: textSchema(500),
    /** for findings about cover: the insurer's reference and who accepted */
    insurer: z
      .strictObject({ reference: textSchema(60), acceptedBy: textSchema(80), on: dateSchema })
      .optional(),
  }),
);
export const gateCheckSchema = named(
  "GateCheck",
  z.strictObject({ gate: gateSchema, note: textSchema(500) }),
);
export const endSchema = named(
  "EndHire",
  z.strictObject({ as: z.enum(["lost", "cancelled", "noShow"]), reason: textSchema(500) }),
);
export const hirerLinkSchema = named(
  "HirerLink",
  z.object({ url: z.string(), token: z.string(), expires: instantSchema }),
);
