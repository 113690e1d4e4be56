import { describe, expect, it } from "vitest";
import type { Rule } from "../../rules/rule.ts";
import { daysOfChange, RULES, rulesDuring } from "../../rules/rule-at.ts";
import { composeRuleBook, withRules } from "../../rules/rule-book.ts";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import type { Driver } from "../situation.ts";
import { checkLicence } from "./check-licence.ts";

/** A depot's own version of a shipped rule, for the days it names. */
const ownRule = (id: string, change: Partial<Rule>) => ({
  kind: "correct" as const,
  rule: { ...RULES.find((rule) => rule.id === id)!, source: "read by the depot for this test", ...change },
});

const driver = (born = "1985-03-02"): Driver => ({
  id: "d",
  name: "Invented Driver",
  born,
  main: true,
  faultIncidents3y: 0,
  disqualified3y: false,
  licence: {
    issuedBy: "GB",
    firstCarEntitlement: "2004-06-01",
    categories: [{ category: "B", from: "2004-06-01", to: "2055-03-01" }],
    endorsements: [],
    checkedOn: "2027-05-30",
  },
});
const light = (mamKg: number, fuel: "diesel" | "electric" | "hydrogen") =>
  panelVan({ masses: { ...panelVan().masses, mamKg, technicalMaxKg: 4250 }, fuel });

describe("a rule that changes during a hire", () => {
  const licence = (
    vehicle: ReturnType<typeof panelVan>,
    who = driver(),
    from = "2027-06-01",
    to = "2027-06-14",
  ) =>
    checkLicence({
      drivers: [who],
      vehicle,
      from: `${from}T14:00`,
      to: `${to}T10:00`,
      today: from,
      countries: ["GB"],
    }).findings.filter(({ severity }) => severity === "refuse");

  it("is read on its first day and on each day from which something else holds, not a day after the hire", () => {
    const book = composeRuleBook("own", [
      ownRule("licence.gb.b.maxMamKg", { value: 3400, validFrom: "2027-06-05", validTo: "2027-06-08" }),
    ]);
    const days = (first: string, last: string) =>
      withRules(book, () => daysOfChange("licence.", first, last));
    expect(days("2027-06-01", "2027-06-14")).toEqual(["2027-06-01", "2027-06-05", "2027-06-09"]);
    expect(days("2027-06-01", "2027-06-05")).toEqual(["2027-06-01", "2027-06-05"]);
    expect(days("2027-06-01", "2027-06-04")).toEqual(["2027-06-01"]);
    expect(days("2027-06-09", "2027-06-30")).toEqual(["2027-06-09"]);
    const values = withRules(book, () => rulesDuring("licence.gb.b.maxMamKg", "2027-06-08", "2027-06-09"));
    expect(values.map(({ value }) => value)).toEqual([3400, 3500]);
    expect(rulesDuring("licence.eu.motorhome.maxMamKg", "2025-01-01", "2030-01-01")).toEqual([]);
  });

  it("refuses a driver who may drive the vehicle on the first day and not on the last", () => {
    const book = composeRuleBook("own", [
      ownRule("licence.gb.zeroEmission.maxMamKg", { value: 3500, validFrom: "2027-06-14" }),
    ]);
    const vehicle = light(4100, "electric");
    expect(licence(vehicle)).toEqual([]);
    expect(withRules(book, () => licence(vehicle))).toMatchObject([
      { code: "licence.categoryTooSmall", facts: { upTo: { value: 3500 } } },
    ]);
    expect(withRules(book, () => licence(vehicle, driver(), "2027-06-01", "2027-06-13"))).toEqual([]);
  });

  it("refuses one who may on the last day and not yet on the first", () => {
    const vehicle = light(4100, "electric");
    expect(licence(vehicle, driver(), "2025-06-09", "2025-06-20")).toMatchObject([
      { code: "licence.categoryTooSmall" },
    ]);
    expect(licence(vehicle, driver(), "2025-06-10", "2025-06-20")).toEqual([]);
  });

  it("asks the age of the heavier class of every fuel above what category B reaches to with it", () => {
    const seventeen = driver("2009-07-01");
    const codes = (vehicle: ReturnType<typeof panelVan>) =>
      licence(vehicle, seventeen).map(({ code }) => code);
    expect(codes(light(4200, "electric"))).toEqual([]);
    expect(codes(light(4200, "hydrogen"))).toEqual([]);
    expect(codes(light(4251, "hydrogen"))).toContain("licence.tooYoung");
    expect(codes(light(4251, "electric"))).toContain("licence.tooYoung");
    expect(codes(light(3501, "diesel"))).toContain("licence.tooYoung");
  });
});
