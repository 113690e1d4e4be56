import type { Reading, RoomAnswer, Trip, TripForecast, TripInput } from "@setfair/engine";
import { hashJson } from "@setfair/records";
import type { Store } from "../store/types.ts";
import { inThread } from "../threads/in-thread.ts";
import { type ForecastDocument, toJson } from "./documents.ts";
import { type HireData, partOf, readHireData } from "./hire-data.ts";
import { panelReadings } from "./record-facts.ts";
import { ENGINE_VERSION } from "./version.ts";

/** How often a trip is lived; a long one less often, so that an answer stays a matter of seconds. */
export function runsFor(trip: Trip): number {
  const days = (Date.parse(`${trip.return}Z`) - Date.parse(`${trip.depart}Z`)) / 86_400_000;
  return days <= 28 ? 500 : 200;
}
export const SEED = 1;

/** What the trip room is asked for this hire; null while vehicle, party or trip is missing. */
export function forecastInput(data: HireData): TripInput | null {
  const party = partOf(data, "party");
  const trip = partOf(data, "trip");
  if (data.vehicle === null || party === null || trip === null) return null;
  const input = { vehicle: data.vehicle.document.description, party, trip, runs: runsFor(trip), seed: SEED };
  return Object.keys(data.rates).length === 0 ? input : { ...input, rates: data.rates };
}

export function hashOfForecast(input: TripInput, readings: readonly Reading[]): string {
  return hashJson({ engine: ENGINE_VERSION, input, readings });
}

export interface ForecastOfHire extends ForecastDocument {
  readonly cached: boolean;
}

/** The forecast that is kept, where its input is still the same to the last byte; null where it is not. */
export function keptForecast(data: HireData, inputHash = hashNow(data)): ForecastOfHire | null {
  const kept = partOf(data, "forecast");
  return kept !== null && kept.inputHash === inputHash ? { ...kept, cached: true } : null;
}

function hashNow(data: HireData): string | null {
  const input = forecastInput(data);
  return input === null ? null : hashOfForecast(input, panelReadings(data.records, data.depot.timeZone));
}

/**
 * The forecast of a hire, from the cache where its input is the same to the last byte; else lived again and
 * kept. After the keys the readings of the panel are taken in.
 */
export async function forecastOf(store: Store, data: HireData): Promise<ForecastOfHire | null> {
  const input = forecastInput(data);
  if (input === null) return null;
  const readings = panelReadings(data.records, data.depot.timeZone);
  const inputHash = hashOfForecast(input, readings);
  const kept = keptForecast(data, inputHash);
  // one kept from before posts and ranges were told is lived once more; as lists show it, it stays good
  if (kept?.answer.result.usualPosts !== undefined) return kept;
  const document: ForecastDocument = {
    inputHash,
    engineVersion: ENGINE_VERSION,
    at: data.now,
    answer: await liveOnce(inputHash, input, readings),
  };
  // a cache: where someone else kept one meanwhile, theirs is as good
  await store.hires.putPart(
    data.row.id,
    "forecast",
    toJson(document),
    data.parts.forecast?.version ?? 0,
    "system",
  );
  return { ...document, cached: false };
}

/**
 * Has the forecast of a hire at hand before a transaction asks for it: on SQLite nobody else reads while one is open.
 * Refused as not found where the depot has no such hire.
 */
export async function liveAhead(store: Store, hireId: string, now: Date): Promise<void> {
  await forecastOf(store, await readHireData(store, hireId, now));
}

const lived = new Map<string, Promise<RoomAnswer<TripForecast>>>();

/** A trip that several ask for at the same time is lived once. */
function liveOnce(
  inputHash: string,
  input: TripInput,
  readings: readonly Reading[],
): Promise<RoomAnswer<TripForecast>> {
  const under = lived.get(inputHash);
  if (under !== undefined) return under;
  const begun = inThread("forecast", input, readings).finally(() => lived.delete(inputHash));
  lived.set(inputHash, begun);
  return begun;
}
