import { randomBytes } from "node:crypto";
import { appendFile, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { verifyRecords } from "@setfair/records";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { makeDepot, makeDevice, type TestDepot } from "../api/depot-for-tests.ts";
import { makeJpeg, sendPhotograph } from "../api/lived-hire-for-tests.ts";
import { CUSTOMER, PARTY, PERIOD } from "../api/samples-for-tests.ts";
import { openFiles } from "../files/open-files.ts";
import { startStore } from "../files/store-for-tests.ts";
import { openDatabase } from "../store/open-database.ts";
import { makeBackup } from "./make-backup.ts";
import { movePhotographs } from "./move-photographs.ts";
import { type RestoreOptions, restoreBackup } from "./restore-backup.ts";

describe("a backup and what is restored from it", () => {
  let depot: TestDepot;
  let dataFolder = "";
  let folder = "";
  let photograph = "";
  let key = "";
  const note = makeDevice("tablet", "h.out", {}, () => new Date("2026-07-01T08:00:00.000Z"));
  const [first, second] = [note("note", { text: "seen" }), note("note", { text: "Ingrid Example was here" })];
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    dataFolder = depot.dataFolder;
    const body = { customer: CUSTOMER, party: PARTY, ...PERIOD, vehicleId: "pv2" };
    const id = (await depot.call("desk", "POST", "/hires", body)).body.hire.id;
    photograph = await sendPhotograph(depot, id, await makeJpeg());
    await depot.call("yard", "POST", "/records", { records: [first, second] });
    key = await readFile(join(dataFolder, "setfair.key"), "utf8");
  });
  afterAll(() => depot.close());
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), "setfair-backup-"));
    return () => rm(folder, { recursive: true, force: true });
  });
  const backUp = () => makeBackup({ dataFolder, into: join(folder, "b"), now: depot.context.now() });
  const restore = (change: Partial<RestoreOptions> = {}) =>
    restoreBackup({
      from: join(folder, "b"),
      dataFolder: join(folder, "data"),
      erasures: [],
      key,
      withoutKey: false,
      ...change,
    });

  it("is made while the depot works, and comes back with records that verify and photographs as taken", async () => {
    expect(await backUp()).toMatchObject({ ok: true, files: 2, photographs: 1, damaged: [] });
    expect((await readdir(join(folder, "b"))).sort()).toEqual([
      "manifest.json",
      "photographs",
      "setfair.sqlite",
    ]);
    const head = (await depot.store.records.head())?.hash;
    expect(await restore()).toMatchObject({
      ok: true,
      depots: [{ name: "Invented Depot", checked: 2, head }],
    });
    const database = await openDatabase({ dataFolder: join(folder, "data") });
    const all = await database.storeFor(depot.scope).records.export();
    expect(verifyRecords(all)).toMatchObject({ ok: true, checked: 2 });
    await database.close();
    const files = openFiles({ dataFolder: join(folder, "data") });
    expect((await files.status(depot.scope, photograph)).state).toBe("kept");
  });

  it("erases again what was erased after it was made", async () => {
    await backUp();
    const erasures = [
      { ...depot.scope, kind: "record" as const, targetId: second.id, at: "2026-07-02T08:00:00.000Z" },
    ];
    expect(await restore({ erasures })).toMatchObject({ ok: true, erased: 1, depots: [{ checked: 1 }] });
    const database = await openDatabase({ dataFolder: join(folder, "data") });
    const kept = await database.storeFor(depot.scope).records.get(second.id);
    await database.close();
    expect(kept?.record).not.toHaveProperty("content");
    // the restored folder keeps its own list, so that the next restore knows of it too
    expect(await readFile(join(folder, "data", "erasures.jsonl"), "utf8")).toContain(second.id);
  });

  it("refuses a changed file, a folder in use, and a missing key, and puts nothing there", async () => {
    await backUp();
    expect(await makeBackup({ dataFolder, into: join(folder, "b"), now: new Date() })).toMatchObject({
      why: "notEmpty",
    });
    expect(await restore({ key: undefined })).toMatchObject({ ok: false, why: "noKey" });
    expect(await restore({ dataFolder })).toMatchObject({ ok: false, why: "notEmpty" });
    expect(await restore({ from: folder })).toMatchObject({ ok: false, why: "noManifest" });
    await appendFile(join(folder, "b", "setfair.sqlite"), "x");
    expect(await restore()).toMatchObject({ ok: false, why: "changed", paths: ["setfair.sqlite"] });
    expect((await readdir(folder)).sort()).toEqual(["b"]);
  });

  it("leaves out a photograph that is no longer what its name says, and says so", async () => {
    const hash = randomBytes(32).toString("hex");
    const { firmId, depotId } = depot.scope;
    const path = `photographs/${firmId}/${depotId}/${hash.slice(0, 2)}/${hash}.jpg`;
    await mkdir(dirname(join(dataFolder, path)), { recursive: true });
    await writeFile(join(dataFolder, path), "rotten");
    expect(await backUp()).toMatchObject({ ok: false, photographs: 1, damaged: [path] });
    await rm(join(dataFolder, path));
  });

  it("takes photographs from a store, to which they were copied before, and puts them back into another", async () => {
    const store = await startStore();
    try {
      const bucket = store.access;
      expect(await movePhotographs(dataFolder, bucket)).toEqual({ copied: 1, there: 0, damaged: [] });
      expect(await movePhotographs(dataFolder, bucket)).toEqual({ copied: 0, there: 1, damaged: [] });
      const into = join(folder, "b");
      expect(await makeBackup({ dataFolder, into, now: new Date(), bucket })).toMatchObject({
        ok: true,
        photographs: 1,
      });
      const another = { ...bucket, prefix: "restored/" };
      expect(await restore({ bucket: another })).toMatchObject({ ok: true, files: 2 });
      expect(await readdir(join(folder, "data"))).not.toContain("photographs");
      const files = openFiles({ dataFolder: folder, bucket: another });
      expect((await files.status(depot.scope, photograph)).state).toBe("kept");
    } finally {
      await store.close();
    }
  });

  it("copies into a store what is still what its name says, and names the rest", async () => {
    const store = await startStore();
    const hash = randomBytes(32).toString("hex");
    const path = join(folder, "photographs", "f", "d", hash.slice(0, 2), `${hash}.jpg`);
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, "rotten");
    const moved = await movePhotographs(folder, store.access).finally(() => store.close());
    expect(moved).toEqual({ copied: 0, there: 0, damaged: [path] });
  });

  it("of a database that cannot be read ends with an error and leaves nothing behind", async () => {
    const into = join(folder, "b");
    expect(await makeBackup({ dataFolder: folder, into, now: new Date() })).toMatchObject({ why: "noData" });
    await writeFile(join(folder, "setfair.sqlite"), randomBytes(9000));
    await expect(makeBackup({ dataFolder: folder, into, now: new Date() })).rejects.toThrow("not a database");
    expect(await readdir(folder)).toEqual(["setfair.sqlite"]);
  });
});
