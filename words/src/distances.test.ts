import fc from "fast-check";
import { expect, test } from "vitest";
import { keptOf, timesTyped } from "./distances.ts";
import { createWords } from "./english.ts";

const miles = createWords("en-GB", undefined, undefined, () => "mi");

test("a depot that reads miles sees distances and prices for each in miles, all else as before", () => {
  expect(miles.figureText({ value: 42_000, unit: "km" })).toBe("26,098 miles");
  expect(miles.figureText({ value: 1.609344, unit: "km" })).toBe("1 mile");
  expect(miles.figureText({ value: 20, unit: "pence/km" })).toBe("£0.32 a mile");
  expect(miles.figureText({ value: 12, unit: "kg" })).toBe("12 kg");
  expect(createWords().figureText({ value: 42_000, unit: "km" })).toBe("42,000 km");
  expect(miles.t("upkeep.km", { distance: miles.figureText({ value: 16_093.44, unit: "km" }) })).toBe(
    "at 10,000 miles",
  );
});

test("what was typed in miles is kept in km and comes back as it was typed", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 600_000 }), (typed) => {
      const times = timesTyped("km", "mi");
      const kept = keptOf(typed, times);
      expect(miles.figureText({ value: kept, unit: "km" }).replace(/[^0-9.]/g, "")).toBe(String(typed));
      expect(kept).toBeCloseTo(typed * 1.609344, 5);
    }),
  );
  // 15 p a mile over 100 miles is 1,500 p, to the penny
  const penceKept = keptOf(15, timesTyped("pence/km", "mi"));
  expect(Math.round(penceKept * keptOf(100, timesTyped("km", "mi")))).toBe(1500);
  expect(timesTyped("kg", "mi")).toBe(1);
});
