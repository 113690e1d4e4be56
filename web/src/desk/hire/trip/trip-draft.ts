import type { Session } from "../../session.ts";
import type { HirePageData } from "../use-hire.ts";

export type Trip = NonNullable<HirePageData["trip"]>;
export type TripStop = Trip["stops"][number];

/** Road over the straight line, and mean speed of a loaded motorhome: common practice, no source; typed over at will. */
const ROAD_OVER_LINE = 1.35;
const KM_PER_HOUR = 62;

/** Great-circle distance, km. */
function lineKm(a: Trip["depot"], b: Trip["depot"]): number {
  const rad = Math.PI / 180;
  const dLat = (b.latitudeDeg - a.latitudeDeg) * rad;
  const dLon = (b.longitudeDeg - a.longitudeDeg) * rad;
  const h =
    Math.sin(dLat / 2) ** 2 +
    Math.cos(a.latitudeDeg * rad) * Math.cos(b.latitudeDeg * rad) * Math.sin(dLon / 2) ** 2;
  return 2 * 6371 * Math.asin(Math.min(1, Math.sqrt(h)));
}

/** A first guess of a drive, until somebody types a better one. */
export function guessDrive(from: Trip["depot"], to: Trip["depot"]): TripStop["drive"] {
  const distanceKm = Math.round(lineKm(from, to) * ROAD_OVER_LINE);
  return { distanceKm, minutes: Math.min(1440, Math.round((distanceKm / KM_PER_HOUR) * 60)) };
}

/** Fills in drives that nobody has given yet (0 km), from place to place. */
export function withDrives(trip: Trip): Trip {
  const places = [trip.depot, ...trip.stops.map((stop) => stop.place)];
  const stops = trip.stops.map((stop, k) => {
    const before = places[k] ?? trip.depot;
    return stop.drive.distanceKm > 0 || stop.place.name === ""
      ? stop
      : { ...stop, drive: guessDrive(before, stop.place) };
  });
  const last = places.at(-1) ?? trip.depot;
  const returnDrive =
    trip.returnDrive.distanceKm > 0 || stops.length === 0 ? trip.returnDrive : guessDrive(last, trip.depot);
  return { ...trip, stops, returnDrive };
}

/** A trip with no stops yet, between the hire's own times. */
export function emptyTrip(hire: HirePageData["hire"], depot: Session["depot"]): Trip {
  return {
    depot: depot.place,
    depart: hire.from,
    return: hire.to,
    returnDrive: { distanceKm: 0, minutes: 0 },
    timeZone: depot.timeZone,
    stops: [],
    departWith: {},
    settings: {},
  };
}

const addHours = (local: string, hours: number): string =>
  new Date(Date.parse(`${local}:00Z`) + hours * 3_600_000).toISOString().slice(0, 16);

/**
 * Whether a stop that was given a name of its own still has the point of the place before it (the depot, or the stop): its
 * weather, its height and its drive would then be that place's.
 */
export function isAtPlaceBefore(trip: Pick<Trip, "depot" | "stops">, stop: number): boolean {
  const place = trip.stops[stop]?.place;
  const before = trip.stops[stop - 1]?.place ?? trip.depot;
  return (
    place !== undefined &&
    place.name.trim() !== "" &&
    place.name !== before.name &&
    place.latitudeDeg === before.latitudeDeg &&
    place.longitudeDeg === before.longitudeDeg
  );
}

/** The next stop, from when the one before is left, for one night. */
export function newStop(trip: Trip): TripStop {
  const before = trip.stops.at(-1);
  const arrive = addHours(before?.leave ?? trip.depart, 3);
  return {
    place: { ...(before?.place ?? trip.depot), name: "" },
    arrive,
    leave: `${addHours(arrive, 24).slice(0, 10)}T10:00`,
    drive: { distanceKm: 0, minutes: 0 },
    pitch: { postAmperes: 0, freshWater: true, wasteDrain: true, cassettePoint: true, lpgExchange: false },
    acts: [],
  };
}
