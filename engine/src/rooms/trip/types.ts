/**
 * What the trip room takes and gives. Civil times are `YYYY-MM-DDTHH:MM` in the trip's zone.
 * Bare numbers stand only inside arrays; their unit is beside them.
 */
import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import type { IsoLocal } from "../../base/time.ts";
import type { StoreId } from "../../stores/stores.ts";
import { vehicleDescriptionSchema } from "../../vehicle/description.ts";
import { isoLocalSchema, partySchema, tripSchema } from "../situation.ts";
import type { PostForecast, PostSize } from "./posts/types.ts";

export const READABLE_STORES = [
  "battery12",
  "lpg",
  "freshWater",
  "wasteWater",
  "cassette",
  "fuel",
  "def",
  "tractionBattery",
] as const;

export type ReadableStore = (typeof READABLE_STORES)[number];

/** The furthest that measured use may move a rate from the description's own, widen a forecast and narrow it. */
export const RATE_BOUNDS = { least: 0.5, most: 2, mostSd: 0.6, leastWidth: 0.5 } as const;
/** Measured use of one store against the description of the vehicle. */
export const useRateSchema = z.strictObject({
  /** how much more (above 1) or less is used than the description says */
  times: z.number().check(z.minimum(RATE_BOUNDS.least), z.maximum(RATE_BOUNDS.most)),
  /** the same of what heating uses of it, fan and all; `times` where it is left out */
  warmth: z.optional(z.number().check(z.minimum(RATE_BOUNDS.least), z.maximum(RATE_BOUNDS.most))),
  /** how much further hires lie apart than the forecast has by itself: standard deviation of the logarithm, 0.1 is about 10 % */
  sd: z._default(z.number().check(z.minimum(0), z.maximum(RATE_BOUNDS.mostSd)), 0),
  /** how much closer together they lie: factor on the spread of the habits of the system that holds the store */
  width: z._default(z.number().check(z.minimum(RATE_BOUNDS.leastWidth), z.maximum(1)), 1),
});
/** By store; as the description says where one is left out. */
export const ratesSchema = z.partialRecord(z.enum(READABLE_STORES), useRateSchema);
/** Stores whose use is the habit of the system that holds them, so that its spread is theirs. */
export const NARROWED_STORES = ["freshWater", "cassette", "fuel", "def"] as const satisfies ReadableStore[];
export type UseRates = z.infer<typeof ratesSchema>;

/** `setfair trip`: one vehicle, one party, one trip. */
export const tripInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  party: partySchema,
  trip: tripSchema,
  /** how many times the trip is lived */
  runs: z._default(z.int().check(z.minimum(1), z.maximum(5000)), 500),
  seed: z._default(z.int().check(z.minimum(0), z.maximum(4294967295)), 1),
  /** false: mean weather, no spread of habits and appliances (the plain deterministic case) */
  spread: z._default(z.boolean(), true),
  stepMinutes: z._default(z.union([z.literal(15), z.literal(7.5)]), 15),
  /** measured use against the description, by store; see the calibration room */
  rates: z._default(ratesSchema, {}),
  /** give what went into and out of each store */
  audit: z._default(z.boolean(), false),
});
/** The input as it may be written: fields with a default may be left out. */
export type TripInput = z.input<typeof tripInputSchema>;

/** What the hirer reads on the panel. */
export const READING_UNITS = ["V", "%", "Ah", "Wh", "L", "kg"] as const;
export type ReadingUnit = (typeof READING_UNITS)[number];

export const readingSchema = z.strictObject({
  store: z.enum(READABLE_STORES),
  /** V: at rest; % and Ah of a battery: of its rated capacity, what is left; % of another store: of its capacity */
  value: z.number().check(z.minimum(0), z.maximum(10000)),
  unit: z.enum(READING_UNITS),
  at: isoLocalSchema,
  /** standard error of the reading in its unit; a default by unit where it is left out */
  sd: z.optional(z.number().check(z.positive(), z.maximum(1000))),
});
export type Reading = z.infer<typeof readingSchema>;

/** Levels of a store at the points of the time axis, in the store's unit. */
export interface StoreBand {
  readonly p10: readonly number[];
  readonly p50: readonly number[];
  readonly p90: readonly number[];
}

/** When a store is first in trouble (empty, or full for waste and cassette). */
export interface Trouble {
  /** share of the lives in which it happens at all, 0 to 1 */
  readonly chance: number;
  /** the earliest tenth, the middle and the latest tenth over all lives; null where that share never meets trouble */
  readonly p10At: IsoLocal | null;
  readonly p50At: IsoLocal | null;
  readonly p90At: IsoLocal | null;
  /** when it most likely comes: half of the lives that meet trouble have met it by then; null where none does; absent in forecasts kept from before */
  readonly middleAt?: IsoLocal | null;
}

/** One system's part in what is drawn from a store (or put into waste and cassette). */
export interface Draw {
  /** id of the fitted system; `body` for the vehicle itself */
  readonly system: string;
  readonly kind: string;
  /** mean over the lives, in the store's unit */
  readonly amount: Figure;
  /** of all use of this store, 0 to 1 */
  readonly share: number;
}

export interface StopLevel {
  /** index in `stops`, or `home` for the return to the depot */
  readonly stop: number | "home";
  readonly arriveP50: number;
  readonly arriveP10: number;
  readonly arriveP90: number;
  /** null for home */
  readonly leaveP50: number | null;
  /** chance of getting here without trouble of this store, 0 to 1 */
  readonly reachChance: number;
  /** the same in steps of 5 % for showing, 0 to 100 */
  readonly reachShownPct: number;
}

