import { appendFileSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openDatabase } from "@setfair/server";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { runCommand } from "../run-command.ts";
import { testIo } from "../test-io.ts";

describe("setfair backup and restore", () => {
  const folder = mkdtempSync(join(tmpdir(), "setfair-restore-"));
  const at = (name: string) => join(folder, name);
  async function run(...args: readonly string[]) {
    const { io, written } = testIo();
    const exit = await runCommand(args, { ...io, readFile });
    return { exit, ...written };
  }
  beforeAll(async () => {
    const database = await openDatabase({ dataFolder: at("data") });
    await database.system.createFirm({
      firm: { name: "Invented Hire" },
      depot: { name: "Invented Depot", timeZone: "Europe/London", document: {} },
      terms: [],
      manager: { login: "manager", name: "Pat Manager", passwordHash: "none" },
    });
    await database.close();
    expect(await run("backup", at("b"), "--data", at("data"))).toMatchObject({ exit: 0, err: "" });
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("ask for the key of what is sealed, or for a word that it stays sealed, and write nothing till then", async () => {
    const asked = await run("restore", at("b"), "--data", at("none"));
    expect(asked).toMatchObject({ exit: 2, out: "" });
    expect(asked.err).toContain("--without-key");
    expect(existsSync(at("none"))).toBe(false);
    const without = await run("restore", at("b"), "--data", at("without"), "--without-key", "--json");
    expect(without.exit, without.err).toBe(0);
    expect(JSON.parse(without.out)).toMatchObject({ ok: true, depots: [{ name: "Invented Depot" }] });
    const key = join(at("data"), "setfair.key");
    const withKey = await run("restore", at("b"), "--data", at("with"), "--key", key);
    expect(withKey).toMatchObject({ exit: 0, err: "" });
    const keyIn = (name: string) => readFileSync(join(at(name), "setfair.key"), "utf8");
    expect([keyIn("with") === keyIn("data"), keyIn("without") === keyIn("data")]).toEqual([true, false]);
  });

  it("put nothing where something is: exit 2", async () => {
    const { exit, err } = await run("restore", at("b"), "--data", at("data"), "--without-key");
    expect([exit, err.includes(at("data"))]).toEqual([2, true]);
    const twice = await run("backup", at("b"), "--data", at("data"));
    expect([twice.exit, twice.out]).toEqual([2, ""]);
  });

  it("name the file that was changed, an honest no: exit 1", async () => {
    appendFileSync(join(at("b"), "setfair.sqlite"), "x");
    const { exit, out, err } = await run("restore", at("b"), "--data", at("later"), "--without-key");
    expect([exit, err]).toEqual([1, ""]);
    expect(out).toContain("setfair.sqlite");
    expect(readdirSync(folder)).not.toContain("later");
  });
});
