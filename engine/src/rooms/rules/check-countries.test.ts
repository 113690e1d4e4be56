import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { COUNTRIES_KNOWN, COUNTRY_RULES } from "../../rules/country-rules.ts";
import { ruleSchema } from "../../rules/rule.ts";
import { parseVehicle } from "../../vehicle/parse.ts";
import type { CountriesInput, CrossingInput } from "./abroad-types.ts";
import { checkCountries } from "./check-countries.ts";
import { checkCrossing } from "./check-crossing.ts";

const vehicle = (id: string) =>
  parseVehicle(
    JSON.parse(readFileSync(join(import.meta.dirname, `../../../../examples/vehicles/${id}.json`), "utf8")),
  );
const route = (...codes: readonly string[]) =>
  codes.map((country, k) => ({ country, enter: `2027-06-1${k}`, leave: `2027-06-1${k + 1}` }));
const ask = (change: Partial<CountriesInput> = {}) =>
  checkCountries({
    vehicle: vehicle("ac4"),
    home: "GB",
    route: route("GB", "DE", "AT"),
    today: "2027-04-01",
    papers: { originalDocument: true },
    kitAboard: [],
    got: [],
    overhang: false,
    ...change,
  });
const speedsOf = (answer: ReturnType<typeof ask>, country: string) =>
  Object.fromEntries(
    answer.result.cards
      .find((card) => card.country === country)!
      .speeds.map(({ road, limit }) => [road, limit.value]),
  );

describe("country rules as data", () => {
  it("hold fifteen countries, every rule with a validity, a source and the day it was read", () => {
    expect(COUNTRIES_KNOWN).toHaveLength(15);
    for (const rule of COUNTRY_RULES) expect(ruleSchema.safeParse(rule).error?.issues ?? []).toEqual([]);
    for (const country of COUNTRIES_KNOWN) {
      for (const topic of ["speed", "kit", "zone", "toll", "night", "lpgFiller", "alcohol"]) {
        const found = COUNTRY_RULES.some(({ id }) => id.startsWith(`${topic}.${country.toLowerCase()}`));
        expect(found, `${topic} ${country}`).toBe(true);
      }
    }
  });
});

