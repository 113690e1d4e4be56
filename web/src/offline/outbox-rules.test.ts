import "fake-indexeddb/auto";
import { type DepotRecord, makeRecord } from "@setfair/records";
import { afterEach, describe, expect, it } from "vitest";
import type { KeptPhotograph } from "./database.ts";
import { devices, look, refs } from "./device-for-tests.ts";
import { flushOutbox, type SendAnswer } from "./flush.ts";
import { keepPhotograph } from "./keep-photograph.ts";
import { keepRecord } from "./keep-record.ts";
import { countOutbox } from "./outbox-count.ts";
import { httpSender } from "./sender.ts";

const { open: openDevice, close } = devices("outbox-rules");
afterEach(close);

describe("a long walk-round", () => {
  it("arrives whole and in order, in parts that the server takes", async () => {
    const db = openDevice();
    for (let n = 0; n < 60; n++) await keepRecord(db, look("h1.out", `part-${n}`));
    const parts: string[][] = [];
    const sender = {
      putPhotograph: async () => ({ outcome: "taken" }) as const,
      addRecords: async (batch: readonly DepotRecord[]) => {
        parts.push(batch.map(({ content }) => String(content.about)));
        return { outcome: "taken" } as const;
      },
    };
    expect(await flushOutbox(db, sender)).toBe("empty");
    expect(parts.flat()).toEqual(Array.from({ length: 60 }, (_, n) => `part-${n}`));
    expect(Math.max(...parts.map(({ length }) => length))).toBeLessThanOrEqual(25);
    expect(await countOutbox(db)).toEqual({ waiting: 0, refused: 0 });
  });

  it("asks nothing more once there is no signal", async () => {
    const db = openDevice();
    for (const chain of ["h1.out", "h2.out", "h3.out"]) await keepRecord(db, look(chain, "a"));
    let asked = 0;
    const later = async (): Promise<SendAnswer> => {
      asked += 1;
      return { outcome: "later" };
    };
    expect(await flushOutbox(db, { putPhotograph: later, addRecords: later })).toBe("later");
    expect(asked).toBe(1);
  });

  it("sends a photograph once, however many records name it", async () => {
    const db = openDevice();
    const sha256 = await keepPhotograph(db, {
      bytes: Uint8Array.from([0xff, 0xd8, 1]),
      content: { about: "step", view: "nearside" },
      refs,
      chain: "h1.out",
      via: "staff",
    });
    await keepRecord(db, { ...look("h1.out", "step"), photographs: [sha256] });
    await keepRecord(db, { ...look("h2.out", "step"), photographs: [sha256] });
    const sent: string[] = [];
    const sender = {
      putPhotograph: async (one: KeptPhotograph) => {
        sent.push(one.sha256);
        return { outcome: "taken" } as const;
      },
      addRecords: async () => ({ outcome: "taken" }) as const,
    };
    await flushOutbox(db, sender);
    expect(sent).toEqual([sha256]);
  });

  it("keeps one record where the same is kept twice", async () => {
    const db = openDevice();
    const id = "0198c000-0000-7000-8000-000000000001";
    const first = await keepRecord(db, { ...look("h1.out", "a"), id });
    expect(await keepRecord(db, { ...look("h1.out", "b"), id })).toEqual(first);
    expect(await db.records.count()).toBe(1);
  });
});

describe("over the line", () => {
  const record = makeRecord(
    { ...look("h1.out", "a"), deviceId: "d", deviceTime: "2026-07-01T08:00:00Z" },
    null,
  );
  const photograph: KeptPhotograph = {
    sha256: "a".repeat(64),
    chain: "h1.out",
    bytes: Uint8Array.from([0xff]),
    takenAt: "2026-07-01T08:00:00Z",
    state: "waiting",
  };
  const answering = (status: number, body: unknown = {}) => {
    const asked: string[] = [];
    const sender = httpSender(async (path, init) => {
      asked.push(`${init?.method} ${String(path)}`);
      return Response.json(body, { status });
    });
    return { asked, sender };
  };

  it("goes by the door of whoever recorded it", async () => {
    const { asked, sender } = answering(200);
    for (const via of ["staff", "link:a/b"]) {
      await sender.addRecords([record], via);
      await sender.putPhotograph(photograph, via);
    }
    expect(asked).toEqual([
      "POST /api/records",
      `PUT /api/photos/${photograph.sha256}`,
      "POST /api/guide/a%2Fb/records",
      `PUT /api/guide/a%2Fb/photos/${photograph.sha256}`,
    ]);
  });

  it("a link that has lapsed waits for another, an address that is none is refused", async () => {
    for (const status of [404, 410]) {
      const { sender } = answering(status);
      expect(await sender.addRecords([record], "link:t")).toEqual({ outcome: "signIn" });
      expect(await sender.addRecords([record], "staff")).toEqual({
        outcome: "refused",
        problem: String(status),
      });
    }
    expect(await answering(408).sender.addRecords([record], "staff")).toEqual({ outcome: "later" });
  });

  it("says why the server refused: the fields, else its message", async () => {
    const problems = [
      { path: "records.0.hash", expected: "the hash" },
      { path: "records.0.refs", expected: "a hire" },
    ];
    const both = answering(400, { error: { message: "no", problems } });
    expect(await both.sender.addRecords([record], "staff")).toEqual({
      outcome: "refused",
      problem: "records.0.hash: the hash; records.0.refs: a hire",
    });
    const plain = answering(409, { error: { message: "no", problems: [] } });
    expect(await plain.sender.addRecords([record], "staff")).toEqual({ outcome: "refused", problem: "no" });
  });
});
