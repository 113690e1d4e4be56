import { copyFile, mkdtemp, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { appendErasure, completeErasures } from "./erasure-list.ts";
import { ERASURES_FILE, openDatabase, SQLITE_FILE } from "./open-database.ts";
import { inventedFirm } from "./stores-for-tests.ts";
import type { Erasure } from "./types.ts";

const erasure = (targetId: string): Erasure => ({
  firmId: "f",
  depotId: "d",
  kind: "record",
  targetId,
  at: "2026-07-01T08:00:00.000Z",
});

describe("the list of erasures beside the database", () => {
  let folder = "";
  let path = "";
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), "setfair-list-"));
    path = join(folder, ERASURES_FILE);
    return () => rm(folder, { recursive: true, force: true });
  });
  const targets = async () =>
    (await readFile(path, "utf8"))
      .trim()
      .split("\n")
      .map((line) => (JSON.parse(line) as Erasure).targetId);

  it("gets the lines that a process did not come to write, and keeps those it holds more", async () => {
    await appendErasure(path, erasure("elsewhere"));
    await completeErasures(path, [erasure("a"), erasure("b")]);
    expect(await targets()).toEqual(["elsewhere", "a", "b"]);
    const { mtimeMs } = await stat(path);
    await completeErasures(path, [erasure("a"), erasure("b")]);
    expect((await stat(path)).mtimeMs).toBe(mtimeMs);
  });

  it("is whole again where a line was torn", async () => {
    await appendErasure(path, erasure("a"));
    await writeFile(path, `${await readFile(path, "utf8")}{"firmId":"f","dep`);
    await completeErasures(path, [erasure("a"), erasure("b")]);
    expect(await targets()).toEqual(["a", "b"]);
  });

  it("is brought up to date when the database is opened, and not made where nothing was erased", async () => {
    const first = await openDatabase({ dataFolder: folder });
    const { scope } = await first.system.createFirm(inventedFirm());
    await first.close();
    const second = await openDatabase({ dataFolder: folder });
    await expect(stat(path)).rejects.toThrow();
    const { id } = await second.storeFor(scope).customers.create({ name: "Robin Invented", document: {} });
    await second.storeFor(scope).customers.erase(id, "test");
    await second.close();
    await rm(path);
    await (await openDatabase({ dataFolder: folder })).close();
    expect(await targets()).toEqual([id]);
  });

  it("erases again in a database that was put back from before, with the day on which it was", async () => {
    const erased = new Date("2026-07-02T08:00:00.000Z");
    const first = await openDatabase({ dataFolder: folder, now: () => erased });
    const { scope } = await first.system.createFirm(inventedFirm());
    const { id } = await first.storeFor(scope).customers.create({ name: "Robin Invented", document: {} });
    await first.backupTo(join(folder, "before.sqlite"));
    await first.storeFor(scope).customers.erase(id, "test");
    await first.close();
    await copyFile(join(folder, "before.sqlite"), join(folder, SQLITE_FILE));
    await appendErasure(path, {
      ...erasure(JSON.stringify(["0".repeat(64), "erasure"])),
      kind: "photograph",
    });
    const again = await openDatabase({ dataFolder: folder });
    expect(await again.storeFor(scope).customers.get(id)).toMatchObject({
      name: "",
      erasedAt: erased.toISOString(),
    });
    await again.close();
  });
});
