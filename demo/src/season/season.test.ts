import { deriveVehicle } from "@setfair/engine";
import { describe, expect, it } from "vitest";
import { addDays } from "../dates.ts";
import { demoTerms } from "../terms.ts";
import { demoVehicles } from "../vehicles.ts";
import { easterOf, isSchoolHoliday, weekdayOf } from "./calendar.ts";
import { makeSeason } from "./make-season.ts";

const seasonOn = (today: string) =>
  makeSeason({ today, terms: demoTerms(today), vehicles: demoVehicles(today), taken: [] });

describe("the season of the demo", () => {
  it("knows Easter", () => {
    expect([2024, 2025, 2026, 2027, 2038].map(easterOf)).toEqual([
      "2024-03-31",
      "2025-04-20",
      "2026-04-05",
      "2027-03-28",
      "2038-04-25",
    ]);
  });

  it("is the same for the same day", () => {
    expect(seasonOn("2026-11-25")).toEqual(seasonOn("2026-11-25"));
  });

  it("keeps to belts and beds, to 3 to 14 nights, and goes out mostly on Fridays and Saturdays", () => {
    const hires = Array.from({ length: 12 }, (_, k) => seasonOn(addDays("2026-11-25", 31 * k))).flat();
    const vehicles = new Map(demoVehicles("2026-11-25").map((vehicle) => [vehicle.id, vehicle]));
    for (const { vehicleId, party, from, to } of hires) {
      const nights = (Date.parse(to.slice(0, 10)) - Date.parse(from.slice(0, 10))) / 86_400_000;
      expect(nights).toBeGreaterThanOrEqual(3);
      expect(nights).toBeLessThanOrEqual(14);
      const vehicle = vehicles.get(vehicleId ?? "");
      if (vehicle === undefined) continue;
      const { belts, berths } = deriveVehicle(vehicle.document.description);
      expect(party.travellers.length).toBeLessThanOrEqual(Math.min(belts.value, berths.value));
    }
    const weekend = hires.filter(({ from }) => weekdayOf(from.slice(0, 10)) >= 5).length;
    expect(weekend / hires.length).toBeGreaterThan(0.4);
    const families = (inHoliday: boolean) => {
      const these = hires.filter(({ from }) => isSchoolHoliday(from.slice(0, 10)) === inHoliday);
      return these.filter(({ party }) => party.travellers.length > 2).length / these.length;
    };
    expect(families(true)).toBeGreaterThan(families(false));
  });

  it("names only people with telephones from the ranges kept for drama and mail at example.org", () => {
    for (const { customer } of seasonOn("2026-11-25")) {
      expect(customer.telephone).toMatch(/^(07700 900\d{3}|01632 960\d{3})$/);
      expect(customer.email).toMatch(/@example\.org$/);
    }
  });
});
