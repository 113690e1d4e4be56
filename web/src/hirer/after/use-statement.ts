import { useEffect, useState } from "react";
import type { KeptRecord } from "../../offline/database.ts";
import { fetchStatement, type Statement, type StatementAnswer } from "../../offline/statement.ts";
import { phone } from "../phone.ts";
import { useRecords } from "../use-records.ts";

export interface StatementOnPhone {
  readonly statement: Statement | null;
  readonly answer: StatementAnswer["outcome"] | "asking";
  /** where the depot did not answer: when what is shown came; null where it is fresh */
  readonly keptAt: string | null;
  /** this phone's own answers, sent or not */
  readonly own: readonly KeptRecord[];
  /** keeps the hirer's answer to a line and sends it when it can; rejects where nothing can be kept */
  answerLine(
    lineId: string,
    answer: "accept" | "dispute",
    text: string,
    pictures: readonly Uint8Array<ArrayBuffer>[],
  ): Promise<void>;
}

/** The statement from the depot, or as this phone kept it; asked for again when an answer has gone out. */
export function useStatement(token: string, hireId: string): StatementOnPhone {
  const chain = `${hireId}.statement`;
  const own = useRecords(chain);
  const sent = own.filter(({ state }) => state === "sent").length;
  const [shown, setShown] = useState<Pick<StatementOnPhone, "statement" | "answer" | "keptAt">>({
    statement: null,
    answer: "asking",
    keptAt: null,
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was sent changes what the depot says
  useEffect(() => {
    let ended = false;
    const ask = async () => {
      const answer = await fetchStatement(token);
      if (answer.outcome === "shown") {
        if (!ended) setShown({ statement: answer.statement, answer: "shown", keptAt: null });
        return void phone().then((store) => store.keepStatement(token, answer.statement));
      }
      const kept = await phone()
        .then((store) => store.statement(token))
        .catch(() => null);
      if (ended) return;
      setShown((before) => ({
        statement: before.statement ?? kept?.statement ?? null,
        answer: answer.outcome,
        keptAt: before.statement === null ? (kept?.fetchedAt ?? null) : before.keptAt,
      }));
    };
    const asked = () => void ask().catch(() => undefined);
    asked();
    addEventListener("online", asked);
    return () => {
      ended = true;
      removeEventListener("online", asked);
    };
  }, [token, sent]);
  return {
    ...shown,
    own,
    answerLine: async (lineId, answer, text, pictures) => {
      const store = await phone();
      await store.keepEvidence({
        pictures,
        shows: { about: lineId, by: "hirer" },
        record: {
          kind: "reply",
          refs: { hireId },
          chain,
          content: { about: lineId, answer, text },
          via: { token },
        },
      });
    },
  };
}
