import { describe, expect, it } from "vitest";
import type { Rule } from "../../rules/rule.ts";
import { daysOfChange, RULES, rulesDuring } from "../../rules/rule-at.ts";
import { composeRuleBook, withRules } from "../../rules/rule-book.ts";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import type { Driver } from "../situation.ts";
import { checkCountries } from "./check-countries.ts";
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

describe("a country's rule that changes during the stay", () => {
  const stay = (country: string, enter: string, leave: string, got: string[] = []) =>
    checkCountries({
      vehicle: panelVan(),
      home: "GB",
      route: [{ country, enter, leave }],
      today: "2027-01-10",
      papers: { originalDocument: true },
      kitAboard: ["vest", "twoTriangles", "ukSticker", "beamDeflectors"],
      got,
      overhang: false,
    });
  const withOwn = <T>(changes: Parameters<typeof composeRuleBook>[1], work: () => T) =>
    withRules(composeRuleBook("own", changes), work);
  const card = (answer: ReturnType<typeof stay>) => answer.result.cards[0]!;

  it("has the lower limit of both on the card, with the day; a stay that ends before has the old one and no day", () => {
    const lower = [ownRule("speed.es.rural", { value: 80, validFrom: "2027-03-01" })];
    const rural = (leave: string) =>
      withOwn(lower, () => card(stay("ES", "2027-02-20", leave)).speeds.find(({ road }) => road === "rural"));
    expect(rural("2027-03-01")).toMatchObject({ limit: { value: 80 }, line: { changesOn: "2027-03-01" } });
    expect(rural("2027-02-28")).toMatchObject({ limit: { value: 90 }, line: { changesOn: null } });
    const higher = [ownRule("speed.es.rural", { value: 100, validFrom: "2027-03-01" })];
    const kept = withOwn(higher, () => card(stay("ES", "2027-02-20", "2027-03-05")).speeds);
    expect(kept.find(({ road }) => road === "rural")?.limit.value).toBe(90);
  });

  it("has the lower limit of alcohol, and says what the rule says of parts of the country", () => {
    const own = [ownRule("alcohol.es.limit", { value: 0.2, validFrom: "2027-03-01" })];
    expect(withOwn(own, () => card(stay("ES", "2027-02-20", "2027-03-05")).alcohol)).toMatchObject({
      limit: { value: 0.2 },
      line: { changesOn: "2027-03-01" },
    });
    expect(card(stay("GB", "2027-02-20", "2027-03-05")).alcohol?.line.note).toMatch(/0\.5 in Scotland/);
  });

  it("wants aboard what becomes compulsory on its last day, and asks for it from that day back", () => {
    const bulbs = [ownRule("kit.es.spareBulbs", { value: "required", leadDays: 5, validFrom: "2027-03-01" })];
    const answer = (leave: string) => withOwn(bulbs, () => stay("ES", "2027-02-20", leave, ["zone.es"]));
    const codes = (leave: string) => answer(leave).findings.map(({ about }) => about);
    expect(codes("2027-03-01")).toContain("spareBulbs");
    expect(codes("2027-02-28")).not.toContain("spareBulbs");
    expect(
      answer("2027-03-01").result.tasks.find(({ ruleId }) => ruleId === "kit.es.spareBulbs"),
    ).toMatchObject({
      doBy: "2027-02-24",
    });
  });

  it("no longer asks for what lapsed before the border", () => {
    const gone = [ownRule("zone.es", { value: "none", validFrom: "2027-02-20" })];
    const tasks = (enter: string) => withOwn(gone, () => stay("ES", enter, "2027-03-05").result.tasks);
    expect(tasks("2027-02-19").map(({ ruleId }) => ruleId)).toEqual(["zone.es"]);
    expect(tasks("2027-02-20")).toEqual([]);
  });
});

describe("the days on which shipped rules begin", () => {
  const { masses } = panelVan();
  const cardOf = (country: string, day: string, vehicle = panelVan()) =>
    checkCountries({
      vehicle,
      home: "GB",
      route: [{ country, enter: day, leave: day }],
      today: day,
      papers: { originalDocument: true },
      kitAboard: [],
      got: [],
      overhang: false,
    }).result.cards[0]!;
  const tolls = (...args: Parameters<typeof cardOf>) => cardOf(...args).tolls.map(({ ruleId }) => ruleId);

  it("Ireland: 60 km/h on local roads from 7 February 2025, 80 the day before, and the lower over the change", () => {
    const rural = (day: string) => cardOf("IE", day).speeds.find(({ road }) => road === "rural")?.limit.value;
    expect([rural("2025-02-06"), rural("2025-02-07")]).toEqual([80, 60]);
  });

  it("Austria: the toll goes by what the chassis permits from 1 December 2023, by the plate before", () => {
    const down = panelVan({
      masses: { ...masses, mamKg: 3500, technicalMaxKg: 3650 },
      firstRegistered: "2023-12-01",
    });
    expect(tolls("AT", "2023-11-30", down)).toEqual(["toll.at.vignette"]);
    expect(tolls("AT", "2023-12-01", down)).toEqual(["toll.at.box"]);
  });

  it("Germany: class N above 3,500 kg pays the lorry toll from 1 July 2024, class M and lighter ones never", () => {
    const goods = (mamKg: number) =>
      panelVan({ category: "N1", masses: { ...masses, mamKg, technicalMaxKg: mamKg } });
    expect(tolls("DE", "2024-06-30", goods(3501))).toEqual([]);
    expect(tolls("DE", "2024-07-01", goods(3501))).toEqual(["toll.de.lorry"]);
    expect(tolls("DE", "2024-07-01", goods(3500))).toEqual(["toll.de.light"]);
    expect(tolls("DE", "2024-07-01")).toEqual(["toll.de.road"]);
    expect(tolls("BE", "2024-07-01", goods(3500))).toEqual(["toll.be.kilometre"]);
    expect(tolls("BE", "2024-07-01")).toEqual(["toll.be.road"]);
  });

  it("Portugal: the law on nights outside sites from 24 August 2021", () => {
    expect(cardOf("PT", "2021-08-23").night).toBeNull();
    expect(cardOf("PT", "2021-08-24").night?.value).toBe("protectedBanned");
  });
});
