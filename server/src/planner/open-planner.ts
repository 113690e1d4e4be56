import { existsSync } from "node:fs";
import { Worker } from "node:worker_threads";
import type { Allocation, RoomAnswer } from "@setfair/engine";
import { type Planner, planHere } from "./planner.ts";

/** Stands beside the built server; run from source there is none. */
const BESIDE = new URL("./allocation-worker.js", import.meta.url);

/**
 * A planner that leaves this thread free: each task has a thread of its own, one at a time, so that a second one
 * waits and does not take the processor from the first. Without the worker's file it plans in this thread.
 */
export function openPlanner(file: URL = BESIDE): Planner {
  if (!existsSync(file)) return async (input, seconds) => planHere(input, seconds);
  let last: Promise<unknown> = Promise.resolve();
  return (input, seconds) => {
    const task = last.then(() => inThread(file, { input, seconds }));
    last = task.catch(() => undefined);
    return task;
  };
}

/** Rejects with what the thread threw, or where it ended without an answer. */
function inThread(file: URL, workerData: object): Promise<RoomAnswer<Allocation>> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(file, { workerData });
    worker.once("message", resolve);
    worker.once("error", reject);
    worker.once("exit", (code) => reject(new Error(`planner: its thread ended with ${code}`)));
  });
}
