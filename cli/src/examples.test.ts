import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { listFormulas } from "@setfair/engine";
import { describe, expect, it } from "vitest";
import { runCommand } from "./run-command.ts";
import { testIo } from "./test-io.ts";
import { ROOMS } from "./verbs/schema.ts";

const FOLDER = new URL("../../examples/", import.meta.url);
const read = (name: string) => readFileSync(new URL(name, FOLDER), "utf8");

/** Every place where two answers differ; numbers agree to 1e-9 relative. */
function differences(got: unknown, wanted: unknown, path = "$"): string[] {
  if (typeof got === "number" && typeof wanted === "number") {
    return Math.abs(got - wanted) <= 1e-9 * Math.max(1e-3, Math.abs(wanted))
      ? []
      : [`${path}: ${got}, example ${wanted}`];
  }
  if (typeof got !== "object" || typeof wanted !== "object" || got === null || wanted === null) {
    return got === wanted ? [] : [`${path}: ${JSON.stringify(got)}, example ${JSON.stringify(wanted)}`];
  }
  const keys = new Set([...Object.keys(got), ...Object.keys(wanted)]);
  // how long it took is another each time
  keys.delete("milliseconds");
  return [...keys].flatMap((key) =>
    differences(
      (got as Record<string, unknown>)[key],
      (wanted as Record<string, unknown>)[key],
      `${path}.${key}`,
    ),
  );
}

/** Ids of formulas that the figures of an answer cite. */
function citedFormulas(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  const own = "formula" in value && "basis" in value ? [String(value.formula)] : [];
  return [...own, ...Object.values(value).flatMap(citedFormulas)];
}

const names = readdirSync(FOLDER).flatMap((name) =>
  name.endsWith(".input.json") ? [name.replace(".input.json", "")] : [],
);

describe("the worked examples", () => {
  it("cover every verb whose JSON is published", () => {
    expect(Object.keys(ROOMS).filter((verb) => !names.includes(verb))).toEqual([]);
  });

  for (const name of names) {
    const verb = name.split("-")[0] as keyof typeof ROOMS;
    it(`${name} still gives its output, in the published shape`, async () => {
      const { io, written } = testIo({ input: read(`${name}.input.json`) });
      await runCommand([verb, "input", "--json"], io);
      const got = JSON.parse(written.out) as unknown;
      if (process.env.SETFAIR_WRITE_EXAMPLES === "1")
        writeFileSync(new URL(`${name}.output.json`, FOLDER), written.out);
      expect(differences(got, JSON.parse(read(`${name}.output.json`))).slice(0, 20)).toEqual([]);
      const shape = ROOMS[verb].output.safeParse(got);
      expect(shape.error?.issues ?? []).toEqual([]);
      const book = new Set(["-", ...listFormulas().map(({ id }) => id)]);
      expect(citedFormulas(got).filter((id) => !book.has(id))).toEqual([]);
    });

    it(`${name} reads well as a table`, async () => {
      const { io, written } = testIo({ input: read(`${name}.input.json`) });
      await runCommand([verb, "input"], io);
      expect(written.out.length).toBeGreaterThan(100);
      expect(written.out).not.toMatch(/undefined|NaN|\[object/);
    });
  }
});
