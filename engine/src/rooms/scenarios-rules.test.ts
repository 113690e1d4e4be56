import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Finding } from "../base/finding.ts";
import type { VehicleDescription } from "../vehicle/description.ts";
import { parseVehicle } from "../vehicle/parse.ts";
import { feasibleVehicles } from "./diary/feasible-vehicles.ts";
import { type CounterOffersInput, listCounterOffers } from "./diary/list-counter-offers.ts";
import type { FleetVehicle } from "./diary/types.ts";
import { checkLoad } from "./loading/check-load.ts";
import { lifeOfHolds } from "./money/holds.ts";
import type { CountriesInput, CrossingInput } from "./rules/abroad-types.ts";
import { checkCountries } from "./rules/check-countries.ts";
import { checkCrossing } from "./rules/check-crossing.ts";
import { checkInsurance } from "./rules/check-insurance.ts";
import { checkLicence } from "./rules/check-licence.ts";
import { checkSeason } from "./rules/check-season.ts";
import { insurancePolicySchema } from "./rules/types.ts";
import type { Driver, Party } from "./situation.ts";

/** Hires of the invented fleet that turn on licences, countries, the diary and the season. */
const read = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../${path}`, import.meta.url), "utf8"));
const vehicle = (name: string): VehicleDescription => parseVehicle(read(`examples/vehicles/${name}.json`));
const policy = insurancePolicySchema.parse(read("demo/src/insurance.json"));
const refusals = (findings: readonly Finding[]) => findings.filter(({ severity }) => severity === "refuse");
const person = (
  id: string,
  born: string,
  firstCar: string,
  more: Partial<Driver["licence"]> = {},
): Driver => ({
  id,
  name: id,
  born,
  main: true,
  faultIncidents3y: 0,
  disqualified3y: false,
  licence: {
    issuedBy: "GB",
    firstCarEntitlement: firstCar,
    categories: [{ category: "B", from: firstCar, to: "2060-01-01" }],
    endorsements: [],
    ...more,
  },
});
const withC1 = (from: string, to: string): Driver["licence"]["categories"] => [
  { category: "B", from, to: "2060-01-01" },
  { category: "C1", from, to },
];
const abroad = (
  van: VehicleDescription,
  route: CountriesInput["route"],
  more: Partial<CountriesInput> = {},
) =>
  checkCountries({
    vehicle: van,
    home: "GB",
    route,
    today: route[0]!.enter,
    papers: { originalDocument: true },
    kitAboard: [],
    got: [],
    overhang: false,
    ...more,
  });
const limits = (answer: ReturnType<typeof abroad>, country: string) =>
  Object.fromEntries(
    answer.result.cards
      .find((card) => card.country === country)!
      .speeds.map(({ road, limit }) => [road, limit.value]),
  );

describe("a couple with the heavy A-class to Germany and Austria, fourteen nights in June", () => {
  const ac4 = vehicle("ac4");
  const hire = { from: "2026-06-06T14:00", to: "2026-06-20T10:00", today: "2026-06-05" };
  const checkedOn = "2026-06-01";
  const countries = ["GB", "FR", "DE", "AT"];
  const him = person("him", "1992-01-15", "2011-05-01", { checkedOn });
  const her = person("her", "1970-03-10", "1988-04-01", {
    checkedOn,
    categories: withC1("1988-04-01", "2040-03-09"),
    endorsements: [{ code: "SP30", offence: "2024-08-01", points: 3 }],
  });
  const licence = checkLicence({ ...hire, vehicle: ac4, drivers: [him, her], countries });

  it("refuses him by law: car licence to 3,500 kg, 750 kg too much, and the European rule does not help", () => {
    const [his] = licence.result.drivers;
    expect(his?.mayDrive).toBe("no");
    expect(his?.findings).toMatchObject([
      {
        code: "licence.categoryTooSmall",
        severity: "refuse",
        basis: "law",
        facts: { upTo: { value: 3500 }, over: { value: 750 } },
        sources: ["licence.gb.b.maxMamKg"],
        mends: [{ code: "licence.otherDriver" }, { code: "licence.lighterVehicle" }],
      },
      { code: "licence.euRuleOff", severity: "note" },
    ]);
  });

  it("allows her: C1 from a test of 1988, valid to 70, three points within the insurer's criteria", () => {
    expect(licence.result.drivers[1]).toMatchObject({ driverId: "her", mayDrive: "yes", findings: [] });
    const insurance = checkInsurance({
      ...hire,
      drivers: [her],
      policy,
      vehicle: ac4,
      countries,
      nightsAbroad: 13,
    });
    expect(insurance.result.outcome).toBe("accept");
  });

  it("as counter-offer goes with her as only driver, or with the low-profile of 3,500 kg for both", () => {
    const alone = checkLicence({ ...hire, vehicle: ac4, drivers: [her], countries });
    expect(refusals(alone.findings)).toEqual([]);
    const lighter = checkLicence({ ...hire, vehicle: vehicle("lp4"), drivers: [him, her], countries });
    expect(lighter.result.drivers.map(({ mayDrive }) => mayDrive)).toEqual(["yes", "yes"]);
  });

  const route = [
    { country: "GB", enter: "2026-06-06", leave: "2026-06-20" },
    { country: "DE", enter: "2026-06-07", leave: "2026-06-18" },
    { country: "AT", enter: "2026-06-10", leave: "2026-06-16" },
  ];

  it("needs the toll box in Austria, not the vignette, and has the limits of heavy vehicles", () => {
    const answer = abroad(ac4, route);
    const items = answer.result.tasks.map(({ ruleId }) => ruleId);
    expect(items).toContain("toll.at.box");
    expect(items).not.toContain("toll.at.vignette");
    expect(limits(answer, "DE")).toMatchObject({ rural: 80, motorway: 100 });
    expect(limits(answer, "AT")).toMatchObject({ rural: 70, motorway: 80 });
  });
});

describe("five people and a dog, collected on Saturday at noon for a ferry at six", () => {
  const booking = (hireId: string, from: string, to: string) => ({ hireId, from, to });
  const due = (["mot", "tax", "insurance", "lpgCheck"] as const).map((kind) => ({
    kind,
    dueOn: "2030-12-31",
  }));
  const fleet = (name: string, bookings: FleetVehicle["bookings"] = []): FleetVehicle => ({
    vehicle: vehicle(name),
    bookings,
    dueDates: due,
    maxDogs: 2,
  });
  const two: Party = {
    travellers: ["x", "y"].map((id) => ({ id, kind: "adult" as const })),
    dogs: 0,
    experience: "some",
  };
  const held = { from: "2026-07-01T14:00", to: "2026-07-04T11:00" };
  const input: CounterOffersInput = {
    vehicles: [fleet("oc6", [booking("two", held.from, held.to)]), fleet("cv2"), fleet("lp4"), fleet("wl4")],
    party: {
      travellers: [
        { id: "a", kind: "adult" },
        { id: "b", kind: "adult" },
        { id: "c", kind: "child", ageYears: 13, heightCm: 155 },
        { id: "d", kind: "child", ageYears: 11, heightCm: 145 },
        { id: "e", kind: "child", ageYears: 8, heightCm: 137 },
      ],
      dogs: 1,
      experience: "first",
    },
    from: "2026-07-04T12:00",
    to: "2026-07-11T10:00",
    today: "2026-06-01",
    // turnaround 4 h; the handover is 1.5 h and the port 2 h away, so keys at half past two at the latest
    turnaroundMinutes: 240,
    latestFrom: "2026-07-04T14:30",
    timeZone: "Europe/London",
    movable: [{ hireId: "two", vehicleId: "oc6", party: two, ...held }],
  };

  it("fits nowhere as asked: belts by law in three, diary and dogs in the fourth", () => {
    const { movable: _, latestFrom: __, ...asked } = input;
    const { result, findings } = feasibleVehicles(asked);
    expect(findings).toMatchObject([{ code: "diary.noneFits", facts: { count: 4 } }]);
    const codes = Object.fromEntries(
      result.vehicles.map(({ vehicleId, findings: of }) => [vehicleId, refusals(of).map(({ code }) => code)]),
    );
    expect(codes.oc6).toEqual(expect.arrayContaining(["diary.taken", "seats.noPets"]));
    for (const id of ["cv2", "lp4", "wl4"]) expect(codes[id]).toContain("seats.tooFewBelts");
  });

  const offers = listCounterOffers(input);

  it("is offered the nearest three changes with what they cost, the dog never decided in silence", () => {
    expect(
      offers.map(({ vehicleId, steps, trouble }) => [
        vehicleId,
        steps.map(({ kind }) => kind),
        trouble.value,
      ]),
    ).toEqual([
      ["oc6", ["moveHire", "decideOnDogs"], 23],
      ["oc6", ["shift", "otherCrossing", "decideOnDogs"], 28],
      [expect.any(String), ["secondVehicle"], 40],
    ]);
  });

  it("names what each change is: the hire of two to another vehicle, three in the afternoon, or two vehicles", () => {
    expect(offers[0]?.steps[0]).toEqual({ kind: "moveHire", hireId: "two", toVehicleId: "cv2" });
    expect(offers[1]?.steps[0]).toMatchObject({ from: "2026-07-04T15:00", hours: 3 });
    expect(offers[2]?.steps[0]).toMatchObject({ people: 1 });
  });

  it("leaves a hire alone that may not be moved", () => {
    const fixed = listCounterOffers({ ...input, movable: [] });
    expect(fixed.flatMap(({ steps }) => steps.map(({ kind }) => kind))).not.toContain("moveHire");
  });

  it("offers nothing where it fits as asked", () => {
    expect(listCounterOffers({ ...input, party: { ...two } })).toEqual([]);
  });
});

describe("four to ski in Austria through Germany with the winterised low-profile, ten nights in February", () => {
  const wl4 = vehicle("wl4");
  const when = { from: "2027-02-06T12:00", to: "2027-02-16T10:00" };

  it("weighs 3,457 kg with 43 to spare, and then wants weighing", () => {
    const item = (id: string, massKg: number, behindFrontAxleM: number) => ({
      id,
      name: id,
      massKg,
      behindFrontAxleM,
      removable: true,
    });
    const { result, findings } = checkLoad({
      vehicle: wl4,
      party: {
        travellers: [75, 62, 35, 30].map((massKg, k) => ({
          id: `t${k}`,
          kind: k < 2 ? ("adult" as const) : ("child" as const),
          massKg,
        })),
        dogs: 0,
        experience: "some",
      },
      driverId: "t0",
      load: {
        seats: [
          { travellerId: "t1", behindFrontAxleM: 0.5 },
          { travellerId: "t2", behindFrontAxleM: 1.9 },
          { travellerId: "t3", behindFrontAxleM: 1.9 },
        ],
        items: [item("luggage", 90, 3), item("food", 40, 2.8), item("skis", 40, 2.5)],
        waterLitres: 60,
        fuelShare: 0.9,
        lpgCylinders: 0,
      },
    });
    expect(result.total.load.value).toBeCloseTo(3457, 9);
    expect(result.total.margin.value).toBeCloseTo(43, 9);
    expect(result.legal).toBe(true);
    expect(result.needsWeighbridge).toBe(true);
    expect(refusals(findings)).toEqual([]);
  });

  it("goes with conditions: winter tyres are on it, frost is told and signed for, nothing is refused", () => {
    const { result, findings } = checkSeason({
      vehicle: wl4,
      ...when,
      countries: ["GB", "FR", "DE", "AT"],
      coldestNightC: -12,
    });
    expect(result).toEqual({ winter: true, frost: true });
    expect(refusals(findings)).toEqual([]);
    expect(findings.filter(({ severity }) => severity === "condition").map(({ code }) => code)).toContain(
      "season.frost",
    );
    const summer = checkSeason({
      vehicle: wl4,
      ...when,
      countries: ["AT"],
      coldestNightC: -12,
      winterTyres: false,
    });
    expect(summer.findings.some(({ code, basis }) => code.startsWith("season.") && basis === "law")).toBe(
      true,
    );
  });

  const route = [
    { country: "FR", enter: "2027-02-06", leave: "2027-02-07" },
    { country: "DE", enter: "2027-02-07", leave: "2027-02-15" },
    { country: "AT", enter: "2027-02-08", leave: "2027-02-14" },
  ];

  it("needs vignette and compulsory kit, no blind-spot stickers, each until it is got or seen", () => {
    const open = abroad(wl4, route, { today: "2026-12-01" });
    const tasks = open.result.tasks.map(({ ruleId }) => ruleId);
    expect(tasks).toContain("toll.at.vignette");
    expect(tasks).not.toContain("kit.fr.blindSpotStickers");
    const kit = open.findings.filter(({ code }) => code === "countries.kit").map(({ about }) => about);
    expect(kit).toEqual(expect.arrayContaining(["vest", "triangle", "firstAid"]));
    const kitAboard = open.result.cards.flatMap((card) => card.kit.map(({ thing }) => thing));
    const ready = abroad(wl4, route, { today: "2026-12-01", kitAboard, got: tasks });
    expect(ready.findings.filter(({ severity }) => severity !== "note")).toEqual([]);
  });
});

describe("a retired pair with refillable gas through the tunnel to Spain and Portugal, 28 nights in March", () => {
  const ac4 = vehicle("ac4");
  const hire = { from: "2026-03-02T12:00", to: "2026-03-30T10:00", today: "2026-03-01" };
  const checkedOn = "2026-02-20";
  const countries = ["GB", "FR", "ES", "PT"];
  const him = person("him", "1954-02-01", "1973-06-01", { checkedOn });
  const her = person("her", "1958-01-20", "1978-06-01", {
    checkedOn,
    categories: withC1("1978-06-01", "2028-01-19"),
  });

  it("changes the driver: his C1 was not renewed at 70, hers lasts", () => {
    const { result } = checkLicence({ ...hire, vehicle: ac4, drivers: [him, her], countries });
    expect(result.drivers.map(({ mayDrive }) => mayDrive)).toEqual(["no", "yes"]);
    expect(result.drivers[0]?.findings.map(({ code }) => code)).toContain("licence.categoryTooSmall");
    const claims = { ...him, licence: { ...him.licence, categories: withC1("1973-06-01", "2060-01-01") } };
    const before = { ...claims, licence: { ...claims.licence, checkedOn: "2024-01-20" } };
    const answer = checkLicence({ ...hire, vehicle: ac4, drivers: [before], countries });
    expect(answer.findings.map(({ code }) => code)).toContain("licence.c1EndsAtSeventy");
  });

  it("is let into the tunnel at 80 % or less with a gauge that works, and not otherwise", () => {
    const ask = (more: Partial<CrossingInput>) =>
      checkCrossing({
        vehicle: ac4,
        abroad: true,
        crossings: [{ kind: "tunnel", on: "2026-03-02" }],
        noCrossing: false,
        ...more,
      }).findings;
    expect(refusals(ask({ fillShare: 0.8, gaugeWorks: true }))).toEqual([]);
    expect(refusals(ask({ fillShare: 0.81, gaugeWorks: true }))).toMatchObject([
      { code: "crossing.tooFull", basis: "safety" },
    ]);
    expect(refusals(ask({ fillShare: 0.5, gaugeWorks: false }))).toMatchObject([
      { code: "crossing.noGauge" },
    ]);
    expect(
      ask({})
        .filter(({ severity }) => severity === "unchecked")
        .map(({ code }) => code),
    ).toEqual(expect.arrayContaining(["crossing.gaugeNotSeen", "crossing.fillNotRead"]));
  });

  it("takes three adaptors, the UK sticker for Spain, stickers and the limits of heavy vehicles in France", () => {
    const stay = (country: string, enter: string, leave: string) => ({ country, enter, leave });
    const answer = abroad(
      ac4,
      [
        stay("FR", "2026-03-02", "2026-03-29"),
        stay("ES", "2026-03-05", "2026-03-26"),
        stay("PT", "2026-03-12", "2026-03-20"),
      ],
      { plateShowsUk: true },
    );
    const about = (code: string) =>
      answer.findings.filter((each) => each.code === code).map((each) => each.about);
    expect(about("countries.adaptor").sort()).toEqual([
      "adaptor.bayonet",
      "adaptor.dish",
      "adaptor.euronozzle",
    ]);
    expect(about("countries.kit")).toEqual(expect.arrayContaining(["ukSticker", "blindSpotStickers"]));
    const sticker = answer.findings.find(({ about: thing }) => thing === "ukSticker");
    expect(sticker?.facts.countries).toBe("ES");
    expect(limits(answer, "FR")).toMatchObject({ rural: 80, dual: 100, motorway: 110 });
    expect(answer.result.cards.find(({ country }) => country === "PT")?.night).toMatchObject({
      value: "protectedBanned",
    });
  });

  it("has a deposit that a hold on a card of seven days cannot secure to the end: to be taken anew", () => {
    const [hold] = lifeOfHolds({
      holdings: [{ id: "h", isHold: true, remaining: 150_000, on: "2026-03-02" } as never],
      to: "2026-03-30",
      today: "2026-03-02",
      authorisationDays: 7,
      releaseWorkingDays: 5,
    });
    expect(hold).toMatchObject({ state: "lapsesBefore", standsTo: "2026-03-09" });
  });
});
