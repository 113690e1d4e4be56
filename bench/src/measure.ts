import { Bench } from "tinybench";
import { median } from "./line.ts";

/**
 * Median time of each task in nanoseconds, in the order given. Few rounds: a forecast takes long enough, and the
 * machine may have other work.
 */
export async function measure(
  tasks: Readonly<Record<string, () => unknown>>,
  rounds = 9,
  warmup = 2,
): Promise<readonly number[]> {
  const bench = new Bench({ time: 0, iterations: rounds, warmupTime: 0, warmupIterations: warmup });
  for (const [name, task] of Object.entries(tasks)) bench.add(name, task);
  await bench.run();
  return bench.tasks.map(({ name, result }) => {
    if (!("latency" in result)) throw new Error(`${name}: could not be measured`);
    return result.latency.p50 * 1e6;
  });
}

/** Runs the tasks by turns, so that what else the machine does falls on all of them alike; medians in milliseconds. */
export async function measureByTurns(
  tasks: readonly (() => Promise<unknown>)[],
  rounds: number,
): Promise<readonly number[]> {
  const taken = tasks.map((): number[] => []);
  for (let round = -2; round < rounds; round++) {
    for (const [k, task] of tasks.entries()) {
      const start = performance.now();
      await task();
      // the first two rounds warm up
      if (round >= 0) taken[k]?.push(performance.now() - start);
    }
  }
  return taken.map(median);
}
