import {
  type LoadItemKind,
  loadPlaces,
  placeTakes,
  seatRows,
  specsOf,
  type VehicleDescription,
} from "@setfair/engine";
import type { Schemas } from "../../../api/client.ts";
import type { HirePageData } from "../use-hire.ts";

type Plan = Schemas["LoadPlan"];

/** A first load for this party: driver and passenger in front, the others behind, as the vehicle's own seats stand. */
export function emptyLoad(page: HirePageData): Plan {
  const vehicle = page.vehicle === null ? null : (page.vehicle.description as VehicleDescription);
  const rows = vehicle === null ? [] : seatRows(vehicle);
  const places = rows.flatMap((row) => Array.from({ length: row.seats }, () => row));
  return {
    seats: page.party.travellers.map(({ id }, k) => {
      const seat = places[k] ?? rows.at(-1);
      return {
        travellerId: id,
        behindFrontAxleM: seat?.behindFrontAxleM ?? (k < 2 ? 0.5 : 2),
        ...(seat === undefined ? {} : { place: seat.place }),
      };
    }),
    items: [],
    waterLitres: 20,
    fuelShare: 1,
    lpgCylinders:
      vehicle === null
        ? 0
        : Math.min(
            4,
            specsOf(vehicle, "lpg").reduce((sum, lpg) => sum + lpg.cylinders, 0),
          ),
  };
}

/** What is added by one touch, commonest first. */
export const THING_KINDS = ["luggage", "food", "bike", "bikeRack", "childSeat", "other"] as const;

/** Usual masses, kg, and the place where each usually goes first; practice, and open to change on the page. */
const USUAL: Readonly<Record<(typeof THING_KINDS)[number], readonly [massKg: number, place: string]>> = {
  luggage: [15, "underBed"],
  food: [20, "lockers"],
  bike: [16, "rack"],
  bikeRack: [18, "rack"],
  childSeat: [8, "floor"],
  other: [10, "floor"],
};

export function newThing(
  kind: (typeof THING_KINDS)[number],
  vehicle: VehicleDescription,
  plan: Plan,
): Plan["items"][number] {
  const [massKg, usual] = USUAL[kind];
  const open = loadPlaces(vehicle, {}, plan.items).filter(({ place }) =>
    placeTakes(place, kind as LoadItemKind),
  );
  const place = open.find((each) => each.place === usual) ?? open[0];
  const { wheelbaseM, rearOverhangM } = vehicle.dimensions;
  const behind = kind === "bikeRack" ? wheelbaseM + rearOverhangM : wheelbaseM / 2;
  return {
    id: newId(plan),
    name: "",
    massKg,
    behindFrontAxleM: Math.round((place?.behindFrontAxleM ?? behind) * 100) / 100,
    removable: kind !== "childSeat",
    movable: kind !== "childSeat" && kind !== "bikeRack",
    kind,
    ...(kind === "bikeRack" ? { place: "rack" as const } : place === undefined ? {} : { place: place.place }),
  };
}

function newId({ items }: Plan): string {
  let k = items.length + 1;
  while (items.some(({ id }) => id === `thing${k}`)) k++;
  return `thing${k}`;
}
