/** For tests only: walk-rounds of several devices, made as devices make them. */
import { makeReceipt, type Receipt } from "./receipt.ts";
import { type AnyRecord, type ChainEnd, type DepotRecord, makeRecord, type NewRecord } from "./record.ts";

export const HIRE = "0197d3a0-0000-7000-8000-00000000000a";

export function reading(device: string, minute: number, about: string, value: number): NewRecord {
  return {
    deviceId: device,
    deviceTime: `2026-07-04T14:${String(minute).padStart(2, "0")}:00.000Z`,
    kind: "reading",
    refs: { hireId: HIRE },
    chain: "walk-out",
    content: { about, value, direction: "out" },
  };
}

/** One after the other in one chain. */
export function chainOf(news: readonly NewRecord[]): DepotRecord[] {
  let end: ChainEnd = null;
  return news.map((input) => {
    const made: DepotRecord = makeRecord(input, end);
    end = made;
    return made;
  });
}

/** Receipts in the order of arrival. */
export function receive(records: readonly AnyRecord[]): Receipt[] {
  const receipts: Receipt[] = [];
  records.forEach((record, n) => {
    receipts.push(
      makeReceipt(record, receipts.at(-1) ?? null, `2026-07-04T15:00:00.${String(n).padStart(3, "0")}Z`),
    );
  });
  return receipts;
}

export function signatureOver(records: readonly DepotRecord[], device: string): NewRecord {
  return {
    deviceId: device,
    deviceTime: "2026-07-04T14:50:00.000Z",
    kind: "signature",
    refs: { hireId: HIRE },
    chain: "walk-out",
    content: {
      records: records.map(({ id, hash }) => ({ id, hash })),
      signer: { name: "Sam Invented" },
      role: "hirer",
      purpose: "condition",
      shown: { text: "This is how the vehicle leaves.", language: "en-GB" },
      strokes: [
        [
          { x: 0, y: 0, t: 0 },
          { x: 1, y: 2, t: 16 },
        ],
      ],
    },
  };
}
