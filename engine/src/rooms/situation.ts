/**
 * The hire in hand, as the rooms see it. Schemas are zod/mini so that the browser may use them; every
 * error names the field. Civil times are `YYYY-MM-DDTHH:MM` in the depot's zone.
 */
import * as z from "zod/mini";

const text = (max: number) => z.string().check(z.minLength(1), z.maxLength(max));
const between = (min: number, max: number) => z.number().check(z.minimum(min), z.maximum(max));
const whole = (min: number, max: number) => z.int().check(z.minimum(min), z.maximum(max));
export const isoDateSchema = z.iso.date();
export const isoLocalSchema = z
  .string()
  .check(z.regex(/^\d{4}-\d{2}-\d{2}T([01]\d|2[0-3]):[0-5]\d$/, "expected a civil time YYYY-MM-DDTHH:MM"));

export const travellerSchema = z.strictObject({
  id: text(40),
  name: z.optional(text(80)),
  kind: z.enum(["adult", "child"]),
  ageYears: z.optional(whole(0, 120)),
  heightCm: z.optional(between(40, 230)),
  /** declared mass with clothes, kg; a default by kind where it is left out */
  massKg: z.optional(between(2, 250)),
});
export type Traveller = z.infer<typeof travellerSchema>;

export const partySchema = z.strictObject({
  travellers: z.array(travellerSchema).check(z.minLength(1), z.maxLength(12)),
  /** people who sleep in the vehicle; all travellers where left out */
  sleepers: z.optional(whole(1, 12)),
  dogs: whole(0, 6),
  experience: z.enum(["first", "some", "knowsThisVehicle"]),
});
export type Party = z.infer<typeof partySchema>;

export const licenceSchema = z.strictObject({
  issuedBy: z.enum(["GB", "NI", "EEA", "other"]),
  /** day on which the first full car entitlement began */
  firstCarEntitlement: isoDateSchema,
  categories: z.array(
    z.strictObject({
      category: z.enum(["B", "BE", "C1", "C1E", "C"]),
      from: isoDateSchema,
      to: isoDateSchema,
    }),
  ),
  photocardTo: z.optional(isoDateSchema),
  endorsements: z.array(z.strictObject({ code: text(6), offence: isoDateSchema, points: whole(0, 12) })),
  /** day on which the entitlement was seen with the licensing authority's check code; a code lives 21 days and serves once */
  checkedOn: z.optional(isoDateSchema),
  /** how it was seen on that day, where not with the check code: what was looked at, and by whom */
  otherEvidence: z.optional(z.strictObject({ seen: text(200), by: text(80) })),
  /** day on which a visitor with a licence from outside the EEA came to Great Britain */
  visitingSince: z.optional(isoDateSchema),
});
export const driverSchema = z.strictObject({
  id: text(40),
  name: text(80),
  born: isoDateSchema,
  main: z.boolean(),
  licence: licenceSchema,
  faultIncidents3y: whole(0, 20),
  disqualified3y: z.boolean(),
});
export type Driver = z.infer<typeof driverSchema>;

export const placeSchema = z.strictObject({
  name: text(80),
  country: z.string().check(z.regex(/^[A-Z]{2}$/, "expected a two-letter country code (ISO 3166-1)")),
  latitudeDeg: between(34, 72),
  longitudeDeg: between(-25, 40),
  elevationM: z.optional(between(-10, 3000)),
});
export type Place = z.infer<typeof placeSchema>;

const settingSchema = z.record(z.string(), z.union([z.number(), z.string(), z.boolean()]));

export const stopSchema = z.strictObject({
  place: placeSchema,
  arrive: isoLocalSchema,
  leave: isoLocalSchema,
  /** road from the stop before (from the depot for the first) */
  drive: z.strictObject({ distanceKm: between(0, 2000), minutes: between(0, 1440) }),
  pitch: z.strictObject({
    /** amperes at the post, 0 without one */
    postAmperes: between(0, 32),
    freshWater: z.boolean(),
    wasteDrain: z.boolean(),
    cassettePoint: z.boolean(),
    lpgExchange: z.boolean(),
  }),
  /** what is done here; each needs what the pitch offers */
  acts: z.array(
    z.enum(["plugIn", "fillWater", "emptyWaste", "emptyCassette", "exchangeLpg", "fillFuel", "fillDef"]),
  ),
  /** settings while here, by the id of the fitted system, over those of the trip */
  settings: z.optional(z.record(z.string(), settingSchema)),
  /** fresh water to leave with, L: filled no further and drained down to it before driving; the tank as it is where left out */
  leaveWithWaterL: z.optional(between(0, 400)),
});
export type Stop = z.infer<typeof stopSchema>;

