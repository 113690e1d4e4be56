/**
 * What the calibration room takes and gives. Amounts are in the store's own unit (Wh, kg, L); rates are factors
 * on what the description of a vehicle says. Bare numbers stand only inside arrays.
 */
import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import { isoLocalSchema } from "../situation.ts";
import { READABLE_STORES, type ReadableStore, readingSchema, type TripInput } from "../trip/types.ts";

/** Put into a store and known by amount: litres of fuel by the till, kg of gas by weight; for waste and cassette what was emptied out. */
export const addedSchema = z.strictObject({
  store: z.enum(READABLE_STORES),
  /** in the store's unit: kg of gas, L of anything else, Wh of a battery */
  amount: z.number().check(z.positive(), z.maximum(100_000)),
  at: isoLocalSchema,
});
export type Added = z.infer<typeof addedSchema>;

/** What is known of the use of a hire that is over. */
export const measuredSchema = z.strictObject({
  /** levels out, back and on the road */
  readings: z.array(readingSchema).check(z.maxLength(400)),
  added: z.array(addedSchema).check(z.maxLength(200)),
  /** by the odometer, where it was read out and back */
  distanceKm: z.optional(z.number().check(z.minimum(0), z.maximum(30_000))),
});
export type Measured = z.infer<typeof measuredSchema>;

/** A hire that is over: what was forecast from, and what was measured. */
export interface ReturnedHire {
  readonly trip: TripInput;
  readonly measured: Measured;
}

/** Shares at which the forecast of a use is kept: 5, 10 … 95 %. */
export const USE_SHARES = Array.from({ length: 19 }, (_, k) => (k + 1) / 20);

/** One store of one hire: what was measured, and what the forecast said would be measured over the same hours. */
export interface UseComparison {
  readonly store: ReadableStore;
  readonly unit: "Wh" | "kg" | "L";
  /** measured, over all the windows together */
  readonly used: Figure;
  /** forecast at each of {@link USE_SHARES}, with the error of measuring in it */
  readonly quantiles: readonly number[];
  /** forecast, mean over the lives */
  readonly mean: Figure;
  /** of the forecast mean, the heating's part: 0 to 1 */
  readonly warmthShare: number;
  /** between which readings; hours of the trip */
  readonly windows: number;
  readonly hours: number;
}

/** Why a store of a hire says nothing about its rate. */
export const LEFT_OUT_WHYS = ["notRead", "filledUnknown", "charged", "ranOut", "tooLittle"] as const;
export type LeftOutWhy = (typeof LEFT_OUT_WHYS)[number];
export interface LeftOut {
  readonly store: ReadableStore;
  readonly why: LeftOutWhy;
}

export interface UseOfHire {
  readonly comparisons: readonly UseComparison[];
  readonly leftOut: readonly LeftOut[];
}

/** A comparison with whose it is. */
export interface ReturnedUse {
  readonly hire: string;
  readonly vehicle: string;
  readonly store: ReadableStore;
  /** in the store's unit */
  readonly used: number;
  readonly mean: number;
  readonly quantiles: readonly number[];
  /** of the forecast mean, the heating's part: 0 to 1; none of it where it is left out */
  readonly warmthShare?: number;
}

export interface StoreRate {
  readonly store: ReadableStore;
  /** factor on what the description says, as the forecast takes it; of all but heating where `warmth` is given */
  readonly rate: Figure;
  /** factor on what heating uses of it; as all else where it is left out */
  readonly warmth?: Figure;
  /** 80 in 100 that the true one lies between these */
  readonly low: Figure;
  readonly high: Figure;
  /** how much further hires of the depot lie apart than the forecast has by itself, on the logarithm */
  readonly spread: Figure;
  /** how much closer together they lie, 1 where they do not */
  readonly width: Figure;
  /** returns behind it: of the vehicle, or of all vehicles of the depot */
  readonly count: number;
  /** of these, wild: further from the rate than can well be believed; none pulls more than one a spread away */
  readonly wild: number;
}

export interface VehicleRates {
  readonly vehicle: string;
  readonly rates: readonly StoreRate[];
}

export interface Calibration {
  /** what a vehicle without returns of its own is taken to use */
  readonly depot: readonly StoreRate[];
  readonly vehicles: readonly VehicleRates[];
}
