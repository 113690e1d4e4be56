import type { Difference } from "@setfair/engine";
import type { StoredRecord } from "../store/types.ts";
import { directionOf, wholeRecords } from "./record-facts.ts";

/** Photographs of a place from the walk-round out, nearest first: of the part or the check itself, else of the whole side. */
export interface AsItLeft {
  readonly of: "place" | "side" | null;
  readonly photographs: readonly string[];
}

const NOTHING: AsItLeft = { of: null, photographs: [] };

/** How the place of a difference looked when it left, as far as anybody took a picture of it. */
export function asItLeft(difference: Difference, records: readonly StoredRecord[]): AsItLeft {
  // what the hirer photographed afterwards is no picture of ours of how it left
  const out = wholeRecords(records).filter(
    (record) =>
      record.kind === "photograph" && directionOf(record) === "out" && record.content.by !== "hirer",
  );
  const hashes = (some: typeof out) => [...new Set(some.map(({ content }) => String(content.sha256)))];
  const names = [difference.checkId, difference.kind === "mark" ? difference.part : null].filter(
    (name) => name !== null,
  );
  const place = hashes(
    out.filter(
      ({ content }) => names.includes(String(content.about)) || names.includes(String(content.checkId)),
    ),
  );
  if (place.length > 0) return { of: "place", photographs: place };
  if (!("view" in difference)) return NOTHING;
  const { view } = difference;
  const side = hashes(out.filter(({ content }) => content.view === view || content.about === `view.${view}`));
  return side.length > 0 ? { of: "side", photographs: side } : NOTHING;
}

/** For the settlement: by the id of each mark, the photographs that show how it left. */
export function departureOf(
  differences: readonly Difference[],
  records: readonly StoredRecord[],
): Record<string, string[]> {
  return Object.fromEntries(
    differences
      .filter(({ kind }) => kind === "mark")
      .map((difference) => [difference.id, [...asItLeft(difference, records).photographs]]),
  );
}
