import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COUNTRIES_KNOWN } from "../../rules/country-rules.ts";
import type { Rule } from "../../rules/rule.ts";
import { RULES } from "../../rules/rule-at.ts";
import { composeRuleBook, withRules } from "../../rules/rule-book.ts";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import type { Trip } from "../situation.ts";
import { checkSeason } from "./check-season.ts";
import type { SeasonInput } from "./types.ts";
import { spanAround, spanMeets } from "./yearly-span.ts";

const worn = (season: string, change: Parameters<typeof panelVan>[0] = {}) =>
  panelVan({
    ...change,
    systems: panelVan().systems.map((each) =>
      each.kind === "tyres" ? { ...each, spec: { ...each.spec, season } } : each,
    ),
  });
const heavy = { masses: { ...panelVan().masses, mamKg: 4250, technicalMaxKg: 4250 } };
const summer = worn("summer");

const ask = (countries: string[], from: string, to: string, more: Partial<SeasonInput> = {}) =>
  checkSeason({
    vehicle: summer,
    countries,
    from: `${from}T13:00`,
    to: `${to}T10:00`,
    coldestNightC: 5,
    ...more,
  });
const codes = (...args: Parameters<typeof ask>) => ask(...args).findings.map(({ code }) => code);

/** Places, level with what the climate data say of them. */
const HAMBURG = ["DE", 53.55, 10, 10] as const;
const INNSBRUCK = ["AT", 47.27, 11.4, 580] as const;
const SEVILLE = ["ES", 37.4, -6, 10] as const;
const CALAIS = ["FR", 50.95, 1.85, 5] as const;
const CHAMONIX = ["FR", 45.92, 6.87, 1035] as const;
type PlaceAt = readonly [string, number, number, number];

const stopAt = (
  [country, latitudeDeg, longitudeDeg, elevationM]: PlaceAt,
  arrive: string,
  leave: string,
) => ({
  place: { name: "An invented stop", country, latitudeDeg, longitudeDeg, elevationM },
  arrive: `${arrive}T16:00`,
  leave: `${leave}T10:00`,
  drive: { distanceKm: 100, minutes: 120 },
  pitch: { postAmperes: 0, freshWater: true, wasteDrain: true, cassettePoint: true, lpgExchange: false },
  acts: [],
});
function tripTo(stops: Trip["stops"], weather?: Trip["weather"]): Trip {
  return {
    depot: { name: "An invented depot", country: "GB", latitudeDeg: 51.2, longitudeDeg: -0.8 },
    depart: `${stops[0]!.arrive.slice(0, 10)}T09:00`,
    return: `${stops.at(-1)!.leave.slice(0, 10)}T18:00`,
    returnDrive: { distanceKm: 300, minutes: 300 },
    timeZone: "Europe/London",
    stops,
    departWith: {},
    settings: {},
    ...(weather === undefined ? {} : { weather }),
  } as unknown as Trip;
}
const at = (place: PlaceAt, arrive: string, leave: string, weather?: Trip["weather"]) =>
  ask([place[0]], arrive, leave, { trip: tripTo([stopAt(place, arrive, leave)], weather) });

const own = (id: string, change: Partial<Rule>) => ({
  kind: "correct" as const,
  rule: { ...RULES.find((rule) => rule.id === id)!, source: "read by the depot for this test", ...change },
});
const withOwn = <T>(changes: ReturnType<typeof own>[], work: () => T): T =>
  withRules(composeRuleBook("own", changes), work);

