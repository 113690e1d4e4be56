import type { Driver, LoadPlan, Party, Trip } from "@setfair/engine";
import { addDays, mayFriday, yearsBefore } from "./dates.ts";
import { highlandsTrip, lakesTrip, loadForTwo, twoAdults } from "./trips.ts";

/** How far a hire of the demo has come. */
export type DemoStage = "enquiry" | "quote" | "booked" | "onHire" | "returned" | "lost";

export interface DemoHire {
  readonly stage: DemoStage;
  readonly customer: {
    readonly name: string;
    readonly telephone: string;
    readonly email: string;
    readonly address: string;
  };
  readonly wishes: string;
  readonly from: string;
  readonly to: string;
  readonly vehicleId: string | null;
  readonly party: Party;
  readonly drivers: readonly Driver[];
  readonly trip: Trip | null;
  readonly load: LoadPlan | null;
  readonly paid: boolean;
}

const person = (name: string, number: string, place: string): DemoHire["customer"] => ({
  name,
  telephone: `07700 900${number}`,
  email: `${name.toLowerCase().replaceAll(/[^a-z]+/g, ".")}@example.org`,
  address: `${place}, Nowhere-on-Sea`,
});

function driver(id: string, name: string, age: number, today: string, checkedOn: string | null): Driver {
  const first = yearsBefore(today, age - 18);
  return {
    id,
    name,
    born: yearsBefore(today, age),
    main: id === "t1",
    licence: {
      issuedBy: "GB",
      firstCarEntitlement: first,
      categories: [{ category: "B", from: first, to: addDays(yearsBefore(today, age - 70), -1) }],
      photocardTo: addDays(today, 1700),
      endorsements: [],
      ...(checkedOn === null ? {} : { checkedOn }),
    },
    faultIncidents3y: 0,
    disqualified3y: false,
  };
}

/** The hires of the invented firm around the day on which it is loaded. All people are invented. */
export function demoHires(today: string): readonly DemoHire[] {
  const friday = mayFriday(today);
  const none = { drivers: [], trip: null, load: null, paid: false } as const;
  const away = addDays(today, -1);
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
      vehicleId: "pv2-siskin",
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
      stage: "booked",
      customer: person("Ada Okoye", "104", "27 Quarry Bank"),
      wishes: "North, whatever the weather.",
      from: `${today}T13:30`,
      to: `${addDays(today, 7)}T15:30`,
      vehicleId: "pv2-siskin",
      party: twoAdults(),
      drivers: [driver("t1", "Ada Okoye", 41, today, addDays(today, -3))],
      trip: highlandsTrip(today),
      load: loadForTwo(),
      paid: true,
    },
    {
      stage: "onHire",
      customer: person("Rui Costa", "105", "9 Harbour Wynd"),
      wishes: "",
      from: `${addDays(today, -6)}T12:00`,
      to: `${addDays(today, 1)}T10:30`,
      vehicleId: "pv2-teal",
      party: twoAdults("some"),
      drivers: [driver("t1", "Rui Costa", 52, today, addDays(today, -9))],
      trip: lakesTrip(addDays(today, -6), 7),
      load: loadForTwo(),
      paid: true,
    },
    {
      stage: "returned",
      customer: person("Eva Novak", "107", "2 Weir Cottages"),
      wishes: "",
      from: `${addDays(today, -8)}T12:00`,
      to: `${away}T16:30`,
      vehicleId: "pv2-siskin",
      party: twoAdults("some"),
      drivers: [driver("t1", "Eva Novak", 38, today, addDays(today, -10))],
      trip: null,
      load: loadForTwo(),
      paid: true,
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
