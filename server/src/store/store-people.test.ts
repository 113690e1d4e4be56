import { readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { verifyRecords } from "@setfair/records";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { inventedFirm, makeReading, type TestPlace, testedStores, twoDepots } from "./stores-for-tests.ts";
import type { Database, Scope, Store } from "./types.ts";

const FROM = "2026-07-04T14:00:00.000Z";
const TO = "2026-07-11T09:00:00.000Z";

describe.each(testedStores())("what a store holds of people on $kind", ({ kind }) => {
  let place: TestPlace;
  let database: Database;
  let here: Store;
  let scopeHere: Scope;
  let there: Store;
  let clock = Date.parse("2026-07-01T08:00:00Z");

  beforeAll(async () => {
    ({ place, database, here, scopeHere, there } = await twoDepots(kind, { now: () => new Date(clock) }));
  });
  afterAll(() => place.remove());

  const newHire = (store: Store, extra = {}) => store.hires.create({ from: FROM, to: TO, ...extra });

  test("a licence number lies encrypted, opens only in its place, and goes when its time has come", async () => {
    const hire = await newHire(here);
    await here.licences.put({
      hireId: hire.id,
      driverId: "d1",
      number: "INVEN 000000 XX9XX",
      eraseAt: "2026-07-20T00:00:00Z",
    });
    expect(await here.licences.read(hire.id, "d1", "desk")).toBe("INVEN 000000 XX9XX");
    expect((await here.audit.list()).rows[0]).toMatchObject({
      by: "desk",
      act: "licence.read",
      about: hire.id,
    });
    if (kind === "sqlite") {
      const bytes = Buffer.concat([
        await readFile(join(place.dataFolder, "setfair.sqlite")),
        await readFile(join(place.dataFolder, "setfair.sqlite-wal")),
      ]);
      expect(bytes.includes("INVEN 000000")).toBe(false);
      expect(bytes.includes(hire.id)).toBe(true);
    }
    expect((await stat(join(place.dataFolder, "setfair.key"))).mode & 0o777).toBe(0o600);
    expect(await here.licences.eraseDue()).toBe(0);
    clock = Date.parse("2026-07-20T00:00:00Z");
    expect(await there.licences.eraseDue()).toBe(0);
    expect(await here.licences.eraseDue()).toBe(1);
    expect(await here.licences.read(hire.id, "d1", "desk")).toBeNull();
  });

  test("another key does not open what was sealed", async () => {
    const hire = await newHire(here);
    await here.licences.put({
      hireId: hire.id,
      driverId: "d1",
      number: "INVEN",
      eraseAt: "2030-01-01T00:00:00Z",
    });
    const other = await place.open({ key: "ab".repeat(32) });
    await expect(other.storeFor(scopeHere).licences.read(hire.id, "d1", "desk")).rejects.toThrow();
    await expect(place.open({ key: "short" })).rejects.toThrow(/SETFAIR_KEY/);
  });

  test("erasing a person empties them everywhere, the chain holds, and a restored copy is erased again", async () => {
    const customer = await here.customers.create({
      name: "Robin Invented",
      document: { mail: "robin@example.org" },
    });
    const hire = await newHire(here, { customerId: customer.id });
    await here.hires.putPart(hire.id, "drivers", { drivers: [{ name: "Robin Invented" }] }, 0, "desk");
    await here.hires.putPart(hire.id, "quote", { pence: 90_000 }, 0, "desk");
    await here.licences.put({
      hireId: hire.id,
      driverId: "d1",
      number: "INVEN",
      eraseAt: "2030-01-01T00:00:00Z",
    });
    const named = makeReading(hire.id, null, {
      refs: { hireId: hire.id, personId: customer.id },
      kind: "note",
      content: { text: "Robin said" },
    });
    await here.records.append([named]);
    const copy = kind === "sqlite" ? join(place.dataFolder, "copy", "setfair.sqlite") : null;
    if (copy !== null) {
      await (await import("node:fs/promises")).mkdir(join(place.dataFolder, "copy"));
      await database.backupTo(copy);
    }
    expect(await here.customers.erase(customer.id, "manager")).toEqual({ recordsErased: 1 });
    expect(await here.customers.get(customer.id)).toMatchObject({ name: "", document: {} });
    expect((await here.hires.search("robin")).rows).toEqual([]);
    expect(Object.keys(await here.hires.parts(hire.id))).toEqual(["quote"]);
    expect(await here.licences.read(hire.id, "d1", "desk")).toBeNull();
    expect(JSON.stringify(await here.records.get(named.id))).not.toMatch(/Robin|salt/);
    expect(verifyRecords(await here.records.export())).toMatchObject({ ok: true });
    const list = (await readFile(join(place.dataFolder, "erasures.jsonl"), "utf8"))
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(list.filter(({ targetId }) => targetId === customer.id || targetId === named.id)).toHaveLength(2);
    expect(await database.system.erasures()).toEqual(expect.arrayContaining(list));
    if (copy === null) return;
    const restored = await place.open({ dataFolder: join(place.dataFolder, "copy") });
    expect((await restored.storeFor(scopeHere).customers.get(customer.id))?.name).toBe("Robin Invented");
    expect(await restored.system.applyErasures(list)).toBeGreaterThan(0);
    expect((await restored.storeFor(scopeHere).customers.get(customer.id))?.name).toBe("");
    expect(JSON.stringify(await restored.storeFor(scopeHere).records.get(named.id))).not.toMatch(
      /Robin|salt/,
    );
  });

  test("sessions, links and set-up serve only while they should", async () => {
    const account = (await here.accounts.list())[0]!;
    const soon = new Date(clock + 3_600_000).toISOString();
    await database.system.createSession({
      tokenHash: "s1",
      accountId: account.id,
      scope: scopeHere,
      expiresAt: soon,
    });
    expect((await database.system.session("s1"))?.account.id).toBe(account.id);
    const hire = await newHire(here);
    const link = await here.links.create({ hireId: hire.id, tokenHash: "l1", expiresAt: soon });
    await here.links.create({ hireId: hire.id, tokenHash: "l2", expiresAt: soon });
    expect(await database.system.hirerLink("l1")).toMatchObject({ hireId: hire.id, scope: scopeHere });
    await here.links.revoke(link.id);
    expect(await database.system.hirerLink("l1")).toBeNull();
    await database.system.createSetupLink({ tokenHash: "u1", expiresAt: soon });
    await database.system.createSetupLink({ tokenHash: "u2", expiresAt: soon });
    await expect(database.system.setUp("u1", inventedFirm("here@example.org"))).rejects.toThrow();
    expect(await database.system.setUp("u1", inventedFirm("new@example.org"))).toMatchObject({ ok: true });
    expect(await database.system.setUp("u1", inventedFirm("newer@example.org"))).toEqual({
      ok: false,
      why: "linkUnusable",
    });
    clock += 3_600_000;
    expect(await database.system.session("s1")).toBeNull();
    expect(await database.system.hirerLink("l2")).toBeNull();
    expect(await database.system.setUp("u2", inventedFirm("newest@example.org"))).toEqual({
      ok: false,
      why: "linkUnusable",
    });
  });

  test("whoever is shut out, or has a new password, is signed out", async () => {
    const made = await here.accounts.create({
      login: "Desk@example.org ",
      name: "Kit Invented",
      role: "desk",
      passwordHash: "x",
    });
    if (!made.ok) throw new Error("taken");
    expect(
      await here.accounts.create({ login: "desk@EXAMPLE.org", name: "b", role: "yard", passwordHash: "x" }),
    ).toEqual({ ok: false, why: "loginTaken" });
    const later = new Date(clock + 1e6).toISOString();
    await database.system.createSession({
      tokenHash: "d1",
      accountId: made.account.id,
      scope: scopeHere,
      expiresAt: later,
    });
    expect(await there.accounts.update(made.account.id, { disabled: true })).toBe(false);
    expect(await database.system.session("d1")).not.toBeNull();
    expect(await here.accounts.update(made.account.id, { disabled: true })).toBe(true);
    expect(await database.system.session("d1")).toBeNull();
    expect((await database.system.accountByLogin("desk@example.org"))?.disabledAt).not.toBeNull();
  });
});
