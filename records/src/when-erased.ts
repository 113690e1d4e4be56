import { type AnyRecord, type DepotRecord, isErased } from "./record.ts";

/**
 * What becomes of a record, and of the photographs that it names, when the person of its hire is erased.
 * now: with the person · later: it says how the vehicle was, so it stays until claims about the hire can no longer
 * be made · stays: it names nobody
 */
export type WhenErased = "now" | "later" | "stays";

/** Kinds in which a person speaks or signs: their name, their hand, their own words. */
const OF_THE_PERSON: ReadonlySet<string> = new Set(["signature", "reply", "note"]);
/** Kinds that say how the vehicle was and who had its keys, and what puts such a record right. */
const OF_THE_VEHICLE: ReadonlySet<string> = new Set([
  "walkStarted",
  "walkFinished",
  "reading",
  "count",
  "look",
  "mark",
  "photograph",
  "answer",
  "correction",
  "keys",
]);
/** What a photograph of a signed sheet of paper is said to be of. */
const SHEET = "sheet";

/** @param names texts that tell who the person is: full names, mail addresses, telephone numbers */
export function whenErased(record: AnyRecord, names: readonly string[]): WhenErased {
  if (isErased(record)) return "stays";
  if (OF_THE_PERSON.has(record.kind)) return "now";
  if (!doesName(record, names)) return "stays";
  return OF_THE_VEHICLE.has(record.kind) ? "later" : "now";
}

/** Very short texts would be found everywhere. */
const SHORTEST_NAME = 4;

function doesName({ content }: DepotRecord, names: readonly string[]): boolean {
  const said = JSON.stringify(content).toLowerCase();
  return names.some((name) => {
    // as it stands inside of JSON
    const text = JSON.stringify(name.trim()).slice(1, -1).toLowerCase();
    return text.length >= SHORTEST_NAME && said.includes(text);
  });
}

export interface NamedPhotographs {
  /** signed sheets, and what a person sent with their own words: they go with the person */
  readonly now: readonly string[];
  /** of the vehicle */
  readonly later: readonly string[];
}

/**
 * Hashes of the photographs that records name, each once. One that shows a signed sheet goes with the person
 * whatever else names it; one that was sent with a reply stays where a record of the vehicle names it too.
 */
export function photographsWhenErased(records: readonly AnyRecord[]): NamedPhotographs {
  const sheets = new Set<string>();
  const spoken = new Set<string>();
  const vehicle = new Set<string>();
  for (const record of records) {
    if (isErased(record)) continue;
    for (const hash of sheetsIn(record)) sheets.add(hash);
    const into = record.kind === "reply" || record.kind === "note" ? spoken : vehicle;
    for (const hash of shotsIn(record)) into.add(hash);
  }
  const later = [...vehicle].filter((hash) => !sheets.has(hash));
  const kept = new Set(later);
  return { now: [...sheets, ...[...spoken].filter((hash) => !kept.has(hash) && !sheets.has(hash))], later };
}

function sheetsIn({ kind, content }: DepotRecord): readonly string[] {
  if (kind === "signature") return hashes([(content.onPaper as { sha256?: unknown } | undefined)?.sha256]);
  if (kind === "walkStarted") return hashes((content.late as { sheets?: unknown } | undefined)?.sheets);
  return kind === "photograph" && content.about === SHEET ? hashes([content.sha256]) : [];
}

const shotsIn = ({ content }: DepotRecord): readonly string[] => [
  ...hashes([content.sha256]),
  ...hashes(content.photographs),
];

const hashes = (value: unknown): readonly string[] =>
  Array.isArray(value)
    ? value.filter((each): each is string => typeof each === "string" && /^[0-9a-f]{64}$/.test(each))
    : [];
