import { expect, test } from "vitest";
import type { HireRow } from "../store/types.ts";
import { momentOf, statementMoment, uselessAfter } from "./message-moments.ts";

const LONDON = {
  timeZone: "Europe/London",
  days: { preHire: 7, dayBefore: 1, returnReminder: 2, statement: 3 },
};
/** Out on 28 March 2026, the day before the clocks go forward, at 23:30 by the clock; back on 3 April. */
const hire = { from: "2026-03-28T23:30:00.000Z", to: "2026-04-03T09:00:00.000Z" } as HireRow;

test("messages before the keys count from the day on which they go out, the reminder from the day of the return", () => {
  expect(momentOf("preHire", hire, LONDON)).toBe("2026-03-21T09:00:00.000Z");
  expect(momentOf("dayBefore", hire, LONDON)).toBe("2026-03-27T09:00:00.000Z");
  // nine in the morning by the clock, which is an hour ahead by then
  expect(momentOf("returnReminder", hire, LONDON)).toBe("2026-04-01T08:00:00.000Z");
});

test("the day is the depot's, not that of Greenwich", () => {
  const athens = { ...LONDON, timeZone: "Europe/Athens" };
  // half past one on the 29th there
  expect(momentOf("dayBefore", hire, athens)).toBe("2026-03-28T07:00:00.000Z");
});

test("a statement goes at once, or on a morning so many days after", () => {
  const at = "2026-03-28T16:12:00.000Z";
  expect(statementMoment(at, { ...LONDON, days: { ...LONDON.days, statement: 0 } })).toBe(at);
  expect(statementMoment(at, LONDON)).toBe("2026-03-31T08:00:00.000Z");
  // half past midnight there, on the day after
  expect(statementMoment("2026-03-30T23:30:00.000Z", LONDON)).toBe("2026-04-03T08:00:00.000Z");
});

test("what is about the keys is of no use once they are out, a reminder once they are back; the rest always is", () => {
  expect(uselessAfter("preHire", hire)).toBe(hire.from);
  expect(uselessAfter("dayBefore", hire)).toBe(hire.from);
  expect(uselessAfter("returnReminder", hire)).toBe(hire.to);
  expect([uselessAfter("booking", hire), uselessAfter("statement", hire)]).toEqual([null, null]);
});
