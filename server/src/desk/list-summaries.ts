import type { HireRow, Store } from "../store/types.ts";
import { forecastOf } from "./forecast.ts";
import { glassOf, isBeforeKeys } from "./glass.ts";
import { readRow } from "./hire-data.ts";
import { type HireSummary, summaryOf } from "./summary.ts";

const ROAD: readonly string[] = ["handedOver", "onHire"];

/** Lines of a list, each from the same computation as the hire's own page. */
export async function listSummaries(
  store: Store,
  rows: readonly HireRow[],
  now: Date,
): Promise<HireSummary[]> {
  const depot = await store.depot.get();
  const lines: HireSummary[] = [];
  for (const row of rows) {
    const data = await readRow(store, row, depot, now);
    // hires that are over have no glass and nothing to forecast
    const counts = isBeforeKeys(row.stage) || ROAD.includes(row.stage);
    const forecast = counts ? await forecastOf(store, data) : null;
    lines.push(summaryOf(data, glassOf(data, forecast?.answer ?? null)));
  }
  return lines;
}
