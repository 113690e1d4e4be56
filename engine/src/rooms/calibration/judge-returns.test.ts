import { describe, expect, it } from "vitest";
import { keyedNormal, normalQuantile } from "../../base/random.ts";
import { judgeReturns, type ReturnOfHire } from "./judge-returns.ts";
import { type ReturnedUse, USE_SHARES } from "./types.ts";

const SD = 0.2;
const DAY_MS = 86_400_000;
const dayAt = (day: number) => new Date(Date.parse("2026-01-01T00:00Z") + day * DAY_MS).toISOString();

/** One hire of three days after another, each using `times(k)` of its forecast; every other one of another vehicle. */
function hires(count: number, times: (k: number) => number): ReturnOfHire[] {
  return Array.from({ length: count }, (_, k): ReturnOfHire => {
    const vehicle = k % 2 === 0 ? "a" : "b";
    const use: ReturnedUse = {
      hire: `h${k}`,
      vehicle,
      store: "lpg",
      used: 3 * times(k) * Math.exp(SD * keyedNormal(5, k, 0, 1)),
      mean: 3 * Math.exp(SD ** 2 / 2),
      quantiles: USE_SHARES.map((share) => 3 * Math.exp(SD * normalQuantile(share))),
    };
    return { hire: use.hire, vehicle, left: dayAt(4 * k), returned: dayAt(4 * k + 3), uses: [use] };
  });
}

describe("forecasts judged as they would have been made", () => {
  it("takes nobody's return before it was back: what comes later changes no forecast before it", () => {
    const ended = (times: number) =>
      hires(25, (k) => (k < 20 ? 1.4 : times)).map((hire, k) => (k < 20 ? hire : { ...hire, vehicle: "c" }));
    const [calm, wild] = [judgeReturns(ended(1.4), "a"), judgeReturns(ended(12), "a")];
    expect(calm.judged.length).toBeGreaterThan(5);
    expect(wild).toEqual(calm);
    // those that came before do: the same wild ones first
    const first = ended(12).map((hire, k) =>
      k < 20 ? hire : { ...hire, left: dayAt(-9), returned: dayAt(-8) },
    );
    expect(judgeReturns(first, "a").after[0]!.bias.value).toBeLessThan(calm.after[0]!.bias.value - 0.1);
  });

  it("learns as returns come in", () => {
    const { before, after, judged } = judgeReturns(hires(200, () => 1.4));
    expect(judged).toHaveLength(160);
    expect(before[0]!.bias.value).toBeCloseTo(0.4, 1);
    expect(before[0]!.coverage.value).toBeLessThan(0.6);
    expect(Math.abs(after[0]!.bias.value)).toBeLessThan(0.06);
    expect(after[0]!.coverage.value).toBeGreaterThan(0.7);
    expect(after[0]!.coverage.value).toBeLessThan(0.9);
  });

  it("lets a hire teach nothing that left on the day of its return", () => {
    const all = hires(10, () => 1.5).map((hire) => ({ ...hire, left: dayAt(0), returned: dayAt(9) }));
    const { before, after } = judgeReturns(all);
    // nobody was back when they left: only what the description says, less sure of itself
    expect(after[0]!.bias.value).toBeCloseTo(before[0]!.bias.value, 9);
    const next = (left: number) =>
      hires(10, () => 1.5).map((hire) => ({
        ...hire,
        hire: `next ${hire.hire}`,
        left: dayAt(left),
        returned: dayAt(12),
      }));
    const onTheDay = judgeReturns([...all, ...next(9)]);
    expect(onTheDay.after[0]!.bias.value).toBeCloseTo(onTheDay.before[0]!.bias.value, 9);
    const dayAfter = judgeReturns([...all, ...next(10)]);
    expect(dayAfter.after[0]!.bias.value).toBeLessThan(dayAfter.before[0]!.bias.value - 0.1);
  });

  it("judges one vehicle by what all have taught, in whatever order they are handed in", () => {
    const all = hires(40, () => 1.4);
    const one = judgeReturns(all, "b");
    expect(one.judged).toHaveLength(16);
    expect(one.taught).toHaveLength(8);
    expect(judgeReturns(all.toReversed(), "b")).toEqual(one);
    expect(judgeReturns(all, "c")).toMatchObject({ judged: [], before: [], after: [], uses: [] });
  });
});
