import type { RoomAnswer, StopPlan, TripInput } from "@setfair/engine";
import type { PlanAnswer } from "./plan-worker.ts";

/** Searches the stop plan in this browser; rejects with the engine's own words. */
export function planHere(input: TripInput): Promise<RoomAnswer<StopPlan>> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL("./plan-worker.ts", import.meta.url), { type: "module" });
    const end = (act: () => void) => {
      worker.terminate();
      act();
    };
    worker.addEventListener("message", ({ data }: MessageEvent<PlanAnswer>) => {
      end(() => (data.ok ? resolve(data.answer) : reject(new Error(data.message))));
    });
    worker.addEventListener("error", (event) => end(() => reject(new Error(event.message))));
    worker.postMessage(input);
  });
}
