import { readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { makeRecord, verifyRecords } from "@setfair/records";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { addDepot, inventedFirm, makePlace, type TestPlace, testedStores } from "./stores-for-tests.ts";
import type { Database, Scope, Store } from "./types.ts";

const FROM = "2026-07-04T14:00:00.000Z";
const TO = "2026-07-11T09:00:00.000Z";

describe.each(testedStores())("the store on $kind", ({ kind }) => {
  let place: TestPlace;
  let database: Database;
  let here: Store;
  let scopeHere: Scope;
  let there: Store;
  let clock = Date.parse("2026-07-01T08:00:00Z");

  beforeAll(async () => {
    place = await makePlace(kind);
    database = await place.open({ now: () => new Date(clock) });
    scopeHere = await addDepot(database, "here@example.org");
    here = database.storeFor(scopeHere);
    there = database.storeFor(await addDepot(database, "there@example.org"));
  });
  afterAll(() => place.remove());

  const newHire = (store: Store, extra = {}) => store.hires.create({ from: FROM, to: TO, ...extra });

  test("a firm is made whole or not at all", async () => {
    const before = await database.system.firmCount();
    await expect(database.system.createFirm(inventedFirm("HERE@example.org"))).rejects.toThrow(/login/);
    expect(await database.system.firmCount()).toBe(before);
    expect((await here.terms.on("hire", "2026-06-01"))?.document).toEqual({ excessPence: 100_000 });
    expect((await here.firm.get()).name).toBe("Invented Hire");
  });

  test("a document written from an old version is refused, and says which version is there", async () => {
    const hire = await newHire(here);
    expect(await here.hires.putPart(hire.id, "trip", { stops: [] }, 0, "desk")).toEqual({
      ok: true,
      version: 1,
    });
    expect(await here.hires.putPart(hire.id, "trip", { stops: [1] }, 0, "yard")).toEqual({
      ok: false,
      why: "stale",
      version: 1,
    });
    expect(await here.hires.putPart(hire.id, "trip", { stops: [2] }, 1, "desk")).toEqual({
      ok: true,
      version: 2,
    });
    expect((await here.hires.part(hire.id, "trip"))?.document).toEqual({ stops: [2] });
    expect(await here.hires.putPart("nobody", "trip", {}, 0, "desk")).toEqual({ ok: false, why: "notFound" });
    expect(await here.hires.update(hire.id, { stage: "quote" }, 1)).toEqual({ ok: true, version: 2 });
    expect(await here.hires.update(hire.id, { stage: "lost" }, 1)).toEqual({
      ok: false,
      why: "stale",
      version: 2,
    });
  });

  test("of many who write the same version at once exactly one is kept", async () => {
    const hire = await newHire(here);
    const answers = await Promise.all(
      Array.from({ length: 12 }, (_, n) => here.hires.putPart(hire.id, "load", { n }, 0, "desk")),
    );
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
  });

  test("a description is read as it held on the day, and the same again adds nothing", async () => {
    const first = await here.vehicles.put({
      of: "PV2",
      validFrom: "2026-01-01",
      document: { heater: "gas" },
    });
    await here.vehicles.put({ of: "PV2", validFrom: "2026-05-01", document: { heater: "diesel" } });
    expect(
      (await here.vehicles.put({ of: "PV2", validFrom: "2026-01-01", document: { heater: "gas" } }))
        .versionId,
    ).toBe(first.versionId);
    expect((await here.vehicles.on("PV2", "2026-04-30"))?.document).toEqual({ heater: "gas" });
    expect((await here.vehicles.on("PV2", "2026-05-01"))?.document).toEqual({ heater: "diesel" });
    expect(await here.vehicles.on("PV2", "2025-12-31")).toBeNull();
    expect(await here.vehicles.versions("PV2")).toHaveLength(2);
    expect((await here.vehicles.allOn("2026-06-01")).map(({ of }) => of)).toEqual(["PV2"]);
    await expect(here.vehicles.put({ of: "PV2", validFrom: "2026-02-30", document: {} })).rejects.toThrow(
      /validFrom/,
    );
  });

  test("a correction on the same day holds from then on, also back to what it was", async () => {
    for (const heater of ["gas", "diesel", "gas"]) {
      await here.vehicles.put({ of: "PV9", validFrom: "2026-01-01", document: { heater } });
    }
    expect((await here.vehicles.on("PV9", "2026-01-01"))?.document).toEqual({ heater: "gas" });
    expect(await here.vehicles.versions("PV9")).toHaveLength(3);
  });

  test("another depot's rows are never seen nor changed", async () => {
    const customer = await here.customers.create({
      name: "Sam Invented",
      document: { telephone: "07700 900001" },
    });
    const hire = await newHire(here, { customerId: customer.id });
    await here.bookings.book({
      hireId: hire.id,
      vehicleId: "PV2",
      from: FROM,
      to: TO,
      turnaroundMinutes: 120,
    });
    expect(await there.hires.get(hire.id)).toBeNull();
    expect((await there.hires.search("Sam")).rows).toEqual([]);
    expect((await there.customers.search("")).rows).toEqual([]);
    expect(await there.customers.get(customer.id)).toBeNull();
    expect(await there.bookings.between(FROM, TO)).toEqual([]);
    expect(await there.hires.update(hire.id, { stage: "lost" }, 1)).toEqual({ ok: false, why: "notFound" });
    expect(await there.customers.erase(customer.id, "manager")).toBeNull();
    expect(await there.bookings.release(hire.id)).toBe(false);
    await expect(newHire(there, { customerId: customer.id })).rejects.toThrow(/customer of this depot/);
    await expect(
      there.payments.add({
        hireId: hire.id,
        kind: "payment",
        currency: "GBP",
        pence: 1,
        document: {},
        by: "x",
      }),
    ).rejects.toThrow();
    const twin = await newHire(there, { id: hire.id });
    expect(twin.id).toBe(hire.id);
    expect((await here.hires.get(hire.id))?.customerName).toBe("Sam Invented");
    await here.bookings.release(hire.id);
  });

  test("hires are found by name, registration and number, without marks and in any case", async () => {
    const customer = await here.customers.create({ name: "Zoë O'Brien-Łukasik", document: {} });
    const hire = await newHire(here, { customerId: customer.id });
    await here.hires.update(hire.id, { vehicleId: "PV7", registration: "ZZ99 XYZ" }, 1);
    for (const typed of [
      "zoe",
      "o'brien",
      "obrien zo",
      "zz99xyz",
      "ZZ99 X",
      "xyz",
      hire.number,
      hire.number.slice(0, 5),
    ]) {
      expect(
        (await here.hires.search(typed)).rows.map(({ id }) => id),
        typed,
      ).toContain(hire.id);
    }
    expect((await here.hires.search("zoe nobody")).rows).toEqual([]);
    await here.customers.update(customer.id, { name: "Ada Invented", document: {} }, 1);
    expect((await here.hires.search("zoe")).rows).toEqual([]);
    expect((await here.hires.search("ada")).rows[0]?.customerName).toBe("Ada Invented");
    expect((await here.hires.byNumber(hire.number))?.id).toBe(hire.id);
  });

  test("pages follow each other without a gap or a repeat", async () => {
    const made: string[] = [];
    for (let n = 0; n < 7; n++)
      made.push((await newHire(there, { from: "2027-01-01T10:00:00Z", to: "2027-01-02T10:00:00Z" })).id);
    const seen: string[] = [];
    let after: string | null = null;
    do {
      const page = await there.hires.list({
        touchesFrom: "2027-01-01T00:00:00Z",
        limit: 3,
        ...(after === null ? {} : { after }),
      });
      seen.push(...page.rows.map(({ id }) => id));
      after = page.next;
    } while (after !== null);
    expect([...seen].sort()).toEqual([...made].sort());
    expect(new Set(seen).size).toBe(7);
    await expect(there.hires.list({ after: "nonsense" })).rejects.toThrow(/after/);
  });

  test("an unreadable instant, a period back to front and a NUL are named", async () => {
    await expect(here.hires.create({ from: "4 July", to: TO })).rejects.toThrow(/^from: /);
    await expect(here.hires.create({ from: TO, to: FROM })).rejects.toThrow(/^to: /);
    await expect(here.customers.create({ name: "a\0b", document: {} })).rejects.toThrow(/customer\.name/);
    expect((await here.customers.create({ name: "c", document: { odd: "a\0b" } })).document).toEqual({
      odd: "a\0b",
    });
  });

  test("work that fails half way leaves nothing behind", async () => {
    const hire = await newHire(here);
    const work = here.within(async (store) => {
      await store.hires.putPart(hire.id, "quote", { pence: 1 }, 0, "desk");
      await store.payments.add({
        hireId: hire.id,
        kind: "payment",
        currency: "GBP",
        pence: 100,
        document: {},
        by: "desk",
      });
      throw new Error("half way");
    });
    await expect(work).rejects.toThrow("half way");
    expect(await here.hires.part(hire.id, "quote")).toBeNull();
    expect(await here.payments.ofHire(hire.id)).toEqual([]);
  });

  test("the same payment sent again is one payment, and another under its id is refused", async () => {
    const hire = await newHire(here);
    const payment = {
      id: "pay-1",
      hireId: hire.id,
      kind: "depositHeld",
      currency: "GBP",
      pence: 100_000,
      document: {},
      by: "desk",
    } as const;
    const first = await here.payments.add(payment);
    expect(await here.payments.add(payment)).toEqual(first);
    await expect(here.payments.add({ ...payment, pence: 5 })).rejects.toThrow(/^id: /);
    await expect(here.payments.add({ ...payment, id: "pay-2", pence: 0.5 })).rejects.toThrow(/^pence: /);
    expect(await here.payments.ofHire(hire.id)).toEqual([first]);
  });

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

  const record = (hireId: string, after: Parameters<typeof makeRecord>[1], extra = {}) =>
    makeRecord(
      {
        deviceId: "tablet",
        deviceTime: "2026-07-04T14:05:00Z",
        kind: "reading",
        refs: { hireId },
        chain: `walk-${hireId}`,
        content: { about: "odometer", value: 41_234, unit: "km" },
        ...extra,
      },
      after,
    );

  test("records come once, in order, and the depot's chain holds", async () => {
    const hire = await newHire(here);
    const first = record(hire.id, null);
    const second = record(hire.id, first);
    const third = record(hire.id, second);
    expect(await here.records.append([third])).toMatchObject([{ ok: false, why: "gap", expectedSeq: 1 }]);
    expect(await here.records.append([first, second])).toMatchObject([
      { ok: true, again: false },
      { ok: true, again: false },
    ]);
    expect(await here.records.append([first, third])).toMatchObject([
      { ok: true, again: true },
      { ok: true, again: false },
    ]);
    expect(await here.records.append([record(hire.id, first)])).toMatchObject([
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

  test("many devices at once make one chain", async () => {
    const hire = await newHire(there);
    await Promise.all(
      Array.from({ length: 6 }, async (_, device) => {
        let end: Parameters<typeof makeRecord>[1] = null;
        for (let n = 0; n < 4; n++) {
          const next = record(hire.id, end, { deviceId: `tablet-${device}` });
          expect(await there.records.append([next])).toMatchObject([{ ok: true }]);
          end = next;
        }
      }),
    );
    const verified = verifyRecords(await there.records.export());
    expect(verified).toMatchObject({ ok: true, checked: 24 });
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
    const named = record(hire.id, null, {
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
  });
});
