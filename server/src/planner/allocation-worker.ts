/** The planner's own thread: takes one task, answers it, and ends. */
import { parentPort, workerData } from "node:worker_threads";
import type { AllocationInput } from "@setfair/engine";
import { planHere } from "./planner.ts";

const { input, seconds } = workerData as { readonly input: AllocationInput; readonly seconds: number };
parentPort?.postMessage(planHere(input, seconds));
