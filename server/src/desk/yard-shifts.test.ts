import { type OpeningHours, sameEveryDay } from "@setfair/engine";
import { describe, expect, it } from "vitest";
import { beginsFrom, minutesFrom, startsOf } from "./yard-shifts.ts";

const NINE_TO_SIX = sameEveryDay({ opens: "09:00", closes: "18:00" });
/** closed on Sunday, 8 November */
const NO_SUNDAY: OpeningHours = { week: { ...NINE_TO_SIX.week, sunday: null }, closed: [] };
const FRIDAY = "2026-11-06";

/** When two jobs of an hour, one after the other, begin; the second is due at a civil time where one is given. */
function begin(hours: OpeningHours, now: string, due?: string): (string | null)[] {
  const today = now.slice(0, 10);
  const job = (id: string, after: string[]) => ({
    id,
    minutes: 60,
    needs: { cleaner: 1 },
    after,
    notBefore: beginsFrom(now),
    weight: 1,
    ...(due === undefined ? {} : { dueBy: minutesFrom(today, due) }),
  });
  const starts = startsOf([job("wash", []), job("dry", ["wash"])], { cleaner: 1 }, hours, now);
  return ["wash", "dry"].map((id) => starts.get(id) ?? null);
}

describe("the hours in which the yard works", () => {
  it("jobs begin now while the depot is open, told in fives", () => {
    expect(begin(NINE_TO_SIX, `${FRIDAY}T10:02`)).toEqual([`${FRIDAY}T10:05`, `${FRIDAY}T11:05`]);
  });

  it("nobody begins before it opens, nor in the night", () => {
    expect(begin(NINE_TO_SIX, `${FRIDAY}T05:30`)).toEqual([`${FRIDAY}T09:00`, `${FRIDAY}T10:00`]);
    expect(begin(NINE_TO_SIX, `${FRIDAY}T23:05`)).toEqual(["2026-11-07T09:00", "2026-11-07T10:00"]);
  });

  it("what does not end before closing waits for the next open day", () => {
    expect(begin(NO_SUNDAY, "2026-11-07T16:30")).toEqual(["2026-11-07T16:30", "2026-11-09T09:00"]);
  });

  it("people stay where a vehicle would be late otherwise, at most three hours", () => {
    expect(begin(NINE_TO_SIX, `${FRIDAY}T17:00`, "2026-11-07T09:00")).toEqual([
      `${FRIDAY}T17:00`,
      `${FRIDAY}T18:00`,
    ]);
    expect(begin(NINE_TO_SIX, `${FRIDAY}T20:30`, "2026-11-07T09:00")).toEqual([
      "2026-11-07T09:00",
      "2026-11-07T10:00",
    ]);
  });

  it("no times where it is closed for a fortnight", () => {
    const closed = [{ from: "2026-11-01", to: "2026-12-31", name: "Winter" }];
    expect(begin({ ...NINE_TO_SIX, closed }, `${FRIDAY}T10:00`)).toEqual([null, null]);
  });

  it("nobody stays beyond midnight", () => {
    const late = sameEveryDay({ opens: "09:00", closes: "24:00" });
    expect(begin(late, `${FRIDAY}T22:30`, `${FRIDAY}T23:00`)).toEqual([
      `${FRIDAY}T22:30`,
      "2026-11-07T09:00",
    ]);
  });
});
