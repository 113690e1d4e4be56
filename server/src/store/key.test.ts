import { chmod, mkdtemp, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { loadKey } from "./key.ts";

describe("the key for what is sealed", () => {
  let folder = "";
  let path = "";
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), "setfair-key-"));
    path = join(folder, "setfair.key");
    return () => rm(folder, { recursive: true, force: true });
  });

  it("is made once, for its owner's eyes only, and nothing else is left in the folder", async () => {
    const key = loadKey(folder, undefined);
    expect(key).toHaveLength(32);
    expect(loadKey(folder, "")).toEqual(key);
    expect((await stat(path)).mode & 0o777).toBe(0o600);
    expect(await readdir(folder)).toEqual(["setfair.key"]);
    expect(await readFile(path, "utf8")).toBe(`${key.toString("hex")}\n`);
  });

  it.skipIf(process.platform === "win32")("is refused where others may read it", async () => {
    loadKey(folder, undefined);
    for (const mode of [0o640, 0o604, 0o620]) {
      await chmod(path, mode);
      expect(() => loadKey(folder, undefined), mode.toString(8)).toThrow(/readable by its owner only/);
    }
    await chmod(path, 0o600);
    expect(loadKey(folder, undefined)).toHaveLength(32);
  });

  it("may be given in hex or base64, of 32 bytes; one that is given makes no file", async () => {
    const bytes = Buffer.alloc(32, 7);
    for (const text of [bytes.toString("hex"), ` ${bytes.toString("base64")}\n`])
      expect(loadKey(folder, text)).toEqual(bytes);
    expect(() => loadKey(folder, Buffer.alloc(31).toString("base64"))).toThrow(/^SETFAIR_KEY: .*32 bytes/);
    expect(await readdir(folder)).toEqual([]);
    await writeFile(path, "too short", { mode: 0o600 });
    expect(() => loadKey(folder, undefined)).toThrow(/setfair\.key: expected 32 bytes/);
  });
});
