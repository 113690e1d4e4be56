import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type TwoDepots, testedStores, twoDepots } from "./stores-for-tests.ts";

const at = (hour: number) => new Date(Date.UTC(2026, 6, 1, hour)).toISOString();

describe.each(testedStores())("messages on $kind", ({ kind }) => {
  let depots: TwoDepots;
  let hireId = "";
  let second = 0;

  beforeAll(async () => {
    depots = await twoDepots(kind, { now: () => new Date(Date.UTC(2026, 6, 1, 8, 0, ++second)) });
    hireId = (await depots.here.hires.create({ from: at(10), to: at(200) })).id;
  });
  afterAll(() => depots.place.remove());

  const add = async (dedupeKey: string, dueAt = at(12), of = hireId) =>
    (await depots.here.messages.add({
      hireId: of,
      kind: "preHire",
      language: "en",
      to: "ada@example.org",
      subject: "Your hire",
      body: "Dear Ada",
      attachments: ["agreement"],
      dueAt,
      dedupeKey,
      by: "desk",
    }))!;

  test("settings that somebody else kept meanwhile are not written over, each depot has its own", async () => {
    const { here, there } = depots;
    expect(await here.messages.settings()).toEqual({ document: {}, version: 0 });
    expect(await here.messages.putSettings({ n: 1 }, 0)).toBe(true);
    expect(await here.messages.putSettings({ n: 2 }, 0)).toBe(false);
    expect(await here.messages.putSettings({ n: 2 }, 1)).toBe(true);
    expect(await here.messages.putSettings({ n: 3 }, 1)).toBe(false);
    expect(await there.messages.putSettings({ n: 9 }, 2)).toBe(false);
    expect(await here.messages.settings()).toEqual({ document: { n: 2 }, version: 2 });
    expect(await there.messages.settings()).toEqual({ document: {}, version: 0 });
  });

  test("a key is kept once in a depot, and is found again among any number of keys", async () => {
    const { here, there } = depots;
    await add("key-200");
    const kept = await add("key-300");
    expect(await add("key-300")).toBeNull();
    const keys = Array.from({ length: 450 }, (_, n) => `key-${n}`);
    expect([...(await here.messages.knownKeys(keys))].sort()).toEqual(["key-200", "key-300"]);
    expect([...(await here.messages.knownKeys(["key-1"]))]).toEqual([]);
    expect([...(await there.messages.knownKeys(keys))]).toEqual([]);
    expect(await here.messages.byKey("key-300")).toEqual(kept);
    expect(await there.messages.get(kept.id)).toBeNull();
  });

  test("a message moves on only from a state that it is in, and has one job at a time", async () => {
    const { messages } = depots.here;
    const { id } = await add("moves");
    expect(await messages.move(id, ["failed"], { state: "waiting" })).toBe(false);
    expect(await messages.addJob(id, at(12))).toBe(true);
    expect(await messages.addJob(id, at(12))).toBe(false);
    await messages.dropJob(id);
    expect(await messages.addJob(id, at(13))).toBe(true);
    await messages.dropJob(id);
    expect(await messages.move(id, ["waiting"], { state: "sending", attempts: 2 })).toBe(true);
    expect(await messages.addJob(id, at(14))).toBe(false);
    expect(
      await messages.move(id, ["waiting", "sending"], {
        state: "sent",
        sentAt: at(13),
        response: "250\0 ok",
      }),
    ).toBe(true);
    expect(await messages.get(id)).toMatchObject({
      state: "sent",
      attempts: 2,
      sentAt: at(13),
      response: "250 ok",
      reason: null,
    });
  });

  test("what waits without a job comes by when it is due, so many at the most", async () => {
    const { messages } = depots.here;
    const before = (await messages.withoutJob(200)).map(({ id }) => id);
    const late = await add("late", at(30));
    const soon = await add("soon", at(1));
    const hasJob = await add("has-job", at(0));
    await messages.addJob(hasJob.id, at(0));
    const gone = await add("gone", at(0));
    await messages.move(gone.id, ["waiting"], { state: "withdrawn" });
    const ids = (await messages.withoutJob(200)).map(({ id }) => id);
    expect(ids.filter((id) => !before.includes(id))).toEqual([soon.id, late.id]);
    expect((await messages.withoutJob(1)).map(({ id }) => id)).toEqual([soon.id]);
  });

  test("the outbox goes page by page, newest first, by hire and by state", async () => {
    const { here } = depots;
    const other = (await here.hires.create({ from: at(10), to: at(200) })).id;
    const made = [];
    for (let n = 0; n < 5; n++) made.push(await add(`page-${n}`, at(12), other));
    await here.messages.move(made[1]!.id, ["waiting"], { state: "failed", reason: "refused" });
    const first = await here.messages.list({ hireId: other, limit: 2 });
    const next = await here.messages.list({ hireId: other, limit: 2, after: first.next! });
    const last = await here.messages.list({ hireId: other, limit: 2, after: next.next! });
    const ids = [first, next, last].flatMap(({ rows }) => rows.map(({ id }) => id));
    expect(ids).toEqual(made.map(({ id }) => id).toReversed());
    expect(last.next).toBeNull();
    const failed = await here.messages.list({ hireId: other, states: ["failed", "bounced"] });
    expect(failed.rows).toMatchObject([{ id: made[1]!.id, reason: "refused" }]);
  });

  test("of an erased person the text goes; what waits is withdrawn, what went stays known as sent", async () => {
    const { here } = depots;
    const person = await here.customers.create({ name: "Ada Invented", document: {} });
    const other = (await here.hires.create({ from: at(10), to: at(200), customerId: person.id })).id;
    const [sent, waits, fails] = [
      await add("e1", at(1), other),
      await add("e2", at(2), other),
      await add("e3", at(3), other),
    ];
    const kept = await add("e4");
    await here.messages.move(sent.id, ["waiting"], { state: "sent", sentAt: at(1), response: "for ada" });
    await here.messages.move(fails.id, ["waiting"], { state: "failed", reason: "no ada here" });
    await here.customers.erase(person.id, "manager");
    const gone = { to: "", subject: "", body: "", reason: null, response: null };
    expect(await here.messages.get(sent.id)).toMatchObject({ ...gone, state: "sent", sentAt: at(1) });
    expect(await here.messages.get(waits.id)).toMatchObject({ ...gone, state: "withdrawn" });
    expect(await here.messages.get(fails.id)).toMatchObject({ ...gone, state: "withdrawn" });
    expect(await here.messages.get(kept.id)).toEqual(kept);
  });
});
