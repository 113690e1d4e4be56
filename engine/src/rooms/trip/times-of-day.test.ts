import { describe, expect, it, vi } from "vitest";
import { createEnsemble } from "../../stores/ensemble.ts";
import { compileRunning } from "../../stores/settle.ts";
import type { Window } from "../../systems/contract.ts";
import { createRunning } from "../../systems/running.ts";
import { forecastTrip } from "./forecast-trip.ts";
import { planTrip } from "./plan-trip.ts";
import { TimesOfDay } from "./times-of-day.ts";
import { mayHighlands, newYearMountains } from "./try-trips.ts";

const runningAt = (times?: readonly Window[]) =>
  compileRunning(
    createRunning(1, [], () => true, times === undefined ? {} : { times }),
    createEnsemble(1, new Map()),
  );
const window = (fromH: number, toH: number): readonly Window[] => [{ fromH, toH, share: 1 }];

/** Clock hours, at the beginning of a step, of the steps of the first whole day in which a system is asked. */
function askedAt(times: readonly Window[] | undefined, all: readonly (readonly Window[])[] = []): number[] {
  const one = runningAt(times);
  const ofDay = new TimesOfDay([one, ...all.map(runningAt)]);
  const { timeline } = planTrip(mayHighlands());
  const bits = ofDay.bySteps(timeline);
  return [...bits].flatMap((now, k) =>
    timeline.day[k] === 1 && (now & ofDay.bitOf(one)) !== 0 ? [timeline.clockH[k]!] : [],
  );
}

describe("times of the day at which systems are asked", () => {
  it("every step that touches its times, and at least one more before and after", () => {
    expect(askedAt(window(7, 8))).toEqual([6.5, 6.75, 7, 7.25, 7.5, 7.75, 8, 8.25]);
  });

  it("a single hour is touched by the steps around it", () => {
    expect(askedAt(window(9, 9))).toEqual([8.5, 8.75, 9, 9.25]);
  });

  it("every step where it says no times, and where there are more times than can be told apart", () => {
    const many = Array.from({ length: 30 }, (_, k) => window(k / 2, k / 2 + 0.25));
    expect(askedAt(undefined)).toHaveLength(96);
    expect(new TimesOfDay(many.map(runningAt)).bitOf(runningAt(window(1, 2)))).toBe(1);
    expect(
      new Set(many.map((times) => new TimesOfDay(many.map(runningAt)).bitOf(runningAt(times)))).size,
    ).toBe(30);
  });

  it("the clock that is put forward or back takes its steps with it", () => {
    const march = newYearMountains();
    const { timeline } = planTrip({
      ...march,
      trip: {
        ...march.trip,
        depart: "2026-03-27T12:00",
        return: "2026-03-31T12:00",
        stops: [],
        returnDrive: { distanceKm: 0, minutes: 0 },
      },
    });
    const one = runningAt(window(7, 8));
    const ofDay = new TimesOfDay([one]);
    const asked = [...ofDay.bySteps(timeline)].flatMap((now, k) =>
      (now & ofDay.bitOf(one)) === 0 ? [] : [timeline.clockH[k]!],
    );
    expect([Math.min(...asked), Math.max(...asked), asked.length]).toEqual([6.5, 8.25, 4 * 8]);
  });
});

describe("the trip forecast", () => {
  it.each([
    ["in May", mayHighlands()],
    ["in the frost", newYearMountains()],
  ])("is the same %s as if everybody were asked at every step", (_, trip) => {
    for (const stepMinutes of [15, 7.5] as const) {
      const input = { ...trip, stepMinutes, runs: 50, audit: true };
      const found = forecastTrip(input);
      const always = vi
        .spyOn(TimesOfDay.prototype, "bySteps")
        .mockImplementation(({ steps }) => new Int32Array(steps).fill(-1));
      try {
        expect(forecastTrip(input)).toEqual(found);
        expect(always).toHaveBeenCalled();
      } finally {
        always.mockRestore();
      }
    }
  });
});
