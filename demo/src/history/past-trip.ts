import type { Place, Stop, Trip } from "@setfair/engine";
import { addDays } from "../dates.ts";
import type { Draws } from "../season/draws.ts";
import { DEPOT } from "../trips.ts";

/** Towns are real and stand for nothing but their weather. */
const TOWNS: readonly Place[] = (
  [
    ["Aviemore", 57.19, -3.83, 220],
    ["Ullapool", 57.9, -5.16, 10],
    ["Pitlochry", 56.7, -3.73, 95],
    ["Oban", 56.41, -5.47, 10],
    ["Moffat", 55.33, -3.44, 110],
    ["Keswick", 54.6, -3.13, 80],
    ["Whitby", 54.48, -0.61, 30],
    ["Hexham", 54.97, -2.1, 60],
    ["Bala", 52.91, -3.6, 165],
    ["Ludlow", 52.37, -2.72, 90],
  ] as const
).map(([name, latitudeDeg, longitudeDeg, elevationM]) => ({
  name,
  country: "GB",
  latitudeDeg,
  longitudeDeg,
  elevationM,
}));

/** How a place is stayed at: nothing there, taps but no post, or all of it. */
const PITCHES = {
  wild: {
    pitch: { postAmperes: 0, freshWater: false, wasteDrain: false, cassettePoint: false, lpgExchange: false },
    acts: [],
  },
  plain: {
    pitch: { postAmperes: 0, freshWater: true, wasteDrain: true, cassettePoint: true, lpgExchange: false },
    acts: ["fillWater", "emptyWaste", "emptyCassette"],
  },
  full: {
    pitch: { postAmperes: 10, freshWater: true, wasteDrain: true, cassettePoint: true, lpgExchange: false },
    acts: ["plugIn", "fillWater", "emptyWaste", "emptyCassette"],
  },
} as const satisfies Record<string, Pick<Stop, "pitch" | "acts">>;

interface Days {
  readonly from: string;
  readonly to: string;
  readonly people: number;
  /** what the tank holds, L */
  readonly waterLitres: number;
}

const two = (value: number) => String(value).padStart(2, "0");
/** minutes after midnight as a clock */
const clock = (minutes: number) => `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
const minutesOf = (local: string) => Number(local.slice(11, 13)) * 60 + Number(local.slice(14, 16));

/** Where an invented hire of the past went: some nights here and there, a place without anything every other time. */
export function pastTrip(draws: Draws, { from, to, people, waterLitres }: Days): Trip {
  const [first, last] = [from.slice(0, 10), to.slice(0, 10)];
  const home = { distanceKm: draws.whole(20, 60), minutes: 60 };
  const leaveForHome = clock(minutesOf(to) - home.minutes - 15);
  const stops: Stop[] = [];
  for (let day = first; day < last; ) {
    const isWild = stops.length % 2 === first.charCodeAt(9) % 2;
    const nights = isWild ? draws.whole(1, people > 2 ? 2 : 3) : draws.whole(1, 2);
    const until = [addDays(day, nights), last].sort()[0] ?? last;
    const minutes = draws.whole(4, 14) * 15;
    const { pitch, acts } = isWild ? PITCHES.wild : draws.chance(30) ? PITCHES.plain : PITCHES.full;
    stops.push({
      place: draws.oneOf(TOWNS),
      arrive: `${day}T${day === first ? clock(minutesOf(from) + minutes) : clock(11 * 60 + minutes)}`,
      leave: `${until}T${until === last ? leaveForHome : "10:00"}`,
      // fifty kilometres an hour, roads and rests
      drive: { distanceKm: Math.round((minutes / 60) * 50), minutes },
      pitch,
      acts: [...acts],
      // whoever goes on to a place without a tap fills up before leaving
      ...(isWild ? {} : { leaveWithWaterL: waterLitres }),
    });
    day = until;
  }
  return {
    depot: DEPOT,
    depart: from,
    return: to,
    returnDrive: home,
    timeZone: "Europe/London",
    stops,
    departWith: { battery12: 1, lpg: 1, freshWater: 1, wasteWater: 0, cassette: 0, fuel: 1, def: 1 },
    settings: {},
  };
}
