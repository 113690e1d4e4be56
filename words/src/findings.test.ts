import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  checkCountries,
  checkCrossing,
  checkInsurance,
  checkLicence,
  checkLoad,
  checkSeason,
  checkSeats,
  diagnose,
  type Finding,
  feasibleVehicles,
  parseVehicle,
  quoteHire,
  termsSchema,
} from "@setfair/engine";
import { expect, it } from "vitest";
import { createWords } from "./english.ts";

const words = createWords();
const rooms = join(import.meta.dirname, "../../engine/src/rooms");
const folders = [
  "loading",
  "rules",
  "diary",
  "quote",
  "condition",
  "settlement",
  "diagnosis",
  "upkeep",
  "stock",
];
const sources = folders
  .flatMap((folder) => readdirSync(join(rooms, folder)).map((name) => join(rooms, folder, name)))
  .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
  .map((name) => readFileSync(name, "utf8"))
  .join("\n");

it("every finding and every mend that these rooms name has words", () => {
  const named = [
    ...sources.matchAll(
      /"((?:licence|insurance|countries|crossing|seats|season|masses|diary|due|defects|quote|money|settlement|condition|diagnosis|terms|stock)\.[A-Za-z]+)"/g,
    ),
  ].map((match) => match[1]!);
  const cover = [...sources.matchAll(/(?:outside|say)\("([A-Za-z]+)"/g)].map(
    (match) => `insurance.${match[1]}`,
  );
  const limits = [
    "categoryTooSmall",
    "noCarCategory",
    "c1EndsAtSeventy",
    "zeroEmissionAbroad",
    "visitorTooHeavy",
  ].map((why) => `licence.${why}`);
  // a rule, formulas and a field of the terms have ids alike
  const rules = [
    "terms.seasons",
    "settlement.tellWithinDays",
    "diagnosis.causeChance",
    "diagnosis.expectedMinutes",
  ];
  const codes = [...new Set([...named, ...cover, ...limits])].filter((code) => !rules.includes(code));
  expect(codes.length).toBeGreaterThan(80);
  expect(codes.filter((code) => !words.has(`finding.${code}`) && !words.has(`mend.${code}`))).toEqual([]);
});

const vehicle = parseVehicle(
  JSON.parse(readFileSync(join(import.meta.dirname, "../../examples/pv2.json"), "utf8")),
);
const heavy = { ...vehicle, masses: { ...vehicle.masses, mamKg: 4250, technicalMaxKg: 4250 } };
const terms = termsSchema.parse(
  JSON.parse(readFileSync(join(import.meta.dirname, "../../demo/src/terms.json"), "utf8")),
);
const when = { from: "2027-02-06T15:00", to: "2027-02-13T10:00" };
const party = {
  travellers: [
    { id: "a", kind: "adult" as const },
    { id: "b", kind: "adult" as const },
    { id: "c", kind: "child" as const, ageYears: 6, heightCm: 110 },
    { id: "d", kind: "child" as const },
  ],
  dogs: 3,
  experience: "first" as const,
};
const driver = {
  id: "d",
  name: "Invented Driver",
  born: "1957-02-10",
  main: true,
  faultIncidents3y: 3,
  disqualified3y: true,
  licence: {
    issuedBy: "GB" as const,
    firstCarEntitlement: "1980-01-01",
    categories: [
      { category: "B" as const, from: "1980-01-01", to: "2030-01-01" },
      { category: "C1" as const, from: "1980-01-01", to: "2030-01-01" },
    ],
    photocardTo: "2027-02-07",
    endorsements: [1, 2, 3].map(() => ({ code: "DR10", offence: "2026-01-01", points: 6 })),
  },
};
const policy = {
  id: "p",
  validFrom: "2027-01-01",
  validTo: "2027-02-10",
  age: { min: 75, max: 60, outcome: "refer" as const },
  yearsHeld: { min: 20, outcome: "refuse" as const },
  convictions: {
    withinYears: 5,
    maxCount: 1,
    maxPointsEach: 3,
    maxPointsTotal: 3,
    outcome: "refer" as const,
  },
  codes: [{ prefix: "DR", withinYears: 5, outcome: "refuse" as const }],
  faultIncidents3y: { max: 1, outcome: "refer" as const },
  disqualified3y: "refuse" as const,
  maxMamKg: 3500,
  countries: ["GB"],
  maxNightsAbroad: 3,
};
const load = {
  seats: [],
  items: [{ id: "i", name: "Bicycles", massKg: 700, behindFrontAxleM: 5, removable: true }],
  waterLitres: 50,
  fuelShare: 1,
  lpgCylinders: 1,
};

const found: Finding[] = [
  ...checkLicence({
    drivers: [driver],
    vehicle: heavy,
    ...when,
    today: "2027-01-01",
    countries: ["GB", "AT"],
  }).findings,
  ...checkInsurance({
    drivers: [driver],
    policy,
    vehicle: heavy,
    ...when,
    countries: ["GB", "AT"],
    nightsAbroad: 6,
  }).findings,
  ...checkSeats({ vehicle, party, today: "2027-01-01", countries: ["GB", "IE", "FR", "ES"] }).findings,
  ...checkSeason({ vehicle, ...when, countries: ["GB", "AT"], winterTyres: false, coldestNightC: -6 })
    .findings,
  ...checkLoad({ vehicle, party, load }).findings,
  ...checkCountries({
    vehicle: heavy,
    home: "GB",
    route: ["FR", "DE", "PL"].map((country) => ({ country, enter: "2027-02-06", leave: "2027-02-13" })),
    today: "2027-01-10",
    papers: {},
    kitAboard: [],
    got: [],
    overhang: true,
  }).findings,
  ...checkCrossing({
    vehicle,
    abroad: true,
    crossings: [{ kind: "tunnel", on: "2027-02-06" }],
    noCrossing: false,
  }).findings,
  ...feasibleVehicles({
    vehicles: [
      { vehicle, bookings: [{ ...when, hireId: "h" }], dueDates: [{ kind: "tax", dueOn: "2027-02-07" }] },
    ],
    party,
    ...when,
    today: "2027-01-01",
    turnaroundMinutes: 240,
    timeZone: "Europe/London",
  }).result.vehicles[0]!.findings,
  ...quoteHire({
    terms,
    vehicleClass: "panelVan",
    ...when,
    today: "2027-01-01",
    party,
    drivers: 1,
    extras: [{ id: "bikeRack", count: 9 }],
    countries: ["GB"],
  }).findings,
  ...["lpg.smell", "lpg.nothing"].flatMap(
    (symptom) => diagnose({ vehicle, symptom, answers: [], hands: "hirer" }).findings,
  ),
  ...diagnose({
    vehicle,
    symptom: "alarms.chirps",
    hands: "hirer",
    answers: [
      { check: "alarms.kickIt", answer: "notIt" },
      { check: "alarms.changeCell", answer: "notIt" },
      { check: "alarms.readDate", answer: "notIt" },
    ],
  }).findings,
  ...diagnose({
    vehicle,
    symptom: "alarms.chirps",
    hands: "hirer",
    answers: [{ check: "alarms.readDate", answer: "found" }],
  }).findings,
];

it.each(found.map((finding) => [finding.code, finding] as const))(
  "%s reads as a sentence with its facts filled in, and so do its mends",
  (_code, finding) => {
    for (const text of [words.findingText(finding), ...finding.mends.map((mend) => words.mendText(mend))]) {
      expect(text).not.toMatch(/[{}]|undefined|NaN|no words yet/);
      expect(text.length).toBeGreaterThan(4);
    }
  },
);
