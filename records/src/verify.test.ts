import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mergeRecords } from "./merge.ts";
import { makeReceipt } from "./receipt.ts";
import { type AnyRecord, eraseRecord, hashOfRecord, makeRecord } from "./record.ts";
import { type RecordsExport, verifyHead, verifyRecords } from "./verify.ts";
import { chainOf, reading, receive, signatureOver } from "./walks-for-tests.ts";

const walk = () => {
  const read = chainOf([
    reading("a", 1, "odometer", 41_234),
    reading("a", 2, "fuel", 0.5),
    reading("a", 3, "lpg", 0.8),
  ]);
  return [...read, makeRecord(signatureOver(read, "a"), read.at(-1)!)];
};
const copy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const exported = (records: readonly AnyRecord[]): RecordsExport => ({ records, receipts: receive(records) });

describe("verifying records", () => {
  test("an untouched walk-round holds, in whatever order it is exported", () => {
    const all = exported(walk());
    const turned = { records: [...all.records].reverse(), receipts: [...all.receipts].reverse() };
    for (const each of [all, turned, copy(all)]) {
      expect(verifyRecords(each)).toEqual({
        ok: true,
        checked: 4,
        erased: 0,
        firstBroken: null,
        awaited: [],
        head: all.receipts.at(-1)!.hash,
        leftOut: 0,
        gaps: 0,
      });
    }
    expect(verifyRecords({ records: [], receipts: [] })).toMatchObject({ ok: true, checked: 0, head: null });
  });

  const places = [
    "v",
    "deviceId",
    "deviceTime",
    "kind",
    "refs",
    "chain",
    "seq",
    "prev",
    "salt",
    "content",
    "hash",
    "extra",
  ];
  test.each(places.flatMap((field) => [0, 1, 2, 3].map((at) => [field, at] as const)))(
    "a change of %s in record %i is found, and it is the first that is broken",
    (field, at) => {
      const all = copy(exported(walk()));
      const record = all.records[at] as unknown as Record<string, unknown>; // written to as nobody may
      const tampered: Record<string, unknown> = {
        v: 2,
        deviceId: "other",
        deviceTime: "2026-07-04T14:59:00.000Z",
        kind: "note",
        refs: { hireId: "another" },
        chain: "walk-back",
        seq: 9,
        prev: "0".repeat(64),
        salt: "0".repeat(32),
        content: { ...(record.content as object), about: "other" },
        hash: "f".repeat(64),
        extra: "added",
      };
      record[field] = tampered[field];
      const answer = verifyRecords(all);
      expect(answer.ok).toBe(false);
      expect(answer.firstBroken?.id).toBe(all.records[at]!.id);
      expect(answer.checked).toBe(at);
    },
  );

  test("whoever also writes the hash again is found by the receipt, and with that by the next link", () => {
    const all = copy(exported(walk()));
    const record = all.records[1]! as ReturnType<typeof walk>[number];
    const forged = { ...record, content: { ...record.content, value: 1 } };
    const again = { ...forged, hash: hashOfRecord(forged) };
    const records = all.records.map((each) => (each.id === again.id ? again : each));
    expect(verifyRecords({ ...all, records }).firstBroken).toEqual({
      id: record.id,
      why: "recordOtherThanReceived",
    });
    const receipts = all.receipts.map((receipt, n) =>
      n === 1 ? makeReceipt(again, all.receipts[0]!, receipt.at) : receipt,
    );
    expect(verifyRecords({ records, receipts }).firstBroken).toEqual({
      id: all.records[2]!.id,
      why: "receiptPrev",
    });
    const whole = receive(records);
    // the device's own chain still tells, even when the depot wrote its chain anew
    expect(verifyRecords({ records, receipts: whole }).firstBroken).toEqual({
      id: all.records[2]!.id,
      why: "chainPrev",
    });
  });

  test.each(["recordId", "recordHash", "seq", "prev", "at", "hash"])(
    "a change of %s in a receipt is found",
    (field) => {
      const all = copy(exported(walk()));
      const receipt = all.receipts[1] as unknown as Record<string, unknown>; // written to as nobody may
      receipt[field] = field === "seq" ? 7 : field === "at" ? "2026-07-04T15:00:09.000Z" : "0".repeat(64);
      expect(verifyRecords(all).ok).toBe(false);
    },
  );

  test("a record left out, added or doubled is found", () => {
    const records = walk();
    const all = exported(records);
    expect(verifyRecords({ ...all, records: records.slice(1) }).firstBroken).toEqual({
      id: records[0]!.id,
      why: "recordMissing",
    });
    expect(verifyRecords({ ...all, receipts: all.receipts.slice(0, 3) }).firstBroken?.why).toBe(
      "recordNotReceived",
    );
    expect(verifyRecords({ ...all, records: [...records, copy(records[2]!)] }).firstBroken?.why).toBe(
      "recordTwice",
    );
    expect(verifyRecords({ ...all, receipts: all.receipts.slice(1) }).firstBroken?.why).toBe("receiptSeq");
  });

  test("what a signature lists and never arrived is awaited; another in its place is a break", () => {
    const [first, ...rest] = chainOf([reading("b", 1, "odometer", 5), reading("b", 2, "fuel", 1)]);
    const signature = makeRecord(signatureOver([first!, ...rest], "a"), null);
    expect(verifyRecords(exported([signature]))).toMatchObject({
      ok: true,
      awaited: [first!.id, rest[0]!.id],
    });
    const other = makeRecord({ ...reading("b", 1, "odometer", 6), id: first!.id }, null);
    expect(verifyRecords(exported([signature, other])).firstBroken).toEqual({
      id: signature.id,
      why: "listedRecordOther",
    });
  });

  test("a printed head or record hash proves its copy; another does not", () => {
    const all = exported(walk());
    expect(verifyHead(all, all.receipts[2]!.hash)).toMatchObject({ ok: true, receipt: { seq: 3 } });
    expect(verifyHead(all, ` ${all.records[0]!.hash.toUpperCase()}\n`)).toMatchObject({
      ok: true,
      receipt: { seq: 1 },
    });
    expect(verifyHead(all, "0".repeat(64))).toMatchObject({ ok: false, receipt: null });
    const broken = copy(all);
    (broken.records[3] as { deviceId: string }).deviceId = "other";
    expect(verifyHead(broken, all.receipts[0]!.hash)).toMatchObject({ ok: false, receipt: { seq: 1 } });
  });
});