export interface StoreAudit {
  /** mean over the lives, in the store's unit */
  readonly in: number;
  readonly out: number;
  readonly change: number;
  /** largest |in − out − change| of any life, relative to what moved */
  readonly residual: number;
}

/** The audit of one store, also of those that nobody watches: heat of the cabin and of the hot water. */
export interface AuditLine extends StoreAudit {
  readonly store: StoreId;
  readonly unit: "Wh" | "kg" | "L";
}

export interface StoreForecast {
  readonly store: StoreId;
  readonly unit: "Wh" | "kg" | "L";
  /** what this store may be run down to and filled up to: for a battery, usable energy above its cut-off */
  readonly capacity: Figure;
  /** for a battery: the same capacity in ampere-hours */
  readonly capacityAh?: Figure;
  readonly atDeparture: Figure;
  /** which end is trouble */
  readonly troubleAt: "empty" | "full";
  readonly band: StoreBand;
  readonly trouble: Trouble;
  readonly stops: readonly StopLevel[];
  /** largest first */
  readonly draws: readonly Draw[];
  /** mean use per 24 hours while the store still serves, in its unit; for a battery also in Ah */
  readonly usePerDay: Figure;
  readonly usePerDayAh?: Figure;
  readonly audit?: StoreAudit;
}

/** How to set one thing that is set by hand, at one stop. */
export interface StopSetting {
  /** id of the fitted system */
  readonly system: string;
  readonly kind: string;
  /** `none`: nothing feeds it here */
  readonly from: "mains" | "gas" | "fuel" | "battery" | "inverter" | "none";
  /** on the mains: the stage that fits beside the rest, W */
  readonly stage: Figure | null;
  /** what gives the rest where the stage is not all of it */
  readonly rest: "gas" | "fuel" | null;
  /** where the trip or its plan sets them */
  readonly dayC: Figure | null;
  readonly nightC: Figure | null;
}

export interface StopForecast {
  readonly stop: number;
  readonly name: string;
  readonly arrive: IsoLocal;
  readonly leave: IsoLocal;
  readonly nights: number;
  readonly onHookUp: boolean;
  /** coldest hour outside over the nights of this stop, middle and the coldest tenth of the lives; null for a stop without a night */
  readonly coldestNightC: { readonly p50: number; readonly p10: number } | null;
  /** chance of reaching this stop with no store in trouble, 0 to 1, and in steps of 5 % for showing */
  readonly reachChance: number;
  readonly reachShownPct: number;
  /** the store most likely in trouble by then; null where none ever is */
  readonly weakest: StoreId | null;
  /** the settings of this stop; absent in forecasts kept from before */
  readonly set?: readonly StopSetting[];
}

/** How far a store takes the vehicle, down to its reserve. */
export interface RangeForecast {
  readonly store: StoreId;
  readonly atDeparture: Figure;
  readonly whenFull: Figure;
  /** share of the capacity that is kept back */
  readonly reserve: Figure;
  /** all the driving of the trip */
  readonly road: Figure;
}

/** On what a day's weather rests. */
export interface ClimateNote {
  readonly stop: number | "home";
  readonly nearestStation: string;
  readonly distance: Figure;
  /** share of the weight that rests on rows from memory, 0 to 1 */
  readonly fromMemoryShare: number;
  /** the nearest station's own row is from memory */
  readonly nearestFromMemory: boolean;
  readonly weak: boolean;
  /** height above the sea that the temperatures are worked out for; a default where the place does not say */
  readonly elevation: Figure;
  /** days at this place whose weather is a forecast's */
  readonly forecastDays: number;
}

export interface ReadingUse {
  readonly store: StoreId;
  readonly at: IsoLocal;
  /** in the store's unit */
  readonly level: Figure;
  /** what the forecast had at that hour */
  readonly expectedP50: number;
  readonly how: "weighted" | "restarted";
  /** effective number of lives after the reading */
  readonly effective: number;
}

export interface TripForecast {
  readonly runs: number;
  readonly seed: number;
  readonly stepMinutes: number;
  readonly timeZone: string;
  /** hourly points from departure to return */
  readonly axis: { readonly hours: readonly number[]; readonly at: readonly IsoLocal[] };
  readonly stores: readonly StoreForecast[];
  readonly stops: readonly StopForecast[];
  /** what each post where the vehicle is plugged in can do for it; absent in forecasts kept from before it was asked */
  readonly posts?: readonly PostForecast[];
  /** what posts of the usual ratings can do for it, wherever it stops; none for a vehicle without an inlet */
  readonly usualPosts?: readonly PostSize[];
  /** by store that driving draws on; absent in forecasts kept from before */
  readonly ranges?: readonly RangeForecast[];
  /** outside and cabin air at the points of the axis, °C */
  readonly outsideC: StoreBand;
  readonly cabinC: StoreBand;
  /** chance of no trouble in any store until the return, and in steps of 5 % */
  readonly lastsChance: number;
  readonly lastsShownPct: number;
  readonly notes: readonly ClimateNote[];
  /** with `audit`: every store that carries over from step to step, the heat of cabin and hot water too */
  readonly audit?: readonly AuditLine[];
  /** readings taken into account; empty in a first forecast */
  readonly readings: readonly ReadingUse[];
}
