import type { z } from "zod";
import type { AppendAnswer, Store } from "../../store/types.ts";
import { Refusal } from "../refusal.ts";
import type { recordAnswerSchema } from "../schemas/records.ts";

type Refused = Extract<AppendAnswer, { ok: false }>;
const EXPECTED: Readonly<Record<Refused["why"], string>> = {
  broken: "a whole record with its own hash",
  gap: "the records that come before it in its chain",
  fork: "the next place in its chain: another record is there",
  conflict: "an id of its own: another record has it",
};

function problemsOf(answers: readonly AppendAnswer[]) {
  return answers.flatMap((answer, k) => {
    if (answer.ok) return [];
    const wanted = answer.expectedSeq === undefined ? "" : `, from seq ${answer.expectedSeq} on`;
    const named =
      answer.problems?.map(({ path, expected }) => ({ path: `records.${k}.${path}`, expected })) ?? [];
    return [
      { path: `records.${k}`, expected: `${EXPECTED[answer.why]}${wanted} (record ${answer.id})` },
      ...named,
    ];
  });
}

/** Appends a batch whole or not at all; the bad ones are named. Sending twice appends once. */
export async function appendRecords(
  store: Store,
  records: readonly unknown[],
): Promise<z.input<typeof recordAnswerSchema>> {
  const answers = await store.within(async (inner) => {
    const given = await inner.records.append(records);
    const problems = problemsOf(given);
    const conflict = given.some((answer) => !answer.ok && answer.why !== "broken");
    if (problems.length > 0) throw new Refusal(conflict ? "recordConflict" : "recordRefused", { problems });
    return given;
  });
  const receipts = answers.flatMap((answer) =>
    answer.ok ? [{ id: answer.id, receipt: answer.receipt, again: answer.again }] : [],
  );
  const head = await store.records.head();
  return { receipts, added: receipts.filter(({ again }) => !again).length, head: head?.hash ?? null };
}