describe("the gate of countries", () => {
  it("judges limits by the plated mass on the Continent: 80 and 100 in Germany, 70 and 80 in Austria above 3,500 kg", () => {
    const answer = ask();
    expect(speedsOf(answer, "DE")).toMatchObject({ rural: 80, motorway: 100 });
    expect(speedsOf(answer, "AT")).toMatchObject({ rural: 70, motorway: 80 });
    const light = ask({ vehicle: vehicle("lp4") });
    expect(speedsOf(light, "AT")).toMatchObject({ rural: 100, motorway: 130 });
  });

  it("judges Great Britain by the unladen mass, and takes the stricter limit where nobody stated it", () => {
    const ac4 = vehicle("ac4");
    const at = (unladenKg: number) =>
      ask({ vehicle: { ...ac4, masses: { ...ac4.masses, unladenKg } }, route: route("GB") });
    expect(speedsOf(at(3050), "GB")).toMatchObject({ rural: 60, dual: 70 });
    expect(speedsOf(at(3051), "GB")).toMatchObject({ rural: 50, dual: 60 });
    const { unladenKg: _, ...unknown } = ac4.masses;
    expect(speedsOf(ask({ vehicle: { ...ac4, masses: unknown }, route: route("GB") }), "GB").rural).toBe(50);
  });

  it("asks Austria's box or vignette by what the chassis permits, not by a lower plate", () => {
    const oc6 = vehicle("oc6");
    expect(oc6.masses).toMatchObject({ mamKg: 3500, technicalMaxKg: 3650 });
    expect(ask({ vehicle: oc6 }).result.tasks.map(({ ruleId }) => ruleId)).toContain("toll.at.box");
    const wl4 = ask({ vehicle: vehicle("wl4") }).result.tasks.map(({ ruleId }) => ruleId);
    expect(wl4).toContain("toll.at.vignette");
    expect(wl4).not.toContain("toll.at.box");
  });

  it("makes a task of everything with a lead time, and says when the day has passed", () => {
    const early = ask({ vehicle: vehicle("lp4"), route: route("FR") });
    expect(early.result.tasks).toMatchObject([{ ruleId: "zone.fr", doBy: "2027-04-29", late: false }]);
    const late = ask({ vehicle: vehicle("lp4"), route: route("FR"), today: "2027-05-20" });
    expect(late.findings.map(({ code }) => code)).toContain("countries.toGetLate");
    const got = ask({ vehicle: vehicle("lp4"), route: route("FR"), got: ["zone.fr"] });
    expect(got.findings.map(({ code }) => code)).not.toContain("countries.toGet");
  });

  it("takes for a condition what is asked for only in zones or on motorways that the route keeps out of", () => {
    const found = (avoided: string[], country: string, got: string[] = []) =>
      ask({ vehicle: vehicle("lp4"), route: route(country), avoided, got, today: "2027-06-01" })
        .findings.filter(({ about }) => about?.startsWith("zone.") || about?.startsWith("toll."))
        .map(({ code, about, severity }) => `${code} ${about} ${severity}`);
    expect(found([], "FR")).toEqual(["countries.toGetLate zone.fr unchecked"]);
    expect(found(["zone.fr"], "FR")).toEqual(["countries.keepsOut zone.fr condition"]);
    expect(found(["zone.fr"], "FR", ["zone.fr"])).toEqual([]);
    expect(found(["toll.at.vignette"], "AT")).toEqual(["countries.keepsOut toll.at.vignette condition"]);
    // the lump sum of heavy vehicles is asked for on every public road
    const heavy = ask({ route: route("CH"), avoided: ["toll.ch.heavyCharge"] }).result.tasks;
    expect(heavy).toMatchObject([{ ruleId: "toll.ch.heavyCharge", avoidable: null, avoided: false }]);
  });

  it("wants a paper for every day abroad, and none at home", () => {
    const codes = (papers: CountriesInput["papers"], where = route("GB", "FR")) =>
      ask({ papers, route: where }).findings.map(({ code }) => code);
    expect(codes({})).toContain("countries.noPaper");
    expect(codes({}, route("GB"))).toEqual([]);
    expect(codes({ certificate: { validFrom: "2026-07-01", validTo: "2027-06-11" } })).toContain(
      "countries.paperLapses",
    );
    expect(codes({ certificate: { validFrom: "2026-07-01", validTo: "2027-06-30" } })).not.toContain(
      "countries.paperLapses",
    );
  });

  it("does not take a certificate for longer than one is valid", () => {
    const codes = (validTo: string) =>
      ask({
        papers: { certificate: { validFrom: "2026-07-01", validTo } },
        route: route("GB", "FR"),
      }).findings.map(({ code }) => code);
    expect(codes("2027-07-01")).not.toContain("countries.paperTooLong");
    expect(codes("2027-07-02")).toContain("countries.paperTooLong");
  });

  it("names compulsory kit once with its countries, as law", () => {
    const { findings } = ask({ kitAboard: ["vest", "firstAid"] });
    const triangle = findings.filter(({ about }) => about === "triangle");
    expect(triangle).toMatchObject([{ code: "countries.kit", basis: "law", facts: { countries: "DE, AT" } }]);
    expect(findings.filter(({ about }) => about === "vest")).toEqual([]);
    const triangles = (...kitAboard: string[]) =>
      ask({ kitAboard, route: route("DE", "ES") }).findings.flatMap(({ about }) =>
        about?.toLowerCase().includes("triangle") ? [about] : [],
      );
    expect(triangles("twoTriangles")).toEqual([]);
    expect(triangles("triangle")).toEqual(["twoTriangles"]);
  });

  it("does not invent rules for a country that is not in the data", () => {
    expect(ask({ route: route("PL") }).findings).toMatchObject([
      { code: "countries.notInData", severity: "unchecked" },
    ]);
  });

  it("leaves unsettled what the sources leave unsettled", () => {
    const { findings } = ask({ route: route("NO") });
    expect(findings.find(({ code }) => code === "countries.unsettled")?.sources).toContain("toll.no.tag");
  });
});

