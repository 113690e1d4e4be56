import { describe, expect, it } from "vitest";
import { keyedNormal, normalQuantile } from "../../base/random.ts";
import { formula } from "../../formulas/book.ts";
import { judgeForecasts } from "./judge-forecasts.ts";
import { type ReturnedUse, USE_SHARES } from "./types.ts";

const SD = 0.25;
const returns = (times: number, width = 1): ReturnedUse[] =>
  Array.from({ length: 2000 }, (_, k) => ({
    hire: `h${k}`,
    vehicle: "a",
    store: "lpg",
    used: 3 * times * Math.exp(width * SD * keyedNormal(3, k, 0, 9)),
    mean: 3 * Math.exp(SD ** 2 / 2),
    quantiles: USE_SHARES.map((share) => 3 * Math.exp(SD * normalQuantile(share))),
  }));
const [honest] = judgeForecasts(returns(1));

describe("how good forecasts were", () => {
  it("covers eight in ten and has no bias where outcomes come from the forecast itself", () => {
    expect(honest!.coverage.value).toBeCloseTo(0.8, 1);
    expect(Math.abs(honest!.bias.value)).toBeLessThan(0.02);
    honest!.observed.forEach((share, k) => {
      expect(Math.abs(share - USE_SHARES[k]!)).toBeLessThan(0.04);
    });
  });

  it("sees use above the forecast, outcomes too far spread, and what a rate mends", () => {
    const [high] = judgeForecasts(returns(1.4));
    expect(high!.bias.value).toBeCloseTo(0.4, 1);
    expect(high!.coverage.value).toBeLessThan(0.55);
    const [wide] = judgeForecasts(returns(1, 2));
    expect(wide!.coverage.value).toBeLessThan(0.55);
    expect(Math.abs(wide!.bias.value)).toBeLessThan(0.15);
    const [mended] = judgeForecasts(returns(1.4), () => ({ lpg: { times: 1.4, sd: 0, width: 1 } }));
    expect(mended!.coverage.value).toBe(honest!.coverage.value);
    expect(mended!.bias.value).toBeCloseTo(honest!.bias.value, 9);
  });

  it("widens a forecast by the spread that was learnt", () => {
    const [wide] = judgeForecasts(returns(1, 2), () => ({
      lpg: { times: 1, sd: SD * Math.sqrt(3), width: 1 },
    }));
    expect(wide!.coverage.value).toBeCloseTo(0.8, 1);
    expect(Math.abs(wide!.bias.value)).toBeLessThan(0.03);
  });

  it("gives figures whose formula gives the same again", () => {
    for (const figure of [honest!.coverage, honest!.bias])
      expect(formula(figure.formula, figure.inputs).value).toBeCloseTo(figure.value, 12);
  });
});
