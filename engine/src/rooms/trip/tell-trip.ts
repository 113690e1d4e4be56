import type { StoreId } from "../../stores/stores.ts";
import type { StoreForecast, TripForecast } from "./types.ts";

/** Below this a trouble is noise of the drawing of lots, not news: the forecast's findings begin here too. */
const NEWS = 0.05;
/** a store with less than this left at its worst hour, in one life in ten, is worth a look */
const TIGHT = 0.35;
/** of the capacity: a store that is hardly touched is not worth a strip */
const TOUCHED = 0.05;
/** what people live by is shown as long as it is used; the rest only where it is tight or in trouble: practice */
const LIVED_BY: ReadonlySet<StoreId> = new Set([
  "battery12",
  "lpg",
  "freshWater",
  "cassette",
  "tractionBattery",
]);

export interface TripTelling {
  /** most likely in trouble first; empty where everything lasts */
  readonly news: readonly StoreForecast[];
  /** stores worth a strip of their own, as the forecast lists them */
  readonly shown: readonly StoreForecast[];
  /** they last with room to spare: one line for all */
  readonly quiet: readonly StoreForecast[];
}

/** Share left (of room, where full is the trouble) at the worst hour of the worst tenth of the lives, 0 to 1. */
export function leastLeft({ troubleAt, band, capacity }: StoreForecast): number {
  const size = Math.max(capacity.value, 1e-9);
  const edge =
    troubleAt === "empty"
      ? band.p10.reduce((low, level) => Math.min(low, level), size) / size
      : 1 - band.p90.reduce((high, level) => Math.max(high, level), 0) / size;
  return Math.min(1, Math.max(0, edge));
}

/**
 * What of a forecast is worth telling: no strip for a store that the trip hardly touches, none for the battery of a
 * vehicle that stands on a post every night, none for fuel and fluids that last with room to spare.
 */
export function tellTrip({ stores, stops }: TripForecast): TripTelling {
  const nights = stops.filter(({ nights }) => nights > 0);
  const alwaysPlugged = nights.length > 0 && nights.every(({ onHookUp }) => onHookUp);
  const hasNews = ({ trouble }: StoreForecast) => trouble.chance >= NEWS;
  const isShown = (store: StoreForecast) => {
    const left = leastLeft(store);
    if (hasNews(store) || left < TIGHT) return true;
    if (!LIVED_BY.has(store.store) || left > 1 - TOUCHED) return false;
    return !(store.store === "battery12" && alwaysPlugged);
  };
  return {
    news: stores.filter(hasNews).sort((a, b) => b.trouble.chance - a.trouble.chance),
    shown: stores.filter(isShown),
    quiet: stores.filter((store) => !isShown(store)),
  };
}
