import { STORE_IDS, type StoreId } from "@setfair/engine";
import * as z from "zod/mini";
import { answerSchema, figureSchema } from "./answer.ts";

const storeId = z.enum(STORE_IDS as [StoreId, ...StoreId[]]);
const numbers = z.array(z.number());
const share = z.number().check(z.minimum(0), z.maximum(1));
const pct = z.int().check(z.minimum(0), z.maximum(100));
const band = z.strictObject({ p10: numbers, p50: numbers, p90: numbers });
const stopAt = z.union([z.int(), z.literal("home")]);

const store = z.strictObject({
  store: storeId,
  unit: z.enum(["Wh", "kg", "L"]),
  capacity: figureSchema,
  capacityAh: z.optional(figureSchema),
  atDeparture: figureSchema,
  troubleAt: z.enum(["empty", "full"]),
  band,
  trouble: z.strictObject({
    chance: share,
    p10At: z.nullable(z.string()),
    p50At: z.nullable(z.string()),
    p90At: z.nullable(z.string()),
    middleAt: z.optional(z.nullable(z.string())),
  }),
  stops: z.array(
    z.strictObject({
      stop: stopAt,
      arriveP50: z.number(),
      arriveP10: z.number(),
      arriveP90: z.number(),
      leaveP50: z.nullable(z.number()),
      reachChance: share,
      reachShownPct: pct,
    }),
  ),
  draws: z.array(z.strictObject({ system: z.string(), kind: z.string(), amount: figureSchema, share })),
  usePerDay: figureSchema,
  usePerDayAh: z.optional(figureSchema),
  audit: z.optional(
    z.strictObject({ in: z.number(), out: z.number(), change: z.number(), residual: z.number() }),
  ),
});

const stop = z.strictObject({
  stop: z.int(),
  name: z.string(),
  arrive: z.string(),
  leave: z.string(),
  nights: z.int(),
  onHookUp: z.boolean(),
  coldestNightC: z.nullable(z.strictObject({ p50: z.number(), p10: z.number() })),
  reachChance: share,
  reachShownPct: pct,
  weakest: z.nullable(storeId),
  set: z.optional(
    z.array(
      z.strictObject({
        system: z.string(),
        kind: z.string(),
        from: z.enum(["mains", "gas", "fuel", "battery", "inverter", "none"]),
        stage: z.nullable(figureSchema),
        rest: z.nullable(z.enum(["gas", "fuel"])),
        dayC: z.nullable(figureSchema),
        nightC: z.nullable(figureSchema),
      }),
    ),
  ),
});

const loadName = { system: z.nullable(z.string()), kind: z.string() };
const verdict = z.enum(["fits", "mayTrip", "trips"]);
const postSize = {
  post: figureSchema,
  limit: figureSchema,
  power: figureSchema,
  volts: figureSchema,
  drop: figureSchema,
  isLow: z.boolean(),
  isOnDrum: z.boolean(),
  kept: z.array(
    z.strictObject({
      ...loadName,
      stage: figureSchema,
      full: figureSchema,
      instead: z.enum(["gas", "fuel", "battery", "waits"]),
    }),
  ),
  before: z.array(
    z.strictObject({
      ...loadName,
      power: figureSchema,
      shed: z.array(z.strictObject({ ...loadName, toW: z.number() })),
      fits: z.boolean(),
    }),
  ),
};
const post = z.strictObject({
  stop: z.int(),
  name: z.string(),
  ...postSize,
  alone: z.array(
    z.strictObject({
      ...loadName,
      power: figureSchema,
      current: figureSchema,
      verdict,
      verdictAtLeast: verdict,
      latest: z.nullable(figureSchema),
    }),
  ),
});

export const tripOutputSchema = answerSchema(
  z.strictObject({
    runs: z.int(),
    seed: z.int(),
    stepMinutes: z.number(),
    timeZone: z.string(),
    axis: z.strictObject({ hours: numbers, at: z.array(z.string()) }),
    stores: z.array(store),
    stops: z.array(stop),
    posts: z.optional(z.array(post)),
    usualPosts: z.optional(z.array(z.strictObject(postSize))),
    ranges: z.optional(
      z.array(
        z.strictObject({
          store: storeId,
          atDeparture: figureSchema,
          whenFull: figureSchema,
          reserve: figureSchema,
          road: figureSchema,
        }),
      ),
    ),
    outsideC: band,
    cabinC: band,
    lastsChance: share,
    lastsShownPct: pct,
    notes: z.array(
      z.strictObject({
        stop: stopAt,
        nearestStation: z.string(),
        distance: figureSchema,
        fromMemoryShare: share,
        nearestFromMemory: z.boolean(),
        weak: z.boolean(),
        elevation: figureSchema,
        forecastDays: z.int(),
      }),
    ),
    audit: z.optional(
      z.array(
        z.strictObject({
          store: storeId,
          unit: z.enum(["Wh", "kg", "L"]),
          in: z.number(),
          out: z.number(),
          change: z.number(),
          residual: z.number(),
        }),
      ),
    ),
    readings: z.array(
      z.strictObject({
        store: storeId,
        at: z.string(),
        level: figureSchema,
        expectedP50: z.number(),
        how: z.enum(["weighted", "restarted"]),
        effective: z.number(),
      }),
    ),
  }),
);
