import type { StoreId, TripInput } from "@setfair/engine";
import type { TripAnswers, TripAsk, WorkerAnswer } from "./plan-worker.ts";

function askWorker<Ask extends TripAsk>(question: Ask): Promise<TripAnswers[Ask["ask"]]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL("./plan-worker.ts", import.meta.url), { type: "module" });
    const end = (act: () => void) => {
      worker.terminate();
      act();
    };
    worker.addEventListener("message", ({ data }: MessageEvent<WorkerAnswer>) => {
      end(() => {
        // the worker answers what it was asked
        if (data.ok) resolve(data.answer as TripAnswers[Ask["ask"]]);
        else reject(new Error(data.message));
      });
    });
    worker.addEventListener("error", (event) => end(() => reject(new Error(event.message))));
    worker.postMessage(question);
  });
}

/** Searches the stop plan in this browser; rejects with the engine's own words. */
export function planHere(input: TripInput): Promise<TripAnswers["plan"]> {
  return askWorker({ ask: "plan", input });
}

/** Finds what moves the answer for a store most (null: the tightest); rejects with the engine's own words. */
export function tornadoHere(input: TripInput, store: StoreId | null): Promise<TripAnswers["tornado"]> {
  return askWorker({ ask: "tornado", input, store });
}
