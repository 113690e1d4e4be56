import { type Figure, figure } from "../../base/figure.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import type { LoadItem, LoadItemKind, LoadPlace, LoadPlan, SeatPlace } from "../situation.ts";

/** A place to stow things: where it lies, what it takes, and the most it carries by its label. */
export interface LoadPlaceOf {
  readonly place: LoadPlace;
  readonly behindFrontAxleM: number;
  /** null where no limit is described */
  readonly limit: Figure | null;
  /** mass of the place itself that its label counts, kg (a rack counts its own) */
  readonly ownKg: number;
}

/** Seats of one row, for so many people. */
export interface SeatRow {
  readonly place: SeatPlace;
  readonly behindFrontAxleM: number;
  readonly seats: number;
}

/** Which kinds of thing a place takes; practice. A thing on the wall (an awning) stays there. */
const TAKES: Readonly<Record<LoadPlace, readonly LoadItemKind[]>> = {
  cab: ["luggage", "food", "extra", "other"],
  floor: ["luggage", "food", "bedding", "extra", "other"],
  lockers: ["luggage", "food", "bedding", "extra", "other"],
  underBed: ["luggage", "food", "bedding", "extra", "other"],
  overCab: ["luggage", "bedding"],
  garage: ["luggage", "food", "bedding", "bike", "extra", "other"],
  roof: [],
  rack: ["bike"],
  wall: [],
};

/** Whether a place takes a thing of this kind (practice). */
export const placeTakes = (place: LoadPlace, kind: LoadItemKind): boolean => TAKES[place].includes(kind);

/**
 * The places of this vehicle, front to rear, metres behind the front axle. They follow from body style,
 * dimensions and what is fitted (practice), and from a rack among the things carried; limits from the rack's label, the upper bed's and the load plan.
 */
export function loadPlaces(
  vehicle: VehicleDescription,
  limits: LoadPlan["placeLimitsKg"] = {},
  items: readonly Pick<LoadItem, "kind">[] = [],
): readonly LoadPlaceOf[] {
  const { wheelbaseM, rearOverhangM } = vehicle.dimensions;
  const rear = wheelbaseM + rearOverhangM;
  const bed = specsOf(vehicle, "beds")[0];
  const rack = specsOf(vehicle, "bikeRack")[0];
  const upper = specsOf(vehicle, "beds").find((each) => each.upper);
  const front = specsOf(vehicle, "seatsBelts")[0]?.frontRowM ?? 0.5;
  const of = (place: LoadPlace, at: number, labelKg?: number, ownKg = 0): LoadPlaceOf => {
    const most = limits[place] ?? labelKg;
    const limit = most === undefined ? null : figure(most, "kg", "-", { place }, "declared");
    return { place, behindFrontAxleM: Math.round(at * 100) / 100, limit, ownKg };
  };
  const bedAt = Math.min(bed?.behindFrontAxleM ?? wheelbaseM * 1.1, rear - 0.6);
  return [
    of("cab", front + 0.4),
    ...(vehicle.bodyStyle === "overcab" ? [of("overCab", front, upper?.maxKgEach)] : []),
    of("floor", wheelbaseM * 0.5),
    of("lockers", wheelbaseM * 0.7),
    of("roof", wheelbaseM * 0.6),
    of("underBed", bedAt),
    ...garages(vehicle).map(({ behindFrontAxleM, maxKg }) => of("garage", behindFrontAxleM, maxKg)),
    ...(rack === undefined
      ? items.some(({ kind }) => kind === "bikeRack")
        ? [of("rack", rear + 0.2)]
        : []
      : [of("rack", Math.max(rack.behindFrontAxleM, rear), rack.maxKg, rack.massKg)]),
  ];
}

/** The garage as described; a coachbuilt body without one described has a locker across the tail (practice). */
function garages({ systems, bodyStyle, dimensions }: VehicleDescription): readonly Garage[] {
  const described = specsOf({ systems }, "garage").slice(0, 1);
  if (described.length > 0) return described;
  const tail = dimensions.wheelbaseM + dimensions.rearOverhangM - 0.5;
  return ["lowProfile", "overcab", "aClass"].includes(bodyStyle) ? [{ behindFrontAxleM: tail }] : [];
}

interface Garage {
  readonly behindFrontAxleM: number;
  readonly maxKg?: number;
}

/** The rows of belted seats, as described: driver, passenger, then those behind. */
export function seatRows(vehicle: VehicleDescription): readonly SeatRow[] {
  const seats = specsOf(vehicle, "seatsBelts")[0];
  const belts = specsOf(vehicle, "seatsBelts").reduce((sum, each) => sum + each.beltedSeats, 0);
  const front = seats?.frontRowM ?? 0.5;
  const rear = seats?.rearRowM ?? 2;
  const rows: readonly SeatRow[] = [
    { place: "driver", behindFrontAxleM: front, seats: Math.min(1, belts) },
    { place: "passenger", behindFrontAxleM: front, seats: Math.min(1, belts - 1) },
    { place: "rowTwo", behindFrontAxleM: rear, seats: belts - 2 },
  ];
  return rows.filter((row) => row.seats > 0);
}
