import { describe, expect, it } from "vitest";
import { RULES } from "../../rules/rule-at.ts";
import { composeRuleBook, withRules } from "../../rules/rule-book.ts";
import { overcab, panelVan } from "../../vehicle/test-vehicles.ts";
import type { Driver, Party } from "../situation.ts";
import { checkInsurance } from "./check-insurance.ts";
import { checkSeats } from "./check-seats.ts";
import type { InsuranceInput, InsurancePolicy } from "./types.ts";

const policy: InsurancePolicy = {
  id: "cover-2026",
  validFrom: "2026-01-01",
  validTo: "2026-12-31",
  age: { min: 25, max: 75, outcome: "refer" },
  yearsHeld: { min: 2, outcome: "refuse" },
  convictions: { withinYears: 5, maxCount: 2, maxPointsEach: 3, maxPointsTotal: 6, outcome: "refer" },
  codes: [{ prefix: "DR", withinYears: 10, outcome: "refuse" }],
  faultIncidents3y: { max: 1, outcome: "refer" },
  disqualified3y: "refuse",
  maxMamKg: 4250,
  countries: ["GB", "FR"],
  maxNightsAbroad: 60,
};
const driver = (licence: Partial<Driver["licence"]> = {}, more: Partial<Driver> = {}): Driver => ({
  id: "d1",
  name: "Invented Driver",
  born: "1985-03-02",
  main: true,
  faultIncidents3y: 0,
  disqualified3y: false,
  licence: {
    issuedBy: "GB",
    firstCarEntitlement: "2004-06-01",
    categories: [],
    endorsements: [],
    ...licence,
  },
  ...more,
});
const insure = (who: Driver, change: Partial<InsuranceInput> = {}) =>
  checkInsurance({
    drivers: [who],
    policy,
    vehicle: panelVan(),
    from: "2026-05-09T13:00",
    to: "2026-05-16T10:00",
    countries: ["GB"],
    ...change,
  });

describe("the insurance gate", () => {
  it("accepts a driver within every limit", () => {
    expect(insure(driver()).result.outcome).toBe("accept");
  });

  it("refers or refuses as the insurer's criteria say, with the reason", () => {
    expect(insure(driver({}, { born: "2001-06-01" })).findings).toMatchObject([
      { code: "insurance.tooYoung", severity: "refer", basis: "cover" },
    ]);
    expect(insure(driver({ firstCarEntitlement: "2024-05-10" })).findings).toMatchObject([
      { code: "insurance.heldTooShort", severity: "refuse", facts: { held: 1, min: 2 } },
    ]);
    expect(insure(driver({}, { disqualified3y: true })).result.outcome).toBe("refuse");
    expect(insure(driver({}, { faultIncidents3y: 2 })).result.outcome).toBe("refer");
  });

  it("counts endorsements within the years only, and refuses by code", () => {
    const speeding = { code: "SP30", offence: "2024-01-01", points: 3 };
    expect(
      insure(
        driver({
          endorsements: [
            speeding,
            { ...speeding, offence: "2021-05-08" },
            { ...speeding, offence: "2020-01-01" },
          ],
        }),
      ).result.outcome,
    ).toBe("accept");
    expect(
      insure(driver({ endorsements: [speeding, speeding, speeding] })).findings.map(({ code }) => code),
    ).toEqual(["insurance.tooManyConvictions", "insurance.tooManyPoints"]);
    expect(
      insure(driver({ endorsements: [{ code: "dr10", offence: "2018-01-01", points: 3 }] })).result.outcome,
    ).toBe("refuse");
  });

  it("cover that ends before the hire does is law, and nobody's to waive", () => {
    expect(insure(driver(), { policy: { ...policy, validTo: "2026-05-15" } }).findings).toMatchObject([
      { code: "insurance.notInForce", severity: "refuse", basis: "law" },
    ]);
  });

  it("a renewal that follows without a gap covers the rest of the hire, by the stricter of both criteria", () => {
    const renewal = (change: Partial<InsurancePolicy>) => ({
      ...policy,
      id: "cover-2027",
      validFrom: "2027-01-01",
      validTo: "2027-12-31",
      ...change,
    });
    const over = (following: InsurancePolicy[], who = driver()) =>
      insure(who, { from: "2026-12-29T13:00", to: "2027-01-02T10:00", following }).findings;
    expect(over([])).toMatchObject([{ code: "insurance.notInForce", facts: { validTo: "2026-12-31" } }]);
    expect(over([renewal({})])).toEqual([]);
    expect(over([renewal({ validFrom: "2027-01-02" })])).toMatchObject([{ code: "insurance.notInForce" }]);
    expect(over([renewal({ validTo: "2027-01-01" })])).toMatchObject([
      { code: "insurance.notInForce", facts: { validTo: "2027-01-01" } },
    ]);
    const stricter = renewal({ age: { min: 45, max: 75, outcome: "refuse" } });
    expect(over([stricter])).toMatchObject([
      { code: "insurance.tooYoung", severity: "refuse", sources: ["cover-2027"] },
    ]);
    const young = driver({}, { born: "2003-06-01" });
    expect(over([stricter], young).map(({ code, severity }) => `${code} ${severity}`)).toEqual([
      "insurance.tooYoung refuse",
    ]);
    const grave = { code: "SP30", offence: "2026-01-01", points: 5 };
    const twice = driver({ endorsements: [grave, grave] });
    const graves = (following: InsurancePolicy[]) =>
      over(following, twice).filter(({ code }) => code === "insurance.convictionTooGrave").length;
    expect([graves([]), graves([renewal({})]), graves([renewal({ id: policy.id })])]).toEqual([2, 2, 2]);
  });

  it("asks the insurer about a country that is not listed", () => {
    expect(insure(driver(), { countries: ["GB", "NO"] }).findings).toMatchObject([
      { code: "insurance.country", severity: "refer", facts: { country: "NO" } },
    ]);
  });
});

