import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCommand } from "../run-command.ts";
import { tripOutputSchema } from "../schemas/trip.ts";
import { testIo } from "../test-io.ts";

const example = readFileSync(join(import.meta.dirname, "../../../examples/trip.input.json"), "utf8");

async function trip(...flags: string[]) {
  const { io, written } = testIo({ "trip.json": example });
  const exit = await runCommand(["trip", "trip.json", "--runs", "20", ...flags], io);
  return { exit, ...written };
}

describe("setfair trip", () => {
  it("takes runs and seed from its flags, and another seed lives other trips", async () => {
    const [first, again, other] = [await trip(), await trip(), await trip("--seed", "7")];
    expect(first.exit).toBe(0);
    expect(again.out).toBe(first.out);
    expect(first.out).toContain("(20 trips lived, seed ");
    expect(other.out).toContain("seed 7");
    expect(other.out).not.toBe(first.out);
  });

  it("with --audit says for each store what went in and out, the change and what is left over", async () => {
    const { out } = await trip("--audit");
    const lines = out.split("\n");
    const from = lines.findIndex((line) => line.startsWith("Store") && line.includes("Change"));
    const rows = lines.slice(from + 2, lines.indexOf("", from));
    expect(rows.length).toBeGreaterThan(7);
    for (const row of rows) expect(Number(row.split(/\s{2,}/).at(-1)), row).toBeLessThan(1e-9);
    expect((await trip()).out).not.toContain("Left over");
  });

  it("with --json gives the published shape, with posts, ranges and the audit", async () => {
    const { out } = await trip("--audit", "--json");
    const { result } = tripOutputSchema.parse(JSON.parse(out));
    expect(result.runs).toBe(20);
    expect(result.posts!.map(({ limit }) => limit.value)).toEqual([10, 16]);
    expect(result.audit!.every(({ residual }) => residual < 1e-9)).toBe(true);
    expect(result.ranges!.map(({ store }) => store)).toEqual(["fuel", "def"]);
  });

  it("says in the table what a post can do, where the weather comes from, and the caution", async () => {
    const { out } = await trip();
    expect(out).toMatch(/Village pitch +10 A .* may trip it\n +the fridge, 135.W; the heater,\n +1,800.W\n/);
    expect(out).toMatch(/nearest station Nairn, 35.km away/);
    expect(out).toContain("Mains can kill");
  });
});
