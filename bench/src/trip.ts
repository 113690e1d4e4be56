import { forecastTrip } from "@setfair/engine";
import { type Line, lineOf } from "./line.ts";
import { measure } from "./measure.ts";
import { growthOf } from "./memory.ts";
import { tour } from "./tour.ts";

const STEPS_PER_DAY = 96;
const MEGABYTE = 1_000_000;

/** What one step of one life costs, many lives at once and one alone, and what memory a forecast asks for. */
export async function benchTrip(): Promise<readonly Line[]> {
  const line = lineOf("trip forecast, panel van, steps of 15 minutes");
  const [many, one] = [tour(14, 500), tour(28, 1)];
  const [manyNs, oneNs] = (await measure({
    many: () => forecastTrip(many),
    one: () => forecastTrip(one),
  })) as [number, number];
  const manyStep = manyNs / (500 * 14 * STEPS_PER_DAY);
  const oneStep = oneNs / (28 * STEPS_PER_DAY);
  const growth = await growthOf(() => forecastTrip(many));
  return [
    line("500 lives of 14 days", manyNs / 1e6, "ms", "median"),
    line("1 life of 28 days", oneNs / 1e6, "ms", "median"),
    line("500 × 14 days, per vehicle-step", manyStep, "ns"),
    line("1 × 28 days, per vehicle-step", oneStep, "ns"),
    line(
      "one life alone over 500 at once",
      oneStep / manyStep,
      "ratio",
      "per vehicle-step, weather and summary included",
    ),
    line(
      "heap after one forecast",
      growth.heap / MEGABYTE,
      "MB",
      "500 × 14 days, before anything is collected",
    ),
    line("array buffers after one forecast", growth.buffers / MEGABYTE, "MB", "likewise"),
    line("heap kept with the answer", growth.keptHeap / MEGABYTE, "MB", "after collecting"),
    line("array buffers kept with the answer", growth.keptBuffers / MEGABYTE, "MB", "after collecting"),
  ];
}
