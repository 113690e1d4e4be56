import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import { DeviceDatabase, type YardJob } from "./database.ts";
import { askWhatToForget, hiresKept, lastForgotten } from "./forget.ts";
import { keepPhotograph } from "./keep-photograph.ts";
import { keepRecord } from "./keep-record.ts";

let made = 0;
const PICTURES = { mine: "a".repeat(64), both: "b".repeat(64) };
const job = (hireId: string, ...shown: string[]) =>
  ({
    id: `${hireId}.back`,
    hireId,
    outRecords: shown.map((sha256) => ({ content: { sha256 } })),
  }) as unknown as YardJob;

/** A tablet with a walk-round of two hires, everything sent, and what came by a hirer's link. */
async function openTablet() {
  const db = new DeviceDatabase(`forget-${made++}`);
  for (const hireId of ["gone", "stays"]) {
    const refs = { hireId };
    const chain = `${hireId}.back`;
    await keepPhotograph(db, {
      bytes: new Uint8Array([made, hireId.length, 3]),
      content: { about: "front", direction: "back" },
      refs,
      chain,
      via: "staff",
    });
    const note = { about: "seats", text: `Ingrid of ${hireId}` };
    await keepRecord(db, { kind: "note", refs, chain, content: note, via: "staff" });
    await db.rounds.put({ jobId: chain, state: { name: "Ingrid" } });
    await db.jobs.put({
      id: chain,
      date: "2026-07-06",
      job: job(hireId, PICTURES.both, ...(hireId === "gone" ? [PICTURES.mine] : [])),
      fetchedAt: "",
    });
    await db.turnarounds.put({ id: `${hireId}.turnaround`, turnaround: {} as never });
  }
  for (const sha256 of Object.values(PICTURES)) await db.pictures.put({ sha256, bytes: new Uint8Array([1]) });
  const own = { kind: "note" as const, refs: { hireId: "gone" }, content: { about: "x", text: "mine" } };
  await keepRecord(db, { ...own, chain: "gone.road", via: { token: "t" } });
  const sent = () =>
    Promise.all([
      db.records.toCollection().modify({ state: "sent" }),
      db.photographs.toCollection().modify({ state: "sent" }),
    ]);
  return { db, sent };
}

/** A depot that names what is to be forgotten, and keeps what it was told. */
function depot(...erased: string[]) {
  const told: string[][] = [];
  const request = (async (_url: string, { body }: RequestInit) => {
    const { hires } = JSON.parse(String(body)) as { hires: string[] };
    told.push(hires);
    return Response.json({ forget: hires.filter((id) => erased.includes(id)) });
  }) as typeof fetch;
  return { told, request };
}

describe("a tablet of the yard", () => {
  it("forgets everything of an erased person's hire and nothing else, says so, and tells the depot", async () => {
    const { db, sent } = await openTablet();
    await sent();
    const { told, request } = depot("gone");
    expect(await askWhatToForget(db, request)).toEqual({ outcome: "fresh", forgotten: 1, waiting: 0 });
    expect(told).toEqual([["gone", "stays"], ["stays"]]);
    expect(await hiresKept(db)).toEqual(["stays"]);
    const left = JSON.stringify([
      await db.rounds.toArray(),
      await db.turnarounds.toArray(),
      (await db.jobs.toArray()).map(({ id }) => id),
      (await db.records.filter(({ via }) => via === "staff").toArray()).map(({ record }) => record),
      (await db.photographs.toArray()).map(({ chain }) => chain),
    ]);
    expect(left).not.toContain("gone");
    expect(left).toContain("Ingrid of stays");
    // a picture that another walk-round shows stays; the hirer's own record too
    expect(await db.pictures.toCollection().primaryKeys()).toEqual([PICTURES.both]);
    expect(await db.records.filter(({ via }) => via !== "staff").count()).toBe(1);
    expect((await lastForgotten(db))?.hires).toBe(1);
  });

  it("sends what waits before it forgets", async () => {
    const { db, sent } = await openTablet();
    const { request } = depot("gone");
    expect(await askWhatToForget(db, request)).toEqual({ outcome: "fresh", forgotten: 0, waiting: 1 });
    expect(await hiresKept(db)).toContain("gone");
    expect(await lastForgotten(db)).toBeNull();
    await sent();
    expect((await askWhatToForget(db, request)).forgotten).toBe(1);
  });

  it("forgets what the depot would never take, too", async () => {
    const { db, sent } = await openTablet();
    await sent();
    await db.records
      .filter(({ chain }) => chain === "gone.back")
      .modify({ state: "refused", problem: "gap" });
    expect((await askWhatToForget(db, depot("gone").request)).forgotten).toBe(1);
    expect(await db.records.filter(({ chain }) => chain === "gone.back").count()).toBe(0);
  });

  it("keeps everything with no signal, and forgets on the next contact", async () => {
    const { db, sent } = await openTablet();
    await sent();
    const noSignal = (() => Promise.reject(new TypeError("failed to fetch"))) as typeof fetch;
    const signedOut = (async () => Response.json({}, { status: 401 })) as typeof fetch;
    for (const request of [noSignal, signedOut])
      expect(await askWhatToForget(db, request)).toMatchObject({ outcome: "later", forgotten: 0 });
    expect(await hiresKept(db)).toEqual(["gone", "stays"]);
    expect((await askWhatToForget(db, depot("gone").request)).forgotten).toBe(1);
  });

  it("forgets nothing where nobody was erased", async () => {
    const { db, sent } = await openTablet();
    await sent();
    const { told, request } = depot();
    expect(await askWhatToForget(db, request)).toEqual({ outcome: "fresh", forgotten: 0, waiting: 0 });
    expect(told).toHaveLength(1);
    expect(await db.records.count()).toBe(5);
  });
});
