import { createHash } from "node:crypto";
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Sqlite from "better-sqlite3";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { makeDepot, makeDevice, type TestDepot } from "../api/depot-for-tests.ts";
import { makeJpeg, sendPhotograph } from "../api/lived-hire-for-tests.ts";
import { CUSTOMER, PARTY, PERIOD } from "../api/samples-for-tests.ts";
import { startStore } from "../files/store-for-tests.ts";
import { SQLITE_FILE } from "../store/open-database.ts";
import { isFree } from "./files.ts";
import { makeBackup } from "./make-backup.ts";
import { type RestoreOptions, restoreBackup } from "./restore-backup.ts";
import { MANIFEST_FILE, type Manifest } from "./types.ts";

describe("a backup that was meddled with", () => {
  let depot: TestDepot;
  let folder = "";
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    const body = { customer: CUSTOMER, party: PARTY, ...PERIOD, vehicleId: "pv2" };
    const id = (await depot.call("desk", "POST", "/hires", body)).body.hire.id;
    await sendPhotograph(depot, id, await makeJpeg());
    const note = makeDevice("tablet", "h.out", {}, depot.context.now);
    const records = [note("note", { text: "seen" }), note("note", { text: "clean" })];
    expect((await depot.call("yard", "POST", "/records", { records })).status).toBe(200);
  });
  afterAll(() => depot.close());
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), "setfair-backup-"));
    const into = join(folder, "b");
    await makeBackup({ dataFolder: depot.dataFolder, into, now: depot.context.now() });
    return () => rm(folder, { recursive: true, force: true });
  });
  const restore = (change: Partial<RestoreOptions> = {}) =>
    restoreBackup({
      from: join(folder, "b"),
      dataFolder: join(folder, "data"),
      erasures: [],
      key: undefined,
      withoutKey: true,
      ...change,
    });
  /** Writes a file of the backup anew and its list after it, as somebody would who knows the form. */
  async function rewrite(isIt: (path: string) => boolean, change: (path: string) => Promise<void>) {
    const list = join(folder, "b", MANIFEST_FILE);
    const manifest = JSON.parse(await readFile(list, "utf8")) as Manifest;
    const file = manifest.files.find(({ path }) => isIt(path));
    if (file === undefined) throw new Error("no such file in the backup");
    const at = join(folder, "b", file.path);
    await change(at);
    const sha256 = createHash("sha256")
      .update(await readFile(at))
      .digest("hex");
    const files = manifest.files.map((each) => (each === file ? { ...each, sha256 } : each));
    await writeFile(list, JSON.stringify({ ...manifest, files }));
    return file.path;
  }

  it("is put back whole without a key where that is accepted", async () => {
    expect(await restore()).toMatchObject({ ok: true, depots: [{ checked: 2, ok: true }] });
    // what was sealed stays sealed: the key in the folder is a new one
    const keyIn = (data: string) => readFile(join(data, "setfair.key"), "utf8");
    expect(await keyIn(join(folder, "data"))).not.toBe(await keyIn(depot.dataFolder));
  });

  it("of records that do not hold any more is refused by the depot's name, and nothing stays behind", async () => {
    await rewrite(
      (path) => path === SQLITE_FILE,
      async (path) => {
        const database = new Sqlite(path);
        const changed = database.prepare("update record set body = replace(body, 'seen', 'torn')").run();
        expect(changed.changes).toBeGreaterThan(0);
        database.close();
      },
    );
    expect(await restore()).toEqual({ ok: false, why: "broken", paths: ["Invented Depot"] });
    expect(await readdir(folder)).toEqual(["b"]);
  });

  it("whose photograph is another than its name says is refused by the store, and nothing stays behind", async () => {
    const store = await startStore();
    try {
      const path = await rewrite(
        (each) => each.endsWith(".jpg"),
        async (each) => writeFile(each, await makeJpeg(100, 80)),
      );
      expect(await restore({ bucket: store.access })).toEqual({ ok: false, why: "changed", paths: [path] });
      expect(await readdir(folder)).toEqual(["b"]);
    } finally {
      await store.close();
    }
  });

  it("goes only where nothing is: a folder that is missing or empty, no file and no folder in use", async () => {
    await mkdir(join(folder, "empty"));
    await writeFile(join(folder, "file"), "x");
    const free = (name: string) => isFree(join(folder, name));
    expect([await free("none"), await free("empty"), await free("file"), await free("b")]).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});
