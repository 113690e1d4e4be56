import { describe, expect, it } from "vitest";
import { parseSpec } from "../registry.ts";
import { standingWhPerHour, startingReserveWh } from "./physics.ts";

describe("the starter battery", () => {
  it("keeps half of its charge for starting the engine", () => {
    expect(startingReserveWh(parseSpec("cab", { starterAh: 100 }))).toBe(600);
  });

  it("stands for about six weeks as it is described by default", () => {
    const cab = parseSpec("cab", {});
    const days = startingReserveWh(cab) / (24 * standingWhPerHour(cab));
    // 45 Ah against 40 mA and 3 % a month of its own
    expect(days).toBeCloseTo(45 / (0.96 + 0.09), 6);
  });
});