/** Lets three chains arrive in an order of lots, each chain in its own order. */
function interleave<T>(chains: readonly (readonly T[])[], lots: readonly number[]): T[] {
  const left = chains.map((chain) => [...chain]);
  const out: T[] = [];
  for (let n = 0; left.some((chain) => chain.length > 0); n++) {
    const waiting = left.filter((chain) => chain.length > 0);
    out.push(waiting[(lots[n % Math.max(1, lots.length)] ?? 0) % waiting.length]!.shift()!);
  }
  return out;
}

const deviceChain = (device: string) =>
  fc
    .array(
      fc.record({
        minute: fc.integer({ min: 0, max: 59 }),
        about: fc.constantFrom("odometer", "fuel", "lpg"),
        value: fc.integer({ min: 0, max: 3 }),
      }),
      { maxLength: 8 },
    )
    .map((rows) => chainOf(rows.map(({ minute, about, value }) => reading(device, minute, about, value))));
const threeDevices = fc.tuple(deviceChain("a"), deviceChain("b"), deviceChain("c"));
const lots = fc.array(fc.nat({ max: 5 }), { maxLength: 40 });

describe("three devices", () => {
  test("arriving in any order they hold, and say the same", () => {
    fc.assert(
      fc.property(threeDevices, lots, lots, (chains, oneOrder, otherOrder) => {
        const one = interleave(chains, oneOrder);
        const other = interleave(chains, otherOrder);
        expect(verifyRecords(exported(one))).toMatchObject({ ok: true, checked: one.length });
        expect(verifyRecords(exported(other))).toMatchObject({ ok: true, checked: one.length });
        expect(mergeRecords(one)).toEqual(mergeRecords(other));
        expect(mergeRecords([...one, ...other])).toEqual(mergeRecords(one));
      }),
    );
  });

  test("every reading is kept, and a question stands exactly where values differ", () => {
    fc.assert(
      fc.property(threeDevices, (chains) => {
        const records = chains.flat();
        const { readings, questions } = mergeRecords(records);
        expect(readings.flatMap((each) => each.readings.map(({ id }) => id)).sort()).toEqual(
          records.map(({ id }) => id).sort(),
        );
        for (const about of ["odometer", "fuel", "lpg"]) {
          const said = new Set(
            records.filter(({ content }) => content.about === about).map(({ content }) => content.value),
          );
          expect(questions.some((question) => question.about === about)).toBe(said.size > 1);
        }
      }),
    );
  });

  test("whatever is erased, the chains hold, nothing of it is left, and every other change is still found", () => {
    fc.assert(
      fc.property(
        threeDevices,
        lots,
        fc.array(fc.boolean(), { minLength: 24, maxLength: 24 }),
        fc.nat(),
        (chains, order, erase, pick) => {
          const records = interleave(chains, order);
          const all = exported(records);
          const left = records.map((record, n) =>
            erase[n] ? eraseRecord(record, "2027-01-01T00:00:00.000Z") : record,
          );
          const count = left.filter((record) => "erasedAt" in record).length;
          expect(verifyRecords({ ...all, records: left })).toMatchObject({
            ok: true,
            erased: count,
            checked: left.length - count,
          });
          const text = JSON.stringify(left.filter((record) => "erasedAt" in record));
          expect(text).not.toMatch(/salt|content/);
          const whole = left.filter((record): record is (typeof records)[number] => !("erasedAt" in record));
          if (whole.length === 0) return;
          const victim = whole[pick % whole.length]!;
          const forged = left.map((record) =>
            record === victim ? { ...victim, content: { ...victim.content, value: 99 } } : record,
          );
          expect(verifyRecords({ ...all, records: forged }).firstBroken).toEqual({
            id: victim.id,
            why: "recordHash",
          });
        },
      ),
    );
  });
});

describe("a question between two readings", () => {
  const a = makeRecord(reading("a", 1, "fuel", 0.5), null);
  const b = makeRecord(reading("b", 2, "fuel", 0.25), null);
  const answer = (among: readonly (typeof a)[], holds: string) =>
    makeRecord(
      {
        ...reading("c", 9, "", 0),
        kind: "answer",
        content: { about: "fuel", among: among.map(({ id, hash }) => ({ id, hash })), holds },
      },
      null,
    );

  test("is settled by whoever signs, and both readings stay", () => {
    const { questions, readings } = mergeRecords([a, b, answer([a, b], b.id)]);
    expect(questions).toEqual([]);
    expect(readings).toMatchObject([
      { about: "fuel", holds: { id: b.id }, readings: [{ id: a.id }, { id: b.id }] },
    ]);
  });

  test("stands again when a third reading comes that the answer did not see", () => {
    const c = makeRecord(reading("d", 3, "fuel", 0.75), null);
    expect(mergeRecords([a, b, answer([a, b], b.id), c]).questions).toMatchObject([
      { readings: [{ id: a.id }, { id: b.id }, { id: c.id }] },
    ]);
  });
});
