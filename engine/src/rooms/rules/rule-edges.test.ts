import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { addDays } from "../../base/years.ts";
import { type CaseFacts, ruleApplies } from "../../rules/rule-applies.ts";
import { ruleAt } from "../../rules/rule-at.ts";
import { parseVehicle } from "../../vehicle/parse.ts";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import type { Driver } from "../situation.ts";
import { checkCountries } from "./check-countries.ts";
import { checkInsurance } from "./check-insurance.ts";
import { listRulesToCheck } from "./list-rules-to-check.ts";
import type { InsuranceInput, InsurancePolicy } from "./types.ts";

const facts: CaseFacts = {
  mamKg: 3500,
  technicalMaxKg: 3650,
  unladenKg: null,
  category: "M1",
  heightM: 3,
  overhang: false,
  plateLacksUk: false,
  fuel: "diesel",
  firstRegistered: "2023-11-30",
};

describe("whether a rule is for this vehicle", () => {
  it.each([
    ["anything", undefined, true],
    ["its category", { category: "M1" }, true],
    ["another category", { category: "N1" }, false],
    ["up to its own mass", { mass: "mam", toKg: 3500 }, true],
    ["above its own mass", { mass: "mam", aboveKg: 3500 }, false],
    ["above a kilogram less", { mass: "mam", aboveKg: 3499 }, true],
    ["the technical mass", { mass: "technical", aboveKg: 3500 }, true],
    ["above a mass that nobody stated: the stricter", { mass: "unladen", aboveKg: 3050 }, true],
    ["up to a mass that nobody stated: the stricter", { mass: "unladen", toKg: 3050 }, false],
    ["up to its own height", { heightToM: 3 }, true],
    ["lower than it is", { heightToM: 2.99 }, false],
    ["heavy, or higher than 2.9 m", { mass: "mam", aboveKg: 3500, orHeightAboveM: 2.9 }, true],
    ["heavy, or higher than it is", { mass: "mam", aboveKg: 3500, orHeightAboveM: 3 }, false],
    ["an overhang that it has not", { overhang: true }, false],
    ["no overhang", { overhang: false }, true],
    ["a plate without UK that it has not", { plateLacksUk: true }, false],
    ["its fuel", { fuel: "diesel" }, true],
    ["another fuel", { fuel: "petrol" }, false],
    ["registered on that day or later", { registeredFrom: "2023-11-30" }, true],
    ["registered a day later", { registeredFrom: "2023-12-01" }, false],
    ["registered before the day after", { registeredBefore: "2023-12-01" }, true],
    ["registered before its own day", { registeredBefore: "2023-11-30" }, false],
    ["a chassis that permits more", { mass: "mam", toKg: 3500, technicalAboveKg: 3500 }, true],
    ["a chassis that permits more than it does", { technicalAboveKg: 3650 }, false],
  ] as const)("%s", (_, when, applies) => {
    expect(ruleApplies(when, facts)).toBe(applies);
  });
});

const policy: InsurancePolicy = {
  id: "cover-2026",
  validFrom: "2026-01-01",
  validTo: "2026-12-31",
  age: { min: 25, max: 75, outcome: "refer" },
  yearsHeld: { min: 2, outcome: "refuse" },
  convictions: { withinYears: 5, maxCount: 2, maxPointsEach: 3, maxPointsTotal: 6, outcome: "refer" },
  codes: [],
  faultIncidents3y: { max: 1, outcome: "refer" },
  disqualified3y: "refuse",
  maxMamKg: 3500,
  countries: ["GB"],
  maxNightsAbroad: 0,
};
const insured = (change: Partial<InsuranceInput>, driver: Partial<Driver> = {}) =>
  checkInsurance({
    drivers: [
      {
        id: "d1",
        name: "Invented Driver",
        born: "1985-03-02",
        main: true,
        faultIncidents3y: 0,
        disqualified3y: false,
        licence: { issuedBy: "GB", firstCarEntitlement: "2004-06-01", categories: [], endorsements: [] },
        ...driver,
      },
    ],
    policy,
    vehicle: panelVan(),
    from: "2026-05-09T13:00",
    to: "2026-05-16T10:00",
    countries: ["GB"],
    ...change,
  }).findings.map(({ code }) => code);
