import { describe, expect, it } from "vitest";
import { panelVan, stopAt } from "../try-trips.ts";
import type { TripInput } from "../types.ts";
import { planStops } from "./plan-stops.ts";

/** Four people five days without a service point, then one that has everything, for four more. */
function longWithout(acts: boolean): TripInput {
  const service = stopAt("2026-05-14T12:00", "2026-05-18T08:00", true);
  return {
    vehicle: panelVan(),
    party: {
      travellers: ["a", "b", "c", "d"].map((id) => ({ id, kind: "adult" as const })),
      dogs: 0,
      experience: "first",
    },
    runs: 60,
    trip: {
      depot: { name: "Depot", country: "GB", latitudeDeg: 55.95, longitudeDeg: -3.19, elevationM: 60 },
      depart: "2026-05-09T12:00",
      return: "2026-05-18T12:00",
      returnDrive: { distanceKm: 120, minutes: 120 },
      timeZone: "Europe/London",
      stops: [
        stopAt("2026-05-09T16:00", "2026-05-14T09:00", false),
        acts ? service : { ...service, acts: [] },
      ],
      departWith: {},
      settings: {},
    },
  };
}

describe("a plan that cannot avert the first trouble", () => {
  it("still fills and empties at the service point that comes after it", () => {
    for (const acts of [true, false]) {
      const { result } = planStops(longWithout(acts));
      expect(result.chances.find(({ store }) => store === "cassette")!.withPlan).toBeGreaterThan(0.5);
      expect(result.cards[1]!.acts).toEqual(
        expect.arrayContaining(["emptyCassette", "emptyWaste", "fillWater"]),
      );
      expect(result.cards[1]!.dropped).not.toContain("emptyCassette");
      expect(result.otherPitches.map(({ stop }) => stop)).toContain(0);
    }
  });
});
