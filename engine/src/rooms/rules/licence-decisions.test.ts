import { describe, expect, it } from "vitest";
import { RULES } from "../../rules/rule-at.ts";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import type { Driver } from "../situation.ts";
import { checkLicence } from "./check-licence.ts";
import decisions from "./licence-decisions.json" with { type: "json" };

type Row = (typeof decisions.rows)[number];
type Fuel = ReturnType<typeof panelVan>["fuel"];

const ask = (row: Row) => {
  const { issuedBy, firstCarEntitlement, categories, checkedOn, visitingSince } = row as Row & {
    readonly visitingSince?: string;
    readonly checkedOn?: string;
  };
  const driver: Driver = {
    id: "d",
    name: "Invented Driver",
    born: row.born,
    main: true,
    faultIncidents3y: 0,
    disqualified3y: false,
    licence: {
      issuedBy: issuedBy as Driver["licence"]["issuedBy"],
      firstCarEntitlement,
      categories: categories as Driver["licence"]["categories"],
      endorsements: [],
      ...(checkedOn === undefined ? {} : { checkedOn }),
      ...(visitingSince === undefined ? {} : { visitingSince }),
    },
  };
  const masses = { ...panelVan().masses, mamKg: row.mamKg, technicalMaxKg: Math.max(row.mamKg, 3500) };
  return checkLicence({
    drivers: [driver],
    vehicle: panelVan({ masses, fuel: row.fuel as Fuel }),
    from: `${row.from}T14:00`,
    to: `${row.to}T10:00`,
    today: row.from,
    countries: row.countries,
  });
};

describe("licence × mass × fuel × country × date", () => {
  it("has every row that was decided", () => expect(decisions.rows).toHaveLength(55));

  it.each(decisions.rows.map((row) => [row.case, row] as const))("%s", (_, row) => {
    const { result, findings } = ask(row);
    expect(result.drivers[0]?.mayDrive).toBe(row.mayDrive);
    const decisive = findings.filter(({ severity }) => severity === "refuse" || severity === "unchecked");
    expect(decisive.map(({ code }) => code)).toEqual(row.finding === null ? [] : [row.finding]);
    const rule = RULES.find(({ id }) => id === row.rule);
    expect(rule?.source).toBe(row.source);
    const cited = decisive.flatMap(({ sources }) => sources);
    if (row.finding !== null) expect(cited).toContain(row.rule);
  });

  it("says of a heavy vehicle abroad that the European rule is off", () => {
    const later = decisions.rows.find(({ case: name }) => name.startsWith("the European rule"))!;
    expect(ask(later).findings.map(({ code }) => code)).toContain("licence.euRuleOff");
  });
});
