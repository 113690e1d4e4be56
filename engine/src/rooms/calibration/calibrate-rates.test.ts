import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { keyedNormal, normalQuantile } from "../../base/random.ts";
import { formula } from "../../formulas/book.ts";
import { RATE_BOUNDS } from "../trip/types.ts";
import { calibrateRates, ratesOf } from "./calibrate-rates.ts";
import { judgeForecasts } from "./judge-forecasts.ts";
import { fitRates, PRIOR_SD } from "./rate-model.ts";
import { type ReturnedUse, USE_SHARES } from "./types.ts";

const SD = 0.2;
/** a return whose forecast is log-normal around 100 with the given spread */
function returned(used: number, vehicle = "a", sd = SD): ReturnedUse {
  const quantiles = USE_SHARES.map((share) => 100 * Math.exp(sd * normalQuantile(share)));
  return { hire: "h", vehicle, store: "lpg", used, mean: 100 * Math.exp(sd ** 2 / 2), quantiles };
}
const anyReturn = fc
  .record({
    used: fc.double({ min: 1, max: 10_000, noNaN: true }),
    vehicle: fc.constantFrom("a", "b", "c"),
    sd: fc.double({ min: 0.02, max: 1, noNaN: true }),
  })
  .map(({ used, vehicle, sd }) => returned(used, vehicle, sd));
const some = fc.array(anyReturn, { maxLength: 12 });
const sdOf = (returns: readonly ReturnedUse[], vehicle: string) =>
  fitRates(returns).vehicles.find((each) => each.vehicle === vehicle)?.sd ??
  // of a vehicle without returns
  fitRates(returns).depot.sd;

