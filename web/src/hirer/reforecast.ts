import type { Reading, TripForecast, TripInput } from "@setfair/engine/trip";
import type { WorkerAnswer, WorkerAsk } from "./trip-worker.ts";

/** Runs the forecast again on this phone; rejects with the engine's own words. */
export function reforecastHere(input: TripInput, readings: readonly Reading[]): Promise<TripForecast> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL("./trip-worker.ts", import.meta.url), { type: "module" });
    const end = (act: () => void) => {
      worker.terminate();
      act();
    };
    worker.addEventListener("message", (event: MessageEvent<WorkerAnswer>) => {
      const { data } = event;
      end(() => (data.ok ? resolve(data.forecast) : reject(new Error(data.message))));
    });
    worker.addEventListener("error", (event) => end(() => reject(new Error(event.message))));
    worker.postMessage({ input, readings } satisfies WorkerAsk);
  });
}
