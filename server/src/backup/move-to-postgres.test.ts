import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "../api/depot-for-tests.ts";
import { type LivedHire, liveHire } from "../api/lived-hire-for-tests.ts";
import { openDatabase } from "../store/open-database.ts";
import { makePlace, TEST_DATABASE_URL, type TestPlace } from "../store/stores-for-tests.ts";
import { moveToPostgres } from "./move-to-postgres.ts";

it("without data there is nothing to move", async () => {
  const folder = await mkdtemp(join(tmpdir(), "setfair-move-"));
  expect(await moveToPostgres({ dataFolder: folder, url: "postgres://127.0.0.1:1/none" })).toMatchObject({
    ok: false,
    why: "noData",
  });
  await rm(folder, { recursive: true });
});

describe.skipIf(TEST_DATABASE_URL === "")("moving to PostgreSQL", () => {
  let depot: TestDepot;
  let hire: LivedHire;
  let target: TestPlace;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    hire = await liveHire(depot);
    target = await makePlace("postgres");
  }, 60_000);
  afterAll(async () => {
    await depot.close();
    await target.remove();
  });

  it("takes everything over once: the same hire, the same records and head", async () => {
    const { dataFolder } = depot;
    const url = target.url ?? "";
    const head = (await depot.store.records.head())?.hash;
    const moved = await moveToPostgres({ dataFolder, url });
    expect(moved).toMatchObject({ ok: true, depots: [{ name: "Invented Depot", head }] });
    const there = await openDatabase({ dataFolder, url });
    const store = there.storeFor(depot.scope);
    expect(await store.hires.get(hire.id)).toEqual(await depot.store.hires.get(hire.id));
    expect(await store.records.export()).toEqual(await depot.store.records.export());
    expect(await store.payments.ofHires([hire.id])).toEqual(await depot.store.payments.ofHires([hire.id]));
    // what is sealed opens with the same key
    const ids = (await store.accounts.list()).map(({ login }) => login).sort();
    expect(ids).toEqual(["desk", "manager", "yard"]);
    await there.close();
    expect(await moveToPostgres({ dataFolder, url })).toMatchObject({ ok: false, why: "notEmpty" });
  });
});
