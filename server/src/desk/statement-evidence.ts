import type { Difference, Settlement, SettlementInput } from "@setfair/engine";
import { isErased } from "@setfair/records";
import type { StoredRecord } from "../store/types.ts";
import { wholeRecords } from "./record-facts.ts";

/** Photographs of a line: of the place as it went out, and as it came back. */
export interface LineEvidence {
  readonly lineId: string;
  readonly out: string[];
  readonly back: string[];
}

/** The photographs that a record's content names, by hash. */
export const hashesIn = (content: Readonly<Record<string, unknown>>): string[] => [
  ...(typeof content.sha256 === "string" ? [content.sha256] : []),
  ...(Array.isArray(content.photographs) ? content.photographs.map(String) : []),
];

/** Every photograph that a record of this hire names. */
export const photographsNamed = (records: readonly StoredRecord[]): readonly string[] =>
  records.flatMap((record) => (isErased(record) ? [] : hashesIn(record.content)));

/** For each line that rests on a difference, what shows how it went and how it came back. */
export function lineEvidence(
  { lines }: Settlement,
  input: SettlementInput | null,
  records: readonly StoredRecord[],
): LineEvidence[] {
  const byId = new Map(wholeRecords(records).map((record) => [record.id, record]));
  const shots = (ids: readonly string[]) => ids.flatMap((id) => hashesIn(byId.get(id)?.content ?? {}));
  return lines.map(({ id, evidence }) => {
    const difference = input?.differences.find((each) => each.id === evidence.differenceId) as
      | Difference
      | undefined;
    const out = [
      ...(input?.departure?.[evidence.differenceId ?? ""] ?? []),
      ...(input?.claims?.find((claim) => claim.id === id)?.departure ?? []),
      ...shots(difference?.outRecords ?? []),
    ];
    const back = [...shots(difference?.backRecords ?? []), ...evidence.photographs].filter(
      (hash) => !out.includes(hash),
    );
    return { lineId: id, out: [...new Set(out)], back: [...new Set(back)] };
  });
}
