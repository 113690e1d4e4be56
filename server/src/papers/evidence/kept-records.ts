import { type CorrectedRecord, isErased, type Receipt, withCorrections } from "@setfair/records";
import { type Direction, directionOf } from "../../desk/record-facts.ts";
import type { PaperCall } from "../paper-call.ts";

/** A record with what holds of it now and when it arrived: both clocks. */
export interface KeptRecord extends CorrectedRecord {
  readonly receipt: Receipt;
  readonly direction: Direction | null;
}

/** Records of the hire that still stand, in order of arrival, and the head of the depot's chain now. */
export interface HireEvidence {
  /** without the corrections, which stand in what they correct */
  readonly kept: readonly KeptRecord[];
  /** every record, corrections too, each as it came */
  readonly asTheyCame: readonly Pick<KeptRecord, "record" | "content" | "receipt">[];
  /** hash and place of the last receipt; null where the depot has none */
  readonly head: Pick<Receipt, "hash" | "seq"> | null;
}

export async function hireEvidence({ data, store }: PaperCall): Promise<HireEvidence> {
  const all = await store.records.list({ hireId: data.row.id });
  const stands = new Set(data.records.map(({ id }) => id));
  const receipts = new Map(all.map(({ record, receipt }) => [record.id, receipt]));
  const standing = all.filter(({ record }) => stands.has(record.id));
  const found = withCorrections(standing.map(({ record }) => record));
  return {
    asTheyCame: standing.flatMap(({ record, receipt }) =>
      isErased(record) ? [] : [{ record, content: record.content, receipt }],
    ),
    kept: found.flatMap((each) => {
      const receipt = receipts.get(each.record.id);
      return receipt === undefined ? [] : [{ ...each, receipt, direction: directionOf(each.record) }];
    }),
    head: await store.records.head(),
  };
}

export const textOf = (value: unknown): string => (typeof value === "string" ? value : "");
export const numberOf = (value: unknown): number | null => (typeof value === "number" ? value : null);
export const hashesOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((each): each is string => typeof each === "string") : [];
