import { type Reading, reforecastTrip, type TripForecast, type TripInput } from "@setfair/engine/trip";

export interface WorkerAsk {
  readonly input: TripInput;
  readonly readings: readonly Reading[];
}
export type WorkerAnswer =
  | { readonly ok: true; readonly forecast: TripForecast }
  | { readonly ok: false; readonly message: string };

/** Lives the trip again beside the page, so that the page never stands still. */
addEventListener("message", (event: MessageEvent<WorkerAsk>) => {
  let answer: WorkerAnswer;
  try {
    answer = { ok: true, forecast: reforecastTrip(event.data.input, event.data.readings).result };
  } catch (error) {
    answer = { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
  postMessage(answer);
});
