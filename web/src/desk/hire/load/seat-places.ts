import type { seatRows } from "@setfair/engine";

type SeatRow = ReturnType<typeof seatRows>[number];

interface Sits {
  readonly travellerId: string;
  readonly behindFrontAxleM: number;
  readonly place?: SeatRow["place"] | undefined;
}

/**
 * The seat of each person by name. A load that says only how far behind the axle somebody sits is read so that nobody
 * sits on another's lap while a seat of that row is free; null where no seat stands there.
 */
export function seatPlaces(
  seats: readonly Sits[],
  rows: readonly SeatRow[],
): ReadonlyMap<string, SeatRow["place"] | null> {
  const left = new Map(rows.map((row) => [row.place, row.seats]));
  const take = (place: SeatRow["place"]) => {
    left.set(place, (left.get(place) ?? 0) - 1);
    return place;
  };
  const named = new Map(
    seats.flatMap((seat) => (seat.place === undefined ? [] : [[seat, take(seat.place)]])),
  );
  return new Map(
    seats.map((seat) => {
      const own = named.get(seat);
      if (own !== undefined) return [seat.travellerId, own];
      const here = rows.filter(({ behindFrontAxleM }) => behindFrontAxleM === seat.behindFrontAxleM);
      const row = here.find(({ place }) => (left.get(place) ?? 0) > 0) ?? here[0];
      return [seat.travellerId, row === undefined ? null : take(row.place)];
    }),
  );
}
