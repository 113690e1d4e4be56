import type { LoadPlan, Party, Place, Stop, Trip, VehicleDescription } from "@setfair/engine";
import { addDays } from "./dates.ts";

/** The depot is invented; towns are real and stand for nothing but their weather. */
export const DEPOT: Place = {
  name: "Marlow Tarn depot",
  country: "GB",
  latitudeDeg: 54.42,
  longitudeDeg: -2.95,
  elevationM: 80,
};
const town = (
  country: string,
  name: string,
  [latitudeDeg, longitudeDeg, elevationM]: readonly [number, number, number],
): Place => ({ name, country, latitudeDeg, longitudeDeg, elevationM });
const gb = (name: string, latitudeDeg: number, longitudeDeg: number, elevationM: number): Place =>
  town("GB", name, [latitudeDeg, longitudeDeg, elevationM]);

const PLUGGED = {
  postAmperes: 10,
  freshWater: true,
  wasteDrain: true,
  cassettePoint: true,
  lpgExchange: false,
};
const WILD = {
  postAmperes: 0,
  freshWater: false,
  wasteDrain: false,
  cassettePoint: false,
  lpgExchange: false,
};
const PLAIN = { postAmperes: 0, freshWater: true, wasteDrain: true, cassettePoint: true, lpgExchange: false };

interface Leg {
  readonly place: Place;
  readonly day: number;
  readonly nights: number;
  readonly km: number;
  readonly minutes: number;
  readonly pitch: Stop["pitch"];
  readonly acts: Stop["acts"];
}

const HIGHLANDS: readonly Leg[] = [
  {
    place: gb("Aviemore", 57.19, -3.83, 220),
    day: 0,
    nights: 1,
    km: 430,
    minutes: 330,
    pitch: PLUGGED,
    acts: ["plugIn", "fillWater"],
  },
  {
    place: gb("Ullapool", 57.9, -5.16, 10),
    day: 1,
    nights: 2,
    km: 150,
    minutes: 150,
    pitch: PLAIN,
    acts: ["fillWater", "emptyWaste"],
  },
  {
    place: gb("Durness", 58.57, -4.75, 30),
    day: 3,
    nights: 1,
    km: 110,
    minutes: 130,
    pitch: PLAIN,
    acts: ["fillWater", "emptyWaste", "emptyCassette"],
  },
  { place: gb("Portree", 57.41, -6.2, 40), day: 4, nights: 2, km: 290, minutes: 310, pitch: WILD, acts: [] },
  {
    place: gb("Pitlochry", 56.7, -3.73, 95),
    day: 6,
    nights: 1,
    km: 270,
    minutes: 270,
    pitch: PLUGGED,
    acts: ["plugIn", "fillWater", "emptyWaste", "emptyCassette"],
  },
];
const CANTERBURY = gb("Canterbury", 51.28, 1.08, 20);
const ALPS: readonly Leg[] = [
  { place: CANTERBURY, day: 0, nights: 1, km: 560, minutes: 400, pitch: PLUGGED, acts: ["plugIn"] },
  {
    place: town("FR", "Reims", [49.26, 4.03, 85]),
    day: 1,
    nights: 1,
    km: 320,
    minutes: 270,
    pitch: PLAIN,
    acts: ["fillWater", "emptyWaste", "emptyCassette"],
  },
  {
    place: town("DE", "Freudenstadt", [48.46, 8.41, 730]),
    day: 2,
    nights: 4,
    km: 430,
    minutes: 310,
    pitch: PLUGGED,
    acts: ["plugIn", "fillWater", "emptyWaste", "emptyCassette"],
  },
  {
    place: town("AT", "Zell am See", [47.32, 12.79, 757]),
    day: 6,
    nights: 5,
    km: 480,
    minutes: 380,
    pitch: PLUGGED,
    acts: ["plugIn", "fillWater", "emptyWaste", "emptyCassette"],
  },
  {
    place: town("DE", "Trier", [49.75, 6.64, 137]),
    day: 11,
    nights: 2,
    km: 650,
    minutes: 480,
    pitch: PLUGGED,
    acts: ["plugIn", "fillWater", "emptyWaste", "emptyCassette"],
  },
  { place: CANTERBURY, day: 13, nights: 1, km: 520, minutes: 420, pitch: PLUGGED, acts: ["plugIn"] },
];
const lakes = (nights: number): readonly Leg[] => [
  {
    place: gb("Keswick", 54.6, -3.13, 80),
    day: 0,
    nights,
    km: 40,
    minutes: 60,
    pitch: PLUGGED,
    acts: ["plugIn", "fillWater", "emptyWaste", "emptyCassette"],
  },
];

