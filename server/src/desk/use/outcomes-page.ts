import { type ReturnedUse, type StoreJudgement, type StoreRate, USE_SHARES } from "@setfair/engine";
import type { z } from "zod";
import type { forecastOutcomesSchema } from "../../api/schemas/calibration.ts";
import type { Store } from "../../store/types.ts";
import { inThread } from "../../threads/in-thread.ts";
import { asDocument, type VehicleDocument } from "../documents.ts";
import { learnFromReturns, returnedUses } from "./learn-from-returns.ts";

export type OutcomesPage = z.input<typeof forecastOutcomesSchema>;

/** how long one request may go on comparing what still waits */
const MOST_MS = 900;

/**
 * How good forecasts were: each before (as described) and after (with what the returns before its departure had
 * taught), so that nothing is judged by what it taught itself.
 * @param vehicleId judged and listed for this vehicle only; the depot's other vehicles teach all the same
 */
export async function outcomesPage(
  store: Store,
  today: string,
  vehicleId: string | null,
): Promise<OutcomesPage> {
  const waiting = await learnFromReturns(store, MOST_MS);
  const rows = await returnedUses(store);
  const returns = rows.map(({ id, vehicleId: vehicle, left, returnedAt, uses }) => ({
    hire: id,
    vehicle,
    left,
    returned: returnedAt,
    uses,
  }));
  const found = await inThread("judgeReturns", returns, vehicleId);
  const judged = rows.filter(({ id }) => found.judged.includes(id));
  const now = await inThread(
    "calibrateRates",
    rows.flatMap((row) => row.uses),
  );
  const ofVehicles = now.vehicles.filter(({ vehicle }) => vehicleId === null || vehicle === vehicleId);
  const versions = await store.vehicles.allOn(today);
  return {
    waiting,
    returns: rows.length,
    taught: part(rows.filter(({ id }) => found.taught.includes(id))),
    judged: part(judged),
    shares: [...USE_SHARES],
    stores: found.before.map((before) => ({
      store: before.store,
      before: judgement(before),
      after: judgement(found.after.find(({ store: of }) => of === before.store) ?? before),
      points: points(found.uses, before.store),
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

/** Each outcome over the middle of its forecast, for the picture: the tenth, the ninetieth and the measured, as shares of the middle. */
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
