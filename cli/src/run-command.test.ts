import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { hashJson, makeReceipt, makeRecord, type Receipt, sha256Hex } from "@setfair/records";
import { hashPassword, openDatabase } from "@setfair/server";
import { describe, expect, it } from "vitest";
import { runCommand } from "./run-command.ts";
import { testIo } from "./test-io.ts";

async function run(
  args: readonly string[],
  files: Readonly<Record<string, string | Uint8Array>> = {},
  input = "",
) {
  const { io, written } = testIo(files, input);
  const exit = await runCommand(args, io);
  return { exit, ...written };
}
const example = (name: string) => readFileSync(new URL(`../../examples/${name}`, import.meta.url), "utf8");

describe("setfair", () => {
  it("gives its help, and gives it with exit 2 for an unknown verb, flag or argument too many", async () => {
    expect(await run(["--help"])).toMatchObject({ exit: 0, err: "" });
    expect(await run(["trip", "--help"])).toEqual(await run(["help"]));
    for (const args of [
      [],
      ["tripp"],
      ["load", "--fast", "-"],
      ["load", "a", "b"],
      ["trip", "-", "--runs", "many"],
      ["load"],
    ]) {
      const { exit, err, out } = await run(args, {}, "{}");
      expect(exit, args.join(" ")).toBe(2);
      expect(err).toContain("setfair <verb>");
      expect(out).toBe("");
    }
    expect((await run(["tripp"])).err).toContain("trip");
  });

  it("says what is wrong with a file, by line and column where it is malformed", async () => {
    expect((await run(["load", "none.json"])).err).toContain("none.json");
    expect((await run(["load", "a.json"], { "a.json": "" })).err).toContain("empty");
    expect(
      (await run(["load", "a.json"], { "a.json": '{\n  "vehicle": {},\n  "party": oops\n}' })).err,
    ).toContain("line 3, column 12");
    expect((await run(["load", "-"], {}, '{"a": 1')).err).toContain("line 1, column 8");
    expect((await run(["load", "-"], {}, '{"a": 1,}')).err).toContain("line 1, column 9");
    expect((await run(["load", "a.json.gz"], { "a.json.gz": "{}" })).err).toContain("gzip");
    expect((await run(["load", "a.json"], { "a.json": new Uint8Array([0xff, 0xfe, 0x00]) })).err).toContain(
      "UTF-8",
    );
  });

  it("names every field that is wrong, with exit 2, and shows no stack", async () => {
    const input = JSON.parse(example("load.input.json"));
    input.load.waterLitres = -5;
    input.vehicle.masses.miroKg = 9000;
    const { exit, err } = await run(["load", "-"], {}, JSON.stringify(input));
    expect(exit).toBe(2);
    expect(err).toContain("load.waterLitres");
    expect(err).toContain("vehicle.masses.miroKg");
    expect(err).not.toMatch(/^ +at /m);
    for (const text of ["null", "[]", "3", '"trip"', "{}"]) {
      expect((await run(["trip", "-"], {}, text)).exit, text).toBe(2);
      expect((await run(["settle", "-"], {}, text)).exit, text).toBe(2);
      expect((await run(["briefing", "-"], {}, text)).exit, text).toBe(2);
    }
  });

  it("reads a file ending in .gz as gzip, and - as standard input", async () => {
    const text = example("load.input.json");
    const plain = await run(["load", "-", "--json"], {}, text);
    expect(await run(["load", "a.json.gz", "--json"], { "a.json.gz": gzipSync(text) })).toEqual(plain);
    expect(plain.exit).toBe(0);
  });

  it("says an honest no with exit 1: a load that is over, and the change that makes it legal", async () => {
    const { exit, out } = await run(["load", "a", "--json"], { a: example("load-over.input.json") });
    expect(exit).toBe(1);
    expect(JSON.parse(out).result).toMatchObject({ legal: false, leastChange: { outcome: "found" } });
    expect((await run(["load", "a"], { a: example("load-over.input.json") })).exit).toBe(1);
  });
});

describe("setfair formula", () => {
  it("computes one as a line of JSON", async () => {
    const { exit, out } = await run(["formula", "mass.minimumPayload", '{"people":4,"lengthM":7.45}']);
    expect(exit).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      value: 114.5,
      unit: "kg",
      source: expect.stringContaining("1230/2012"),
    });
  });

  it("lists all of them, and exits 2 with the fields or near ids on a bad input", async () => {
    expect((await run(["formula"])).out).toContain("sun.extraterrestrialDaily");
    expect(JSON.parse((await run(["formula", "--json"])).out).length).toBeGreaterThan(33);
    const missing = await run(["formula", "mains.current", '{"powerW":900}']);
    expect(missing).toMatchObject({ exit: 2, out: "" });
    expect(missing.err).toContain("volts");
    expect((await run(["formula", "mains.curent", "{}"])).err).toContain("mains.current");
    expect((await run(["formula", "mains.current", "{powerW:900}"])).err).toContain("line 1, column 2");
  });
});

