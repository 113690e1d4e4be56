import { describe, expect, it } from "vitest";
import type { Schemas } from "../../api/client.ts";
import { FEWEST, verdictOf } from "./verdict.ts";

const judged = (count: number, coverage: number, bias: number) => {
  const figure = (value: number) => ({
    value,
    unit: "share",
    formula: "-",
    inputs: {},
    basis: "computed" as const,
  });
  return {
    count,
    coverage: figure(coverage),
    bias: figure(bias),
    observed: [],
  } satisfies Schemas["ForecastJudgement"];
};

describe("what is said of a store's forecasts", () => {
  it("says nothing of few outcomes, however good or bad they look", () => {
    expect(verdictOf(judged(FEWEST - 1, 0.8, 0))).toBe("few");
    expect(verdictOf(judged(FEWEST - 1, 0.2, 0.5))).toBe("few");
  });

  it("names a bias first, then a band that misses", () => {
    expect(verdictOf(judged(FEWEST, 0.8, 0))).toBe("good");
    expect(verdictOf(judged(FEWEST, 0.6, 0.2))).toBe("high");
    expect(verdictOf(judged(FEWEST, 0.6, -0.2))).toBe("low");
    expect(verdictOf(judged(FEWEST, 0.69, 0.05))).toBe("narrow");
    expect(verdictOf(judged(FEWEST, 0.95, 0.05))).toBe("wide");
  });
});
