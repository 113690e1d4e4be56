import { badField } from "../api/refusal.ts";
import type { Store } from "../store/types.ts";
import { settlementOf } from "./after-hire.ts";
import { toJson } from "./documents.ts";
import type { HireData } from "./hire-data.ts";
import { entriesOfHire, isNoticeOf } from "./settlement-entries.ts";
import { keepStanding } from "./standing.ts";

/** In the place of an account, where it came by the hirer's link. */
export const HIRER = "hirer";

export interface HirerAnswer {
  readonly lineId: string;
  readonly answer: "accept" | "dispute";
  readonly text: string;
  /** where it came as a record of the hirer's phone: that record, its photographs, and when it was said */
  readonly from?: {
    readonly recordId: string;
    readonly photographs: readonly string[];
    readonly saidAt: string;
  };
}

/** Refuses an answer to a line, a fine or a toll that is not there, and a dispute that says no why; `path` leads to the answer. */
export async function checkAnswer(
  store: Store,
  data: HireData,
  { lineId, answer, text }: HirerAnswer,
  path: { readonly line: string; readonly text: string },
): Promise<void> {
  const { result } = await settlementOf(store, data);
  const isThere =
    result.lines.some(({ id }) => id === lineId) || isNoticeOf(await entriesOfHire(store, data), lineId);
  if (!isThere) throw badField(path.line, "expected a line of this settlement");
  if (answer === "dispute" && text.trim() === "") throw badField(path.text, "expected why, in a few words");
}

/** Keeps what the hirer says of a line, for good; the last answer to a line holds, all are kept. */
export async function keepAnswer(store: Store, data: HireData, said: HirerAnswer, now: Date): Promise<void> {
  const { lineId, answer, text, from } = said;
  await store.settlementEntries.add({
    hireId: data.row.id,
    kind: answer,
    about: lineId,
    document: toJson({ text, ...(from === undefined ? {} : { ...from }) }),
    by: HIRER,
  });
  await keepStanding(store, data.row.id, now, HIRER);
}
