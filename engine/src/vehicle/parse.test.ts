import { describe, expect, it } from "vitest";
import { BadInput } from "../base/bad-input.ts";
import { deriveVehicle } from "./derive.ts";
import { parseVehicle } from "./parse.ts";
import { overcab, panelVan } from "./test-vehicles.ts";

const problemsOf = (json: unknown) => {
  try {
    parseVehicle(json);
  } catch (error) {
    if (error instanceof BadInput) return error.problems;
    throw error;
  }
  return [];
};
const masses = (change: object) => panelVan({ masses: { ...panelVan().masses, ...change } });

describe("parsing a vehicle", () => {
  it("takes a sound description and fills in the defaults of its systems", () => {
    const vehicle = parseVehicle(panelVan());
    expect(vehicle.systems.find(({ kind }) => kind === "leisureBattery")?.spec).toMatchObject({
      ratedAh: 95,
      usableShare: 0.5,
    });
  });

  it("names the field of a fitted system that is wrong", () => {
    const broken = panelVan();
    expect(
      problemsOf({ ...broken, systems: [{ ...broken.systems[0]!, spec: { beltedSeats: 40, berths: 2 } }] }),
    ).toMatchObject([{ path: "systems.0.spec.beltedSeats" }]);
    expect(problemsOf({ ...broken, systems: [{ id: "x", kind: "sauna", spec: {} }] })).toMatchObject([
      { path: "systems.0.kind" },
    ]);
  });

  it("refuses two systems of one id, and says which came first", () => {
    const { systems } = panelVan();
    expect(problemsOf(panelVan({ systems: [systems[0]!, { ...systems[1]!, id: systems[0]!.id }] }))).toEqual([
      { path: "systems.1.id", expected: 'expected an id of its own; systems.0 is called "seats" too' },
    ]);
  });

  it.each([
    ["masses.miroKg", { miroKg: 3500, miroFrontKg: 1700 }],
    ["masses.mamKg", { technicalMaxKg: 3400 }],
    ["masses.miroFrontKg", { miroFrontKg: 2930 }],
    ["masses.miroFrontKg", { miroFrontKg: 900 }],
    ["masses.unladenKg", { unladenKg: 3000 }],
  ])("refuses impossible masses at %s", (path, change) => {
    expect(problemsOf(masses(change)).map((each) => each.path)).toContain(path);
  });

  it("refuses a length that wheelbase and overhang do not fit into", () => {
    expect(problemsOf(panelVan({ dimensions: { ...panelVan().dimensions, lengthM: 4.9 } }))).toMatchObject([
      { path: "dimensions.lengthM" },
    ]);
  });

  it("tells all faults at once", () => {
    expect(
      problemsOf({ ...masses({ miroKg: 3600 }), dimensions: { ...panelVan().dimensions, lengthM: 4.9 } })
        .length,
    ).toBeGreaterThan(1);
  });
});

describe("what follows from a description", () => {
  it("payload leaves out what was fitted since", () => {
    expect(deriveVehicle(panelVan()).payload).toMatchObject({
      value: 525,
      unit: "kg",
      formula: "mass.payload",
    });
  });

  it("the least payload of the law for four seats in 7.45 m is 114.5 kg", () => {
    const seats = { id: "seats", kind: "seatsBelts", spec: { beltedSeats: 4, berths: 4 } };
    const vehicle = overcab({ systems: [seats], dimensions: { ...overcab().dimensions, lengthM: 7.45 } });
    expect(deriveVehicle(vehicle).minimumPayload.value).toBeCloseTo(114.5, 9);
  });

  it("two tyres of load index 112 carry 2,240 kg", () => {
    expect(deriveVehicle(panelVan()).tyreLoad?.rear.value).toBe(2240);
    expect(deriveVehicle(panelVan({ systems: [] })).tyreLoad).toBeNull();
  });

  it("states the height in feet and inches rounded up", () => {
    expect(deriveVehicle(panelVan()).heightFeetInches).toEqual({ feet: 8, inches: 9 });
  });

  it("counts battery, gas and water from the fitted systems", () => {
    const figures = deriveVehicle(panelVan());
    expect([figures.usableAh.value, figures.lpgKg.value, figures.waterLitres.value]).toEqual([47.5, 12, 95]);
  });
});
