import { HERON, twoAdults } from "@setfair/demo";
import { addDays, type Place, type Stop, type TripInput } from "@setfair/engine";

/** Two places far enough apart in height to have weather of their own. */
const LOCH: Place = {
  name: "By the loch",
  country: "GB",
  latitudeDeg: 57.2,
  longitudeDeg: -3.83,
  elevationM: 220,
};
const HILL: Place = {
  name: "In the hills",
  country: "GB",
  latitudeDeg: 57.13,
  longitudeDeg: -3.67,
  elevationM: 330,
};
const DEPOT: Place = {
  name: "Depot",
  country: "GB",
  latitudeDeg: 54.42,
  longitudeDeg: -2.95,
  elevationM: 80,
};
const FIRST_DAY = "2026-05-01";
const NIGHTS = 2;

function stopOn(day: number, days: number, plugged: boolean): Stop {
  return {
    place: plugged ? LOCH : HILL,
    arrive: `${addDays(FIRST_DAY, day)}T16:00`,
    leave: `${addDays(FIRST_DAY, Math.min(day + NIGHTS, days - 1))}T10:00`,
    drive: { distanceKm: 120, minutes: 120 },
    pitch: {
      postAmperes: plugged ? 10 : 0,
      freshWater: plugged,
      wasteDrain: plugged,
      cassettePoint: plugged,
      lpgExchange: plugged,
    },
    acts: plugged ? ["plugIn", "fillWater", "emptyWaste", "emptyCassette", "exchangeLpg"] : [],
  };
}

/**
 * The panel van of the invented fleet on the road from noon to noon, two nights without a post, two with one.
 * @param days length of the trip, 2 to 60
 */
export function tour(days: number, runs: number): TripInput {
  const stops: Stop[] = [];
  for (let day = 0; day + 1 < days; day += NIGHTS) stops.push(stopOn(day, days, stops.length % 2 === 1));
  return {
    vehicle: HERON,
    party: twoAdults(),
    trip: {
      depot: DEPOT,
      depart: `${FIRST_DAY}T12:00`,
      return: `${addDays(FIRST_DAY, days)}T12:00`,
      returnDrive: { distanceKm: 300, minutes: 270 },
      timeZone: "Europe/London",
      stops,
      departWith: { battery12: 1, lpg: 1, freshWater: 0.5, wasteWater: 0, cassette: 0, fuel: 1, def: 1 },
      settings: {},
    },
    runs,
    seed: 1,
    spread: runs > 1,
  };
}