describe("a rule that binds only on wintry roads", () => {
  it("Germany: no date breaks it; in a warm week nothing is said, in a cold one it is a condition", () => {
    expect(at(HAMBURG, "2026-10-01", "2026-10-05").findings).toEqual([]);
    expect(at(HAMBURG, "2026-07-01", "2026-07-08").findings).toEqual([]);
    const february = at(HAMBURG, "2027-02-06", "2027-02-13").findings;
    expect(february).toMatchObject([
      {
        code: "season.notOnWintryRoads",
        severity: "condition",
        basis: "law",
        facts: { country: "DE", nights: 7 },
        mends: [{ code: "season.fitWinterTyres" }, { code: "season.leaveStanding" }],
      },
      { code: "season.summerTyresPolicy", severity: "refuse", basis: "policy" },
    ]);
  });

  it("Austria: within its days only, and there by the weather", () => {
    expect(at(INNSBRUCK, "2026-04-16", "2026-04-20").findings).toEqual([]);
    expect(at(INNSBRUCK, "2026-04-12", "2026-04-15").findings.map(({ code }) => code)).toContain(
      "season.notOnWintryRoads",
    );
    // of ten nights only the four to the 15th count
    expect(at(INNSBRUCK, "2026-04-11", "2026-04-21").findings[0]?.facts).toMatchObject({ nights: 4 });
  });

  it("is refused by the depot's policy from its own chance on, and never by law", () => {
    const limit = (value: number) => () =>
      withOwn([own("season.gb.summerTyres.refuseFromPercent", { value })], () =>
        at(HAMBURG, "2026-11-20", "2026-11-22").findings.map(({ code, severity }) => `${code} ${severity}`),
      );
    expect(limit(1)()).toContain("season.summerTyresPolicy refuse");
    expect(limit(101)()).toEqual(["season.notOnWintryRoads condition"]);
  });

  it("takes the days of a forecast for the climate's", () => {
    const [, latitudeDeg, longitudeDeg] = HAMBURG;
    const days = (minC: number) => ({
      source: "An invented service",
      issued: "2027-02-05T06:00",
      days: ["06", "07", "08", "09"].map((day) => ({
        date: `2027-02-${day}`,
        latitudeDeg,
        longitudeDeg,
        minC,
        maxC: minC + 4,
      })),
    });
    expect(at(HAMBURG, "2027-02-06", "2027-02-08", days(9)).findings).toEqual([]);
    const cold = at(HAMBURG, "2027-02-06", "2027-02-08", days(-9)).findings[0];
    expect(cold?.facts).toMatchObject({ frostNights: 2, nights: 2, chance: { value: 100, unit: "%" } });
  });

  it("where no place is known goes by the months in which such roads are usual, and says so", () => {
    expect(codes(["DE"], "2026-07-01", "2026-07-08")).toEqual([]);
    expect(codes(["DE"], "2026-10-01", "2026-10-08")).toEqual(["season.notOnWintryRoadsNotKnown"]);
    expect(codes(["AT"], "2027-02-06", "2027-02-13")).toEqual(["season.notOnWintryRoadsNotKnown"]);
    // another country's stops say nothing of it
    const trip = tripTo([stopAt(HAMBURG, "2027-02-06", "2027-02-13")]);
    expect(codes(["AT"], "2027-02-06", "2027-02-13", { trip })).toEqual(["season.notOnWintryRoadsNotKnown"]);
  });

  it("winter tyres meet it, all-season ones by the mark that counts there", () => {
    const season = (tyres: string, ...where: Parameters<typeof ask>) =>
      ask(where[0], where[1], where[2], { vehicle: worn(tyres) }).findings;
    expect(season("winter", ["AT", "DE", "FR", "NO"], "2027-02-06", "2027-02-13")).toEqual([]);
    const mark = (country: string, day: string) =>
      season("allSeason", [country], day, day).map(({ code, severity, facts }) => [
        code,
        severity,
        facts.mark,
      ]);
    const see = (which: string) => [["season.seeSnowflake", "condition", which]];
    expect(mark("DE", "2024-02-10")).toEqual(see("either"));
    expect(mark("DE", "2027-02-10")).toEqual(see("snowflake"));
    expect(mark("AT", "2027-02-10")).toEqual(see("either"));
    expect(mark("LU", "2027-02-10")).toEqual(see("notRead"));
  });

  it("nobody said what it wears: not yet, unless no frost is to be expected", () => {
    const bare = panelVan({ systems: panelVan().systems.filter(({ kind }) => kind !== "tyres") });
    const found = (from: string, to: string) => codes(["DE"], from, to, { vehicle: bare });
    expect(found("2027-02-06", "2027-02-13")).toEqual(["season.tyresUnknown"]);
    expect(found("2026-07-06", "2026-07-13")).toEqual([]);
  });

  it("where a sign asks for chains they are a condition too; aboard, nothing is left of it", () => {
    const swiss = (more: Partial<SeasonInput>) => codes(["CH"], "2027-02-06", "2027-02-13", more);
    expect(swiss({ vehicle: worn("winter") })).toEqual(["season.chainsWhereSigned"]);
    expect(swiss({ snowChains: true })).toEqual([]);
    expect(codes(["CH"], "2026-07-06", "2026-07-13")).toEqual([]);
    expect(at(SEVILLE, "2026-07-06", "2026-07-13").findings).toEqual([]);
    expect(codes(["ES"], "2027-02-06", "2027-02-13")).toEqual(["season.wintrySignedNotKnown"]);
    expect(codes(["ES"], "2027-02-06", "2027-02-13", { snowChains: true })).toEqual([]);
  });
});

