import type { DepotRow, HireRow, Store } from "../store/types.ts";
import { breathe } from "../threads/breathe.ts";
import { forecastOf, keptForecast } from "./forecast.ts";
import { glassOf, isBeforeKeys } from "./glass.ts";
import { readRows } from "./hire-data.ts";
import { type HireSummary, summaryOf } from "./summary.ts";

const ROAD: readonly string[] = ["handedOver", "onHire"];
/** A list lives trips for so long; a trip whose forecast is not kept then is unchecked in it, and is lived by the next. */
const LIVING_MS = 3000;
/** Only these have a glass, or a forecast that is still to come true. */
const isInHand = ({ stage }: HireRow) => isBeforeKeys(stage) || ROAD.includes(stage);

/** Lines of a list in their order, each from the same computation as the hire's own page. */
export async function listSummaries(
  store: Store,
  rows: readonly HireRow[],
  now: Date,
  depot?: DepotRow,
): Promise<HireSummary[]> {
  const place = depot ?? (await store.depot.get());
  const lines = new Map<string, HireSummary>();
  const started = performance.now();
  for (const data of await readRows(store, rows.filter(isInHand), place, now)) {
    const mayLive = performance.now() - started < LIVING_MS;
    const forecast = mayLive ? await forecastOf(store, data) : keptForecast(data);
    lines.set(data.row.id, summaryOf(data, glassOf(data, forecast?.answer ?? null)));
    await breathe();
  }
  const over = rows.filter((row) => !isInHand(row));
  for (const data of await readRows(store, over, place, now, true)) {
    lines.set(data.row.id, summaryOf(data, null));
    await breathe();
  }
  return rows.flatMap(({ id }) => lines.get(id) ?? []);
}
