import { readdirSync, readFileSync } from "node:fs";
import { composeWalkRound, parseVehicle } from "@setfair/engine";
import { describe, expect, it } from "vitest";
import { countTaps, minutesOf } from "./count-taps.ts";

const FOLDER = new URL("../../../examples/vehicles/", import.meta.url);
const fleet = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".json"))
  .map((name) => parseVehicle(JSON.parse(readFileSync(new URL(name, FOLDER), "utf8"))));
const rounds = fleet.flatMap((vehicle) =>
  (["out", "back"] as const).map((when) => ({
    name: `${vehicle.id} ${when}`,
    round: composeWalkRound(vehicle, when),
  })),
);

describe("touches of a walk-round", () => {
  it("a look without a photograph costs none of its own, and one with a photograph two", () => {
    for (const { name, round } of rounds) {
      const { taps, photographs, readings, counts, sides } = countTaps(round);
      const others = taps - 2 * photographs - counts - 2 * sides;
      // digits of the readings, and the signing
      expect(others, name).toBeLessThanOrEqual(readings * 8 + 4);
    }
  });

  it("every one of the fleet is walked round in at most 145 touches and a quarter of an hour", () => {
    for (const { name, round } of rounds) {
      const count = countTaps(round);
      expect(count.taps, name).toBeLessThanOrEqual(145);
      expect(minutesOf(count), name).toBeLessThanOrEqual(15);
    }
  });

  it("asks for the photograph of each whole side, and for each that a check wants", () => {
    for (const { name, round } of rounds) {
      const wanted = round.steps.flatMap(({ checks }) => checks).filter(({ photograph }) => photograph);
      const withPart = wanted.filter(({ part }) => part !== undefined).length;
      const { photographs } = countTaps(round);
      expect(photographs, name).toBeGreaterThanOrEqual(4 + withPart);
      expect(photographs, name).toBeLessThanOrEqual(4 + wanted.length);
    }
  });
});
