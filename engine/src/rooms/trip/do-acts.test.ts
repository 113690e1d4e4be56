import { describe, expect, it } from "vitest";
import { createEnsemble, indexOf } from "../../stores/ensemble.ts";
import { FUEL_RESERVE_SHARE } from "../../systems/fuel/physics.ts";
import { fillOnTheWay } from "./do-acts.ts";
import { planTrip } from "./plan-trip.ts";
import { mayHighlands } from "./try-trips.ts";

const TANK_L = 100;
const DRIVE_KM = 200;

describe("fuel on the way", () => {
  const { input, systems } = planTrip(mayHighlands());
  /** what the drive takes with a fifth more, and the reserve */
  const enoughL =
    (DRIVE_KM * input.vehicle.consumption.litresPer100Km * 1.2) / 100 + FUEL_RESERVE_SHARE * TANK_L;
  const after = (levelL: number, km = DRIVE_KM, trip = input.trip) => {
    const ensemble = createEnsemble(1, new Map([["fuel", { capacity: TANK_L, level: levelL }]]));
    fillOnTheWay(input.vehicle, systems, trip, km, ensemble);
    return ensemble.level[indexOf("fuel")]![0]!;
  };

  it("is filled up where the tank would not do the drive and the reserve", () => {
    expect(after(enoughL - 10)).toBe(TANK_L);
    expect(after(enoughL)).toBeCloseTo(TANK_L, 9);
  });

  it("is topped up the less the more there is above that, up to three twentieths of the tank", () => {
    expect(after(enoughL + 7.5)).toBeCloseTo((enoughL + 7.5 + TANK_L) / 2, 9);
    expect(after(enoughL + 15)).toBeCloseTo(enoughL + 15, 9);
    expect(after(enoughL + 20)).toBe(enoughL + 20);
  });

  it("is not bought without a drive, nor where the hire says so", () => {
    expect(after(10, 0)).toBe(10);
    const { id } = systems.find(({ kind }) => kind === "fuel")!;
    expect(after(10, DRIVE_KM, { ...input.trip, settings: { [id]: { fillOnTheWay: false } } })).toBe(10);
  });
});
