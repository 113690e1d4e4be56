import type { VehicleDescription } from "@setfair/engine";
import type { Schemas } from "../../../api/client.ts";
import type { HirePageData } from "../use-hire.ts";

const numberIn = (spec: Readonly<Record<string, unknown>> | undefined, field: string): number | undefined => {
  const value = spec?.[field];
  return typeof value === "number" ? value : undefined;
};

/** A first load for this party: two in front, the others behind, as the vehicle's own seats stand. */
export function emptyLoad(page: HirePageData): Schemas["LoadPlan"] {
  const { systems } =
    page.vehicle === null ? { systems: [] } : (page.vehicle.description as VehicleDescription);
  const specOf = (kind: string) => systems.find((system) => system.kind === kind)?.spec;
  const front = numberIn(specOf("seatsBelts"), "frontRowM") ?? 0.5;
  const rear = numberIn(specOf("seatsBelts"), "rearRowM") ?? 2;
  return {
    seats: page.party.travellers.map(({ id }, k) => ({
      travellerId: id,
      behindFrontAxleM: k < 2 ? front : rear,
    })),
    items: [],
    waterLitres: 20,
    fuelShare: 1,
    lpgCylinders: Math.min(4, numberIn(specOf("lpg"), "cylinders") ?? 0),
  };
}
