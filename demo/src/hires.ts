import { NOTHING_ABROAD } from "@setfair/server";
import { addDays, mayFriday } from "./dates.ts";
import { DEMO_TOWN, type DemoCustomer, type DemoHire, demoDriver } from "./demo-hire.ts";
import type { TakenDays } from "./season/make-season.ts";
import { alpsTrip, highlandsTrip, lakesTrip, loadForTwo, twoAdults } from "./trips.ts";

const person = (name: string, number: string, place: string): DemoCustomer => ({
  name,
  telephone: `07700 900${number}`,
  email: `${name.toLowerCase().replaceAll(/[^a-z]+/g, ".")}@example.org`,
  address: `${place}, ${DEMO_TOWN}`,
});

/** Days around the loading and in May that the season leaves free, so that the worked hires find their vehicles. */
export function keptDays(today: string): readonly TakenDays[] {
  const friday = mayFriday(today);
  const days = (vehicleId: string, from: string, to: string) => ({ vehicleId, from, to });
  return [
    days("pv2", addDays(today, -3), addDays(today, 9)),
    days("pv2", addDays(friday, -1), addDays(friday, 26)),
    days("lp4", addDays(today, -8), addDays(today, 7)),
    days("lp4", addDays(friday, -2), addDays(friday, 7)),
    days("oc6", addDays(today, -6), addDays(today, 1)),
    days("ac4", addDays(friday, -1), addDays(friday, 8)),
  ];
}

/** The hires of the invented firm that are worked through around the day on which it is loaded. All people are invented. */
export function workedHires(today: string): readonly DemoHire[] {
  const friday = mayFriday(today);
  const none = { drivers: [], trip: null, load: null, paid: false, walked: false } as const;
  const away = addDays(today, -1);
  const alps = addDays(friday, 35);
  const driver = (name: string, age: number, daysAgo: number) => [
    demoDriver({ id: "t1", name, age, today, checkedOn: addDays(today, -daysAgo) }),
  ];
  return [
    {
      ...none,
      stage: "enquiry",
      customer: person("Ingrid Lindqvist", "101", "3 Larch Row"),
      wishes:
        "First time in a motorhome. A loop of the Highlands; we would like to be away from sites for some nights.",
      from: `${friday}T13:30`,
      to: `${addDays(friday, 7)}T15:30`,
      vehicleId: null,
      party: twoAdults(),
      trip: highlandsTrip(friday),
    },
    {
      ...none,
      stage: "booked",
      customer: person("Sam Hart", "102", "18 Kiln Lane"),
      wishes: "",
      from: `${addDays(friday, -2)}T12:00`,
      to: `${addDays(friday, 6)}T11:00`,
      vehicleId: "lp4",
      party: twoAdults("some"),
    },
    {
      ...none,
      stage: "quote",
      customer: person("Jo Brandt", "103", "1 Mill Steps"),
      wishes: "One small dog, very quiet.",
      from: `${addDays(friday, 20)}T14:00`,
      to: `${addDays(friday, 25)}T10:00`,
      vehicleId: "pv2",
      party: { ...twoAdults(), dogs: 1 },
    },
    {
      ...none,
      stage: "quote",
      customer: person("Hal Merrin", "108", "6 Tide Lane"),
      wishes: "Both of us want to drive. Ferry, the Black Forest and then the Alps.",
      from: `${alps}T12:00`,
      to: `${addDays(alps, 14)}T17:30`,
      vehicleId: "ac4",
      party: twoAdults("some"),
      // he may not drive 4,250 kg of diesel on category B; she may
      drivers: [
        demoDriver({ id: "t1", name: "Una Merrin", age: 56, today, checkedOn: null, heavy: true }),
        demoDriver({ id: "t2", name: "Hal Merrin", age: 34, today, checkedOn: null }),
      ],
      trip: alpsTrip(alps),
      abroad: {
        ...NOTHING_ABROAD,
        crossings: [
          { kind: "ferry", on: addDays(alps, 1), at: "13:30", zone: "Europe/London" },
          { kind: "ferry", on: addDays(alps, 13), at: "15:30", zone: "Europe/Paris" },
        ],
      },
    },
    {
      stage: "booked",
      customer: person("Ada Okoye", "104", "27 Quarry Bank"),
      wishes: "North, whatever the weather.",
      from: `${today}T13:30`,
      to: `${addDays(today, 7)}T15:30`,
      vehicleId: "lp4",
      party: twoAdults(),
      drivers: driver("Ada Okoye", 41, 3),
      trip: highlandsTrip(today),
      load: loadForTwo(),
      paid: true,
      walked: false,
    },
    {
      stage: "onHire",
      customer: person("Rui Costa", "105", "9 Harbour Wynd"),
      wishes: "",
      from: `${addDays(today, -6)}T12:00`,
      to: `${addDays(today, 1)}T10:30`,
      vehicleId: "oc6",
      party: twoAdults("some"),
      drivers: driver("Rui Costa", 52, 9),
      trip: lakesTrip(addDays(today, -6), 7),
      load: loadForTwo(),
      paid: true,
      walked: true,
    },
    {
      stage: "returned",
      customer: person("Eva Novak", "107", "2 Weir Cottages"),
      wishes: "",
      from: `${addDays(today, -8)}T12:00`,
      to: `${away}T16:30`,
      vehicleId: "lp4",
      party: twoAdults("some"),
      drivers: driver("Eva Novak", 38, 10),
      trip: null,
      load: loadForTwo(),
      paid: true,
      walked: true,
    },
    {
      ...none,
      stage: "lost",
      customer: person("Pat Vale", "106", "4 Fell View"),
      wishes: "Five people and a dog.",
      from: `${addDays(today, 30)}T12:00`,
      to: `${addDays(today, 34)}T10:00`,
      vehicleId: null,
      party: {
        travellers: [1, 2, 3, 4, 5].map((k) => ({ id: `t${k}`, kind: k < 3 ? "adult" : "child" })),
        dogs: 1,
        experience: "first",
      },
    },
  ];
}
