import { sameEveryDay } from "@setfair/engine";
import type { Schemas } from "../../api/client.ts";

type TextName = "firm" | "depot" | "telephone" | "manager" | "login" | "password";
type NumberName =
  | "latitude"
  | "longitude"
  | "lowNight"
  | "highNight"
  | "minimumNights"
  | "kmPerNight"
  | "pencePerKm"
  | "extraDriver"
  | "abroad"
  | "bookingPercent"
  | "security"
  | "excess"
  | "cleaning"
  | "late";

export interface SetUpDraft {
  readonly texts: Readonly<Record<TextName, string>>;
  readonly numbers: Readonly<Record<NumberName, number | null>>;
  readonly distances: "km" | "mi";
  readonly hours: Schemas["Setup"]["depot"]["hours"];
}

/** Prices start empty: they are the firm's, never ours. */
export const EMPTY_SET_UP: SetUpDraft = {
  texts: {
    firm: "",
    depot: "",
    telephone: "",
    manager: "",
    login: "",
    password: "",
  },
  numbers: {
    latitude: null,
    longitude: null,
    lowNight: null,
    highNight: null,
    minimumNights: 3,
    kmPerNight: null,
    pencePerKm: null,
    extraDriver: null,
    abroad: null,
    bookingPercent: null,
    security: null,
    excess: null,
    cleaning: null,
    late: null,
  },
  distances: "mi",
  hours: sameEveryDay({ opens: "09:00", closes: "17:30" }),
};

export const TEXT_FIELDS: readonly {
  readonly name: TextName;
  readonly path: string;
  readonly type: "text" | "tel" | "email" | "password";
}[] = [
  { name: "firm", path: "firm.name", type: "text" },
  { name: "depot", path: "depot.name", type: "text" },
  { name: "telephone", path: "depot.telephone", type: "tel" },
  { name: "manager", path: "manager.name", type: "text" },
  { name: "login", path: "manager.login", type: "text" },
  { name: "password", path: "manager.password", type: "password" },
];

interface NumberFieldOf {
  readonly name: Exclude<NumberName, "latitude" | "longitude">;
  readonly path: string;
  readonly unit?: string;
  readonly min: number;
  readonly max: number;
  readonly step?: number;
}
export const POINT_FIELDS = [
  { name: "latitude", path: "depot.latitudeDeg" },
  { name: "longitude", path: "depot.longitudeDeg" },
] as const;
export const TERM_FIELDS: readonly NumberFieldOf[] = [
  { name: "lowNight", path: "terms.seasons.1.nightPence", unit: "£", min: 0, max: 5000 },
  { name: "highNight", path: "terms.seasons.0.nightPence", unit: "£", min: 0, max: 5000 },
  { name: "minimumNights", path: "terms.seasons.0.minimumNights", min: 1, max: 60 },
  { name: "kmPerNight", path: "terms.allowance.kmPerNight", unit: "km", min: 0, max: 2000 },
  { name: "pencePerKm", path: "terms.allowance.excessPencePerKm", unit: "pence/km", min: 0, max: 1000 },
  { name: "extraDriver", path: "terms.drivers.extraPenceEach", unit: "£", min: 0, max: 5000 },
  { name: "abroad", path: "terms.abroad.pence", unit: "£", min: 0, max: 5000 },
  { name: "bookingPercent", path: "terms.bookingDepositPercent", unit: "%", min: 0, max: 100 },
  { name: "security", path: "terms.security.homePence", unit: "£", min: 0, max: 20_000 },
  { name: "excess", path: "terms.security.excessPence", unit: "£", min: 0, max: 20_000 },
  { name: "cleaning", path: "terms.tariff.cleaningPencePerHour", unit: "£", min: 0, max: 1000 },
  { name: "late", path: "terms.tariff.latePencePerHour", unit: "£", min: 0, max: 1000 },
];

/** One class of vehicle to begin with; the manager adds others as a later version of the terms. */
function termsOf(n: Readonly<Record<NumberName, number | null>>): NonNullable<Schemas["Setup"]["terms"]> {
  const pence = (name: NumberName) => Math.round((n[name] ?? 0) * 100);
  const today = new Date().toISOString().slice(0, 10);
  const minimumNights = n.minimumNights ?? 1;
  return {
    id: `terms-${today}`,
    validFrom: today,
    currency: "GBP",
    seasons: [
      {
        id: "high",
        spans: [{ from: "05-15", to: "09-15" }],
        nightPence: { standard: pence("highNight") },
        minimumNights,
      },
      {
        id: "low",
        spans: [{ from: "01-01", to: "12-31" }],
        nightPence: { standard: pence("lowNight") },
        minimumNights,
      },
    ],
    maximumNights: 90,
    longHire: [],
    allowance: { kmPerNight: n.kmPerNight ?? 0, excessPencePerKm: n.pencePerKm ?? 0, gracePercent: 0 },
    drivers: { included: 2, extraPenceEach: pence("extraDriver") },
    compulsory: [],
    abroad: { home: "GB", pence: pence("abroad"), vat: "standard" },
    extras: [],
    bookingDepositPercent: n.bookingPercent ?? 0,
    security: {
      homePence: pence("security"),
      abroadPence: pence("security"),
      excessPence: pence("excess"),
      authorisationDays: 7,
      releaseWorkingDays: 7,
    },
    cancellation: [
      { atLeastDaysBefore: 28, keepPercent: n.bookingPercent ?? 0 },
      { atLeastDaysBefore: 0, keepPercent: 100 },
    ],
    quoteDays: 7,
    tariff: {
      fuelPencePerLitre: {},
      fuelServicePence: 0,
      defPencePerLitre: 0,
      lpgPencePerKg: 0,
      cleaningPencePerHour: pence("cleaning"),
      wasteNotEmptiedPence: 0,
      cassetteNotEmptiedPence: 0,
      latePencePerHour: pence("late"),
      lateGraceMinutes: 30,
      kit: {},
      damage: [],
    },
  };
}

export function bodyOf({ texts, numbers, distances, hours }: SetUpDraft): Schemas["Setup"] {
  return {
    firm: { name: texts.firm },
    depot: {
      name: texts.depot,
      telephone: texts.telephone,
      timeZone: "Europe/London",
      country: "GB",
      latitudeDeg: numbers.latitude ?? 0,
      longitudeDeg: numbers.longitude ?? 0,
      hours,
      distances,
    },
    terms: termsOf(numbers),
    manager: { name: texts.manager, login: texts.login, password: texts.password },
  };
}
