import { expect, test } from "vitest";
import * as z from "zod/mini";
import { BadInput, parseWith } from "./bad-input.ts";

const schema = z.strictObject({
  name: z.string(),
  axles: z.array(z.strictObject({ maxKg: z.number().check(z.minimum(1)) })),
});
const problemsOf = (value: unknown, under?: string) => {
  try {
    parseWith(schema, value, under);
  } catch (error) {
    if (error instanceof BadInput)
      return { paths: error.problems.map(({ path }) => path), text: error.message };
    throw error;
  }
  return null;
};

test("every field that is wrong is named from the outside in, below what it was read from", () => {
  expect(problemsOf({ name: "x", axles: [{ maxKg: 1 }] })).toBeNull();
  const bad = { name: 7, axles: [{ maxKg: 1 }, { maxKg: 0 }] };
  expect(problemsOf(bad)?.paths).toEqual(["name", "axles.1.maxKg"]);
  expect(problemsOf(bad, "masses")?.paths).toEqual(["masses.name", "masses.axles.1.maxKg"]);
  expect(problemsOf(bad, "masses")?.text).toMatch(/^masses\.name: .*; masses\.axles\.1\.maxKg: /);
});

test("an input that is wrong as a whole names no field, or what it was read from", () => {
  expect(problemsOf("nothing of the kind")?.paths).toEqual([""]);
  expect(problemsOf("nothing of the kind")?.text).not.toMatch(/^:/);
  expect(problemsOf("nothing of the kind", "masses")?.paths).toEqual(["masses"]);
});
