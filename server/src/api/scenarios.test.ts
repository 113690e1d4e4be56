import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { toJson } from "../desk/documents.ts";
import { type As, makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, DRIVER, PLACE, TRIP } from "./samples-for-tests.ts";

// Four enquiries of the trade, decided through the doors of the desk: what is refused, why, and what is offered instead.

const vehicle = (id: string) =>
  JSON.parse(readFileSync(join(import.meta.dirname, `../../../examples/vehicles/${id}.json`), "utf8"));
const FLEET = [
  ["lp4", "lowProfile", 1],
  ["oc6", "overcab", 0],
  ["ac4", "aClass", 1],
  ["wl4", "lowProfile", 2],
] as const;

type Line = { finding: { code: string; about?: string; severity: string; basis: string; facts: object } };
const codesOf = (gate: { findings: Line[] }, ...severities: string[]) =>
  gate.findings
    .filter(({ finding }) => severities.includes(finding.severity))
    .map(({ finding }) => (finding.about === undefined ? finding.code : `${finding.code} ${finding.about}`));

let depot: TestDepot;
beforeEach(async () => {
  depot = await makeDepot("sqlite", "2026-06-01T08:00:00.000Z");
  const dueDates = ["tax", "insurance", "lpgCheck", "mot"].map((kind) => ({ kind, dueOn: "2028-12-31" }));
  for (const [id, vehicleClass, maxDogs] of FLEET) {
    const document = toJson({ description: vehicle(id), dueDates, maxDogs, vehicleClass });
    await depot.store.vehicles.put({ of: id, validFrom: "2026-01-01", document });
  }
});
afterEach(() => depot.close());

const must = async (as: As, method: "GET" | "POST" | "PUT", path: string, body?: unknown) => {
  const answer = await depot.call(as, method, path, body);
  expect(answer.status, JSON.stringify(answer.body).slice(0, 900)).toBe(200);
  return answer.body;
};
const people = (adults: number, children: readonly number[] = []) => [
  ...Array.from({ length: adults }, (_, k) => ({ id: `t${k}`, kind: "adult", massKg: 75 })),
  ...children.map((massKg, k) => ({ id: `c${k}`, kind: "child", ageYears: 13, heightCm: 150, massKg })),
];
const party = (travellers: object[], dogs = 0) => ({
  travellers,
  sleepers: travellers.length,
  dogs,
  experience: "some",
});

interface Asked {
  readonly vehicleId: string;
  readonly from: string;
  readonly to: string;
  readonly party: object;
  readonly country: string;
  readonly through: readonly string[];
}
/** An enquiry with a trip to one country and through others. */
async function enquire({ country, through, ...asked }: Asked): Promise<string> {
  const { id } = (await must("desk", "POST", "/hires", { customer: CUSTOMER, ...asked })).hire;
  const [stop] = TRIP.stops;
  const day = (local: string, hour: string) => `${local.slice(0, 10)}T${hour}`;
  const there = { ...stop, place: { ...PLACE, name: "An invented pitch", country } };
  const stays = { arrive: day(asked.from, "20:00"), leave: day(asked.to, "05:00") };
  const trip = { ...TRIP, depart: asked.from, return: asked.to, stops: [{ ...there, ...stays }] };
  await must("desk", "PUT", `/hires/${id}/trip`, trip);
  await say(id, { through });
  return id;
}
const say = async (id: string, said: object) => {
  const { abroad } = await must("desk", "GET", `/hires/${id}/abroad`);
  await must("desk", "PUT", `/hires/${id}/abroad`, { ...abroad, ...said });
};
const gateOf = async (id: string, gate: string) =>
  (await must("desk", "GET", `/hires/${id}`)).glass.gates.find(
    (each: { gate: string }) => each.gate === gate,
  );
const cardOf = async (id: string, country: string) =>
  (await must("desk", "GET", `/hires/${id}/abroad`)).countries.cards.find(
    (card: { country: string }) => card.country === country,
  );
const speedsOf = (card: { speeds: { road: string; limit: { value: number } }[] }) =>
  Object.fromEntries(card.speeds.map(({ road, limit }) => [road, limit.value]));
