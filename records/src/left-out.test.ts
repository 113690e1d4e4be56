import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { keepRecords } from "./left-out.ts";
import { type DepotRecord, makeRecord } from "./record.ts";
import { type RecordsExport, verifyHead, verifyRecords } from "./verify.ts";
import { reading, receive } from "./walks-for-tests.ts";

const HIRES = ["h-one", "h-two", "h-three"] as const;

/** Records of several hires as they came, some devices keeping one chain for all hires. */
function arrived(order: readonly { readonly hire: number; readonly isDesk: boolean }[]) {
  const ends = new Map<string, DepotRecord>();
  const records = order.map(({ hire, isDesk }, k) => {
    const hireId = HIRES[hire % HIRES.length] as string;
    const chain = isDesk ? "desk.keys" : `${hireId}.out`;
    const input = { ...reading("a", k % 60, `thing ${k}`, k), chain, refs: { hireId } };
    const record = makeRecord(input, ends.get(chain) ?? null);
    ends.set(chain, record);
    return record;
  });
  return { records, receipts: receive(records) };
}
const ofHire = (all: ReturnType<typeof arrived>, hireId: string) =>
  keepRecords(all, ({ refs }) => refs.hireId === hireId);
const orders = fc.array(fc.record({ hire: fc.nat(2), isDesk: fc.boolean() }), {
  minLength: 1,
  maxLength: 14,
});
const copy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

describe("an export of one hire", () => {
  test("ends at the depot's own head and finds every receipt from its first on, whatever is left out", () => {
    fc.assert(
      fc.property(orders, (order) => {
        const all = arrived(order);
        for (const hireId of HIRES) {
          const own = copy(ofHire(all, hireId));
          const verified = verifyRecords(own);
          expect(verified).toMatchObject({ ok: true, head: all.receipts.at(-1)?.hash });
          expect(verified.checked).toBe(own.records.length);
          const first = own.receipts[0]?.seq ?? Number.POSITIVE_INFINITY;
          for (const { seq, hash } of all.receipts)
            if (seq >= first) expect(verifyHead(own, hash).receipt?.seq).toBe(seq);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("holds nothing of the others but place, time, random id and salted hash", () => {
    const all = arrived([0, 1, 2, 0, 1].map((hire) => ({ hire, isDesk: false })));
    const text = JSON.stringify(ofHire(all, "h-one"));
    for (const hidden of ["h-two", "h-three", "thing 1", "thing 4"]) expect(text).not.toContain(hidden);
    expect(text).toContain("thing 3");
  });

  test("a change of any field of what was left out, or one taken away, is found", () => {
    const all = arrived([2, 0, 1, 1, 0, 2].map((hire) => ({ hire, isDesk: false })));
    const whole = ofHire(all, "h-one");
    expect(whole.leftOut.links).toHaveLength(3);
    const spoil = (change: (broken: RecordsExport & { leftOut: { links: unknown[] } }) => void) => {
      // written to as nobody may
      const broken = copy(whole) as unknown as RecordsExport & { leftOut: { links: unknown[] } };
      change(broken);
      return verifyRecords(broken);
    };
    for (const k of [0, 1, 2]) {
      for (const [field, value] of [
        ["recordId", "018f0000-0000-7000-8000-000000000000"],
        ["recordHash", "0".repeat(64)],
        ["at", "2026-07-04T15:59:00.000Z"],
        ["seq", 9],
      ] as const)
        expect(
          spoil(({ leftOut }) => Object.assign(leftOut.links[k] as object, { [field]: value })).ok,
          field,
        ).toBe(false);
      expect(spoil(({ leftOut }) => leftOut.links.splice(k, 1)).ok).toBe(false);
    }
    expect(spoil(({ leftOut }) => Object.assign(leftOut, { before: null })).firstBroken?.why).toBe(
      "receiptSeq",
    );
    const other = { before: { seq: 1, hash: "1".repeat(64) } };
    expect(spoil(({ leftOut }) => Object.assign(leftOut, other)).firstBroken?.why).toBe("receiptPrev");
    expect(spoil(({ leftOut }) => Object.assign(leftOut, { head: "1".repeat(64) })).firstBroken?.why).toBe(
      "headOther",
    );
  });

  test("a record of the hire that is passed off as another's is seen as a gap on its device", () => {
    const all = arrived([0, 0, 0, 1].map((hire) => ({ hire, isDesk: false })));
    const hidden = all.records[1]?.id;
    const some = keepRecords(all, ({ id, refs }) => refs.hireId === "h-one" && id !== hidden);
    expect(verifyRecords(some)).toMatchObject({ ok: true, checked: 2, gaps: 1 });
    expect(verifyRecords(ofHire(all, "h-one")).gaps).toBe(0);
  });
});
