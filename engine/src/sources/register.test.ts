import { expect, it } from "vitest";
import { describeSource, isSource, listSources, source } from "./register.ts";

it("an unknown source throws, since whoever cites it has a bug", () => {
  expect(() => source("no-such")).toThrow(/no-such/);
  expect(isSource("no-such")).toBe(false);
});

it("a source from memory says so in its line", () => {
  expect(describeSource("meeus-1998")).toContain("from memory");
  expect(describeSource("fao-56")).toContain("56");
});

it("every source has a title", () => {
  for (const [id, { title }] of listSources()) expect(title.length, id).toBeGreaterThan(5);
});
