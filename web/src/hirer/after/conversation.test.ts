import { describe, expect, it } from "vitest";
import type { KeptRecord } from "../../offline/database.ts";
import type { Statement } from "../../offline/statement.ts";
import { answerOf, saidOf } from "./conversation.ts";

const line = { id: "mark:1", differenceId: "mark:1" };
const entry = (id: string, kind: string, document: object, at: string, by: string | null = null) =>
  ({ id, kind, about: "mark:1", document, at, by }) as unknown as Statement["entries"][number];
const reply = (id: string, answer: string, state: KeptRecord["state"], at: string) =>
  ({
    id,
    state,
    record: { id, kind: "reply", deviceTime: at, content: { about: "mark:1", answer, text: "why" } },
  }) as unknown as KeptRecord;

describe("what was said of a line", () => {
  const dispute = entry("e1", "dispute", { text: "It was there", recordId: "r1" }, "2026-07-07T10:00:00Z");
  const answer = entry("e2", "reply", { text: "See the picture" }, "2026-07-07T12:00:00Z", "Pat");

  it("has each of the hirer's own answers once, however far it has come", () => {
    const own = [
      reply("r1", "dispute", "sent", "2026-07-07T09:59:00Z"),
      reply("r2", "accept", "waiting", "2026-07-07T13:00:00Z"),
    ];
    expect(saidOf(line, [dispute, answer], own).map(({ id, by, state }) => [id, by, state])).toEqual([
      ["r1", "hirer", "sent"],
      ["e2", "depot", "sent"],
      ["r2", "hirer", "waiting"],
    ]);
  });

  it("takes the last answer that the depot did not refuse, sent or not", () => {
    expect(answerOf(saidOf(line, [], []))).toBeNull();
    expect(answerOf(saidOf(line, [dispute, answer], []))).toBe("dispute");
    const own = [reply("r2", "accept", "waiting", "2026-07-07T13:00:00Z")];
    expect(answerOf(saidOf(line, [dispute], own))).toBe("accept");
    const refused = [reply("r3", "accept", "refused", "2026-07-07T14:00:00Z")];
    expect(answerOf(saidOf(line, [dispute], refused))).toBe("dispute");
  });

  it("leaves out what was said of other lines, and adds up what a repair costs", () => {
    const other = { ...answer, about: "mark:2" };
    const invoice = entry(
      "e3",
      "invoice",
      { partsPence: 100, labourPence: 20 },
      "2026-07-08T10:00:00Z",
      "Pat",
    );
    expect(saidOf(line, [other, invoice], []).map(({ pence }) => pence)).toEqual([120]);
  });
});
