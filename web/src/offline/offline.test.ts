import "fake-indexeddb/auto";
import { checkRecord, type DepotRecord, sha256Hex } from "@setfair/records";
import fc from "fast-check";
import { afterEach, describe, expect, it } from "vitest";
import type { Guide, KeptPhotograph } from "./database.ts";
import { deviceId } from "./device.ts";
import { devices, look, refs } from "./device-for-tests.ts";
import { flushOutbox, type SendAnswer, type Sender, tryRefusedAgain } from "./flush.ts";
import { keepPhotograph } from "./keep-photograph.ts";
import { keepRecord, recordsOfChain } from "./keep-record.ts";
import { countOutbox } from "./outbox-count.ts";
import { httpSender } from "./sender.ts";

const { open: openDevice, close } = devices("test");
afterEach(close);

const picture = (...bytes: number[]) => Uint8Array.from([0xff, 0xd8, ...bytes]);
const photograph = (chain: string, bytes: Uint8Array<ArrayBuffer>) => ({
  bytes,
  content: { about: "awning.cassette", view: "nearside" },
  refs,
  chain,
  via: "staff" as const,
});

/** A server that keeps what it gets, by id and by hash; `mood` may cut the signal or refuse. */
function server(mood: (what: string) => SendAnswer | undefined = () => undefined) {
  const records = new Map<string, DepotRecord>();
  const arrived: string[] = [];
  const photographs = new Map<string, KeptPhotograph>();
  const sender: Sender = {
    putPhotograph: async (one) => {
      const answer = mood(`photo ${one.sha256}`);
      if (answer !== undefined) return answer;
      photographs.set(one.sha256, one);
      arrived.push(one.sha256);
      return { outcome: "taken" };
    },
    addRecords: async (batch) => {
      const answer = mood(`records ${batch.map(({ id }) => id).join(" ")}`);
      if (answer !== undefined) return answer;
      for (const record of batch) {
        if (!records.has(record.id)) arrived.push(record.id);
        records.set(record.id, record);
      }
      return { outcome: "taken" };
    },
  };
  return { records, photographs, arrived, sender };
}

describe("keeping what happened with no signal", () => {
  it("chains the records of one walk-round, each under the hash of the one before", async () => {
    const db = openDevice();
    for (const about of ["a", "b", "c"]) await keepRecord(db, look("h1.out", about));
    await keepRecord(db, look("h1.back", "a"));
    const chain = (await recordsOfChain(db, "h1.out")).map(({ record }) => record);
    expect(chain.map(({ seq }) => seq)).toEqual([1, 2, 3]);
    expect(chain.map(({ prev }) => prev)).toEqual([null, chain[0]!.hash, chain[1]!.hash]);
    expect(chain.every((record) => checkRecord(record).problems.length === 0)).toBe(true);
    expect((await recordsOfChain(db, "h1.back"))[0]!.seq).toBe(1);
  });

  it("gives no two records one place in the chain when a finger touches twice", async () => {
    const db = openDevice();
    await Promise.all(Array.from({ length: 12 }, (_, n) => keepRecord(db, look("h1.out", `part ${n}`))));
    const seqs = (await recordsOfChain(db, "h1.out")).map(({ seq }) => seq);
    expect(seqs).toEqual(Array.from({ length: 12 }, (_, n) => n + 1));
  });

  it("loses nothing when the tab dies between the photograph and the record of what was seen", async () => {
    const before = openDevice("dies");
    const bytes = picture(1, 2, 3);
    await keepPhotograph(before, photograph("h1.out", bytes));
    before.close();
    const after = openDevice("dies");
    const kept = await after.photographs.toArray();
    expect(kept.map(({ sha256 }) => sha256)).toEqual([sha256Hex(bytes)]);
    expect([...kept[0]!.bytes]).toEqual([...bytes]);
    const [named] = await recordsOfChain(after, "h1.out");
    expect(named!.record.content.sha256).toBe(sha256Hex(bytes));
    await keepRecord(after, look("h1.out", "awning.cassette"));
    expect((await recordsOfChain(after, "h1.out"))[1]!.record.prev).toBe(named!.hash);
    expect(await countOutbox(after)).toEqual({ waiting: 3, refused: 0 });
  });

  it("writes the record and the state of the walk-round together or not at all", async () => {
    const db = openDevice();
    const dies = keepRecord(db, look("h1.out", "a"), async () => {
      await db.rounds.put({ jobId: "h1.out", state: {} });
      throw new Error("the tab died here");
    });
    await expect(dies).rejects.toThrow("the tab died here");
    expect(await db.records.count()).toBe(0);
    expect(await db.rounds.count()).toBe(0);
  });

  it("keeps its own id for good", async () => {
    const db = openDevice();
    const [one, two] = await Promise.all([deviceId(db), deviceId(db)]);
    expect(one).toBe(two);
    expect(one).toMatch(/^[0-9a-f]{32}$/);
  });
});

