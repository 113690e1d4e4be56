import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toInstant } from "../../base/time.ts";
import { nearestShifts, overlaps } from "./nearest-shift.ts";
import { isOpenAt, type OpeningHours, sameEveryDay } from "./opening-hours.ts";

const ZONE = "Europe/London";
const at = (local: string) => Date.parse(toInstant(local, ZONE));
const span = (from: string, to: string) => ({ start: at(from), end: at(to) });
const HOUR_MS = 3_600_000;
const week = { ...sameEveryDay({ opens: "09:00", closes: "17:00" }).week, sunday: null };
const hours: OpeningHours = { week, closed: [{ from: "2026-07-13", to: "2026-07-13", name: "" }] };
const isOpen = (local: string) => isOpenAt(hours, local);

describe("another time for a hire", () => {
  const asked = span("2026-07-07T12:00", "2026-07-08T12:00");
  // held from Monday noon to Saturday 16:00; free of turnaround at 20:00
  const taken = [span("2026-07-06T12:00", "2026-07-11T16:00")];
  const shifts = { asked, taken, turnaroundMs: 4 * HOUR_MS, timeZone: ZONE };

  it("is given at the hour at which the vehicle is free where no hours are known", () => {
    expect(nearestShifts(shifts).map(({ from }) => from)).toEqual(["2026-07-05T08:00", "2026-07-11T20:00"]);
  });

  it("lies within the opening hours at both ends: not in the night, not on a Sunday, not on a closed day", () => {
    // the week's Sunday and the closed Monday are passed over; earlier, out on Friday is back on Saturday
    expect(nearestShifts({ ...shifts, isOpen }).map(({ from }) => from)).toEqual([
      "2026-07-03T17:00",
      "2026-07-14T09:00",
    ]);
  });

  it("is the nearest at all where a hire of this length never begins and ends while somebody is there", () => {
    const never = { ...shifts, isOpen: () => false };
    expect(nearestShifts(never)).toEqual(nearestShifts(shifts));
  });

  it("across the night on which the clocks change it is still by the clock on the wall", () => {
    const quarter = { opens: "10:00", closes: "10:00" };
    const quarters = { ...sameEveryDay(quarter).week, saturday: null, sunday: null };
    const autumn = {
      ...shifts,
      asked: span("2026-10-23T12:00", "2026-10-24T12:00"),
      taken: [span("2026-10-20T12:00", "2026-10-24T13:00")],
      // one quarter of an hour on weekdays, so that an hour too early or too late would show
      isOpen: (local: string) => isOpenAt({ week: quarters, closed: [] }, local),
    };
    // the clocks go back on Sunday 25 October 2026
    expect(nearestShifts(autumn).map(({ from, to }) => [from, to])).toEqual([
      ["2026-10-26T10:00", "2026-10-27T10:00"],
      ["2026-10-15T10:00", "2026-10-16T10:00"],
    ]);
  });

  it("never gets in anybody's way, and one that is open at both ends already is kept", () => {
    const quarter = 900_000;
    const day = fc.integer({ min: 0, max: 20 * 96 });
    const lasts = fc.integer({ min: 4, max: 6 * 96 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(day, lasts), { minLength: 1, maxLength: 5 }),
        day,
        lasts,
        (held, from, length) => {
          const begin = at("2026-07-01T00:00");
          const spanOf = (start: number, quarters: number) => ({
            start: begin + start * quarter,
            end: begin + (start + quarters) * quarter,
          });
          const busy = held.map(([start, quarters]) => spanOf(start, quarters));
          const wanted = spanOf(from, length);
          const given = { asked: wanted, taken: busy, turnaroundMs: 4 * HOUR_MS, timeZone: ZONE };
          for (const { from: out, to: back } of nearestShifts({ ...given, isOpen })) {
            const found = span(out ?? "", back ?? "");
            expect(busy.some((each) => overlaps(found, each, 4 * HOUR_MS))).toBe(false);
          }
          const [plain, open] = [nearestShifts(given), nearestShifts({ ...given, isOpen })];
          expect(open).toHaveLength(plain.length);
          // one that is open already is kept
          if (plain.length === 1 && plain.every(({ from, to }) => isOpen(from ?? "") && isOpen(to ?? "")))
            expect(open).toEqual(plain);
        },
      ),
    );
  });
});