const party = (travellers: Party["travellers"], more: Partial<Party> = {}): Party => ({
  travellers,
  dogs: 0,
  experience: "first",
  ...more,
});
const adults = (n: number): Party["travellers"] =>
  Array.from({ length: n }, (_, k) => ({ id: `a${k}`, kind: "adult" as const }));

describe("the seats gate", () => {
  const ask = (p: Party, vehicle = panelVan()) => checkSeats({ vehicle, party: p, today: "2026-05-02" });

  it("counts belts, not berths, and nobody may waive that", () => {
    expect(ask(party(adults(2))).findings).toEqual([]);
    expect(ask(party(adults(3), { sleepers: 2 })).findings).toMatchObject([
      { code: "seats.tooFewBelts", severity: "refuse", basis: "law", facts: { missing: 1 } },
    ]);
  });

  it("wants a restraint for a child below 135 cm and 12 years, and asks where either is not known", () => {
    const child = (ageYears?: number, heightCm?: number) => ({
      id: "c",
      kind: "child" as const,
      ...(ageYears === undefined ? {} : { ageYears }),
      ...(heightCm === undefined ? {} : { heightCm }),
    });
    const codes = (age?: number, height?: number) =>
      ask(party([...adults(1), child(age, height)]), overcab()).findings.map(({ code }) => code);
    expect(codes(8, 128)).toEqual(["seats.childRestraint"]);
    expect(codes(8, 135)).toEqual([]);
    expect(codes(12)).toEqual([]);
    expect(codes(8)).toEqual(["seats.childUnknown"]);
  });

  it("asks for what the countries of the route ask for children, and says where that is not known", () => {
    const child = (ageYears: number, heightCm: number, massKg?: number) => ({
      id: `c${ageYears}`,
      kind: "child" as const,
      ageYears,
      heightCm,
      ...(massKg === undefined ? {} : { massKg }),
    });
    const found = (children: Party["travellers"], ...countries: string[]) =>
      checkSeats({
        vehicle: overcab(),
        party: party([...adults(1), ...children]),
        today: "2026-05-02",
        countries: ["GB", ...countries],
      });
    const codes = (...args: Parameters<typeof found>) => found(...args).findings.map(({ code }) => code);
    expect(codes([child(12, 149)], "IE")).toEqual(["seats.childRestraintAbroad"]);
    expect(found([child(12, 149)], "IE").result.childRestraints).toEqual(["c12"]);
    expect(codes([child(12, 150)], "IE")).toEqual([]);
    expect(codes([child(12, 149, 36)], "IE")).toEqual([]);
    expect(codes([child(12, 149, 35)], "IE")).toEqual(["seats.childRestraintAbroad"]);
    expect(codes([child(9, 140)], "FR")).toEqual(["seats.childInRear"]);
    expect(codes([child(10, 140)], "FR")).toEqual([]);
    expect(codes([child(10, 140)], "ES")).toEqual(["seats.childRulesAbroad"]);
    expect(codes([], "ES")).toEqual([]);
    expect(codes([child(12, 149)])).toEqual([]);
  });

  it("goes by the rules of the hire's days, not of the day on which it is asked", () => {
    const rule = RULES.find(({ id }) => id === "seats.gb.childRestraint.belowCm")!;
    const taller = { ...rule, value: 150, validFrom: "2026-07-01", source: "read by the depot" };
    const book = composeRuleBook("own", [{ kind: "correct", rule: taller }]);
    const restrained = (first: string, last: string) =>
      withRules(
        book,
        () =>
          checkSeats({
            vehicle: overcab(),
            party: party([...adults(1), { id: "c", kind: "child", ageYears: 9, heightCm: 140 }]),
            today: "2026-05-02",
            days: { first, last },
          }).result.childRestraints,
      );
    expect(restrained("2026-06-20", "2026-06-30")).toEqual([]);
    expect(restrained("2026-06-20", "2026-07-01")).toEqual(["c"]);
  });

  it("asks a belt for everybody: law from the day on which the law began, safety for a vehicle registered before", () => {
    const basis = (firstRegistered: string) =>
      ask(party(adults(3), { sleepers: 2 }), panelVan({ firstRegistered })).findings[0]?.basis;
    expect([basis("2007-10-19"), basis("2007-10-20")]).toEqual(["safety", "law"]);
  });

  it("takes no dog in a vehicle that takes no pets: policy, not law", () => {
    expect(ask(party(adults(2), { dogs: 1 })).findings).toMatchObject([
      { code: "seats.noPets", basis: "policy" },
    ]);
  });

  it("leaves a vehicle without described seats unchecked", () => {
    expect(ask(party(adults(2)), panelVan({ systems: [] })).findings).toMatchObject([
      { code: "seats.notDescribed", severity: "unchecked" },
    ]);
  });
});
