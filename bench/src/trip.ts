import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { type Line, lineOf } from "./line.ts";
import { tour } from "./tour.ts";
import type { TripTimes, TripWork } from "./trip-alone.ts";

const STEPS_PER_DAY = 96;
const MEGABYTE = 1_000_000;

/**
 * What one step of one life costs, many lives at once and one alone, and what memory a forecast asks for. Measured in a
 * process that has read the engine alone, as the server's thread, the browser's worker and the command have: what the
 * rest of the bench reads gives a buffer away, after which every access to a typed array is a fifth slower.
 */
export async function benchTrip(): Promise<readonly Line[]> {
  const line = lineOf("trip forecast, panel van, steps of 15 minutes");
  const work: TripWork = { many: tour(14, 500), one: tour(28, 1), plan: tour(28, 500) };
  const { manyNs, oneNs, planNs, growth } = await liveAlone(work);
  const manyStep = manyNs / (500 * 14 * STEPS_PER_DAY);
  const oneStep = oneNs / (28 * STEPS_PER_DAY);
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

/** Lives it in a process that has read nothing else. */
async function liveAlone(work: TripWork): Promise<TripTimes> {
  const child = fork(fileURLToPath(new URL("./trip-alone.ts", import.meta.url)));
  child.send(work);
  const [times] = (await Promise.race([once(child, "message"), diedOf(child)])) as [TripTimes];
  return times;
}

async function diedOf(child: ChildProcess): Promise<never> {
  const [code] = await once(child, "exit");
  throw new Error(`the process that lives the trips ended with ${code}`);
}
