import { expect, test } from "vitest";
import { withClass, withoutClass } from "./price-classes.ts";

const SEASONS = [
  { id: "high", spans: [], nightPence: { standard: 11_000 }, minimumNights: 3 },
  { id: "low", spans: [], nightPence: { standard: 7000 }, minimumNights: 3 },
];

test("a new class has a price in every season, and goes as it came", () => {
  const more = withClass(SEASONS, "family");
  expect(more.map(({ nightPence }) => nightPence.family)).toEqual([11_000, 7000]);
  expect(withoutClass(more, "family")).toEqual(SEASONS);
});

test("a class that is there keeps its price", () => {
  expect(withClass(SEASONS, "standard")).toEqual(SEASONS);
});
