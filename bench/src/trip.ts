import { type Line, lineOf } from "./line.ts";
import { measure } from "./measure.ts";
import { growthOf } from "./memory.ts";
import { ROOT } from "./root.ts";
import { tour } from "./tour.ts";

const STEPS_PER_DAY = 96;
const MEGABYTE = 1_000_000;

/** What one step of one life costs, many lives at once and one alone, and what memory a forecast asks for. */
export async function benchTrip(): Promise<readonly Line[]> {
  // as it is built and served: what runs sources from their files wraps every function, and reads slower
  const built: typeof import("@setfair/engine") = await import(`${ROOT}engine/dist/index.js`);
  const { forecastTrip, planStops } = built;
  const line = lineOf("trip forecast, panel van, steps of 15 minutes");
  const [many, one] = [tour(14, 500), tour(28, 1)];
  const [manyNs] = (await measure({ many: () => forecastTrip(many) })) as [number];
  // one life takes so little that it is over before the machine has made its code fast, and a median of half a second wanders
  const [oneNs] = (await measure({ one: () => forecastTrip(one) }, 400, 400)) as [number];
  const manyStep = manyNs / (500 * 14 * STEPS_PER_DAY);
  const oneStep = oneNs / (28 * STEPS_PER_DAY);
  // after the forecasts, so that it finds them warm
  const [planNs] = (await measure({ plan: () => planStops(tour(28, 500)) }, 3)) as [number];
  const growth = await growthOf(() => forecastTrip(many));
  return [
    line("500 lives of 14 days", manyNs / 1e6, "ms", "median"),
    line("1 life of 28 days", oneNs / 1e6, "ms", "median; goal at most 5"),
    line("500 × 14 days, per vehicle-step", manyStep, "ns", "goal at most 300"),
    line("1 × 28 days, per vehicle-step", oneStep, "ns"),
    line(
      "one life alone over 500 at once",
      oneStep / manyStep,
      "ratio",
      "per vehicle-step, weather and summary included",
    ),
    line(
      "stop plan of 28 days",
      planNs / 1e9,
      "s",
      "median; goal at most 3, and 10 on a processor slowed 4 times",
    ),
    line(
      "heap and array buffers after one forecast",
      growth.both / MEGABYTE,
      "MB",
      "500 × 14 days, before anything is collected; goal under 60",
    ),
    line("heap after one forecast", growth.heap / MEGABYTE, "MB", "of it"),
    line("array buffers after one forecast", growth.buffers / MEGABYTE, "MB", "of it"),
    line("heap kept with the answer", growth.keptHeap / MEGABYTE, "MB", "after collecting"),
    line("array buffers kept with the answer", growth.keptBuffers / MEGABYTE, "MB", "after collecting"),
  ];
}
