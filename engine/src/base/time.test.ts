import { expect, test } from "vitest";
import { hoursBetween, toInstant } from "./time.ts";

test("the day on which the clocks go forward has 23 hours and the one on which they go back 25", () => {
  // dates: United Kingdom, last Sundays of March and October 2026, 01:00 UTC (nidirect.gov.uk)
  expect(hoursBetween("2026-03-29T00:00", "2026-03-30T00:00", "Europe/London")).toBe(23);
  expect(hoursBetween("2026-10-25T00:00", "2026-10-26T00:00", "Europe/London")).toBe(25);
});

test("a time that the clock change skips is refused, not shifted", () => {
  expect(() => toInstant("2026-03-29T01:30", "Europe/London")).toThrow(RangeError);
  expect(toInstant("2026-03-29T02:00", "Europe/London")).toBe("2026-03-29T01:00:00Z");
});
