import { expect, it } from "vitest";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import { checkLoad } from "./check-load.ts";

it("a vehicle described before the regulation of 2021 is weighed with the margin of before, not refused with a fault of ours", () => {
  const load = { seats: [], items: [], waterLitres: 20, fuelShare: 1, lpgCylinders: 0 };
  const party = {
    travellers: [{ id: "a", kind: "adult" as const }],
    dogs: 0,
    experience: "first" as const,
  };
  const at = (validFrom: string) =>
    checkLoad({
      vehicle: panelVan({ firstRegistered: validFrom, validFrom }),
      party,
      load,
    }).result.total;
  const [old, later] = [at("2019-04-01"), at("2026-04-01")];
  expect(old.margin.value).toBeCloseTo(later.margin.value, 9);
  expect(JSON.stringify(old)).toBe(JSON.stringify(later));
});
