import {
  calibrateRates,
  judgeForecasts,
  type ReturnedUse,
  ratesOf,
  type StoreJudgement,
  type StoreRate,
  USE_SHARES,
} from "@setfair/engine";
import type { z } from "zod";
import type { forecastOutcomesSchema } from "../../api/schemas/calibration.ts";
import type { Store } from "../../store/types.ts";
import { asDocument, type VehicleDocument } from "../documents.ts";
import { learnFromReturns, returnedUses } from "./learn-from-returns.ts";

export type OutcomesPage = z.input<typeof forecastOutcomesSchema>;

/** The first returns teach, the others are judged: so many in ten teach. */
const TEACH_TENTHS = 6;
/** how long one request may go on comparing what still waits */
const MOST_MS = 900;

/**
 * How good forecasts were, on returns that the rates were not learnt from: the earlier part teaches, the later part
 * is judged, each forecast before (as described) and after (with what the earlier part taught).
 * @param vehicleId judged and listed for this vehicle only; the depot's other vehicles teach all the same
 */
export async function outcomesPage(
  store: Store,
  today: string,
  vehicleId: string | null,
): Promise<OutcomesPage> {
  const waiting = await learnFromReturns(store, MOST_MS);
  const rows = await returnedUses(store);
  const cut = Math.floor((rows.length * TEACH_TENTHS) / 10);
  const [teach, judge] = [rows.slice(0, cut), rows.slice(cut)];
  const taught = calibrateRates(teach.flatMap(({ uses }) => uses));
  const judged = judge.filter((row) => vehicleId === null || row.vehicleId === vehicleId);
  const uses = judged.flatMap((row) => row.uses);
  const before = judgeForecasts(uses);
  const after = judgeForecasts(uses, (vehicle) => ratesOf(taught, vehicle));
  const now = calibrateRates(rows.flatMap((row) => row.uses));
  const ofVehicles = now.vehicles.filter(({ vehicle }) => vehicleId === null || vehicle === vehicleId);
  const versions = await store.vehicles.allOn(today);
  return {
    waiting,
    returns: rows.length,
    taught: part(teach),
    judged: part(judged),
    shares: [...USE_SHARES],
    stores: before.map((found) => ({
      store: found.store,
      before: judgement(found),
      after: judgement(after.find((each) => each.store === found.store) ?? found),
      points: points(uses, found.store),
    })),
    rates: [
      ...ofVehicles.flatMap(({ vehicle, rates }) => rates.map((rate) => rateLine(vehicle, rate))),
      ...now.depot.map((rate) => rateLine(null, rate)),
    ],
    leftOut: leftOutCounts(judged.flatMap(({ leftOut }) => leftOut)),
    vehicles: versions.map(({ of, document }) => {
      const { name, registration } = asDocument<VehicleDocument>(document).description;
      return { id: of, name, registration };
    }),
  };
}

function part(rows: readonly { readonly returnedAt: string }[]): OutcomesPage["taught"] {
  return { count: rows.length, from: rows[0]?.returnedAt ?? null, to: rows.at(-1)?.returnedAt ?? null };
}

const judgement = ({ count, coverage, bias, observed }: StoreJudgement) => ({
  count,
  coverage,
  bias,
  observed: [...observed],
});

const rateLine = (
  vehicleId: string | null,
  { store, rate, warmth, low, high, spread, width, count, wild }: StoreRate,
) => ({
  vehicleId,
  store,
  rate,
  ...(warmth === undefined ? {} : { warmth }),
  low,
  high,
  spread,
  width,
  count,
  wild,
});

/** Each outcome over its forecast's middle, for the picture: the tenth, the ninetieth and the measured, as shares of the middle. */
function points(uses: readonly ReturnedUse[], store: string): { p10: number; p90: number; used: number }[] {
  return uses
    .filter((use) => use.store === store)
    .map(({ used, quantiles }) => {
      const middle = quantiles[9]!;
      return { p10: quantiles[1]! / middle, p90: quantiles[17]! / middle, used: used / middle };
    });
}

function leftOutCounts(leftOut: readonly { readonly store: string; readonly why: string }[]) {
  const counts = new Map<string, OutcomesPage["leftOut"][number]>();
  for (const { store, why } of leftOut) {
    const key = `${store} ${why}`;
    const count = (counts.get(key)?.count ?? 0) + 1;
    counts.set(key, { store, why, count } as OutcomesPage["leftOut"][number]);
  }
  return [...counts.values()].sort((a, b) => b.count - a.count);
}
