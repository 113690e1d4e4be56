import {
  BadInput,
  compareUse,
  type LeftOut,
  type ReturnedUse,
  ratesOf,
  type TripInput,
  type UseComparison,
} from "@setfair/engine";
import type { Store, UseReturnRow } from "../../store/types.ts";
import { inThread } from "../../threads/in-thread.ts";
import { asDocument, toJson, type VehicleDocument } from "../documents.ts";
import { SEED } from "../forecast.ts";
import { type HireData, partOf } from "../hire-data.ts";
import { dateOf } from "../local-time.ts";
import { ENGINE_VERSION } from "../version.ts";
import { NO_SHEET, type UseDocument, type UseSheet, useOfHire } from "./measured-use.ts";
import { ANY_VEHICLE } from "./rates.ts";

/** How often a trip that is over is lived for the comparison: enough for its tenth and ninetieth per cent. */
const RUNS = 100;
const AT_ONCE = 20;
/** so many are compared at a time, as there may be threads */
const SIDE_BY_SIDE = 4;
/** kind of the job that sets returns beside their forecasts after a hire was settled */
export const LEARN_USE = "use.learn";

export interface OutcomeDocument {
  readonly comparisons: readonly UseComparison[];
  readonly leftOut: readonly LeftOut[];
  /** civil date of the departure; missing where it was compared before this was kept */
  readonly left?: string;
}

/**
 * Writes down what a hire used, to be learnt from; its sheet as before where none is handed in.
 * @returns false while vehicle, party or trip is missing
 */
export async function keepUse(store: Store, data: HireData, sheet?: UseSheet): Promise<boolean> {
  const kept = await store.uses.ofHire(data.row.id);
  const before = kept === null ? NO_SHEET : asDocument<UseDocument>(kept.document).sheet;
  const document = useOfHire(data, sheet ?? before);
  if (document === null || data.row.vehicleId === null) return false;
  await store.uses.put({
    vehicleId: data.row.vehicleId,
    hireId: data.row.id,
    returnedAt: data.row.to,
    document: toJson(document),
  });
  await store.jobs.add({ kind: LEARN_USE, payload: {} });
  return true;
}

/**
 * Sets returns beside their forecasts, oldest first, for about so many milliseconds or until it is to stop.
 * When none waits any more the rates of all vehicles follow from all returns.
 * @returns how many still wait, at most {@link AT_ONCE}
 */
export async function learnFromReturns(
  store: Store,
  milliseconds: number,
  isStopping: () => boolean = () => false,
): Promise<number> {
  const until = performance.now() + milliseconds;
  let waiting = await store.uses.waiting(ENGINE_VERSION, AT_ONCE);
  let isNew = false;
  while (waiting.length > 0 && performance.now() < until && !isStopping()) {
    const some = waiting.slice(0, SIDE_BY_SIDE);
    const found = await Promise.all(some.map(async (row) => ({ row, outcome: await outcomeOf(store, row) })));
    for (const { row, outcome } of found)
      await store.uses.setOutcome(row.id, toJson(outcome), ENGINE_VERSION);
    isNew = true;
    waiting = await store.uses.waiting(ENGINE_VERSION, AT_ONCE);
  }
  if (isNew && waiting.length === 0) await keepRates(store);
  return waiting.length;
}

/** Throws BadInput that names the field where the sheet cannot be of this hire: a unit of another store, a time outside the trip. */
export function checkSheet(data: HireData, sheet: UseSheet): void {
  const { vehicle } = data;
  const [party, trip] = [partOf(data, "party"), partOf(data, "trip")];
  if (vehicle === null || party === null || trip === null) return;
  const input: TripInput = { vehicle: vehicle.document.description, party, trip, runs: 1, spread: false };
  compareUse({ trip: input, measured: { readings: [...sheet.readings], added: [...sheet.added] } });
}

async function outcomeOf(store: Store, row: UseReturnRow): Promise<OutcomeDocument> {
  const day = dateOf(row.returnedAt);
  const versions = await store.vehicles.versions(row.vehicleId);
  const version = (await store.vehicles.on(row.vehicleId, day)) ?? versions[0] ?? null;
  if (version === null) return { comparisons: [], leftOut: [] };
  const { description } = asDocument<VehicleDocument>(version.document);
  const { party, trip, measured } = asDocument<UseDocument>(row.document);
  const input: TripInput = { vehicle: description, party, trip, runs: RUNS, seed: SEED };
  try {
    const found = await inThread("compareUse", { trip: input, measured });
    return { ...found, left: trip.depart.slice(0, 10) };
  } catch (error) {
    // a description that has changed since may not fit what was read: that return teaches nothing
    if (error instanceof BadInput) return { comparisons: [], leftOut: [] };
    throw error;
  }
}

/** All that has been set beside its forecast, oldest return first. */
export async function returnedUses(store: Store) {
  const rows = await store.uses.outcomes(ENGINE_VERSION);
  return rows.map((row) => {
    const { comparisons, leftOut, left } = asDocument<OutcomeDocument>(row.outcome ?? {});
    const uses = (comparisons ?? []).map(
      ({ store: of, used, mean, quantiles, warmthShare }): ReturnedUse => ({
        hire: row.id,
        vehicle: row.vehicleId,
        store: of,
        used: used.value,
        mean: mean.value,
        quantiles,
        warmthShare,
      }),
    );
    return { ...row, uses, leftOut: leftOut ?? [], left: left ?? dateOf(row.returnedAt) };
  });
}

async function keepRates(store: Store): Promise<void> {
  const uses = (await returnedUses(store)).flatMap((row) => row.uses);
  const calibration = await inThread("calibrateRates", uses);
  const of = (vehicleId: string) => ({ vehicleId, document: toJson(ratesOf(calibration, vehicleId)) });
  await store.uses.putRates([ANY_VEHICLE, ...calibration.vehicles.map(({ vehicle }) => vehicle)].map(of));
}
