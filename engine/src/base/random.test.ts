import { expect, test } from "vitest";
import { keyedNormal, keyedUniform, normalQuantile, purposeKey } from "./random.ts";

test("the same key gives the same draw, and another key another", () => {
  const purpose = purposeKey("weather.anomaly");
  expect(keyedUniform(1, 2, 3, purpose)).toBe(keyedUniform(1, 2, 3, purpose));
  const others = [
    keyedUniform(2, 2, 3, purpose),
    keyedUniform(1, 3, 3, purpose),
    keyedUniform(1, 2, 4, purpose),
    keyedUniform(1, 2, 3, purposeKey("x")),
  ];
  for (const other of others) expect(other).not.toBe(keyedUniform(1, 2, 3, purpose));
});

test("draws have the mean, spread and independence of a standard normal", () => {
  const purpose = purposeKey("spread");
  const draws = Array.from({ length: 40_000 }, (_, trip) => keyedNormal(7, trip, 0, purpose));
  const next = Array.from({ length: 40_000 }, (_, trip) => keyedNormal(7, trip, 1, purpose));
  const mean = draws.reduce((sum, x) => sum + x, 0) / draws.length;
  const variance = draws.reduce((sum, x) => sum + (x - mean) ** 2, 0) / draws.length;
  const correlation = draws.reduce((sum, x, i) => sum + x * next[i]!, 0) / draws.length;
  expect(Math.abs(mean)).toBeLessThan(0.02);
  expect(Math.abs(variance - 1)).toBeLessThan(0.03);
  expect(Math.abs(correlation)).toBeLessThan(0.02);
});

test("the quantile of the normal agrees with printed tables", () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 (cumulative normal table), from memory
  expect(normalQuantile(0.975)).toBeCloseTo(1.959964, 6);
  expect(normalQuantile(0.9)).toBeCloseTo(1.281552, 6);
  expect(normalQuantile(0.5)).toBeCloseTo(0, 12);
  expect(normalQuantile(0.01)).toBeCloseTo(-2.326348, 6);
});
