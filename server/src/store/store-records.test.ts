import { type makeRecord, verifyRecords } from "@setfair/records";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { makeReading, type TestPlace, testedStores, twoDepots } from "./stores-for-tests.ts";
import type { Store } from "./types.ts";

const FROM = "2026-07-04T14:00:00.000Z";
const TO = "2026-07-11T09:00:00.000Z";

describe.each(testedStores())("records in a store on $kind", ({ kind }) => {
  let place: TestPlace;
  let here: Store;
  let there: Store;

  beforeAll(async () => {
    ({ place, here, there } = await twoDepots(kind, { now: () => new Date("2026-07-01T08:00:00Z") }));
  });
  afterAll(() => place.remove());

  const newHire = (store: Store, extra = {}) => store.hires.create({ from: FROM, to: TO, ...extra });

  test("records come once, in order, and the depot's chain holds", async () => {
    const hire = await newHire(here);
    const first = makeReading(hire.id, null);
    const second = makeReading(hire.id, first);
    const third = makeReading(hire.id, second);
    expect(await here.records.append([third])).toMatchObject([{ ok: false, why: "gap", expectedSeq: 1 }]);
    expect(await here.records.append([first, second])).toMatchObject([
      { ok: true, again: false },
      { ok: true, again: false },
    ]);
    expect(await here.records.append([first, third])).toMatchObject([
      { ok: true, again: true },
      { ok: true, again: false },
    ]);
    expect(await here.records.append([makeReading(hire.id, first)])).toMatchObject([
      { ok: false, why: "fork", expectedSeq: 4 },
    ]);
    expect(
      await here.records.append([{ ...second, content: { about: "odometer", value: 1 } }, "text", null]),
    ).toMatchObject([
      { ok: false, why: "broken", problems: [{ path: "hash" }] },
      { ok: false, why: "broken" },
      { ok: false, why: "broken" },
    ]);
    expect((await here.records.list({ hireId: hire.id })).map(({ record: { id } }) => id)).toEqual([
      first.id,
      second.id,
      third.id,
    ]);
    const all = await here.records.export();
    expect(verifyRecords(all)).toMatchObject({ ok: true, head: (await here.records.head())?.hash });
    expect(await there.records.list({ hireId: hire.id })).toEqual([]);
  });

  test("each round of a device is a chain of its own, and a record is found by what it is of", async () => {
    const [one, other] = [await newHire(here), await newHire(here)];
    const out = makeReading(one.id, null, { refs: { hireId: one.id, vehicleId: "pv2" } });
    const back = makeReading(other.id, null);
    expect(await here.records.append([out, back])).toMatchObject([{ ok: true }, { ok: true }]);
    const ids = async (filter: Parameters<Store["records"]["list"]>[0]) =>
      (await here.records.list(filter)).map(({ record, receipt }) => {
        expect(receipt.recordId).toBe(record.id);
        return record.id;
      });
    expect(await ids({ hireIds: [one.id, other.id] })).toEqual([out.id, back.id]);
    expect(await ids({ hireIds: [other.id] })).toEqual([back.id]);
    expect(await ids({ vehicleId: "pv2" })).toEqual([out.id]);
    expect(await ids({ hireIds: [one.id, other.id], chain: back.chain })).toEqual([back.id]);
    expect(await ids({ hireIds: [one.id, other.id], kind: "mark" })).toEqual([]);
    const [first] = await here.records.list({ hireIds: [one.id, other.id], limit: 1 });
    expect(await ids({ hireIds: [one.id, other.id], afterSeq: first!.receipt.seq })).toEqual([back.id]);
  });

  // on one database: the limit that it guards against would be the same query on both
  test.runIf(kind === "sqlite")("however many there are, the newest is in the list", async () => {
    const hire = await newHire(here);
    const chain = [makeReading(hire.id, null)];
    while (chain.length < 5100) chain.push(makeReading(hire.id, chain.at(-1)!));
    await here.records.append(chain);
    const kept = await here.records.list({ hireId: hire.id });
    expect(kept).toHaveLength(5100);
    expect(kept.at(-1)?.record.id).toBe(chain.at(-1)!.id);
  });

  test("many devices at once make one chain", async () => {
    const hire = await newHire(there);
    await Promise.all(
      Array.from({ length: 6 }, async (_, device) => {
        let end: Parameters<typeof makeRecord>[1] = null;
        for (let n = 0; n < 4; n++) {
          const next = makeReading(hire.id, end, { deviceId: `tablet-${device}` });
          expect(await there.records.append([next])).toMatchObject([{ ok: true }]);
          end = next;
        }
      }),
    );
    const verified = verifyRecords(await there.records.export());
    expect(verified).toMatchObject({ ok: true, checked: 24 });
  });

  test("what was shown is frozen under its hash; notes, overrides and photographs stay with their hire", async () => {
    const hire = await newHire(here);
    const frozen = await here.frozen.add({
      hireId: hire.id,
      room: "load",
      document: { rearKg: 1_900 },
      by: "desk",
    });
    expect(frozen.hash).toMatch(/^[0-9a-f]{64}$/);
    expect(await here.frozen.ofHire(hire.id)).toEqual([frozen]);
    const note = await here.notes.add({
      hireId: hire.id,
      kind: "promise",
      text: "ring back",
      moment: "counter",
      owner: "desk",
      dueAt: TO,
      by: "desk",
    });
    expect((await here.notes.open()).map(({ id }) => id)).toContain(note.id);
    expect(await here.notes.done(note.id, "desk")).toBe(true);
    expect(await here.notes.done(note.id, "manager")).toBe(false);
    expect(await here.notes.get(note.id)).toMatchObject({ moment: "counter", owner: "desk", doneBy: "desk" });
    expect(await there.notes.get(note.id)).toBeNull();
    expect(await there.notes.reopen(note.id)).toBe(false);
    expect(await here.notes.reopen(note.id)).toBe(true);
    expect((await here.notes.open()).map(({ id }) => id)).toContain(note.id);
    await here.overrides.add({
      hireId: hire.id,
      findingCode: "resources.lpgShort",
      about: "lpg",
      basis: "policy",
      reason: "has a spare",
      by: "manager",
    });
    expect(await here.overrides.ofHire(hire.id)).toMatchObject([{ reason: "has a spare" }]);
    const photograph = {
      sha256: "a".repeat(64),
      bytes: 10,
      widthPx: 1,
      heightPx: 1,
      hireId: hire.id,
      takenAt: null,
    };
    expect(await here.photographs.add(photograph)).toEqual(await here.photographs.add(photograph));
    expect(await there.photographs.get(photograph.sha256)).toBeNull();
    const other = { ...photograph, sha256: "b".repeat(64), hireId: (await newHire(here)).id };
    await here.photographs.add(other);
    const shown = (await here.photographs.ofHire(hire.id)).map(({ sha256 }) => sha256);
    expect(shown).toEqual([photograph.sha256]);
  });
});