describe("a rule that binds by its days, whatever the weather", () => {
  it("Norway above 3,500 kg refuses summer tyres as law from 15 November to 31 March, and wants chains aboard", () => {
    const found = (from: string, to: string, mass = heavy) =>
      ask(["NO"], from, to, { vehicle: worn("summer", mass) }).findings;
    const law = (from: string, to: string) =>
      found(from, to).some(
        ({ code, severity, basis }) =>
          code === "season.winterTyres" && severity === "refuse" && basis === "law",
      );
    expect([law("2026-11-10", "2026-11-14"), law("2026-11-10", "2026-11-15")]).toEqual([false, true]);
    expect([law("2027-03-31", "2027-04-05"), law("2027-04-01", "2027-04-05")]).toEqual([true, false]);
    expect(
      found("2026-11-10", "2026-11-15").find(({ code }) => code === "season.winterTyres")?.facts,
    ).toMatchObject({
      spanFrom: "2026-11-15",
      spanTo: "2027-03-31",
    });
    expect(found("2027-02-01", "2027-02-05").map(({ code }) => code)).toContain("season.chainsAboard");
    const light = found("2027-02-01", "2027-02-05", { masses: panelVan().masses });
    expect(light.map(({ code }) => code)).toEqual(["season.notOnWintryRoadsNotKnown"]);
  });

  it("Austria: class N above 3,500 kg by the day, a motor caravan by the weather and unsettled", () => {
    const found = (category: "M1" | "N1") =>
      ask(["AT"], "2026-12-01", "2026-12-05", { vehicle: worn("summer", { ...heavy, category }) }).findings;
    expect(found("N1")).toMatchObject([{ code: "season.winterTyres", basis: "law" }]);
    expect(found("M1")).toMatchObject([
      {
        code: "season.notOnWintryRoadsNotKnown",
        sources: ["season.at.winterTyres.heavy", "season.gb.roadFrostC"],
      },
    ]);
  });

  it("Italy's signed roads are a condition from 15 November to 15 April, met by chains aboard", () => {
    expect(codes(["IT"], "2026-11-10", "2026-11-14")).toEqual([]);
    expect(ask(["IT"], "2026-11-10", "2026-11-15").findings).toMatchObject([
      { code: "season.signedRoads", severity: "condition", basis: "law", facts: { where: "signed" } },
    ]);
    expect(codes(["IT"], "2026-11-10", "2026-11-15", { snowChains: true })).toEqual([]);
  });

  it("France: a stop in the mountains wants chains seen or winter tyres, a lower one only to stay off signed communes", () => {
    expect(at(CALAIS, "2026-12-20", "2026-12-27").findings).toMatchObject([
      { code: "season.signedRoads", severity: "condition", facts: { where: "signedMountains" } },
    ]);
    expect(at(CHAMONIX, "2026-12-20", "2026-12-27").findings).toMatchObject([
      {
        code: "season.signedMountains",
        severity: "unchecked",
        basis: "law",
        facts: { height: { value: 1035 } },
      },
    ]);
    expect(at(CHAMONIX, "2026-07-20", "2026-07-27").findings).toEqual([]);
    // the law began on 1 November 2021
    expect([codes(["FR"], "2021-10-20", "2021-10-31"), codes(["FR"], "2021-10-20", "2021-11-01")]).toEqual([
      [],
      ["season.signedRoads"],
    ]);
  });

  it("Italy's summer days without slow winter tyres: the speed index stands in no description", () => {
    const found = (tyres: string, day: string) =>
      ask(["IT"], day, day, { vehicle: worn(tyres) }).findings.map(
        ({ code, severity }) => `${code} ${severity}`,
      );
    expect(found("winter", "2026-07-01")).toEqual(["season.factNotChecked note"]);
    expect(found("winter", "2026-05-14")).toEqual([]);
    expect(found("summer", "2026-07-01")).toEqual([]);
  });
});

