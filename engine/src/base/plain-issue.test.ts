import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { parseWith } from "./bad-input.ts";

/** What is said of a value that does not fit. */
function said(schema: z.ZodMiniType, value: unknown): string {
  try {
    parseWith(schema, value);
  } catch (error) {
    return (error as Error).message;
  }
  throw new Error("it fits");
}

describe("what was expected is said in plain words", () => {
  it.each([
    ["a text that is too short", z.string().check(z.minLength(12)), "short", "at least 12 characters"],
    ["an empty text", z.string().check(z.minLength(1)), "", "something has to stand here"],
    ["a text that is too long", z.string().check(z.maxLength(2)), "long", "no more than 2 characters"],
    ["a number that is too small", z.number().check(z.gte(34)), 1, "at least 34"],
    ["a number at an open edge", z.number().check(z.gt(0)), 0, "more than 0"],
    ["a number that is too large", z.number().check(z.lte(20_000)), 30_000, "at most 20,000"],
    ["nothing where a number is", z.number(), undefined, "this is needed: a number"],
    ["a text where a number is", z.number(), "5", "a number, not a text"],
    ["half of a whole number", z.int(), 1.5, "a whole number, not a number"],
    ["a mail address without an at", z.email(), "here", "a mail address such as name@example.org"],
    ["a day that does not exist", z.iso.date(), "2026-02-30", "a day that exists, as YYYY-MM-DD"],
    ["a word that is none of a few", z.enum(["B", "C1"]), "D", "one of: B, C1"],
    ["a list that is too short", z.array(z.string()).check(z.minLength(2)), ["a"], "at least 2 in the list"],
    ["a field that nobody knows", z.strictObject({}), { weight: 1 }, "no field of this name: weight"],
  ])("%s", (_, schema, value, text) => {
    expect(said(schema, value)).toBe(text);
  });

  it("a schema's own words come first, and no pattern is ever shown", () => {
    const own = z.string().check(z.regex(/^\d$/, "expected one digit"));
    expect(said(own, "x")).toBe("expected one digit");
    expect(said(z.string().check(z.regex(/^\d$/)), "x")).not.toContain("\\d");
  });
});
