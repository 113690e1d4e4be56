import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { deriveVehicle, parseVehicle, specsOf, type VehicleDescription } from "../src/index.ts";

const folder = new URL("../../examples/vehicles/", import.meta.url);
const read = (name: string): VehicleDescription =>
  parseVehicle(JSON.parse(readFileSync(new URL(`${name}.json`, folder), "utf8")));

/** mam, technical, miro, options; axles front and rear; wheelbase, overhang; belts, berths: the invented fleet. */
const FLEET = [
  ["cv2", "elevatingRoofCampervan", [3000, 3000, 2560, 25], [1600, 1600], [3.0, 0.9], [4, 4]],
  ["pv2", "panelVanConversion", [3500, 3500, 2930, 45], [1850, 2000], [3.8, 1.2], [2, 2]],
  ["lp4", "lowProfile", [3500, 3500, 3010, 75], [1850, 2000], [3.8, 2.0], [4, 4]],
  ["oc6", "overcab", [3500, 3650, 3060, 28], [1850, 2120], [4.0, 2.1], [6, 6]],
  ["ac4", "aClass", [4250, 4250, 3520, 60], [2100, 2500], [4.1, 2.2], [4, 4]],
  ["ze2", "campervan", [4100, 4100, 3380, 20], [2000, 2200], [3.9, 1.0], [4, 2]],
  ["wl4", "lowProfile", [3500, 3500, 3060, 40], [1850, 2000], [3.8, 1.9], [4, 4]],
] as const;

describe.each(FLEET)("the invented vehicle %s", (name, bodyStyle, kg, axles, lengths, seats) => {
  const vehicle = read(name);
  const { masses, dimensions } = vehicle;

  it("has the masses, axles and lengths of the fleet's table", () => {
    expect(vehicle.bodyStyle).toBe(bodyStyle);
    const options = masses.options.reduce((sum, { massKg }) => sum + massKg, 0);
    expect([masses.mamKg, masses.technicalMaxKg, masses.miroKg, options]).toEqual(kg);
    expect([masses.axleMaxKg.front, masses.axleMaxKg.rear]).toEqual(axles);
    expect([dimensions.wheelbaseM, dimensions.rearOverhangM]).toEqual(lengths);
  });

  it("has its belts and berths", () => {
    const { belts, berths } = deriveVehicle(vehicle);
    expect([belts.value, berths.value]).toEqual(seats);
  });

  it("states its mass in running order on the fleet's basis: a driver of 75 kg, no water, one cylinder where gas is fitted", () => {
    expect(masses.miroBasis).toEqual({
      driverKg: 75,
      fuelShare: vehicle.fuel === "electric" ? 0 : 0.9,
      lpgCylinders: specsOf(vehicle, "lpg").length,
      waterShare: 0,
      weighed: false,
    });
  });

  it("carries what its axles and tyres bear, with the payload that the law asks for", () => {
    const { payload, minimumPayload, tyreLoad } = deriveVehicle(vehicle);
    expect(payload.value).toBeGreaterThanOrEqual(minimumPayload.value);
    expect(tyreLoad?.front.value).toBeGreaterThanOrEqual(masses.axleMaxKg.front);
    expect(tyreLoad?.rear.value).toBeGreaterThanOrEqual(masses.axleMaxKg.rear);
  });
});

describe("the invented fleet", () => {
  it("is these seven and no more, each of its own id, name and plate", () => {
    expect(readdirSync(folder).sort()).toEqual(FLEET.map(([name]) => `${name}.json`).sort());
    const vehicles = FLEET.map(([name]) => read(name));
    for (const own of ["id", "name", "registration"] as const)
      expect(new Set(vehicles.map((vehicle) => vehicle[own])).size).toBe(7);
  });

  const fitted = (name: string) => read(name).systems.map(({ kind }) => kind);

  it("has gas where the table has it and nowhere else", () => {
    expect(FLEET.map(([name]) => name).filter((name) => fitted(name).includes("lpg"))).toEqual([
      "pv2",
      "lp4",
      "oc6",
      "ac4",
    ]);
    expect(specsOf(read("pv2"), "lpg")).toMatchObject([{ cylinders: 2, kgEach: 6, fuel: "propane" }]);
    expect(specsOf(read("lp4"), "lpg")).toMatchObject([{ cylinders: 2, kgEach: 11 }]);
    expect(specsOf(read("ac4"), "lpg")).toMatchObject([
      { arrangement: "refillable", cylinders: 2, kgEach: 11 },
    ]);
  });

  it("has the batteries and panels of the table", () => {
    const battery = (name: string) => specsOf(read(name), "leisureBattery")[0];
    expect(battery("cv2")).toMatchObject({ chemistry: "lfp", ratedAh: 100 });
    expect(battery("pv2")).toMatchObject({ chemistry: "agm", ratedAh: 95 });
    expect(battery("ac4")).toMatchObject({ chemistry: "lfp", ratedAh: 200 });
    expect(battery("wl4")).toMatchObject({ chemistry: "lfp", ratedAh: 200 });
    expect(deriveVehicle(read("pv2")).usableAh.value).toBe(47.5);
    expect(FLEET.map(([name]) => name).filter((name) => fitted(name).includes("solar"))).toEqual(["ac4"]);
    expect(specsOf(read("ac4"), "solar")).toMatchObject([{ peakW: 200 }]);
  });

  it("has the fridges, heaters, tanks and tyres of the table", () => {
    const fridges = FLEET.map(([name]) => [name, specsOf(read(name), "fridge")[0]?.type]);
    expect(fridges.filter(([, type]) => type === "compressor").map(([name]) => name)).toEqual([
      "cv2",
      "ze2",
      "wl4",
    ]);
    expect(specsOf(read("lp4"), "freshWater")).toMatchObject([{ litres: 120 }]);
    expect(specsOf(read("oc6"), "freshWater")).toMatchObject([{ litres: 120, behindFrontAxleM: 2.5 }]);
    expect(specsOf(read("wl4"), "wasteWater")).toMatchObject([{ heated: true }]);
    expect(specsOf(read("wl4"), "tyres")).toMatchObject([{ season: "winter" }]);
    expect(specsOf(read("ze2"), "heating")).toMatchObject([{ source: "electric" }]);
    expect(read("oc6").firstRegistered.slice(0, 4)).toBe("2025");
  });
});