const driver = (id: string, born: string, more: object) => ({
  ...DRIVER,
  id,
  name: `Invented ${id}`,
  born,
  licence: { ...DRIVER.licence, checkedOn: "2026-06-01", ...more },
});
const until = (to: string, ...names: string[]) =>
  names.map((category) => ({ category, from: "1988-05-01", to }));

describe("what is decided of an enquiry, why, and what is offered instead", () => {
  it("a couple with 4,250 kg of diesel to Germany and Austria: he may not, she may as the only driver; else a lighter one", async () => {
    const id = await enquire({
      vehicleId: "ac4",
      from: "2026-06-06T14:00",
      to: "2026-06-20T10:00",
      party: party(people(2)),
      country: "AT",
      through: ["FR", "DE"],
    });
    const he = driver("he", "1992-01-15", {
      firstCarEntitlement: "2011-05-01",
      categories: [{ category: "B", from: "2011-05-01", to: "2062-01-14" }],
    });
    const points = [{ code: "SP30", offence: "2024-09-01", points: 3 }];
    const she = driver("she", "1970-03-02", {
      firstCarEntitlement: "1988-05-01",
      categories: until("2040-03-01", "B", "C1"),
      endorsements: points,
    });
    await must("desk", "PUT", `/hires/${id}/drivers`, { drivers: [she, { ...he, main: false }] });
    const both = await gateOf(id, "licence");
    expect(codesOf(both, "refuse")).toEqual(["licence.categoryTooSmall he"]);
    expect(codesOf(both, "note")).toContain("licence.euRuleOff he");
    expect(both.findings[0].finding).toMatchObject({ basis: "law" });
    expect(both.findings[0].finding.mends.map(({ code }: { code: string }) => code)).toEqual([
      "licence.otherDriver",
      "licence.lighterVehicle",
    ]);
    // offered: her alone
    await must("desk", "PUT", `/hires/${id}/drivers`, { drivers: [she] });
    expect(codesOf(await gateOf(id, "licence"), "refuse", "unchecked")).toEqual([]);
    expect(codesOf(await gateOf(id, "insurance"), "refuse", "unchecked")).toEqual([]);
    expect(codesOf(await gateOf(id, "countries"), "unchecked")).toContain("countries.toGetLate toll.at.box");
    expect(speedsOf(await cardOf(id, "DE"))).toMatchObject({ rural: 80, motorway: 100 });
    expect(speedsOf(await cardOf(id, "AT"))).toMatchObject({ rural: 70, motorway: 80 });
    // or the lighter one with both
    const light = await enquire({
      vehicleId: "lp4",
      from: "2026-06-06T14:00",
      to: "2026-06-20T10:00",
      party: party(people(2)),
      country: "AT",
      through: ["FR", "DE"],
    });
    await must("desk", "PUT", `/hires/${light}/drivers`, { drivers: [she, { ...he, main: false }] });
    expect(codesOf(await gateOf(light, "licence"), "refuse", "unchecked")).toEqual([]);
  });

  it("five people and a dog at noon, when the only one with the belts is back at 11:00: none as asked, and the nearest changes", async () => {
    const before = await must("desk", "POST", "/hires", {
      customer: CUSTOMER,
      party: party(people(2)),
      from: "2026-07-10T14:00",
      to: "2026-07-18T11:00",
      vehicleId: "oc6",
    });
    await must("desk", "POST", `/hires/${before.hire.id}/quote`, { accept: true });
    await must("desk", "POST", `/hires/${before.hire.id}/book`);
    const asked = { from: "2026-07-18T12:00", to: "2026-07-25T10:00" };
    const ask = async (dogs: number) =>
      must("desk", "POST", "/availability", { ...asked, party: party(people(5), dogs) });
    const { vehicles, offers } = await ask(1);
    expect(vehicles.filter(({ possible }: { possible: boolean }) => possible)).toEqual([]);
    const of = (id: string) => vehicles.find((each: { id: string }) => each.id === id);
    const changes = (id: string) => of(id).nearestChanges.map(({ kind }: { kind: string }) => kind);
    expect(changes("oc6")).toEqual(expect.arrayContaining(["shift", "waivePets"]));
    expect(changes("lp4")).toContain("smallerParty");
    // the nearest ways, the least trouble first; the dog is somebody's decision, never left out in silence
    const ways = (list: { vehicleId: string; steps: { kind: string }[] }[]) =>
      list.map(({ vehicleId, steps }) => [vehicleId, ...steps.map(({ kind }) => kind)]);
    expect(ways(offers)).toEqual([
      ["oc6", "shift", "decideOnDogs"],
      ["ac4", "secondVehicle"],
    ]);
    expect(ways((await ask(0)).offers)).toEqual([
      ["oc6", "shift"],
      ["ac4", "secondVehicle"],
    ]);
    expect(offers[0].steps[0]).toMatchObject({ from: "2026-07-18T15:00", hours: 3 });
  });

  it("four skiers in February with winter tyres: goes, with what must be got and taken as conditions", async () => {
    depot.at("2027-01-20T08:00:00.000Z");
    const id = await enquire({
      vehicleId: "wl4",
      from: "2027-02-05T14:00",
      to: "2027-02-15T10:00",
      party: party(people(2, [35, 30])),
      country: "AT",
      through: ["FR", "DE"],
    });
    const season = await gateOf(id, "season");
    expect(codesOf(season, "refuse", "unchecked")).toEqual([]);
    expect(codesOf(season, "condition")).toEqual(["season.frost"]);
    const open = codesOf(await gateOf(id, "countries"), "unchecked", "refuse");
    for (const thing of ["kit vest", "kit triangle", "kit firstAid", "toGetLate toll.at.vignette"])
      expect(open).toContain(`countries.${thing}`);
    // at 3,500 kg neither the stickers of heavy vehicles nor the toll box
    expect(open.join()).not.toMatch(/blindSpot|toll\.at\.box/);
    const tyred = vehicle("wl4").systems.map((each: { kind: string; spec: object }) =>
      each.kind === "tyres" ? { ...each, spec: { ...each.spec, season: "summer" } } : each,
    );
    const summer = {
      description: { ...vehicle("wl4"), systems: tyred },
      dueDates: [],
      maxDogs: 2,
      vehicleClass: "lowProfile",
    };
    await depot.store.vehicles.put({ of: "wl4", validFrom: "2027-01-01", document: toJson(summer) });
    // the law there is by the road, not by the date: it goes as conditions, and our own policy may refuse it
    const winter = await gateOf(id, "season");
    expect(codesOf(winter, "refuse", "unchecked")).toEqual(["season.summerTyresPolicy AT"]);
    expect(codesOf(winter, "condition")).toEqual([
      "season.notOnWintryRoads AT",
      "season.notOnWintryRoadsNotKnown DE",
      "season.signedRoads FR",
      "season.frost",
    ]);
    const policy = winter.findings.find(
      ({ finding }: { finding: { code: string } }) => finding.code === "season.summerTyresPolicy",
    );
    expect(policy.finding.basis).toBe("policy");
    // chains seen aboard are enough where the rule says so, and only there
    await say(id, { kitAboard: ["snowChains"] });
    expect(codesOf(await gateOf(id, "season"), "condition")).not.toContain("season.signedRoads FR");
    expect(codesOf(await gateOf(id, "season"), "condition")).toContain("season.notOnWintryRoads AT");
  });

  it("a retired pair through the tunnel to Spain and Portugal in March: another driver, then the gauge, adaptors and a hold taken anew", async () => {
    depot.at("2027-02-22T08:00:00.000Z");
    const id = await enquire({
      vehicleId: "ac4",
      from: "2027-03-01T14:00",
      to: "2027-03-29T10:00",
      party: party(people(2)),
      country: "PT",
      through: ["FR", "ES"],
    });
    const checked = { checkedOn: "2027-02-22", firstCarEntitlement: "1975-05-01" };
    const he = driver("he", "1954-06-01", { ...checked, categories: until("2029-05-31", "B") });
    const she = driver("she", "1958-06-01", { ...checked, categories: until("2028-05-31", "B", "C1") });
    await must("desk", "PUT", `/hires/${id}/drivers`, { drivers: [he] });
    expect(codesOf(await gateOf(id, "licence"), "refuse")).toEqual(["licence.categoryTooSmall he"]);
    await must("desk", "PUT", `/hires/${id}/drivers`, { drivers: [she] });
    expect(codesOf(await gateOf(id, "licence"), "refuse", "unchecked")).toEqual([]);
    const crossings = [{ kind: "tunnel", on: "2027-03-01" }];
    await say(id, { crossings, gaugeWorks: false, fillShare: 0.8 });
    expect(codesOf(await gateOf(id, "crossing"), "refuse")).toEqual(["crossing.noGauge tunnel"]);
    await say(id, { gaugeWorks: true, fillShare: 0.85 });
    expect(codesOf(await gateOf(id, "crossing"), "refuse")).toEqual(["crossing.tooFull tunnel"]);
    await say(id, { fillShare: 0.8 });
    expect(codesOf(await gateOf(id, "crossing"), "refuse", "unchecked")).toEqual([]);
    const countries = codesOf(await gateOf(id, "countries"), "unchecked", "refuse");
    for (const adaptor of ["euronozzle", "dish", "bayonet"])
      expect(countries).toContain(`countries.adaptor adaptor.${adaptor}`);
    for (const thing of ["ukSticker", "blindSpotStickers"])
      expect(countries).toContain(`countries.kit ${thing}`);
    expect(countries).toContain("countries.noPaper");
    // several rules of one table are one source
    for (const { finding } of (await gateOf(id, "countries")).findings)
      expect(new Set(finding.sources).size).toBe(finding.sources.length);
    await say(id, { papers: { originalDocument: true } });
    expect(codesOf(await gateOf(id, "countries"), "unchecked", "refuse")).not.toContain("countries.noPaper");
    expect(speedsOf(await cardOf(id, "FR"))).toMatchObject({ rural: 80, dual: 100, motorway: 110 });
    expect((await cardOf(id, "PT")).night.value).toBe("protectedBanned");
    await must("desk", "POST", `/hires/${id}/quote`, { accept: true });
    const hold = { id: "hold-1", kind: "depositHeld", method: "cardHold", pence: 100_000, on: "2027-02-22" };
    await must("desk", "POST", `/hires/${id}/payments`, hold);
    // no hold lasts as long as the hire: it goes, to be taken anew on the road
    expect(codesOf(await gateOf(id, "money"), "condition")).toEqual(["money.holdLapses hold-1"]);
  });

  it("what takes time to get stands on Today from a week before its day until it is got", async () => {
    const id = await enquire({
      vehicleId: "lp4",
      from: "2026-07-20T14:00",
      to: "2026-07-27T10:00",
      party: party(people(2)),
      country: "DE",
      through: ["BE"],
    });
    const remind = async () =>
      (await must("desk", "GET", "/reminders")).toGet.map(
        ({ finding, doBy }: Line & { doBy: string }) => `${finding.code} ${finding.about ?? "-"} ${doBy}`,
      );
    depot.at("2026-06-16T08:00:00.000Z");
    expect(await remind()).toEqual([]);
    await must("desk", "POST", `/hires/${id}/quote`, { accept: true });
    await must("desk", "POST", `/hires/${id}/book`);
    // four weeks for the certificate; nothing is asked for sooner than a week before its day
    depot.at("2026-06-14T08:00:00.000Z");
    expect(await remind()).toEqual([]);
    depot.at("2026-06-15T08:00:00.000Z");
    expect(await remind()).toEqual(["countries.noPaper - 2026-06-22"]);
    depot.at("2026-07-10T08:00:00.000Z");
    expect(await remind()).toEqual([
      "countries.noPaper - 2026-06-22",
      "countries.toGetLate zone.de 2026-06-29",
      "countries.toGetLate zone.be 2026-07-06",
    ]);
    await say(id, { papers: { originalDocument: true }, got: ["zone.be"] });
    expect(await remind()).toEqual(["countries.toGetLate zone.de 2026-06-29"]);
    // driven through without a stop is abroad, too: the paper on countries goes out with the pack
    const [stop] = TRIP.stops;
    const home = { ...stop, arrive: "2026-07-20T20:00", leave: "2026-07-27T05:00" };
    const trip = { ...TRIP, depart: "2026-07-20T14:00", return: "2026-07-27T10:00", stops: [home] };
    await must("desk", "PUT", `/hires/${id}/trip`, trip);
    const { attachments } = await must("desk", "GET", `/hires/${id}/message?kind=preHire&language=en`);
    expect(attachments).toContain("countries");
  });
});