describe("setfair verify", () => {
  const records = [1, 2, 3].reduce<ReturnType<typeof makeRecord>[]>((made, value) => {
    const input = {
      deviceId: "tablet",
      deviceTime: `2026-05-09T10:0${value}:00.000Z`,
      kind: "reading" as const,
      refs: { hireId: "h1" },
      chain: "out",
      content: { about: "fuel.gauge", value, unit: "share" },
    };
    made.push(makeRecord(input, made.at(-1) ?? null));
    return made;
  }, []);
  const receipts = records.reduce<Receipt[]>((made, record) => {
    made.push(makeReceipt(record, made.at(-1) ?? null, "2026-05-09T11:00:00.000Z"));
    return made;
  }, []);
  const file = (all: unknown) => ({ e: JSON.stringify(all) });

  it("holds for an export as it was made, and finds the head of a printed copy", async () => {
    expect((await run(["verify", "e"], file({ records, receipts }))).exit).toBe(0);
    const head = receipts[1]!.hash;
    expect((await run(["verify", "e", "--head", head], file({ records, receipts }))).exit).toBe(0);
    expect((await run(["verify", "e", "--head", "0".repeat(64)], file({ records, receipts }))).exit).toBe(1);
  });

  it("names the first record that was changed", async () => {
    const changed = records.map((record, at) =>
      at === 1 ? { ...record, content: { ...record.content, value: 9 } } : record,
    );
    const { exit, out } = await run(["verify", "e", "--json"], file({ records: changed, receipts }));
    expect(exit).toBe(1);
    expect(JSON.parse(out).depots[0].records.firstBroken).toEqual({ id: records[1]!.id, why: "recordHash" });
  });

  it("goes through an unpacked dispute pack: each file, each photograph that a record names, what was frozen", async () => {
    const jpeg = new Uint8Array([0xff, 0xd8, 0xff, 0xd9]);
    const named = sha256Hex(jpeg);
    const input = {
      deviceId: "t",
      deviceTime: "2026-05-09T10:00:00.000Z",
      refs: { hireId: "h1" },
      chain: "out",
    };
    const photograph = makeRecord(
      { ...input, kind: "photograph", content: { about: "view.rear", sha256: named } },
      null,
    );
    const receipt = makeReceipt(photograph, null, "2026-05-09T11:00:00.000Z");
    const frozen = [{ room: "settlement", document: { total: 5 }, hash: hashJson({ total: 5 }) }];
    const pack = {
      "p/manifest.json": JSON.stringify({ files: [{ path: `photographs/${named}.jpg`, sha256: named }] }),
      "p/records.json": JSON.stringify({ records: [photograph], receipts: [receipt] }),
      "p/settlement.json": JSON.stringify({ frozen }),
      [`p/photographs/${named}.jpg`]: jpeg,
    };
    const verify = async (files: Readonly<Record<string, string | Uint8Array>>) => {
      const { exit, out } = await run(["verify", "p/", "--json", "--head", receipt.hash], files);
      return { exit, pack: JSON.parse(out).pack };
    };
    expect(await verify(pack)).toMatchObject({
      exit: 0,
      pack: { photographs: 1, absent: [], frozen: { held: 1 } },
    });
    const other = { ...pack, [`p/photographs/${named}.jpg`]: new Uint8Array([1]) };
    expect(await verify(other)).toMatchObject({ exit: 1, pack: { changed: [`photographs/${named}.jpg`] } });
    const { [`p/photographs/${named}.jpg`]: _taken, ...without } = pack;
    expect(await verify(without)).toMatchObject({ exit: 1, pack: { absent: [named] } });
    const cheaper = {
      ...pack,
      "p/settlement.json": JSON.stringify({ frozen: [{ ...frozen[0], document: { total: 4 } }] }),
    };
    expect(await verify(cheaper)).toMatchObject({ exit: 1, pack: { frozen: { changed: ["settlement"] } } });
    const listed = (...files: readonly { path: string; sha256: string }[]) =>
      JSON.stringify({ files, photographsRemoved: [named, "e".repeat(64)].map(removed) });
    const removed = (sha256: string) => ({ sha256, at: "2027-01-01T00:00:00Z", under: "erasure" });
    const settlement = { path: "settlement.json", sha256: sha256Hex(Buffer.from(pack["p/settlement.json"])) };
    // of what was removed only that counts which a record names
    expect(await verify({ ...without, "p/manifest.json": listed(settlement) })).toMatchObject({
      exit: 0,
      pack: { changed: [], absent: [named], removed: [{ sha256: named }] },
    });
    const rewritten = { ...without, "p/manifest.json": listed({ ...settlement, sha256: "f".repeat(64) }) };
    expect(await verify(rewritten)).toMatchObject({ exit: 1, pack: { changed: ["settlement.json"] } });
    const stray = new Uint8Array([0xff, 0xd8, 1]);
    const path = `photographs/${sha256Hex(stray)}.jpg`;
    const more = {
      ...pack,
      "p/manifest.json": listed({ path, sha256: sha256Hex(stray) }),
      [`p/${path}`]: stray,
    };
    expect(await verify(more)).toMatchObject({ exit: 1, pack: { unnamed: [path], photographs: 0 } });
    const away = {
      ...pack,
      "p/manifest.json": JSON.stringify({ files: [{ path: "../x.jpg", sha256: named }] }),
    };
    expect((await run(["verify", "p/"], away)).exit).toBe(2);
  });

  it("refuses a folder without records, and makes nothing there", async () => {
    expect(await run(["verify", "elsewhere/"])).toMatchObject({ exit: 2, out: "" });
  });

  it("refuses a file that is no export, naming the field", async () => {
    const { exit, err } = await run(["verify", "e"], file({ records: [] }));
    expect(exit).toBe(2);
    expect(err).toContain("receipts");
  });
});

