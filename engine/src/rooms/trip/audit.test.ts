import { describe, expect, it } from "vitest";
import { forecastTrip } from "./forecast-trip.ts";
import { newYearMountains } from "./try-trips.ts";

describe("the audit of a trip", () => {
  const { audit, stores } = forecastTrip({ ...newYearMountains(), runs: 25, audit: true }).result;

  it("balances every store that carries over, warmth and hot water too", () => {
    const ids = audit!.map(({ store }) => store);
    expect(ids).toEqual(
      expect.arrayContaining(["battery12", "lpg", "cassette", "cabinHeat", "hotWaterHeat"]),
    );
    expect(ids).not.toContain("mains230");
    for (const line of audit!) {
      expect(line.in - line.out - line.change, line.store).toBeCloseTo(0, 6);
      expect(line.residual, line.store).toBeLessThan(1e-9);
      expect(line.in + line.out, line.store).toBeGreaterThan(0);
    }
  });

  it("says the same of a store as its own forecast", () => {
    for (const { store, audit: own } of stores)
      expect(audit!.find((line) => line.store === store)).toMatchObject({ ...own });
  });

  it("is left out where nobody asked for it", () => {
    expect(forecastTrip({ ...newYearMountains(), runs: 2 }).result.audit).toBeUndefined();
  });
});
