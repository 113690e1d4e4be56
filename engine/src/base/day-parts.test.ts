import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { datesFrom, partsOf } from "./day-parts.ts";
import { Temporal } from "./time.ts";

describe("a civil date taken apart", () => {
  const dates = fc
    .integer({ min: 0, max: 130_000 })
    .map((days) => Temporal.PlainDate.from("1890-01-01").add({ days }));

  it("agrees with the calendar library on any day of 350 years", () => {
    fc.assert(
      fc.property(dates, (date) => {
        const { year, month, day, dayOfYear, inLeapYear } = date;
        expect(partsOf(date.toString())).toEqual({ year, month, day, dayOfYear, inLeapYear });
      }),
      { numRuns: 1000 },
    );
  });

  it("days one after another are those of the calendar library, over the ends of months, years and Februaries", () => {
    fc.assert(
      fc.property(dates, fc.integer({ min: 0, max: 130 }), (date, count) => {
        const expected = Array.from({ length: count }, (_, days) => date.add({ days }).toString());
        expect(datesFrom(date.toString(), count)).toEqual(expected);
      }),
    );
    expect(datesFrom("2028-02-28", 3)).toEqual(["2028-02-28", "2028-02-29", "2028-03-01"]);
  });

  it.each([
    "2026-02-29",
    "2026-13-01",
    "2026-00-10",
    "2026-04-31",
    "2026-04-00",
    "26-04-01",
    "2026-04-01T10:00",
    "",
  ])("refuses %j, which is no day", (date) => {
    expect(() => partsOf(date)).toThrow(RangeError);
  });
});