describe("setfair password", () => {
  it("lets the last manager back in, and says where there is nobody or nothing", async () => {
    const folder = mkdtempSync(join(tmpdir(), "setfair-password-"));
    expect((await run(["password"])).err).toContain("sign in with");
    expect(await run(["password", "ines", "--data", folder])).toMatchObject({ exit: 2, out: "" });
    const database = await openDatabase({ dataFolder: folder });
    const passwordHash = await hashPassword("a forgotten password");
    const { scope, accountId } = await database.system.createFirm({
      firm: { name: "Invented" },
      depot: { name: "Yard", timeZone: "Europe/London", document: {} },
      terms: [],
      manager: { login: "ines", name: "Ines Field", passwordHash },
    });
    await database.storeFor(scope).accounts.update(accountId, { disabled: true });
    await database.close();
    expect(await run(["password", "nobody", "--data", folder])).toMatchObject({ exit: 1, out: "" });
    const { exit, out } = await run(["password", "INES", "--data", folder]);
    expect(exit).toBe(0);
    const password = /else: (\S+)/.exec(out)?.[1] ?? "";
    expect(password.length).toBeGreaterThanOrEqual(12);
    const after = await openDatabase({ dataFolder: folder });
    const account = await after.system.accountByLogin("ines");
    await after.close();
    rmSync(folder, { recursive: true });
    expect(account?.disabledAt).toBeNull();
    expect(account?.passwordHash).not.toBe(passwordHash);
  });
});

describe("setfair backup, restore and move", () => {
  it("ask for what they need, in words, and write nothing", async () => {
    expect((await run(["backup"])).err).toContain("the folder into which");
    expect((await run(["restore"])).err).toContain("the folder of the backup");
    expect((await run(["move"])).err).toContain("--to");
    expect((await run(["move", "--to", "mysql://x"])).err).toContain("postgres://");
    const none = ["--data", "/nonexistent/setfair"];
    expect(await run(["backup", "/nonexistent/b", ...none])).toMatchObject({ exit: 2, out: "" });
    expect((await run(["move", "--to", "postgres://127.0.0.1:1/x", ...none])).err).toContain(
      "No Setfair data",
    );
    expect((await run(["restore", "/nonexistent/b", ...none])).err).toContain("list of files");
    const list = { e: '{"kind":"record"}\n' };
    expect((await run(["restore", "b", "--erasures", "e", ...none], list)).err).toContain("e, line 1");
  });
});

describe("setfair schema", () => {
  it("publishes input and output of every room's verb", async () => {
    for (const verb of ["trip", "load", "briefing", "settle"]) {
      const { exit, out } = await run(["schema", verb]);
      expect(exit, verb).toBe(0);
      expect(JSON.parse(out), verb).toMatchObject({ input: { type: "object" }, output: { type: "object" } });
    }
    expect((await run(["schema", "verify"])).exit).toBe(2);
  });
});
