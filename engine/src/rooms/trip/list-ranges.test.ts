import { describe, expect, it } from "vitest";
import { forecastTrip } from "./forecast-trip.ts";
import { mayHighlands, newYearMountains, panelVan } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

const may = mayHighlands();
const rangesOf = (input: TripInput) => forecastTrip({ ...input, runs: 2 }).result.ranges!;
const codesOf = (input: TripInput) => forecastTrip({ ...input, runs: 100 }).findings.map(({ code }) => code);
const leaving = (departWith: TripInput["trip"]["departWith"]): TripInput => ({
  ...may,
  trip: { ...may.trip, departWith },
});

describe("how far the vehicle goes", () => {
  it("is counted down to the reserve, for fuel and exhaust fluid apart", () => {
    const [fuel, def] = rangesOf(leaving({ fuel: 0.5, def: 0.5 }));
    expect(fuel).toMatchObject({ store: "fuel" });
    // 90 L, half full, 15 % kept back, 10.5 L/100 km
    expect(fuel!.atDeparture.value).toBeCloseTo(((45 - 13.5) / 10.5) * 100, 9);
    expect(fuel!.whenFull.value).toBeCloseTo(((90 - 13.5) / 10.5) * 100, 9);
    expect(def!.atDeparture.value).toBeCloseTo(((10 - 3) / 1.5) * 1000, 9);
    expect(fuel!.road.value).toBe(4 * 120 + 200);
  });

  it("is nothing below the reserve, and is not told of a vehicle without", () => {
    expect(rangesOf(leaving({ fuel: 0.1 }))[0]!.atDeparture.value).toBe(0);
    const vehicle = { ...panelVan(), systems: panelVan().systems.filter(({ kind }) => kind !== "def") };
    expect(rangesOf({ ...may, vehicle }).map(({ store }) => store)).toEqual(["fuel"]);
  });

  it("a tank that only falls into its reserve is a note, one that lasts is not", () => {
    expect(codesOf(leaving({ def: 0.18 }))).toContain("trip.defReserve");
    expect(codesOf(leaving({ def: 1 }))).not.toContain("trip.defReserve");
    expect(codesOf(leaving({ def: 0.02 }))).toContain("trip.defTrouble");
  });
});

describe("cylinders changed over by hand", () => {
  const winter = newYearMountains();
  const withGas = (lpg: number, spec: object = {}): TripInput => ({
    ...winter,
    vehicle: {
      ...winter.vehicle,
      systems: winter.vehicle.systems.map((system) =>
        system.id === "gas" ? { ...system, spec: { ...system.spec, ...spec } } : system,
      ),
    },
    trip: { ...winter.trip, departWith: { lpg } },
  });
  const hasNote = (input: TripInput) => codesOf(input).includes("trip.changeOverAtNight");

  it("are told of where one is empty in a cold night, and not where it changes over by itself", () => {
    const shares = [0.56, 0.58, 0.6, 0.62, 0.64, 0.66];
    const told = shares.filter((share) => hasNote(withGas(share)));
    expect(told.length).toBeGreaterThan(0);
    // by day somebody simply changes it
    expect(told.length).toBeLessThan(shares.length);
    for (const share of told) expect(hasNote(withGas(share, { automaticChangeOver: true }))).toBe(false);
  });
});
