import type { KeptRecord } from "../../offline/database.ts";
import type { Statement } from "../../offline/statement.ts";

/** One thing that was said of a line, by whom, and how far it has come. */
export interface Said {
  readonly id: string;
  readonly by: "hirer" | "depot";
  readonly kind: string;
  readonly text: string;
  readonly pence: number | null;
  readonly at: string;
  readonly photographs: readonly string[];
  /** sent: the depot has it · waiting: kept on this phone · refused: the depot would not take it */
  readonly state: "sent" | "waiting" | "refused";
  readonly problem: string | null;
}

type Entry = Statement["entries"][number];
const textOf = (value: unknown): string => (typeof value === "string" ? value : "");
const listOf = (value: unknown): readonly string[] => (Array.isArray(value) ? value.map(String) : []);

/** What the depot and the hirer say to each other; costs count with parts and work together. */
function fromDepot({ id, kind, document, by, at }: Entry): Said {
  const { partsPence, labourPence } = document as { partsPence?: number; labourPence?: number };
  return {
    id: textOf(document.recordId) || id,
    by: kind === "accept" || kind === "dispute" ? "hirer" : by === null ? "hirer" : "depot",
    kind,
    text: textOf(document.text),
    pence: partsPence === undefined ? null : partsPence + (labourPence ?? 0),
    at,
    photographs: listOf(document.photographs),
    state: "sent",
    problem: null,
  };
}

const fromPhone = ({ record, state, problem }: KeptRecord): Said => ({
  id: record.id,
  by: "hirer",
  kind: textOf(record.content.answer),
  text: textOf(record.content.text),
  pence: null,
  at: record.deviceTime,
  photographs: listOf(record.content.photographs),
  state,
  problem: problem ?? null,
});

/** Entries that belong to a line: what was said of it, and what the repair of its mark costs. */
const isOf = (entry: Entry, line: { readonly id: string; readonly differenceId: string | null }): boolean =>
  entry.about !== "" && (entry.about === line.id || entry.about === line.differenceId);

/** Everything that was said of a line, oldest first: by the depot, and by this phone with what waits to be sent. */
export function saidOf(
  line: { readonly id: string; readonly differenceId: string | null },
  entries: Statement["entries"],
  own: readonly KeptRecord[],
): readonly Said[] {
  const there = entries.filter((entry) => isOf(entry, line)).map(fromDepot);
  const known = new Set(there.map(({ id }) => id));
  const here = own
    .filter(({ record }) => record.kind === "reply" && record.content.about === line.id)
    .filter(({ id }) => !known.has(id))
    .map(fromPhone);
  return [...there, ...here].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

/** The last answer of the hirer to a line that was not refused; null while there is none. */
export function answerOf(said: readonly Said[]): "accept" | "dispute" | null {
  const last = said.findLast(
    ({ by, kind, state }) =>
      by === "hirer" && state !== "refused" && (kind === "accept" || kind === "dispute"),
  );
  return last === undefined ? null : (last.kind as "accept" | "dispute");
}
