import { figure } from "../../base/figure.ts";
import { rangeKm } from "../../formulas/trip.ts";
import { storesAtStart } from "./live-trip.ts";
import type { TripPlan } from "./plan-trip.ts";
import type { RangeForecast } from "./types.ts";

/** How far the vehicle goes with what is aboard at departure and when full, each down to its reserve; and the road of the trip. */
export function listRanges({ input, systems }: TripPlan): RangeForecast[] {
  const { vehicle, trip } = input;
  const start = storesAtStart(vehicle, systems, trip);
  const roadKm = trip.stops.reduce((km, { drive }) => km + drive.distanceKm, trip.returnDrive.distanceKm);
  const about = {
    floorAreaM2: vehicle.body.floorAreaM2,
    consumptionLPer100Km: vehicle.consumption.litresPer100Km,
  };
  return systems.flatMap(({ spec, physics }): RangeForecast[] => {
    const use = physics.road?.(spec, about) ?? null;
    const held = use === null ? undefined : start.get(use.store);
    if (use === null || held === undefined || use.perKm <= 0) return [];
    const { perKm, reserveShare } = use;
    const reserve = reserveShare * held.capacity;
    const kilometres = (level: number) =>
      figure(
        rangeKm(level, reserve, perKm),
        "km",
        "trip.range",
        { level, reserve, perKm, reserveShare },
        "computed",
      );
    return [
      {
        store: use.store,
        atDeparture: kilometres(held.level),
        whenFull: kilometres(held.capacity),
        reserve: figure(100 * reserveShare, "%", "-", {}, "default"),
        road: figure(roadKm, "km", "-", { stops: trip.stops.length }, "declared"),
      },
    ];
  });
}
