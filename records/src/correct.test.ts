import { describe, expect, it } from "vitest";
import { withCorrections } from "./correct.ts";
import { makeReceipt, type Receipt } from "./receipt.ts";
import { type DepotRecord, eraseRecord, makeRecord } from "./record.ts";
import { verifyRecords } from "./verify.ts";

const base = {
  deviceId: "tablet",
  refs: { hireId: "h1" },
  chain: "out",
  deviceTime: "2026-05-09T10:00:00.000Z",
};
const reading = makeRecord(
  { ...base, kind: "reading", content: { about: "odometer", value: 42_000, unit: "km" } },
  null,
);
const correct = (value: number, after: DepotRecord, to = { id: reading.id, hash: reading.hash }) =>
  makeRecord(
    {
      ...base,
      kind: "correction",
      content: { to, by: "Dee Desk", why: "read from the photograph", instead: { value } },
    },
    after,
  );

function receiptsOf(records: readonly DepotRecord[]): Receipt[] {
  const made: Receipt[] = [];
  for (const record of records)
    made.push(makeReceipt(record, made.at(-1) ?? null, "2026-05-09T11:00:00.000Z"));
  return made;
}

describe("a correction", () => {
  it("is a new record with who and why; what it corrects stays as it was", () => {
    const first = correct(42_100, reading);
    const second = correct(42_200, first);
    const [found] = withCorrections([reading, first, second]);
    expect(found?.content).toEqual({ about: "odometer", value: 42_200, unit: "km" });
    expect(found?.record.content.value).toBe(42_000);
    expect(found?.corrections.map(({ content }) => content.why)).toHaveLength(2);
  });

  it("of something else changes nothing, and does not hold where that record held something else", () => {
    const other = correct(1, reading, { id: reading.id, hash: "0".repeat(64) });
    expect(withCorrections([reading, other])[0]).toMatchObject({
      content: { value: 42_000 },
      corrections: [],
    });
    const records = [reading, other];
    expect(verifyRecords({ records, receipts: receiptsOf(records) }).firstBroken).toEqual({
      id: other.id,
      why: "listedRecordOther",
    });
  });

  it("is no record of the vehicle itself, and says nothing once it is erased", () => {
    const first = correct(42_100, reading);
    expect(withCorrections([reading, first]).map(({ record }) => record.id)).toEqual([reading.id]);
    const erased = eraseRecord(first, "2027-01-01T00:00:00.000Z");
    expect(withCorrections([reading, erased])).toMatchObject([
      { content: { value: 42_000 }, corrections: [] },
    ]);
    expect(withCorrections([eraseRecord(reading, "2027-01-01T00:00:00.000Z"), first])).toEqual([]);
  });

  it("without a reason or a name cannot be made", () => {
    for (const missing of ["why", "by"]) {
      const content = {
        to: { id: reading.id, hash: reading.hash },
        by: "x",
        why: "x",
        instead: {},
        [missing]: "",
      };
      expect(() => makeRecord({ ...base, kind: "correction", content }, reading)).toThrow(missing);
    }
  });
});
