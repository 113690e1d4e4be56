/** Vehicles and trips that the tests of this room and the bench live through. All of it is invented. */
import type { Stop } from "../situation.ts";
import type { TripInput } from "./types.ts";

type Vehicle = TripInput["vehicle"];

/** The panel van conversion of the demonstration fleet, as far as a trip needs it. */
export function panelVan(): Vehicle {
  const system = (id: string, kind: string, spec: Record<string, unknown> = {}) => ({ id, kind, spec });
  return {
    id: "PV2",
    name: "Panel van conversion",
    registration: "XX00 PVC",
    bodyStyle: "panelVanConversion",
    validFrom: "2026-01-01",
    firstRegistered: "2023-04-01",
    fuel: "diesel",
    category: "M1",
    emissionClass: "Euro 6",
    dimensions: { lengthM: 5.99, widthM: 2.05, heightM: 2.65, wheelbaseM: 3.8, rearOverhangM: 1.2 },
    masses: {
      mamKg: 3500,
      technicalMaxKg: 3500,
      miroKg: 2930,
      miroBasis: { fuelShare: 0.9, driverKg: 75, waterShare: 0, lpgCylinders: 1, weighed: false },
      miroFrontKg: 1500,
      axleMaxKg: { front: 1850, rear: 2000 },
      options: [{ name: "awning", massKg: 45, behindFrontAxleM: 2.6 }],
    },
    body: { floorAreaM2: 7, volumeM3: 12, lossWK: 55, capacityWhK: 250, airChangesPerHour: 1 },
    consumption: { litresPer100Km: 10.5 },
    systems: [
      system("battery", "leisureBattery", { chemistry: "agm", ratedAh: 95 }),
      system("gas", "lpg", {
        arrangement: "exchange",
        cylinders: 2,
        kgEach: 6,
        tareKgEach: 8,
        hoseDate: "2024-03-01",
      }),
      system("heater", "heating", { source: "gasElectric", withHotWater: true }),
      system("fridge", "fridge", { type: "absorption" }),
      system("hook-up", "hookUp"),
      system("charging", "charging"),
      system("solar", "solar", { peakW: 100 }),
      system("hot-water", "hotWater", { source: "gasElectric" }),
      system("hob", "cooking"),
      system("water", "freshWater", { litres: 95 }),
      system("waste", "wasteWater", { litres: 90 }),
      system("toilet", "cassetteToilet"),
      system("fuel", "fuel"),
      system("def", "def"),
      system("lights", "lights"),
    ],
  };
}

const highlands = {
  name: "Pitch by the loch",
  country: "GB",
  latitudeDeg: 57.2,
  longitudeDeg: -3.83,
  elevationM: 230,
};
const mountain = {
  name: "Car park under the hills",
  country: "GB",
  latitudeDeg: 57.13,
  longitudeDeg: -3.67,
  elevationM: 330,
};
const depot = { name: "Depot", country: "GB", latitudeDeg: 55.95, longitudeDeg: -3.19, elevationM: 60 };

/** A stop with or without a post and services. */
export function stopAt(
  arrive: string,
  leave: string,
  serviced: boolean,
  place: Stop["place"] = highlands,
): Stop {
  return {
    place,
    arrive,
    leave,
    drive: { distanceKm: 120, minutes: 120 },
    pitch: {
      postAmperes: serviced ? 10 : 0,
      freshWater: serviced,
      wasteDrain: serviced,
      cassettePoint: serviced,
      lpgExchange: false,
    },
    acts: serviced ? ["plugIn", "fillWater", "emptyWaste", "emptyCassette"] : [],
  };
}

const couple: TripInput["party"] = {
  travellers: [
    { id: "a", kind: "adult" },
    { id: "b", kind: "adult" },
  ],
  dogs: 0,
  experience: "first",
};

/** Seven nights in May: two off-grid, then a serviced pitch, and so on. */
export function mayHighlands(): TripInput {
  return {
    vehicle: panelVan(),
    party: couple,
    trip: {
      depot,
      depart: "2026-05-09T14:00",
      return: "2026-05-16T10:00",
      returnDrive: { distanceKm: 200, minutes: 210 },
      timeZone: "Europe/London",
      stops: [
        stopAt("2026-05-09T18:00", "2026-05-11T10:00", false),
        stopAt("2026-05-11T15:00", "2026-05-13T10:00", true),
        stopAt("2026-05-13T15:00", "2026-05-14T10:00", false, mountain),
        stopAt("2026-05-14T15:00", "2026-05-16T06:00", true),
      ],
      departWith: {},
      settings: {},
    },
  };
}

/** New Year in the hills, four nights off-grid. */
export function newYearMountains(): TripInput {
  return {
    vehicle: panelVan(),
    party: couple,
    trip: {
      depot,
      depart: "2026-12-29T12:00",
      return: "2027-01-02T16:00",
      returnDrive: { distanceKm: 210, minutes: 210 },
      timeZone: "Europe/London",
      stops: [stopAt("2026-12-29T16:00", "2027-01-02T11:00", false, mountain)],
      departWith: {},
      settings: {},
    },
  };
}
