import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applies } from "../systems/contract.ts";
import { systemModule } from "../systems/registry.ts";
import { parseVehicle } from "../vehicle/parse.ts";
import { composeBriefing } from "./briefing/compose-briefing.ts";
import { composeWalkRound } from "./condition/compose-walk-round.ts";
import { checkLoad } from "./loading/check-load.ts";
import { forecastTrip } from "./trip/forecast-trip.ts";
import { mayHighlands, newYearMountains } from "./trip/try-trips.ts";

/** The invented fleet of the examples. */
const FLEET = ["cv2", "pv2", "lp4", "oc6", "ac4", "ze2", "wl4"] as const;
const adult = (id: string, massKg: number) => ({ id, kind: "adult" as const, massKg });
const luggage = { id: "luggage", name: "luggage", massKg: 50, behindFrontAxleM: 3, removable: true };

describe.each(FLEET)("the whole tool over %s", (name) => {
  const url = new URL(`../../../examples/vehicles/${name}.json`, import.meta.url);
  const described = parseVehicle(JSON.parse(readFileSync(url, "utf8")));

  it("forecasts a trip in May and one at New Year, and every store balances", () => {
    for (const trip of [mayHighlands(), newYearMountains()]) {
      const { result } = forecastTrip({ ...trip, vehicle: described, runs: 20, audit: true });
      for (const { audit, store } of result.stores) expect(audit!.residual, store).toBeLessThan(1e-9);
    }
  });

  it("checks a load, and asks for nothing that the description lacks", () => {
    const { result } = checkLoad({
      vehicle: described,
      party: { travellers: [adult("a", 80), adult("b", 70)], dogs: 0, experience: "some" },
      driverId: "a",
      load: {
        seats: [],
        items: [luggage],
        waterLitres: 20,
        fuelShare: described.masses.miroBasis.fuelShare,
        lpgCylinders: described.masses.miroBasis.lpgCylinders,
      },
    });
    expect(result.legal).toBe(true);
    expect(result.tyres).not.toBeNull();
  });

  it("composes briefing and walk-round from every fitted system that has any", () => {
    const briefing = composeBriefing({
      vehicle: described,
      situation: {
        country: "FR",
        nightsOffHookUp: 3,
        coldestNightC: -4,
        firstTime: true,
        people: 2,
        children: 0,
      },
      slotMinutes: 240,
    });
    expect(briefing.findings).toEqual([]);
    const told = new Set(
      [...briefing.result.demonstrate, ...briefing.result.reading].map(({ systemKind }) => systemKind),
    );
    const checked = new Set(
      (["out", "back"] as const).flatMap((when) =>
        composeWalkRound(described, when).steps.flatMap(({ checks }) =>
          checks.map(({ systemKind }) => systemKind),
        ),
      ),
    );
    for (const { kind } of described.systems) {
      const { briefing: cards, checks } = systemModule(kind);
      if (applies(cards)) expect(told, kind).toContain(kind);
      if (applies(checks)) expect(told.has(kind) || checked.has(kind), kind).toBe(true);
    }
  });
});