/**
 * Weather that somebody forecast for days of the trip; it stands in for the climate on those days, as long as the
 * trip is still within 30 km of that place on that day.
 */
export const givenWeatherSchema = z.strictObject({
  /** who says so, with the credit that their licence asks for */
  source: text(160),
  /** when it was issued; what lies further ahead is less certain */
  issued: isoLocalSchema,
  days: z
    .array(
      z.strictObject({
        date: isoDateSchema,
        latitudeDeg: between(34, 72),
        longitudeDeg: between(-25, 40),
        minC: between(-45, 45),
        maxC: between(-45, 50),
        /** global horizontal irradiation of the day, kWh/m²; that of the climate where left out */
        sunKwhM2: z.optional(between(0, 12)),
      }),
    )
    .check(z.maxLength(60)),
});
export type GivenWeather = z.infer<typeof givenWeatherSchema>;

export const tripSchema = z.strictObject({
  depot: placeSchema,
  depart: isoLocalSchema,
  /** back at the depot; the last drive leads there */
  return: isoLocalSchema,
  returnDrive: z.strictObject({ distanceKm: between(0, 2000), minutes: between(0, 1440) }),
  timeZone: text(60),
  stops: z.array(stopSchema).check(z.maxLength(40)),
  /** share full at departure by store, 0 to 1 */
  departWith: z.partialRecord(
    z.enum(["battery12", "lpg", "freshWater", "wasteWater", "cassette", "fuel", "def", "tractionBattery"]),
    between(0, 1),
  ),
  /** settings by the id of the fitted system, as the hirer is told to set them */
  settings: z.record(z.string(), settingSchema),
  weather: z.optional(givenWeatherSchema),
});
export type Trip = z.infer<typeof tripSchema>;

/** Where things are stowed. A vehicle has those of {@link loadPlaces}. */
export const LOAD_PLACES = [
  "cab",
  "floor",
  "lockers",
  "underBed",
  "overCab",
  "garage",
  "roof",
  "rack",
  "wall",
] as const;
export type LoadPlace = (typeof LOAD_PLACES)[number];
/** What a thing is, as far as it matters to where it may go and what leaving it costs the party. */
export const LOAD_ITEM_KINDS = [
  "luggage",
  "food",
  "bedding",
  "bike",
  "bikeRack",
  "awning",
  "childSeat",
  "extra",
  "other",
] as const;
export type LoadItemKind = (typeof LOAD_ITEM_KINDS)[number];

export const loadItemSchema = z.strictObject({
  id: text(40),
  name: text(80),
  massKg: between(0, 1500),
  behindFrontAxleM: between(-1.5, 9),
  /** can really come off or stay behind */
  removable: z.boolean(),
  /** standard deviation of the mass, kg; a default share where left out */
  sdKg: z.optional(between(0, 300)),
  /** "other" where left out */
  kind: z.optional(z.enum(LOAD_ITEM_KINDS)),
  /** the place that `behindFrontAxleM` is; without one it is held against no limit of a place and never moved */
  place: z.optional(z.enum(LOAD_PLACES)),
  /** may be stowed in another place of the vehicle that takes its kind */
  movable: z.optional(z.boolean()),
});
export type LoadItem = z.infer<typeof loadItemSchema>;

/** Seats for the road, by row and side. */
export const SEAT_PLACES = ["driver", "passenger", "rowTwo", "rowThree", "side"] as const;
export type SeatPlace = (typeof SEAT_PLACES)[number];

export const loadPlanSchema = z.strictObject({
  /** where each traveller sits: metres behind the front axle */
  seats: z.array(
    z.strictObject({
      travellerId: text(40),
      behindFrontAxleM: between(-1, 8),
      place: z.optional(z.enum(SEAT_PLACES)),
    }),
  ),
  items: z.array(loadItemSchema).check(z.maxLength(100)),
  waterLitres: between(0, 400),
  fuelShare: between(0, 1),
  /** cylinders aboard, of those fitted */
  lpgCylinders: whole(0, 4),
  /** most that a place carries by its label, kg, where the description does not say it */
  placeLimitsKg: z.optional(z.partialRecord(z.enum(LOAD_PLACES), between(0, 1000))),
});
export type LoadPlan = z.infer<typeof loadPlanSchema>;
