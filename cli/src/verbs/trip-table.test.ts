import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { runCommand } from "../run-command.ts";
import { testIo } from "../test-io.ts";

const EXAMPLES = new URL("../../../examples/", import.meta.url);
const read = (name: string) => JSON.parse(readFileSync(new URL(name, EXAMPLES), "utf8"));
const COLUMNS = 80;

/** Lines of tables: from the head above a rule to the next empty line. */
function tableLines(text: string): string[] {
  return text.split("\n\n").flatMap((block) => {
    const lines = block.split("\n");
    const rule = lines.findIndex((line) => line.startsWith("──"));
    return rule < 1 ? [] : lines.slice(rule - 1);
  });
}

async function tableOf(input: unknown): Promise<string> {
  const { io, written } = testIo({ input: JSON.stringify(input) });
  await runCommand(["trip", "input", "--audit", "--runs", "20"], io);
  return written.out;
}

describe("the table of a trip", () => {
  for (const name of readdirSync(new URL("vehicles/", EXAMPLES)))
    it(`is read at ${COLUMNS} columns for ${name}`, async () => {
      const input = { ...read("trip.input.json"), vehicle: read(`vehicles/${name}`) };
      const lines = tableLines(await tableOf(input));
      expect(lines.length).toBeGreaterThan(20);
      expect(lines.filter((line) => line.length > COLUMNS)).toEqual([]);
    });
});
