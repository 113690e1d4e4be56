import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { formula } from "./book.ts";

interface Line {
  readonly formula: string;
  readonly args: unknown;
  readonly part?: string;
  readonly scale?: number;
  readonly expected: number | string | { readonly formula: string; readonly args: unknown };
  readonly tolerance: number;
}
interface Row {
  readonly id: string;
  readonly grade: string;
  readonly source: string;
  readonly how: string;
  readonly explained?: string;
  readonly lines: readonly Line[];
}
interface Topic {
  readonly topic: string;
  readonly rows: readonly Row[];
}

const FOLDER = new URL("../../published/", import.meta.url);
const topics = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".json") && name !== "not-covered.json")
  .map((name) => JSON.parse(readFileSync(new URL(name, FOLDER), "utf8")) as Topic);
const rows = topics.flatMap((topic) => topic.rows);

/** Follows a path such as `posteriors.2` into a result. */
function part(value: unknown, path: string | undefined): unknown {
  if (path === undefined) return value;
  return path.split(".").reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], value);
}

/** Distance from the expected value: seconds for times, 0 or infinity for other texts. */
function distance(value: unknown, expected: number | string): number {
  if (typeof expected === "number") return Math.abs(Number(value) - expected);
  if (/^\d{4}-/.test(expected)) return Math.abs(Date.parse(String(value)) - Date.parse(expected)) / 1000;
  return value === expected ? 0 : Number.POSITIVE_INFINITY;
}

function lineProblem(row: Row, line: Line): string | undefined {
  const raw = part(formula(line.formula, line.args).value, line.part);
  const value = line.scale === undefined ? raw : Number(raw) * line.scale;
  const expected =
    typeof line.expected === "object"
      ? Number(formula(line.expected.formula, line.expected.args).value)
      : line.expected;
  // a hair for binary fractions where the tolerance is "exact"
  const hair = typeof expected === "number" ? 1e-12 * Math.abs(expected) : 0;
  if (distance(value, expected) <= line.tolerance + hair) return undefined;
  return `${row.id} ${line.formula} ${JSON.stringify(line.args)} ${line.part ?? ""}: ${value}, published ${expected} ± ${line.tolerance} (${row.source})`;
}

describe("values from outside the project", () => {
  it("are all here: the count of rows and lines does not change in silence", () => {
    expect({ rows: rows.length, lines: rows.flatMap((row) => row.lines).length }).toEqual({
      rows: 112,
      lines: 372,
    });
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    const left = JSON.parse(readFileSync(new URL("not-covered.json", FOLDER), "utf8"));
    expect(rows.filter(({ id }) => id in left.rows)).toEqual([]);
  });

  it("carry a source and a grade, and say when they rest on memory or on our own computing", () => {
    for (const row of rows) {
      expect(row.source, row.id).not.toBe("");
      expect(row.grade, row.id).toMatch(/^[ABCM](\/[ABCM])?$/);
    }
  });

  for (const { topic, rows: some } of topics) {
    it(`are met for ${topic}`, () => {
      const problems = some.flatMap((row) =>
        row.explained === undefined ? row.lines.flatMap((line) => lineProblem(row, line) ?? []) : [],
      );
      expect(problems).toEqual([]);
    });
  }
});
