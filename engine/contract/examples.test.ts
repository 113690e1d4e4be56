import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseSpec, parseWith, vehicleDescriptionSchema } from "../src/index.ts";

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../examples/${name}`, import.meta.url), "utf8"));

describe("the worked vehicle", () => {
  const vehicle = parseWith(vehicleDescriptionSchema, read("pv2.json"));

  it("is a description whose every fitted system is valid", () => {
    vehicle.systems.forEach((system, index) => {
      expect(() => parseSpec(system.kind, system.spec, `systems.${index}`)).not.toThrow();
    });
    expect(new Set(vehicle.systems.map(({ id }) => id)).size).toBe(vehicle.systems.length);
  });

  it("holds one full cylinder and no water in its mass in running order", () => {
    const lpg = parseSpec("lpg", vehicle.systems.find(({ kind }) => kind === "lpg")?.spec);
    expect(lpg.kgEach + lpg.tareKgEach).toBe(14);
    expect(vehicle.masses.miroBasis).toMatchObject({ lpgCylinders: 1, waterShare: 0 });
  });
});
