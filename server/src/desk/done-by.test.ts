import { sameEveryDay } from "@setfair/engine";
import { expect, it } from "vitest";
import { doneBy } from "./done-by.ts";

const everyDay = sameEveryDay({ opens: "09:00", closes: "17:30" });
const hours = { ...everyDay, week: { ...everyDay.week, sunday: null } };

it("work that fits before the depot closes is done the same day", () => {
  expect(doneBy("2026-11-30T10:15", 240, hours)).toBe("2026-11-30T14:15");
  expect(doneBy("2026-11-30T13:30", 240, hours)).toBe("2026-11-30T17:30");
});

it("nobody turns a vehicle round at night: what is left is done when the depot opens again", () => {
  expect(doneBy("2026-11-30T21:39", 240, hours)).toBe("2026-12-01T13:00");
  expect(doneBy("2026-11-30T16:30", 240, hours)).toBe("2026-12-01T12:00");
  expect(doneBy("2026-11-30T06:00", 60, hours)).toBe("2026-11-30T10:00");
});

it("a day on which it is closed is passed over", () => {
  // Saturday evening to Monday
  expect(doneBy("2026-12-05T17:00", 60, hours)).toBe("2026-12-07T09:30");
  const closed = [{ from: "2026-12-07", to: "2026-12-08", name: "stocktaking" }];
  expect(doneBy("2026-12-05T17:00", 60, { ...hours, closed })).toBe("2026-12-09T09:30");
});

it("a depot that is open day and night, or never, works through", () => {
  expect(doneBy("2026-11-30T21:39", 240, sameEveryDay({ opens: "00:00", closes: "24:00" }))).toBe(
    "2026-12-01T01:39",
  );
  const never = Object.fromEntries(Object.keys(everyDay.week).map((day) => [day, null]));
  expect(doneBy("2026-11-30T21:39", 240, { week: never, closed: [] } as never)).toBe("2026-12-01T01:39");
});
