import { LEFT_OUT_WHYS, READABLE_STORES, READING_UNITS } from "@setfair/engine";
import * as z from "zod";
import { figureSchema, idSchema, instantSchema, localSchema } from "./common.ts";
import { named } from "./named.ts";

const store = z.enum(READABLE_STORES);

const judgementSchema = named(
  "ForecastJudgement",
  z.object({
    count: z.int(),
    /** share of outcomes from P10 to P90; 0.8 is meant */
    coverage: figureSchema,
    /** all measured over all forecast, less 1 */
    bias: figureSchema,
    /** for each of `shares`, the share of outcomes at or below that quantile of their forecast */
    observed: z.array(z.number()),
  }),
);

const partSchema = z.object({
  count: z.int(),
  from: instantSchema.nullable(),
  to: instantSchema.nullable(),
});

export const forecastOutcomesSchema = named(
  "ForecastOutcomes",
  z.object({
    /** returns that are still to be set beside their forecasts; ask again */
    waiting: z.int(),
    returns: z.int(),
    /** the oldest returns, which only teach */
    taught: partSchema,
    /** the others: each is judged by the rates that the returns before its departure had taught */
    judged: partSchema,
    shares: z.array(z.number()),
    stores: z.array(
      z.object({
        store,
        before: judgementSchema,
        after: judgementSchema,
        /** one for each outcome, over the middle of its forecast as it stood when the hire left */
        points: z.array(z.object({ p10: z.number(), p90: z.number(), used: z.number() })),
      }),
    ),
    /** by all returns so far, as forecasts take them */
    rates: z.array(
      z.object({
        /** null: a vehicle of the depot without returns of its own */
        vehicleId: idSchema.nullable(),
        store,
        rate: figureSchema,
        /** of heating, where it has a rate of its own; `rate` is then of all else */
        warmth: figureSchema.optional(),
        low: figureSchema,
        high: figureSchema,
        spread: figureSchema,
        width: figureSchema,
        count: z.int(),
        wild: z.int(),
      }),
    ),
    leftOut: z.array(z.object({ store, why: z.enum(LEFT_OUT_WHYS), count: z.int() })),
    vehicles: z.array(z.object({ id: idSchema, name: z.string(), registration: z.string() })),
  }),
);
export const forecastOutcomesQuerySchema = z.object({ vehicleId: idSchema.optional() });

const addedSchema = z.object({
  store,
  /** in the store's unit: kg of gas, Wh of a battery, L of anything else */
  amount: z.number().positive().max(100_000),
  at: localSchema,
});
const levelSchema = z.object({
  store,
  value: z.number().min(0).max(10_000),
  unit: z.enum(READING_UNITS),
  at: localSchema,
  sd: z.number().positive().max(1000).optional(),
});

/** What the desk wrote down of a return: till, scale, can. */
export const useSheetSchema = named(
  "UseSheet",
  z.object({
    added: z.array(addedSchema).max(60),
    readings: z.array(levelSchema).max(200),
    distanceKm: z.number().min(0).max(30_000).nullable(),
  }),
);
export const useOfHireSchema = named(
  "UseOfHire",
  z.object({
    sheet: useSheetSchema,
    /** what a change of the sheet is based on */
    version: z.string(),
    /** null until it has been set beside the forecast */
    compared: z
      .array(
        z.object({
          store,
          used: figureSchema,
          mean: figureSchema,
          p10: z.number(),
          p90: z.number(),
          windows: z.int(),
          hours: z.number(),
        }),
      )
      .nullable(),
    leftOut: z.array(z.object({ store, why: z.enum(LEFT_OUT_WHYS) })),
  }),
);