describe("the gate of the crossing", () => {
  const cross = (id: string, change: Partial<CrossingInput> = {}) =>
    checkCrossing({
      vehicle: vehicle(id),
      abroad: true,
      crossings: [{ kind: "tunnel", on: "2027-03-01" }],
      noCrossing: false,
      ...change,
    }).findings.map(({ code, severity }) => `${code} ${severity}`);

  it("refuses fixed gas without a working gauge, or more than 80 % full; unread is not yet", () => {
    expect(cross("ac4", { gaugeWorks: false, fillShare: 0.7 })).toContain("crossing.noGauge refuse");
    expect(cross("ac4", { gaugeWorks: true, fillShare: 0.81 })).toContain("crossing.tooFull refuse");
    expect(cross("ac4", { gaugeWorks: true, fillShare: 0.8 })).toEqual(["crossing.shutGas condition"]);
    expect(cross("ac4")).toEqual(
      expect.arrayContaining(["crossing.gaugeNotSeen unchecked", "crossing.fillNotRead unchecked"]),
    );
  });

  it("passes exchange bottles with the valves shut, and says nothing where no gas is fitted", () => {
    expect(cross("lp4")).toEqual(["crossing.shutGas condition"]);
    expect(cross("cv2")).toEqual([]);
  });

  it("says a thing once for the way there and back", () => {
    const [out, back] = ["2027-03-01", "2027-03-20"];
    const tunnel = (on: string) => ({ kind: "tunnel" as const, on });
    expect(cross("ac4", { crossings: [tunnel(out), tunnel(back)] })).toEqual(cross("ac4"));
    const ways = [tunnel(out), { kind: "ferry" as const, on: back }];
    expect(cross("lp4", { crossings: ways })).toEqual([
      "crossing.shutGas condition",
      "crossing.factNotChecked note",
      "crossing.shutGas condition",
    ]);
  });

  const bottles = (cylinders: number, kgEach: number) => {
    const lp4 = vehicle("lp4");
    const systems = lp4.systems.map((each) =>
      each.kind === "lpg" ? { ...each, spec: { ...each.spec, cylinders, kgEach } } : each,
    );
    return { vehicle: { ...lp4, systems } };
  };

  it("takes no bottle above the tunnel's limit for one, though all together are within it", () => {
    expect(cross("lp4", bottles(1, 47))).toEqual(["crossing.shutGas condition"]);
    expect(cross("lp4", bottles(1, 48))).toContain("crossing.cylinderTooBig refuse");
    expect(cross("ac4", { gaugeWorks: true, fillShare: 0.5 })).toEqual(["crossing.shutGas condition"]);
  });

  it("takes 50 kg of gas through the tunnel and 47 kg on the short sea ferry, as each states", () => {
    const on = "2027-03-01";
    const by = (kind: "tunnel" | "shortSeaFerry" | "ferry", kgEach: number) =>
      cross("lp4", { ...bottles(2, kgEach), crossings: [{ kind, on }] }).includes(
        "crossing.tooMuchGas refuse",
      );
    expect([by("tunnel", 25), by("tunnel", 25.1)]).toEqual([false, true]);
    expect([by("shortSeaFerry", 23.5), by("shortSeaFerry", 23.6), by("ferry", 30)]).toEqual([
      false,
      true,
      false,
    ]);
  });

  it("counts the bottles where the line does", () => {
    const crossings: CrossingInput["crossings"] = [{ kind: "shortSeaFerry", on: "2027-03-01" }];
    expect(cross("lp4", { ...bottles(3, 6), crossings })).toEqual(["crossing.shutGas condition"]);
    expect(cross("lp4", { ...bottles(4, 6), crossings })).toContain("crossing.tooManyCylinders refuse");
    expect(cross("lp4", { ...bottles(4, 6), crossings: [{ kind: "ferry", on: "2027-03-01" }] })).toEqual([
      "crossing.factNotChecked note",
      "crossing.shutGas condition",
    ]);
  });

  it("asks how the water is crossed until somebody says", () => {
    expect(cross("lp4", { crossings: [] })).toEqual(["crossing.notSaid unchecked"]);
    expect(cross("lp4", { crossings: [], noCrossing: true })).toEqual([]);
  });
});
