import type { StoreForecast, StoreId, TripForecast } from "@setfair/engine";
import type { StripShape } from "./strip-drawing.tsx";

const TONES: Readonly<Partial<Record<StoreId, "ink" | "brass" | "water" | "moss">>> = {
  battery12: "ink",
  starterBattery: "ink",
  tractionBattery: "ink",
  lpg: "brass",
  fuel: "brass",
  freshWater: "water",
  def: "water",
  wasteWater: "moss",
  cassette: "moss",
};

/** Below this a trouble is noise of the drawing of lots, not news (1 in 20). */
const NEWS = 0.05;
export const hasTrouble = ({ trouble }: StoreForecast): boolean => trouble.chance >= NEWS;

/** When trouble most likely comes; forecasts kept from before do not say it. */
export const likelyAt = ({ trouble }: StoreForecast): string | null =>
  trouble.middleAt ?? trouble.p50At ?? trouble.p10At;

const minutesOf = (local: string): number => Date.parse(`${local}:00Z`) / 60_000;

/** Where on the road of the trip a time lies, 0 to 1. */
export function placeOnRoad({ axis }: TripForecast, at: string): number {
  const [first, last] = [axis.at[0] ?? at, axis.at.at(-1) ?? at];
  const share = (minutesOf(at) - minutesOf(first)) / Math.max(1, minutesOf(last) - minutesOf(first));
  return Math.min(1, Math.max(0, share));
}

/** The drawing of one store of a forecast; `mark` names its trouble. */
export function stripOf(store: StoreForecast, forecast: TripForecast, mark: string): StripShape {
  const capacity = Math.max(1e-9, store.capacity.value);
  const shares = (levels: readonly number[]) => levels.map((level) => level / capacity);
  const at = hasTrouble(store) ? likelyAt(store) : null;
  return {
    p10: shares(store.band.p10),
    p50: shares(store.band.p50),
    p90: shares(store.band.p90),
    hours: forecast.axis.hours,
    tone: TONES[store.store] ?? "ink",
    trouble: at === null ? null : { share: placeOnRoad(forecast, at), text: mark },
  };
}
