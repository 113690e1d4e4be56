import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import { listMissingRules } from "../glass/list-missing-rules.ts";
import { checkCountries } from "./check-countries.ts";

interface Row {
  readonly country: string;
  readonly on: string;
  readonly registered: string;
  readonly mamKg: number;
  readonly technicalKg: number;
  readonly category?: "M1" | "N1";
  readonly fuel?: "petrol";
  readonly rule: string;
}
const { rows } = JSON.parse(
  readFileSync(new URL("../../../published/rules/first-registration.json", import.meta.url), "utf8"),
) as { rows: readonly Row[] };

const { masses } = panelVan();
const answer = (row: Omit<Row, "rule">) =>
  checkCountries({
    vehicle: panelVan({
      firstRegistered: row.registered,
      category: row.category ?? "M1",
      fuel: row.fuel ?? "diesel",
      masses: { ...masses, mamKg: row.mamKg, technicalMaxKg: row.technicalKg },
    }),
    home: "GB",
    route: [{ country: row.country, enter: row.on, leave: row.on }],
    today: row.on,
    papers: { originalDocument: true },
    kitAboard: [],
    got: [],
    overhang: false,
  });

it("holds the whole table of exemptions by first registration", () => {
  expect(rows).toHaveLength(15);
});

it.each(rows)("$country on $on: registered $registered, $mamKg of $technicalKg kg: $rule", (row) => {
  const { zone, tolls } = answer(row).result.cards[0]!;
  const found = row.country === "DK" ? [zone?.ruleId] : tolls.map(({ ruleId }) => ruleId);
  expect(found).toEqual([row.rule]);
});

it("older diesel is registered in Denmark before it goes there, newer need not be", () => {
  const tasks = (registered: string) =>
    answer({ country: "DK", on: "2026-06-10", registered, mamKg: 3500, technicalKg: 3500 }).result.tasks.map(
      ({ ruleId }) => ruleId,
    );
  expect(tasks("2010-12-31")).toEqual(["zone.dk.car"]);
  expect(tasks("2011-01-01")).toEqual([]);
});

it("what no description says is named as not checked, on the line, as a note and on the list of what is missing", () => {
  const older = { country: "AT", on: "2026-06-10", registered: "2022-05-01", mamKg: 3500, technicalKg: 3650 };
  const { findings, result } = answer(older);
  expect(result.cards[0]?.tolls[0]?.notChecked).toEqual(["platedBefore"]);
  expect(findings.filter(({ code }) => code === "countries.factNotChecked")).toMatchObject([
    { severity: "note", about: "AT platedBefore", sources: ["toll.at.vignette.older"] },
  ]);
  const missing = listMissingRules({
    countries: ["AT"],
    on: older.on,
    gates: [{ gate: "countries", checkedAt: "2026-06-01T09:00:00Z", findings }],
  });
  expect(missing).toContainEqual({
    kind: "findingNotChecked",
    gate: "countries",
    about: "countries.factNotChecked AT platedBefore",
  });
  const about = (row: Omit<Row, "rule">) =>
    answer(row).findings.flatMap(({ code, about }) => (code === "countries.factNotChecked" ? [about] : []));
  expect(about({ ...older, technicalKg: 3500 })).toEqual([]);
  expect(about({ ...older, mamKg: 3650 })).toEqual(["AT axles"]);
  expect(about({ ...older, country: "IT" })).toEqual(["IT axles"]);
  expect(about({ ...older, country: "FR" })).toEqual([]);
  expect(about({ ...older, country: "FR", mamKg: 3650 })).toEqual(["FR axles"]);
});

it("the limits of Great Britain say that they rest on an unladen mass that nobody stated", () => {
  const card = (unladenKg: number | undefined) =>
    checkCountries({
      vehicle: panelVan({ masses: { ...masses, ...(unladenKg === undefined ? {} : { unladenKg }) } }),
      home: "GB",
      route: [{ country: "GB", enter: "2026-06-10", leave: "2026-06-12" }],
      today: "2026-06-01",
      papers: {},
      kitAboard: [],
      got: [],
      overhang: false,
    }).result.cards[0]!;
  const rural = (unladenKg: number | undefined) => {
    const { limit, line } = card(unladenKg).speeds.find(({ road }) => road === "rural")!;
    return [limit.value, ...line.notChecked];
  };
  expect(rural(undefined)).toEqual([50, "unladenMass"]);
  expect(rural(3051)).toEqual([50]);
  expect(rural(3050)).toEqual([60]);
});

it("a country's card says what winter asks for on days on which it may, with its signs and its weather", () => {
  const winter = (country: string, enter: string, leave: string) =>
    checkCountries({
      vehicle: panelVan(),
      home: "GB",
      route: [{ country, enter, leave }],
      today: enter,
      papers: {},
      kitAboard: [],
      got: [],
      overhang: false,
    }).result.cards[0]!.winter.map(({ thing, wintryOnly, roads, value }) => [
      thing,
      wintryOnly,
      roads,
      value,
    ]);
  expect(winter("DE", "2027-02-06", "2027-02-13")).toEqual([["winterTyres", true, null, "01-01/12-31"]]);
  expect(winter("DE", "2027-07-06", "2027-07-13")).toEqual([]);
  expect(winter("FR", "2027-02-06", "2027-02-13")).toEqual([
    ["winterTyresOrChains", false, "signedMountains", "11-01/03-31"],
  ]);
  expect(winter("BE", "2027-02-06", "2027-02-13")).toEqual([]);
});
