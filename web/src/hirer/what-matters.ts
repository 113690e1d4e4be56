import type { StoreForecast, TripForecast } from "@setfair/engine/trip";
import type { Guide } from "../offline/database.ts";

type Trip = NonNullable<Guide["trip"]>;
type Stop = Trip["stops"][number];
type Pitch = Stop["pitch"];

/** Whether something can be done for a store on a pitch; what is had on the way can be done anywhere. */
function servesThere(store: StoreForecast["store"], pitch: Pitch): boolean {
  switch (store) {
    case "battery12":
    case "tractionBattery":
      return pitch.postAmperes > 0;
    case "lpg":
      return pitch.lpgExchange;
    case "freshWater":
      return pitch.freshWater;
    case "wasteWater":
      return pitch.wasteDrain;
    case "cassette":
      return pitch.cassettePoint;
    default:
      return true;
  }
}

/** What is done for a store on a pitch; no act of a plan for what is had on the way. */
const ACT_FOR: Partial<Record<StoreForecast["store"], Stop["acts"][number]>> = {
  battery12: "plugIn",
  tractionBattery: "plugIn",
  lpg: "exchangeLpg",
  freshWater: "fillWater",
  wasteWater: "emptyWaste",
  cassette: "emptyCassette",
};

/**
 * Whether a stop can still turn the trouble away. What the plan does there already is lived in the forecast: the trouble
 * comes all the same, so to name it as the remedy would be untrue.
 */
function helpsThere(store: StoreForecast["store"], { pitch, acts }: Stop): boolean {
  const act = ACT_FOR[store];
  return servesThere(store, pitch) && (act === undefined || !acts.includes(act));
}

/** What the hirer should know first. */
export type WhatMatters =
  | { readonly kind: "now"; readonly store: StoreForecast["store"] }
  | {
      readonly kind: "trouble";
      readonly store: StoreForecast["store"];
      readonly chanceIn100: number;
      readonly by: string;
      readonly stop: string | null;
      /** it most likely was before now, and nobody has looked */
      readonly isPast: boolean;
      readonly troubleAt: StoreForecast["troubleAt"];
    }
  | { readonly kind: "lasts"; readonly chanceIn100: number };

/** Below this a trouble is not worth the first line: about one trip in seven. */
const WORTH_SAYING = 0.15;

/** Stages in which the vehicle is no longer with the hirer. */
const BACK: readonly Guide["stage"][] = ["returned", "settled", "closed"];

/**
 * Whether the trip is over: the vehicle is `back`, or `late`, past its time and still with the hirer. `now` is civil time at
 * the depot. A forecast of hours that are gone has nothing to say then.
 */
export function overAs({ stage, to }: Pick<Guide, "stage" | "to">, now: string): "back" | "late" | null {
  if (BACK.includes(stage)) return "back";
  return (stage === "onHire" || stage === "handedOver") && now > to ? "late" : null;
}

/** A chance in steps of five in a hundred; never "0" or "100" for what can still go the other way. */
export function inHundred(chance: number): number {
  if (chance <= 0) return 0;
  if (chance >= 1) return 100;
  return Math.min(95, Math.max(5, Math.round(chance * 20) * 5));
}

/** A reading tells of now for so long. */
const FRESH_H = 12;
/** As near to its end as this share of the capacity counts as there. */
const AT_THE_END = 0.05;

const hoursOf = (local: string): number => Date.parse(`${local}:00Z`) / 3_600_000;

/** A store that was read at its end within the last hours. */
function atItsEnd(forecast: TripForecast, now: string): StoreForecast | undefined {
  return forecast.stores.find(({ store, capacity, troubleAt }) => {
    const read = forecast.readings.filter((use) => use.store === store).at(-1);
    if (read === undefined || hoursOf(now) - hoursOf(read.at) > FRESH_H) return false;
    const share = read.level.value / capacity.value;
    return troubleAt === "empty" ? share <= AT_THE_END : share >= 1 - AT_THE_END;
  });
}

/**
 * What was read at its end just now; else the store that is most likely in trouble before the return, the
 * earlier one on a tie. `now` is civil time in the trip's zone; the pitches of the trip say where something can be done.
 */
export function whatMatters(
  forecast: TripForecast,
  now: string,
  trip: Pick<Trip, "stops"> | null = null,
): WhatMatters {
  const ended = atItsEnd(forecast, now);
  if (ended !== undefined) return { kind: "now", store: ended.store };
  const worst = forecast.stores
    .filter(({ trouble }) => trouble.chance >= WORTH_SAYING)
    .sort((a, b) => b.trouble.chance - a.trouble.chance || (timeOf(a) < timeOf(b) ? -1 : 1))[0];
  if (worst === undefined) return { kind: "lasts", chanceIn100: inHundred(forecast.lastsChance) };
  const by = timeOf(worst);
  // the last place before the trouble where something can still be done
  const helps = (k: number) => {
    const stop = trip?.stops[k];
    return stop === undefined || helpsThere(worst.store, stop);
  };
  const stop = forecast.stops
    .filter(({ arrive, leave }, k) => arrive <= by && leave >= now && helps(k))
    .at(-1);
  return {
    kind: "trouble",
    store: worst.store,
    chanceIn100: inHundred(worst.trouble.chance),
    by,
    stop: stop?.name ?? null,
    isPast: by < now,
    troubleAt: worst.troubleAt,
  };
}

const timeOf = ({ trouble }: StoreForecast): string =>
  trouble.middleAt ?? trouble.p50At ?? trouble.p10At ?? trouble.p90At ?? "9999";