describe("rates by what came back", () => {
  it("say nothing without a return, and forecasts stay at 1", () => {
    expect(calibrateRates([])).toEqual({ depot: [], vehicles: [] });
    expect(ratesOf(calibrateRates([]), "a")).toEqual({});
  });

  it("do not hang on the order of the returns, not even in the last digit", () => {
    fc.assert(
      fc.property(some, fc.nat(), (returns, seed) => {
        const order = (k: number) => keyedNormal(seed, k, 0, 1);
        const other = returns.map((each, k) => ({ each, at: order(k) })).sort((a, b) => a.at - b.at);
        expect(calibrateRates(other.map(({ each }) => each))).toEqual(calibrateRates(returns));
      }),
    );
  });

  it("never leave their bounds, however wild the returns", () => {
    fc.assert(
      fc.property(some, (returns) => {
        const { depot, vehicles } = calibrateRates(returns);
        for (const { rate, low, high } of [...depot, ...vehicles.flatMap(({ rates }) => rates)]) {
          expect(low.value).toBeGreaterThanOrEqual(RATE_BOUNDS.least);
          expect(rate.value).toBeGreaterThanOrEqual(low.value);
          expect(high.value).toBeGreaterThanOrEqual(rate.value);
          expect(high.value).toBeLessThanOrEqual(RATE_BOUNDS.most);
        }
      }),
    );
  });

  it("are less uncertain with each return, of the vehicle and of any other", () => {
    fc.assert(
      fc.property(some, anyReturn, (returns, more) => {
        for (const vehicle of ["a", "b", "c"]) {
          const [before, after] = [sdOf(returns, vehicle), sdOf([...returns, more], vehicle)];
          expect(after).toBeLessThan(before + 1e-12);
          if (vehicle === more.vehicle) expect(after).toBeLessThan(before);
        }
      }),
    );
  });

  it("are the plain normal update of what the rest of the depot says, where no return is wild", () => {
    const returns = [returned(110), returned(125), returned(104), returned(95, "b"), returned(120, "c")];
    const { vehicles } = fitRates(returns);
    for (const { prior, data, mean, sd, wild } of vehicles) {
      const update = formula("statistics.normalUpdate", {
        priorMean: prior.mean,
        priorSd: prior.sd,
        dataSd: data.sd,
        count: data.count,
        dataMean: data.mean,
      }).value as { mean: number; sd: number };
      expect(wild).toBe(0);
      expect(mean).toBeCloseTo(update.mean, 10);
      expect(sd).toBeCloseTo(update.sd, 10);
    }
  });

  it("agree with the joint normal distribution worked out on a grid", () => {
    const returns = [returned(130), returned(120), returned(90, "b")];
    const logs = { a: [Math.log(1.3), Math.log(1.2)], b: [Math.log(0.9)] };
    const normal = (x: number, mean: number, sd: number) => Math.exp(-0.5 * ((x - mean) / sd) ** 2);
    let [weight, sum] = [0, 0];
    // over depot and both vehicles
    for (let d = -0.8; d <= 0.8; d += 0.02)
      for (let a = -0.8; a <= 0.8; a += 0.02)
        for (let b = -0.8; b <= 0.8; b += 0.02) {
          const p =
            normal(d, 0, PRIOR_SD.depot) *
            normal(a, d, PRIOR_SD.vehicle) *
            normal(b, d, PRIOR_SD.vehicle) *
            logs.a.reduce((product, y) => product * normal(y, a, SD), 1) *
            logs.b.reduce((product, y) => product * normal(y, b, SD), 1);
          weight += p;
          sum += p * a;
        }
    expect(fitRates(returns).vehicles[0]!.mean).toBeCloseTo(sum / weight, 3);
  });

  it("let a wild return pull no more than one a spread away", () => {
    const usual = Array.from({ length: 6 }, () => returned(100));
    const rate = (wild: number) => ratesOf(calibrateRates([...usual, returned(wild)]), "a").lpg!.times;
    expect(rate(10_000)).toBeCloseTo(rate(1000), 9);
    expect(rate(10_000)).toBeLessThan(1.05);
    expect(calibrateRates([...usual, returned(1000)]).vehicles[0]!.rates[0]!.wild).toBe(1);
    // a single wild return of a new vehicle too
    expect(ratesOf(calibrateRates([returned(10_000)]), "a").lpg!.times).toBeLessThan(1.6);
  });

  it("find a vehicle that uses more than its sisters, and lend a new one the depot's", () => {
    const returns = ["a", "b", "c"].flatMap((vehicle, v) =>
      Array.from({ length: 40 }, (_, k) =>
        returned(100 * (v === 0 ? 1.4 : 1.1) * Math.exp(SD * keyedNormal(7, k, v, 5)), vehicle),
      ),
    );
    const found = calibrateRates(returns);
    expect(ratesOf(found, "a").lpg!.times).toBeGreaterThan(1.3);
    expect(ratesOf(found, "a").lpg!.times).toBeLessThan(1.48);
    expect(ratesOf(found, "b").lpg!.times).toBeCloseTo(1.1, 1);
    const fresh = ratesOf(found, "new").lpg!.times;
    expect(fresh).toBeGreaterThan(ratesOf(found, "b").lpg!.times);
    expect(fresh).toBeLessThan(ratesOf(found, "a").lpg!.times);
  });

  it("learn how far hires lie apart where forecasts have them too close, and nothing where they do not", () => {
    const spreadOf = (width: number) => {
      const returns = Array.from({ length: 60 }, (_, k) =>
        returned(100 * Math.exp(width * SD * keyedNormal(11, k, 0, 5)), k % 2 === 0 ? "a" : "b"),
      );
      return ratesOf(calibrateRates(returns), "a").lpg!.sd;
    };
    expect(spreadOf(0.8)).toBe(0);
    expect(spreadOf(2)).toBeGreaterThan(0.2);
    expect(spreadOf(2)).toBeLessThan(SD * Math.sqrt(3) + 0.05);
    expect(spreadOf(40)).toBeLessThanOrEqual(RATE_BOUNDS.mostSd);
  });

  it("learn that people differ less than forecasts have it, where that is the habit of one system", () => {
    const fuel = (width: number) => {
      const returns = Array.from({ length: 60 }, (_, k): ReturnedUse => {
        const used = 100 * Math.exp(width * SD * keyedNormal(12, k, 0, 5));
        return { ...returned(used, k % 2 === 0 ? "a" : "b"), store: "fuel" };
      });
      return ratesOf(calibrateRates(returns), "a").fuel!.width;
    };
    expect(fuel(1.3)).toBe(1);
    expect(fuel(0.6)).toBeLessThan(0.8);
    expect(fuel(0.01)).toBeGreaterThanOrEqual(RATE_BOUNDS.leastWidth);
  });

  it("find the rate of heating apart from that of all else, and forecast an autumn from a summer's returns", () => {
    // of all else half as much again as described, for heating four fifths
    const of = (k: number, warmthShare: number): ReturnedUse => {
      const times = 1.5 * (1 - warmthShare) + 0.8 * warmthShare;
      return {
        ...returned(100 * times * Math.exp(SD * keyedNormal(13, k, 0, 5)), k % 2 === 0 ? "a" : "b"),
        warmthShare,
      };
    };
    const taught = Array.from({ length: 240 }, (_, k) => of(k, 0.2 + 0.5 * ((k % 80) / 80)));
    const { lpg } = ratesOf(calibrateRates(taught), "a");
    expect(lpg!.times).toBeGreaterThan(1.3);
    expect(lpg!.warmth!).toBeGreaterThan(0.6);
    expect(lpg!.warmth!).toBeLessThan(1);
    const autumn = Array.from({ length: 200 }, (_, k) => of(k + 300, 0.85));
    const biasOf = (returns: ReturnedUse[]) =>
      judgeForecasts(autumn, ({ vehicle }) => ratesOf(calibrateRates(returns), vehicle))[0]!.bias.value;
    expect(Math.abs(biasOf(taught))).toBeLessThan(0.1);
    expect(biasOf(taught.map((each) => ({ ...each, warmthShare: 0 })))).toBeLessThan(-0.15);
  });

  it("keep the rate of heating within its bounds too, and in any order of the returns", () => {
    const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(some, shares, (plain, warmthShares) => {
        const returns = plain.map((each, k) => ({ ...each, warmthShare: warmthShares[k]! }));
        const found = calibrateRates(returns);
        expect(calibrateRates(returns.toReversed())).toEqual(found);
        for (const { warmth } of [...found.depot, ...found.vehicles.flatMap(({ rates }) => rates)]) {
          if (warmth === undefined) continue;
          expect(warmth.value).toBeGreaterThanOrEqual(RATE_BOUNDS.least);
          expect(warmth.value).toBeLessThanOrEqual(RATE_BOUNDS.most);
        }
      }),
    );
  });

  it("come as figures whose formula gives the same again", () => {
    const { depot, vehicles } = calibrateRates([returned(130), returned(90, "b")]);
    for (const { rate, spread, width } of [...depot, ...vehicles.flatMap(({ rates }) => rates)])
      for (const figure of [rate, spread, width])
        expect(formula(figure.formula, figure.inputs).value).toBeCloseTo(figure.value, 12);
  });
});