function legsFrom(legs: readonly Leg[], date: string): Stop[] {
  return legs.map(({ place, day, nights, km, minutes, pitch, acts }) => ({
    place,
    arrive: `${addDays(date, day)}T${day === 0 ? "20:00" : "15:00"}`,
    leave: `${addDays(date, day + nights)}T10:00`,
    drive: { distanceKm: km, minutes },
    pitch: { ...pitch },
    acts: [...acts],
  }));
}

function tripOf(stops: Stop[], depart: string, back: string, home: Trip["returnDrive"]): Trip {
  return {
    depot: DEPOT,
    depart,
    return: back,
    returnDrive: home,
    timeZone: "Europe/London",
    stops,
    departWith: { battery12: 1, lpg: 1, freshWater: 0.2, wasteWater: 0, cassette: 0, fuel: 1, def: 1 },
    settings: {},
  };
}

/** Seven nights in the Highlands, three of them with a post. */
export const highlandsTrip = (friday: string): Trip =>
  tripOf(legsFrom(HIGHLANDS, friday), `${friday}T13:30`, `${addDays(friday, 7)}T15:30`, {
    distanceKm: 300,
    minutes: 270,
  });
/** Fourteen nights to the Alps and back, by ferry. */
export const alpsTrip = (date: string): Trip =>
  tripOf(legsFrom(ALPS, date), `${date}T12:00`, `${addDays(date, 14)}T17:30`, {
    distanceKm: 560,
    minutes: 400,
  });
/** Some nights on one pitch near the depot, with a post. */
export const lakesTrip = (date: string, nights: number): Trip =>
  tripOf(legsFrom(lakes(nights), date), `${date}T12:00`, `${addDays(date, nights)}T11:00`, {
    distanceKm: 40,
    minutes: 55,
  });

export const twoAdults = (experience: Party["experience"] = "first"): Party => ({
  travellers: [
    { id: "t1", kind: "adult", massKg: 78 },
    { id: "t2", kind: "adult", massKg: 68 },
  ],
  sleepers: 2,
  dogs: 0,
  experience,
});

export const loadForTwo = (): LoadPlan => ({
  seats: [
    { travellerId: "t1", behindFrontAxleM: 0.5 },
    { travellerId: "t2", behindFrontAxleM: 0.5 },
  ],
  items: [
    { id: "luggage", name: "Luggage", massKg: 50, behindFrontAxleM: 3.2, removable: true },
    { id: "food", name: "Food and crockery", massKg: 25, behindFrontAxleM: 2.4, removable: true },
  ],
  waterLitres: 20,
  fuelShare: 0.9,
  lpgCylinders: 2,
});

/** What a party of so many usually brings, kept small where the payload is (practice). */
export function loadFor(vehicle: VehicleDescription, party: Party): LoadPlan {
  const cylinders = vehicle.systems.find(({ kind }) => kind === "lpg")?.spec.cylinders;
  const people = party.travellers.length;
  const wheelbase = vehicle.dimensions.wheelbaseM;
  return {
    seats: party.travellers.map(({ id }, k) => ({ travellerId: id, behindFrontAxleM: k < 2 ? 0.5 : 2 })),
    items: [
      {
        id: "luggage",
        name: "Luggage",
        massKg: 14 * people,
        behindFrontAxleM: wheelbase - 0.4,
        removable: true,
      },
      {
        id: "food",
        name: "Food and crockery",
        massKg: 10 + 5 * people,
        behindFrontAxleM: 2.4,
        removable: true,
      },
    ],
    waterLitres: 20,
    fuelShare: 0.9,
    lpgCylinders: typeof cylinders === "number" ? cylinders : 0,
  };
}
