import { planStops, type RoomAnswer, type StopPlan, type TripInput } from "@setfair/engine";

export type PlanAnswer =
  | { readonly ok: true; readonly answer: RoomAnswer<StopPlan> }
  | { readonly ok: false; readonly message: string };

/** Searches the stop plan beside the page, so that the page never stands still. */
addEventListener("message", (event: MessageEvent<TripInput>) => {
  let answer: PlanAnswer;
  try {
    answer = { ok: true, answer: planStops(event.data) };
  } catch (error) {
    answer = { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
  postMessage(answer);
});
