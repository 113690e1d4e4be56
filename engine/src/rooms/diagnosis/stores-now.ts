import type { StoreForecast, TripForecast } from "../trip/types.ts";
import type { StoreNow } from "./types.ts";

/** As near to its end as this share of the capacity counts as there. */
const AT_THE_END = 0.05;

/**
 * Chance that each store is at the end that is trouble, at a civil time of the trip, from the levels of the
 * forecast (with the panel's readings taken in, where there are any). Before and after the trip its ends
 * count.
 * @param at civil time `YYYY-MM-DDTHH:MM` in the trip's zone
 */
export function storesNow(forecast: Pick<TripForecast, "axis" | "stores">, at: string): readonly StoreNow[] {
  const later = forecast.axis.at.findIndex((point) => point > at);
  const index = later < 0 ? forecast.axis.at.length - 1 : Math.max(0, later - 1);
  return forecast.stores.map((store) => ({ store: store.store, troubleChance: chanceAt(store, index) }));
}

function chanceAt({ band, capacity, troubleAt }: StoreForecast, index: number): number {
  const levels = [band.p10[index] ?? 0, band.p50[index] ?? 0, band.p90[index] ?? 0] as const;
  const full = capacity.value;
  const margin = AT_THE_END * full;
  // how much is left until the end that is trouble, least first
  return troubleAt === "empty"
    ? chanceBelow(levels, margin)
    : chanceBelow([full - levels[2], full - levels[1], full - levels[0]], margin);
}

/** Share of the lives with at most `limit`, from the tenth, the middle and the ninth tenth; straight between them. */
function chanceBelow([p10, p50, p90]: readonly [number, number, number], limit: number): number {
  const between = (low: number, high: number, from: number, to: number) =>
    high <= low ? to : from + ((limit - low) / (high - low)) * (to - from);
  if (limit >= p90) return 0.95;
  if (limit >= p50) return between(p50, p90, 0.5, 0.9);
  if (limit >= p10) return between(p10, p50, 0.1, 0.5);
  return p10 <= 0 ? 0.1 : 0.1 * Math.max(0, limit / p10);
}
