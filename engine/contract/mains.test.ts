import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { fitSystems, startSystem } from "../src/rooms/trip/fit-systems.ts";
import { parseVehicle } from "../src/vehicle/parse.ts";

const folder = join(import.meta.dirname, "../../examples/vehicles");
const vehicles = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .map((name) => parseVehicle(JSON.parse(readFileSync(join(folder, name), "utf8"))));
const context = { n: 1, dtH: 0.25, people: 2, vehicle: { floorAreaM2: 7, consumptionLPer100Km: 10 } };

describe("what draws on a post", () => {
  it("says so, and only what draws on it does, on every vehicle of the fleet", () => {
    expect(vehicles.length).toBeGreaterThan(5);
    for (const vehicle of vehicles) {
      for (const fitted of fitSystems(vehicle)) {
        const { running } = startSystem(fitted, context, undefined);
        const modes = running.flatMap((one) => one.modes);
        const draws = modes.some(
          ({ needStores, limit }) => needStores.includes("mains230") && limit.some((most) => most > 0),
        );
        const loads = fitted.physics.mains?.(fitted.spec, {}).loads ?? [];
        // a charger of no amperes has a mode and draws nothing
        if (loads.length > 0) expect(draws, `${vehicle.id} ${fitted.kind}`).toBe(true);
        if (draws && modes.some(({ needs }) => needs.some((amount) => amount[0]! > 0)))
          expect(loads.length, `${vehicle.id} ${fitted.kind}`).toBeGreaterThan(0);
        for (const { stagesW } of loads) {
          expect(stagesW.length).toBeGreaterThan(0);
          expect([...stagesW].sort((a, b) => a - b)).toEqual(stagesW);
          expect(stagesW[0]).toBeGreaterThan(0);
        }
      }
    }
  });

  it("one way in at most on each vehicle", () => {
    for (const vehicle of vehicles) {
      const inlets = fitSystems(vehicle).filter(
        ({ spec, physics }) => physics.mains?.(spec, {}).inlet !== undefined,
      );
      expect(inlets.length, vehicle.id).toBeLessThanOrEqual(1);
    }
  });
});
