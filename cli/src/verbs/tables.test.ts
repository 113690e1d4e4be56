import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { runCommand } from "../run-command.ts";
import { writeTable } from "../table.ts";
import { testIo } from "../test-io.ts";

/** Lines of the table of a worked example, each as its cells. */
async function cellsOf(verb: string): Promise<readonly (readonly string[])[]> {
  const input = readFileSync(new URL(`../../../examples/${verb}.input.json`, import.meta.url), "utf8");
  const { io, written } = testIo({ input });
  await runCommand([verb, "input"], io);
  return written.out.split("\n").map((line) => line.trim().split(/ {2,}/));
}

it("the table of setfair yard gives hours from the opening, and chances out of 100", async () => {
  const cells = await cellsOf("yard");
  expect(cells).toContainEqual(["van-1 wash", "0:45", "1:25", "–", "–"]);
  expect(cells).toContainEqual(["van-2 water pump", "1:00", "1:50", "–", "100 of 100"]);
  expect(cells).toContainEqual(["All done 5:10 after opening (not before 5:10 by any order)."]);
});

it("the tables of setfair settle give each line with its evidence, and every sum under its own name", async () => {
  const cells = await cellsOf("settle");
  expect(cells).toContainEqual(["Damage: Entrance door", "–", "£90", "disputed", "1 record, 1 photograph"]);
  expect(cells).toContainEqual(["Missing: Hook-up leads", "1", "£36", "2 records, no photograph"]);
  for (const sum of [
    ["To pay", "£189.36"],
    ["Of it disputed", "£90"],
    ["Kept of it", "£99.36"],
    ["Goes back", "£810.64"],
    ["Deposit goes back by", "Fri 22 May 2026"],
  ])
    expect(cells).toContainEqual(sum);
});

it("the table of setfair allocate says who moves from where, and what is proven", async () => {
  const cells = await cellsOf("allocate");
  expect(cells).toContainEqual(["h103", "van-1", "van-2"]);
  expect(cells).toContainEqual(["h104", "overcab-1", "–"]);
  expect(cells).toContainEqual(["Proven: nothing better is possible."]);
});

it("the tables of setfair diagnose give chances in per cent and the next check first", async () => {
  const cells = await cellsOf("diagnose");
  expect(cells).toContainEqual(["The battery is too low to start it", "35 %"]);
  const checks = cells.slice(cells.findIndex(([first]) => first === "Check") + 2);
  expect(checks[0]?.slice(-3)).toEqual(["1 min", "32 %", "100 %"]);
  // a long check goes on in the next line, so that figures stay in sight
  expect(Math.max(...checks.slice(0, 8).map((line) => line.join("  ").length))).toBeLessThanOrEqual(80);
});

it("columns line up under their heads and rules, numbers to the right, also beside a very long text", () => {
  const [head, rule, first, second] = writeTable(
    ["What", "kg"],
    [
      ["x".repeat(70), "5"],
      ["y", "1,500"],
    ],
    { right: [1] },
  ).split("\n");
  expect(head).toBe(`${"What".padEnd(70)}     kg`);
  expect(rule).toBe(`${"─".repeat(60).padEnd(70)}  ─────`);
  expect(first).toBe(`${"x".repeat(70)}      5`);
  expect(second).toBe(`${"y".padEnd(70)}  1,500`);
});