describe("what the law ties to weather or signs", () => {
  it("is never refused as law, on any day, with any tyres, anywhere on any route", () => {
    const byWeather = RULES.filter(({ binds }) => binds !== undefined).map(({ id }) => id);
    expect(byWeather.length).toBeGreaterThan(9);
    const day = fc
      .integer({ min: 0, max: 1200 })
      .map((n) => new Date(Date.UTC(2025, 0, 1 + n)).toISOString().slice(0, 10));
    fc.assert(
      fc.property(
        fc.subarray([...COUNTRIES_KNOWN], { minLength: 1, maxLength: 4 }),
        fc.tuple(day, day),
        fc.constantFrom("summer", "allSeason", "winter"),
        fc.constantFrom({}, heavy),
        fc.constantFrom<"M1" | "N1">("M1", "N1"),
        fc.boolean(),
        (countries, days, tyres, mass, category, snowChains) => {
          const [from = "", to = ""] = [...days].sort();
          const vehicle = worn(tyres, { ...mass, category });
          const { findings } = ask(countries, from, to, { vehicle, snowChains });
          for (const { severity, basis, sources } of findings) {
            if (severity !== "refuse" || basis !== "law") continue;
            expect(sources.filter((id) => byWeather.includes(id))).toEqual([]);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it("agrees with the list of the European consumer centres, country by country", () => {
    const { rows } = JSON.parse(
      readFileSync(new URL("../../../published/rules/winter-tyres.json", import.meta.url), "utf8"),
    ) as { rows: readonly { country: string; listed: string }[] };
    expect(rows).toHaveLength(14);
    // Switzerland is not in the list
    expect(rows.map(({ country }) => country).sort()).toEqual(
      COUNTRIES_KNOWN.filter((c) => c !== "CH").sort(),
    );
    for (const { country, listed } of rows) {
      const { findings } = ask([country], "2027-02-06", "2027-02-13");
      const found = findings.map(({ code }) => code);
      // Sweden's duty holds within its days, by its own words in winter conditions
      const expected = {
        mandatory: "season.notOnWintryRoadsNotKnown",
        ifWeatherRequires: "season.notOnWintryRoadsNotKnown",
        onlyWhereSigned: country === "ES" ? "season.wintrySignedNotKnown" : "season.signedRoads",
        notMandatory: undefined,
      }[listed];
      expect([country, ...found]).toEqual([country, ...(expected === undefined ? [] : [expected])]);
    }
  });
});

describe("frost and gas", () => {
  it("has nothing to say in May", () => {
    expect(ask(["GB"], "2026-05-09", "2026-05-16").findings).toEqual([]);
  });

  it("gives the drain instruction as a condition where frost is expected", () => {
    expect(ask(["GB"], "2026-05-09", "2026-05-16", { coldestNightC: -2 }).findings).toMatchObject([
      { code: "season.frost", severity: "condition" },
    ]);
    expect(ask(["GB"], "2026-12-09", "2026-12-16", { coldestNightC: undefined }).findings).toMatchObject([
      { code: "season.frostPossible", severity: "note" },
    ]);
  });
});

describe("yearly spans", () => {
  const NORWAY = "season.no.winterTyres.heavy";
  const vehicle = worn("summer", heavy);
  const refused = (from: string, to: string, more: Partial<SeasonInput> = {}) =>
    codes(["NO"], from, to, { vehicle, ...more }).includes("season.winterTyres");

  it("are looked at on the days in each country", () => {
    const stay = (enter: string, leave: string) => ({ stays: [{ country: "NO", enter, leave }] });
    expect(refused("2026-11-01", "2026-12-01", stay("2026-11-02", "2026-11-14"))).toBe(false);
    expect(refused("2026-11-01", "2026-12-01", stay("2026-11-02", "2026-11-15"))).toBe(true);
    expect(refused("2026-11-01", "2026-12-01")).toBe(true);
  });

  it("of the depot's own version hold from its own day on, and on those days alone", () => {
    const version = (value: string, validFrom: string) => own(NORWAY, { value, validFrom });
    const from5To20 = (...versions: ReturnType<typeof own>[]) =>
      withOwn(versions, () => refused("2026-11-16", "2026-11-30"));
    const december = "12-01/03-31";
    expect(from5To20(version(december, "2026-11-16"))).toBe(false);
    expect(from5To20(version(december, "2026-11-17"))).toBe(true);
    expect(from5To20(version(december, "2026-01-01"), version("11-15/11-20", "2026-11-22"))).toBe(false);
    expect(from5To20(version("11-20/11-25", "2026-01-01"), version(december, "2026-11-20"))).toBe(false);
    expect(from5To20(version("11-19/11-25", "2026-01-01"), version(december, "2026-11-20"))).toBe(true);
    expect(from5To20(version("none", "2026-01-01"))).toBe(false);
  });

  it("cross the new year, hold both ends and nothing in summer", () => {
    expect(spanMeets("11-01/04-15", "2026-04-15", "2026-04-20")).toBe(true);
    expect(spanMeets("11-01/04-15", "2026-04-16", "2026-10-31")).toBe(false);
    expect(spanMeets("11-01/04-15", "2026-10-20", "2026-11-01")).toBe(true);
    expect(spanMeets("none", "2026-01-01", "2026-12-31")).toBe(false);
  });

  it("say the days of the winter that the stay meets", () => {
    const winter = { spanFrom: "2026-11-01", spanTo: "2027-04-15" };
    expect(spanAround("11-01/04-15", "2026-10-20", "2026-11-20")).toEqual(winter);
    expect(spanAround("11-01/04-15", "2027-01-05", "2027-01-06")).toEqual(winter);
    expect(spanAround("05-15/10-14", "2026-05-01", "2026-06-01")).toEqual({
      spanFrom: "2026-05-15",
      spanTo: "2026-10-14",
    });
    expect(spanAround("11-01/04-15", "2026-06-01", "2026-06-02")).toBeNull();
  });
});
