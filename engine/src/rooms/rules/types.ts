import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import type { Finding, RoomAnswer } from "../../base/finding.ts";
import { vehicleDescriptionSchema } from "../../vehicle/description.ts";
import { driverSchema, isoDateSchema, isoLocalSchema, partySchema, tripSchema } from "../situation.ts";

const country = z.string().check(z.regex(/^[A-Z]{2}$/, "expected a two-letter country code (ISO 3166-1)"));
const drivers = z.array(driverSchema).check(z.maxLength(8));
const text = (max: number) => z.string().check(z.minLength(1), z.maxLength(max));
const whole = (min: number, max: number) => z.int().check(z.minimum(min), z.maximum(max));

// ── licence ─────────────────────────────────────────────────────────────────────────────────────────

export const licenceInputSchema = z.strictObject({
  drivers,
  vehicle: vehicleDescriptionSchema,
  from: isoLocalSchema,
  to: isoLocalSchema,
  today: isoDateSchema,
  /** every country on the route; GB where empty */
  countries: z.array(country),
});
export type LicenceInput = z.infer<typeof licenceInputSchema>;

export interface DriverEntitlement {
  readonly driverId: string;
  readonly mayDrive: "yes" | "no" | "unchecked";
  /** largest MAM that this driver may drive of this fuel in GB on the last day, kg */
  readonly upTo: Figure;
  readonly findings: readonly Finding[];
}
export interface LicenceResult {
  readonly drivers: readonly DriverEntitlement[];
}
export type CheckLicence = (input: LicenceInput) => RoomAnswer<LicenceResult>;

// ── insurance ───────────────────────────────────────────────────────────────────────────────────────

const outcome = z.enum(["refer", "refuse"]);
/** One insurer's criteria, as data of the depot. Outside a limit: `outcome` says whether the insurer is asked or it is refused. */
export const insurancePolicySchema = z.strictObject({
  id: text(60),
  validFrom: isoDateSchema,
  validTo: isoDateSchema,
  age: z.strictObject({ min: whole(17, 99), max: whole(17, 120), outcome }),
  /** full years for which the car entitlement has been held */
  yearsHeld: z.strictObject({ min: whole(0, 20), outcome }),
  convictions: z.strictObject({
    withinYears: whole(1, 11),
    maxCount: whole(0, 20),
    maxPointsEach: whole(0, 12),
    maxPointsTotal: whole(0, 12),
    outcome,
  }),
  /** endorsement codes by their first letters, e.g. DR */
  codes: z.array(z.strictObject({ prefix: text(4), withinYears: whole(1, 11), outcome })),
  faultIncidents3y: z.strictObject({ max: whole(0, 20), outcome }),
  disqualified3y: outcome,
  maxMamKg: whole(1000, 7500),
  countries: z.array(country),
  /** most nights abroad in one hire */
  maxNightsAbroad: whole(0, 365),
});
export type InsurancePolicy = z.infer<typeof insurancePolicySchema>;

export const insuranceInputSchema = z.strictObject({
  drivers,
  policy: insurancePolicySchema,
  /** renewals that the policy is followed by before the hire ends, in their order */
  following: z.optional(z.array(insurancePolicySchema).check(z.maxLength(10))),
  vehicle: vehicleDescriptionSchema,
  from: isoLocalSchema,
  to: isoLocalSchema,
  countries: z.array(country),
  nightsAbroad: z.optional(whole(0, 365)),
});
export type InsuranceInput = z.infer<typeof insuranceInputSchema>;
export interface InsuranceResult {
  readonly drivers: readonly {
    readonly driverId: string;
    readonly outcome: "accept" | "refer" | "refuse";
    readonly findings: readonly Finding[];
  }[];
  readonly outcome: "accept" | "refer" | "refuse";
}
export type CheckInsurance = (input: InsuranceInput) => RoomAnswer<InsuranceResult>;

// ── seats ───────────────────────────────────────────────────────────────────────────────────────────

export const seatsInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  party: partySchema,
  today: isoDateSchema,
  /** days of the hire, whose rules are asked for; today's where left out */
  days: z.optional(z.strictObject({ first: isoDateSchema, last: isoDateSchema })),
  /** every country on the route; GB where left out */
  countries: z.optional(z.array(country)),
  /** most dogs that the depot takes, where the vehicle takes pets at all; 2 where left out (practice) */
  petPolicy: z.optional(z.strictObject({ maxDogs: whole(0, 6) })),
});
export type SeatsInput = z.infer<typeof seatsInputSchema>;
export interface SeatsResult {
  readonly belts: Figure;
  readonly berths: Figure;
  readonly childRestraints: readonly string[];
}
export type CheckSeats = (input: SeatsInput) => RoomAnswer<SeatsResult>;

// ── season ──────────────────────────────────────────────────────────────────────────────────────────

export const seasonInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  from: isoLocalSchema,
  to: isoLocalSchema,
  countries: z.array(country),
  /** first and last day in each country, as far as known; a country without one is taken for the whole hire */
  stays: z.optional(
    z.array(z.strictObject({ country, enter: isoDateSchema, leave: isoDateSchema })).check(z.maxLength(60)),
  ),
  /** coldest night expected on the trip, °C; not known where left out */
  coldestNightC: z.optional(z.number().check(z.minimum(-50), z.maximum(40))),
  /** places and nights of the hire with their forecast, for the chance of frost; not known where left out */
  trip: z.optional(tripSchema),
  /** what the vehicle wears and carries for this hire, as somebody saw it */
  winterTyres: z.optional(z.boolean()),
  snowChains: z.optional(z.boolean()),
});
export type SeasonInput = z.infer<typeof seasonInputSchema>;
export interface SeasonResult {
  readonly winter: boolean;
  readonly frost: boolean;
}
export type CheckSeason = (input: SeasonInput) => RoomAnswer<SeasonResult>;