const points = (...each: readonly number[]): Pick<Driver, "licence"> => ({
  licence: {
    issuedBy: "GB",
    firstCarEntitlement: "2004-06-01",
    categories: [],
    endorsements: each.map((n) => ({ code: "SP30", offence: "2024-01-01", points: n })),
  },
});

describe("the insurer's limits", () => {
  it("hold up to and with their own number: mass, points, faults, nights abroad, years and age", () => {
    expect(insured({})).toEqual([]);
    expect(insured({ policy: { ...policy, maxMamKg: 3499 } })).toEqual(["insurance.tooHeavy"]);
    expect(insured({}, points(3, 3))).toEqual([]);
    expect(insured({}, points(3, 4))).toEqual(["insurance.tooManyPoints", "insurance.convictionTooGrave"]);
    expect(insured({}, { faultIncidents3y: 1 })).toEqual([]);
    expect(insured({}, { faultIncidents3y: 2 })).toEqual(["insurance.tooManyFaults"]);
    expect(insured({ nightsAbroad: 0 })).toEqual([]);
    expect(insured({ nightsAbroad: 1 })).toEqual(["insurance.nightsAbroad"]);
    // 25 on the day of the keys, 76 on the day after the return
    expect(insured({}, { born: "2001-05-09" })).toEqual([]);
    expect(insured({}, { born: "2001-05-10" })).toEqual(["insurance.tooYoung"]);
    expect(insured({}, { born: "1950-05-17" })).toEqual([]);
    expect(insured({}, { born: "1950-05-16" })).toEqual(["insurance.tooOld"]);
  });

  it("want cover on the first and on the last day", () => {
    expect(insured({ policy: { ...policy, validFrom: "2026-05-09", validTo: "2026-05-16" } })).toEqual([]);
    expect(insured({ policy: { ...policy, validFrom: "2026-05-10" } })).toEqual(["insurance.notInForce"]);
    expect(insured({ policy: { ...policy, validTo: "2026-05-15" } })).toEqual(["insurance.notInForce"]);
  });
});

describe("reading a rule again before a hire", () => {
  it("is asked where it was read more than 90 days before the hire", () => {
    const { readOn } = ruleAt("speed.at.town", "2026-12-01")!;
    const reasons = (from: string) =>
      listRulesToCheck({ today: "2026-12-01", olderThanMonths: 12, hires: [{ country: "AT", from }] }).find(
        ({ ruleId }) => ruleId === "speed.at.town",
      )?.reasons ?? [];
    expect(reasons(addDays(readOn, 90))).toEqual([]);
    expect(reasons(addDays(readOn, 91))).toEqual(["beforeHires"]);
  });
});

describe("what is to be got for a country beforehand", () => {
  it("is what it demands and takes time to get: stickers for France above 3,500 kg, not what it only advises", () => {
    const ac4 = parseVehicle(
      JSON.parse(readFileSync(new URL("../../../../examples/vehicles/ac4.json", import.meta.url), "utf8")),
    );
    expect(ruleAt("kit.fr.speedDiscs", "2027-06-10")).toMatchObject({ value: "advised", leadDays: 7 });
    const { result } = checkCountries({
      vehicle: ac4,
      home: "GB",
      route: [
        { country: "GB", enter: "2027-06-10", leave: "2027-06-11" },
        { country: "FR", enter: "2027-06-11", leave: "2027-06-12" },
      ],
      today: "2027-04-01",
      papers: { originalDocument: true },
      kitAboard: [],
      got: [],
      overhang: false,
    });
    const kit = result.tasks.filter(({ ruleId }) => ruleId.startsWith("kit."));
    expect(kit.map(({ ruleId, doBy }) => [ruleId, doBy])).toEqual([
      ["kit.fr.blindSpotStickers", "2027-06-04"],
    ]);
  });
});
