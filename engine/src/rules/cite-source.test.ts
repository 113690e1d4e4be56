import { expect, it } from "vitest";
import { citeSource } from "./cite-source.ts";

it("cites a rule with its source and the day it was read", () => {
  expect(citeSource("licence.gb.checkCodeDays")).toMatch(/GOV\.UK news.*\(read 2026-11-25\)$/);
  expect(citeSource("vat.gb.standardPercent")).toMatch(/from memory, noted 2026-11-25/);
});

it("cites a published source of the register, and leaves the depot's own papers as they are named", () => {
  expect(citeSource("eu-1230-2012")).toMatch(/1230\/2012/);
  expect(citeSource("terms-demo-2026")).toBe("terms-demo-2026");
});
