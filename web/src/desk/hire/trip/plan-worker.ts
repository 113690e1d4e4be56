import {
  findTornado,
  planStops,
  type RoomAnswer,
  type StopPlan,
  type StoreId,
  type Tornado,
  type TripInput,
} from "@setfair/engine";

/** What this worker is asked, and what each question is answered with. */
export type TripAsk =
  | { readonly ask: "plan"; readonly input: TripInput }
  | { readonly ask: "tornado"; readonly input: TripInput; readonly store: StoreId | null };
export interface TripAnswers {
  readonly plan: RoomAnswer<StopPlan>;
  readonly tornado: Tornado | null;
}
export type WorkerAnswer =
  | { readonly ok: true; readonly answer: TripAnswers[TripAsk["ask"]] }
  | { readonly ok: false; readonly message: string };

function answerOf(question: TripAsk): TripAnswers[TripAsk["ask"]] {
  return question.ask === "plan"
    ? planStops(question.input)
    : findTornado(question.input, question.store ?? undefined);
}

/** Lives the trip again and again beside the page, so that the page never stands still. */
addEventListener("message", (event: MessageEvent<TripAsk>) => {
  let answer: WorkerAnswer;
  try {
    answer = { ok: true, answer: answerOf(event.data) };
  } catch (error) {
    answer = { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
  postMessage(answer);
});
