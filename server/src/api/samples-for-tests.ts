/** For tests only: what an honest desk would send. All invented. */
export const CUSTOMER = { name: "Ingrid Example", telephone: "07700 900101", email: "ingrid@example.org" };
export const PARTY = {
  travellers: [
    { id: "t1", kind: "adult", massKg: 78 },
    { id: "t2", kind: "adult", massKg: 68 },
  ],
  sleepers: 2,
  dogs: 0,
  experience: "first",
};
export const PERIOD = { from: "2026-07-03T12:15", to: "2026-07-06T10:00" };
export const DRIVER = {
  id: "t1",
  name: "Ingrid Example",
  born: "1985-02-03",
  main: true,
  licence: {
    issuedBy: "GB",
    firstCarEntitlement: "2004-05-01",
    categories: [{ category: "B", from: "2004-05-01", to: "2055-02-02" }],
    photocardTo: "2031-01-01",
    endorsements: [],
    checkedOn: "2026-06-28",
  },
  faultIncidents3y: 0,
  disqualified3y: false,
};
export const PLACE = {
  name: "Keswick",
  country: "GB",
  latitudeDeg: 54.6,
  longitudeDeg: -3.13,
  elevationM: 80,
};
export const TRIP = {
  depot: { name: "Depot", country: "GB", latitudeDeg: 54.4, longitudeDeg: -2.9, elevationM: 80 },
  depart: "2026-07-03T12:15",
  return: "2026-07-06T10:00",
  returnDrive: { distanceKm: 40, minutes: 60 },
  timeZone: "Europe/London",
  stops: [
    {
      place: PLACE,
      arrive: "2026-07-03T15:00",
      leave: "2026-07-06T09:00",
      drive: { distanceKm: 40, minutes: 60 },
      pitch: { postAmperes: 10, freshWater: true, wasteDrain: true, cassettePoint: true, lpgExchange: false },
      acts: ["plugIn", "fillWater", "emptyCassette"],
    },
  ],
  departWith: { battery12: 1, lpg: 1, freshWater: 0.2, wasteWater: 0, cassette: 0, fuel: 1, def: 1 },
  settings: {},
};
export const LOAD = {
  seats: [
    { travellerId: "t1", behindFrontAxleM: 0.5 },
    { travellerId: "t2", behindFrontAxleM: 0.5 },
  ],
  items: [{ id: "bags", name: "Bags", massKg: 50, behindFrontAxleM: 3, removable: true }],
  waterLitres: 20,
  fuelShare: 0.9,
  lpgCylinders: 2,
};
