import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../base/years.ts";
import {
  checkOpening,
  hoursOn,
  isOpenAt,
  type OpeningHours,
  sameEveryDay,
  WEEKDAYS,
  weekdayOf,
} from "./opening-hours.ts";

const day = { opens: "08:30", closes: "17:30" };
const hours: OpeningHours = {
  week: { ...sameEveryDay(day).week, saturday: { opens: "09:00", closes: "12:30" }, sunday: null },
  closed: [{ from: "2026-12-24", to: "2026-12-26", name: "Christmas" }],
};

describe("when the depot is open", () => {
  it("knows the days of the week, Monday first", () => {
    // 2026-11-30 is a Monday
    expect([0, 1, 5, 6, 7].map((k) => weekdayOf(addDays("2026-11-30", k)))).toEqual([
      "monday",
      "tuesday",
      "saturday",
      "sunday",
      "monday",
    ]);
  });

  it("counts the days of the week through leap years as a calendar does", () => {
    for (let k = -40_000; k < 40_000; k += 13) {
      const date = addDays("2026-11-30", k);
      const sundayFirst = new Date(`${date}T00:00:00Z`).getUTCDay();
      expect(weekdayOf(date)).toBe(WEEKDAYS[(sundayFirst + 6) % 7]);
    }
  });

  it("goes by the hours of that weekday; opening and closing time themselves count", () => {
    const open = (local: string) => isOpenAt(hours, local);
    expect(["2026-12-04T08:30", "2026-12-04T17:30", "2026-12-05T12:30"].map(open)).toEqual([
      true,
      true,
      true,
    ]);
    expect(["2026-12-04T08:29", "2026-12-04T17:31", "2026-12-05T12:31"].map(open)).toEqual([
      false,
      false,
      false,
    ]);
    expect(open("2026-12-06T11:00")).toBe(false);
  });

  it("a closed day is closed whatever the week says, first and last day included", () => {
    expect(["2026-12-23", "2026-12-24", "2026-12-26", "2026-12-28"].map((on) => hoursOn(hours, on))).toEqual([
      day,
      null,
      null,
      day,
    ]);
  });

  it("the midnight that ends a day belongs to it where it closes at 24:00, and to the next day where not", () => {
    const late: OpeningHours = {
      week: { ...hours.week, friday: { opens: "10:00", closes: "24:00" }, saturday: null },
      closed: [],
    };
    expect(isOpenAt(late, "2026-12-04T23:59")).toBe(true);
    expect(isOpenAt(late, "2026-12-05T00:00")).toBe(true);
    expect(isOpenAt(late, "2026-12-05T00:01")).toBe(false);
    expect(isOpenAt(hours, "2026-12-05T00:00")).toBe(false);
    // on a closed Friday nobody stays until midnight
    expect(
      isOpenAt({ ...late, closed: [{ from: "2026-12-04", to: "2026-12-04", name: "" }] }, "2026-12-05T00:00"),
    ).toBe(false);
    const always = sameEveryDay({ opens: "00:00", closes: "24:00" });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), fc.integer({ min: 0, max: 800 }), (minute, days) => {
        const clock = `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
        expect(isOpenAt(always, `${addDays("2026-01-01", days)}T${clock}`)).toBe(true);
      }),
    );
  });

  it("clock changes move nothing: the night of the 29 March and the 25 October 2026 goes by the clock on the wall", () => {
    const nights = sameEveryDay({ opens: "01:30", closes: "02:30" });
    // in spring 01:00 to 02:00 is skipped in the United Kingdom, in autumn it comes twice
    for (const date of ["2026-03-29", "2026-10-25"]) {
      expect(isOpenAt(nights, `${date}T02:15`)).toBe(true);
      expect(isOpenAt(nights, `${date}T01:29`)).toBe(false);
      expect(isOpenAt(nights, `${date}T02:31`)).toBe(false);
      expect(weekdayOf(date)).toBe("sunday");
    }
    expect(checkOpening({ hours, from: "2026-10-24T11:00", to: "2026-10-25T10:00" })).toMatchObject([
      { code: "diary.closedBack", facts: { why: "weekday", weekday: "sunday" } },
    ]);
  });

  it("asks why where keys would move out of hours, for that very time, and never refuses", () => {
    expect(checkOpening({ hours, from: "2026-12-04T14:00", to: "2026-12-11T10:00" })).toEqual([]);
    const found = checkOpening({ hours, from: "2026-12-05T14:00", to: "2026-12-25T10:00" });
    expect(found).toMatchObject([
      {
        code: "diary.closedOut",
        gate: "diary",
        severity: "refer",
        basis: "policy",
        about: "2026-12-05T14:00",
        facts: { why: "hours", opens: "09:00", closes: "12:30" },
      },
      { code: "diary.closedBack", about: "2026-12-25T10:00", facts: { why: "holiday", name: "Christmas" } },
    ]);
  });
});