describe("sending the outbox", () => {
  it("sends every photograph before the record that names it, and each chain in order", async () => {
    const db = openDevice();
    for (let n = 0; n < 4; n++) {
      await keepPhotograph(db, photograph("h1.out", picture(n)));
      await keepRecord(db, look("h1.out", `part ${n}`));
    }
    const { sender, arrived } = server();
    expect(await flushOutbox(db, sender)).toBe("empty");
    const chain = await recordsOfChain(db, "h1.out");
    const places = chain.map(({ id }) => arrived.indexOf(id));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    for (const { id, photographs } of chain) {
      for (const sha256 of photographs) expect(arrived.indexOf(sha256)).toBeLessThan(arrived.indexOf(id));
    }
    expect(await countOutbox(db)).toEqual({ waiting: 0, refused: 0 });
  });

  it("ends with every record once and in order, however often the signal is cut", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.boolean(), { minLength: 4, maxLength: 30 }),
        fc.integer({ min: 1, max: 40 }),
        async (cuts, count) => {
          const db = openDevice();
          for (let n = 0; n < count; n++) {
            if (n % 5 === 0) await keepPhotograph(db, photograph(`h${n % 2}.out`, picture(n)));
            await keepRecord(db, look(`h${n % 2}.out`, `part ${n}`));
          }
          let turn = 0;
          const cut = server(() => (cuts[turn++ % cuts.length] ? { outcome: "later" } : undefined));
          // the answer got lost: the server has it, the device does not know
          const lossy: Sender = {
            putPhotograph: (one, via) => cut.sender.putPhotograph(one, via),
            addRecords: async (batch, via) => {
              const answer = await cut.sender.addRecords(batch, via);
              return answer.outcome === "taken" && turn++ % 3 === 0 ? { outcome: "later" } : answer;
            },
          };
          for (let n = 0; n < 6; n++) await flushOutbox(db, lossy);
          cuts.fill(false);
          await flushOutbox(db, cut.sender);
          expect(await countOutbox(db)).toEqual({ waiting: 0, refused: 0 });
          expect(cut.records.size).toBe(await db.records.count());
          expect(cut.photographs.size).toBe(await db.photographs.count());
          for (const chain of ["h0.out", "h1.out"]) {
            const ids = (await recordsOfChain(db, chain)).map(({ id }) => cut.arrived.indexOf(id));
            expect(ids).toEqual([...ids].sort((a, b) => a - b));
          }
        },
      ),
      { numRuns: 20 },
    );
  });

  it("keeps and shows a record that the server refuses, and sends the others", async () => {
    const db = openDevice();
    const kept = [];
    for (const about of ["a", "b", "c"]) kept.push(await keepRecord(db, look("h1.out", about)));
    const bad = kept[1]!.id;
    const { sender, records } = server((what) =>
      what.startsWith("records") && what.includes(bad)
        ? { outcome: "refused", problem: "content.saw: expected a word" }
        : undefined,
    );
    await flushOutbox(db, sender);
    expect([...records.keys()].sort()).toEqual([kept[0]!.id, kept[2]!.id].sort());
    expect(await db.records.get(bad)).toMatchObject({
      state: "refused",
      problem: "content.saw: expected a word",
    });
    expect(await countOutbox(db)).toEqual({ waiting: 0, refused: 1 });
    await tryRefusedAgain(db);
    await flushOutbox(db, server().sender);
    expect(await countOutbox(db)).toEqual({ waiting: 0, refused: 0 });
    expect(await db.records.count()).toBe(3);
  });

  it("keeps everything when nobody is signed in, and still sends what goes by a hirer's link", async () => {
    const db = openDevice();
    await keepRecord(db, look("h1.out", "a"));
    await keepRecord(db, {
      kind: "reading",
      refs,
      chain: "h2.road",
      content: { about: "battery12", value: 12.2, unit: "V" },
      via: { token: "t".repeat(32) },
    });
    const sent: string[] = [];
    const sender: Sender = {
      putPhotograph: async () => ({ outcome: "signIn" }),
      addRecords: async (_records, via) => {
        sent.push(via);
        return via === "staff" ? { outcome: "signIn" } : { outcome: "taken" };
      },
    };
    expect(await flushOutbox(db, sender)).toBe("signIn");
    expect(sent).toContain(`link:${"t".repeat(32)}`);
    expect(await countOutbox(db)).toEqual({ waiting: 1, refused: 0 });
  });

  it("sends what was said by a link that has lapsed by the newest link that this phone has for the hire", async () => {
    const db = openDevice();
    const say = (chain: string, hireId: string, token: string) =>
      keepPhotograph(db, {
        ...photograph(chain, picture(token.length, hireId.length, 1)),
        refs: { hireId },
        via: { token },
      });
    const guide = (hireId: string) => ({ hireId }) as Guide;
    await say("h1.missed", "h1", "old");
    await db.guides.bulkPut([
      { token: "newest", guide: guide("h1"), fetchedAt: "2026-07-03T08:00:00.000Z" },
      { token: "old", guide: guide("h1"), fetchedAt: "2026-07-01T08:00:00.000Z" },
      { token: "other", guide: guide("h2"), fetchedAt: "2026-07-09T08:00:00.000Z" },
    ]);
    await say("h3.missed", "h3", "alone");
    const doors: string[] = [];
    const sender: Sender = {
      putPhotograph: async (_one, via) => {
        doors.push(via);
        return via === "link:old" ? { outcome: "signIn" } : { outcome: "taken" };
      },
      addRecords: async (_batch, via) => {
        doors.push(via);
        return via === "link:old" ? { outcome: "signIn" } : { outcome: "taken" };
      },
    };
    expect(await flushOutbox(db, sender)).toBe("empty");
    expect(doors).toEqual(["link:newest", "link:newest", "link:alone", "link:alone"]);
    expect(await countOutbox(db)).toEqual({ waiting: 0, refused: 0 });
  });

  it("tells a bad record from no signal, a sleeping server and a missing sign-in", async () => {
    const answers: Record<number, string> = {
      200: "taken",
      400: "refused",
      401: "signIn",
      403: "signIn",
      409: "refused",
      429: "later",
      503: "later",
    };
    for (const [status, outcome] of Object.entries(answers)) {
      const sender = httpSender(async () =>
        Response.json({ error: { message: "no", problems: [] } }, { status: Number(status) }),
      );
      expect((await sender.addRecords([], "staff")).outcome).toBe(outcome);
    }
    const cut = httpSender(async () => Promise.reject(new TypeError("failed to fetch")));
    expect((await cut.addRecords([], "staff")).outcome).toBe("later");
  });
});
