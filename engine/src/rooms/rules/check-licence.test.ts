import { describe, expect, it } from "vitest";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import type { Driver } from "../situation.ts";
import { checkLicence } from "./check-licence.ts";
import type { LicenceInput } from "./types.ts";

type Category = Driver["licence"]["categories"][number];
const from1988 = (category: Category["category"], to = "2035-01-01"): Category => ({
  category,
  from: "1988-03-01",
  to,
});
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
    categories: [{ category: "B", from: "2004-06-01", to: "2055-03-01" }],
    endorsements: [],
    checkedOn: "2026-05-01",
    ...licence,
  },
  ...more,
});
const heavy = (change = {}) =>
  panelVan({ masses: { ...panelVan().masses, mamKg: 4250, technicalMaxKg: 4250 }, ...change });
const ask = (who: Driver | readonly Driver[], change: Partial<LicenceInput> = {}) =>
  checkLicence({
    drivers: [who].flat(),
    vehicle: panelVan(),
    from: "2026-05-09T13:00",
    to: "2026-05-16T10:00",
    today: "2026-05-02",
    countries: ["GB"],
    ...change,
  });
const codes = (answer: ReturnType<typeof ask>) => answer.findings.map(({ code }) => code);

describe("the licence gate", () => {
  it("lets a category B holder take 3,500 kg", () => {
    const answer = ask(driver());
    expect(answer.findings).toEqual([]);
    expect(answer.result.drivers[0]).toMatchObject({
      mayDrive: "yes",
      upTo: { value: 3500, source: "licence.gb.b.maxMamKg" },
    });
  });

  it("takes a category renewed during the hire for held throughout, and one day between for a day without it", () => {
    const renewed = (from: string) =>
      codes(
        ask(
          driver({
            categories: [
              { category: "B", from, to: "2036-01-01" },
              { category: "B", from: "2004-06-01", to: "2026-05-12" },
            ],
          }),
        ),
      );
    expect(renewed("2026-05-13")).toEqual([]);
    expect(renewed("2026-05-10")).toEqual([]);
    expect(renewed("2026-05-14")).toEqual(["licence.noCarCategory"]);
  });

  it("refuses a category B holder a diesel of 4,250 kg, and says that the European rule is off", () => {
    const answer = ask(driver(), { vehicle: heavy(), countries: ["DE", "AT"] });
    expect(codes(answer)).toEqual(["licence.categoryTooSmall", "licence.euRuleOff"]);
    expect(answer.findings[0]).toMatchObject({
      severity: "refuse",
      basis: "law",
      facts: { over: { value: 750, unit: "kg" } },
    });
  });

  it("lets a driver with C1 from a test of 1988 take 4,250 kg up to the day before the 70th birthday", () => {
    const licence = { firstCarEntitlement: "1988-03-01", categories: [from1988("B"), from1988("C1")] };
    expect(ask(driver(licence, { born: "1970-01-01" }), { vehicle: heavy() }).findings).toEqual([]);
    expect(codes(ask(driver(licence, { born: "1956-05-17" }), { vehicle: heavy() }))).toEqual([]);
    expect(codes(ask(driver(licence, { born: "1956-05-16" }), { vehicle: heavy() }))).toContain(
      "licence.c1EndsAtSeventy",
    );
  });

  it("takes C1 beyond 70 only where the licence was seen with it after that birthday", () => {
    const licence = { firstCarEntitlement: "1975-03-01", categories: [from1988("B"), from1988("C1")] };
    expect(ask(driver(licence, { born: "1954-01-01" }), { vehicle: heavy() }).findings).toEqual([]);
    const lost = { ...licence, categories: [from1988("B")] };
    expect(codes(ask(driver(lost, { born: "1954-01-01" }), { vehicle: heavy() }))).toContain(
      "licence.categoryTooSmall",
    );
  });

  it("allows an electric vehicle of 4,250 kg on B in Great Britain from 10 June 2025 only, and not abroad", () => {
    const vehicle = heavy({ fuel: "electric" });
    expect(ask(driver(), { vehicle }).findings).toEqual([]);
    expect(codes(ask(driver(), { vehicle, countries: ["GB", "FR"] }))).toContain(
      "licence.zeroEmissionAbroad",
    );
    const before = { vehicle, from: "2025-06-09T13:00", to: "2025-06-12T10:00", today: "2025-06-01" };
    expect(codes(ask(driver({ checkedOn: "2025-06-01" }), before))).toContain("licence.categoryTooSmall");
    expect(codes(ask(driver({ issuedBy: "EEA" }), { vehicle }))).toContain("licence.categoryTooSmall");
  });

  it("keeps a visitor from outside the EEA at 3,500 kg", () => {
    const licence = { issuedBy: "other", categories: [from1988("B"), from1988("C1")] } as const;
    expect(
      codes(ask(driver({ ...licence, categories: [...licence.categories] }), { vehicle: heavy() })),
    ).toContain("licence.visitorTooHeavy");
  });

  it("never calls a licence fine that nobody has looked at, nor one looked at more than 21 days before", () => {
    const { checkedOn: _unseen, ...unseen } = driver().licence;
    const answer = ask({ ...driver(), licence: unseen });
    expect(answer.findings).toMatchObject([
      { code: "licence.unchecked", severity: "unchecked", about: "d1" },
    ]);
    expect(answer.result.drivers[0]?.mayDrive).toBe("unchecked");
    expect(ask(driver({ checkedOn: "2026-04-18" })).findings).toEqual([]);
    expect(codes(ask(driver({ checkedOn: "2026-04-17" })))).toEqual(["licence.checkTooOld"]);
  });

  it("refuses an entitlement that ends before the hire does", () => {
    expect(
      codes(ask(driver({ categories: [{ category: "B", from: "2004-06-01", to: "2026-05-15" }] }))),
    ).toEqual(["licence.noCarCategory"]);
  });

  it("refuses one driver and lets the other go", () => {
    const her = driver(
      { firstCarEntitlement: "1988-03-01", categories: [from1988("B"), from1988("C1")] },
      { id: "d2", born: "1970-01-01" },
    );
    const answer = ask([driver(), her], { vehicle: heavy() });
    expect(answer.result.drivers.map(({ mayDrive }) => mayDrive)).toEqual(["no", "yes"]);
  });

  it("asks for a driver where none is named", () => {
    expect(codes(ask([]))).toEqual(["licence.noDriver"]);
  });
});
