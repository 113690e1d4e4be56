import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { testedStores } from "../store/stores-for-tests.ts";
import { type As, makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, PARTY } from "./samples-for-tests.ts";

describe("where no vehicle can take it as asked", () => {
  it("offers the nearest ways, each with names, and none where one can", async () => {
    const depot = await makeDepot("sqlite");
    try {
      const book = async (vehicleId: string, from: string, to: string) => {
        const asked = { customer: CUSTOMER, party: PARTY, from, to, vehicleId };
        const { id } = (await depot.call("desk", "POST", "/hires", asked)).body.hire;
        await depot.call("desk", "POST", `/hires/${id}/quote`, { accept: true });
        expect((await depot.call("desk", "POST", `/hires/${id}/book`)).status).toBe(200);
      };
      await book("pv2", "2026-10-05T14:00", "2026-10-09T10:00");
      await book("pv2-b", "2026-10-05T14:00", "2026-10-11T10:00");
      const ask = async (from: string, to: string) =>
        (await depot.call("desk", "POST", "/availability", { party: PARTY, from, to })).body;
      expect(await ask("2026-10-12T14:00", "2026-10-16T10:00")).not.toHaveProperty("offers");
      const { offers, vehicles } = await ask("2026-10-08T14:00", "2026-10-12T10:00");
      expect(vehicles.every(({ possible }: { possible: boolean }) => !possible)).toBe(true);
      expect(offers[0]).toMatchObject({
        vehicleId: "pv2",
        vehicleName: "Heron",
        steps: [{ kind: "shift", from: "2026-10-09T14:00", to: "2026-10-13T10:00", hours: 24 }],
        trouble: { value: 24 },
      });
    } finally {
      await depot.close();
    }
  });
});

// Two vehicles, Heron (pv2) and Siskin (pv2-b); four bike racks by the terms alone until one is put on the shelf.
describe.each(testedStores())("from the enquiry to the booking on $kind", ({ kind }) => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot(kind);
  });
  afterAll(() => depot.close());

  const must = async (as: As, method: "GET" | "POST" | "PUT" | "DELETE", path: string, body?: unknown) => {
    const answer = await depot.call(as, method, path, body);
    expect(answer.status, JSON.stringify(answer.body).slice(0, 600)).toBe(200);
    return answer.body;
  };
  const period = (from: number, to: number, month = "06") => ({
    from: `2027-${month}-${String(from).padStart(2, "0")}T14:00`,
    to: `2027-${month}-${String(to).padStart(2, "0")}T10:00`,
  });
  const enquire = async (dates: { from: string; to: string }, more: object = {}) =>
    (await must("desk", "POST", "/hires", { customer: CUSTOMER, party: PARTY, ...dates, ...more })).hire.id;
  const take = (id: string, vehicleId: string, more: object = {}) =>
    depot.call("desk", "POST", `/hires/${id}/take`, { vehicleId, ...more });

  it("of two people who take the last vehicle at the same instant one has it, the other is told plainly", async () => {
    const dates = period(1, 8);
    for (let n = 0; n < 3; n++) {
      const [a, b] = [await enquire(dates), await enquire(dates)];
      const answers = await Promise.all([take(a, "pv2"), take(b, "pv2")]);
      expect(answers.map(({ status }) => status).sort()).toEqual([200, 409]);
      const refused = answers.find(({ status }) => status === 409);
      expect(refused?.body.error).toMatchObject({
        code: "taken",
        problems: [{ expected: "a vehicle that is free then" }],
      });
      const won = answers[0]?.status === 200 ? a : b;
      const lost = won === a ? b : a;
      // nothing of the lost attempt stays
      expect(await must("desk", "GET", `/hires/${lost}`)).toMatchObject({
        hire: { stage: "enquiry", vehicle: null },
        quote: null,
      });
      await must("desk", "POST", `/hires/${won}/end`, { as: "cancelled", reason: "again" });
    }
  });

  it("each vehicle that cannot says why, and what would have to change", async () => {
    const holder = await enquire(period(10, 17));
    await must("desk", "POST", `/hires/${holder}/take`, { vehicleId: "pv2" });
    const { vehicles } = await must("desk", "POST", "/availability", { party: PARTY, ...period(12, 19) });
    expect(vehicles[0]).toMatchObject({ id: "pv2-b", possible: true, price: { currency: "GBP" } });
    expect(vehicles[1]).toMatchObject({ id: "pv2", possible: false });
    expect(vehicles[1].nearestChanges).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ kind: "shift" }),
        expect.objectContaining({ kind: "otherVehicle", vehicleId: "pv2-b", vehicleName: "Siskin" }),
      ]),
    );
    const short = await must("desk", "POST", "/availability", { party: PARTY, ...period(20, 22) });
    expect(short.vehicles[0]).toMatchObject({ possible: false, price: null });
    expect(short.vehicles[0].findings).toMatchObject([{ code: "quote.tooShort", facts: { minimum: 3 } }]);
    expect(short.vehicles[0].nearestChanges).toContainEqual({
      kind: "otherLength",
      from: "2027-06-20T14:00",
      to: "2027-06-23T10:00",
      count: 3,
    });
    await must("desk", "POST", `/hires/${holder}/end`, { as: "cancelled", reason: "again" });
  });

  it("countries, drivers and extras asked for are in the price from the first answer on", async () => {
    const ask = async (asked?: object) =>
      (
        await must("desk", "POST", "/availability", {
          party: PARTY,
          ...period(1, 8),
          ...(asked && { asked }),
        })
      ).vehicles[0].price.pence;
    const plain = await ask();
    const all = { countries: ["FR"], drivers: 3, extras: [{ id: "bedding", count: 2 }] };
    expect((await ask(all)) - plain).toBe(9800 + 3500 + 2 * 3200);
    const id = await enquire(period(1, 8), { asked: all, vehicleId: "pv2" });
    const page = await must("desk", "POST", `/hires/${id}/take`, { vehicleId: "pv2" });
    expect(page.quote.total.pence).toBe(await priceOfPage(page));
    expect(page.quote.total.pence - plain).toBe(9800 + 3500 + 2 * 3200);
    await must("desk", "POST", `/hires/${id}/end`, { as: "cancelled", reason: "again" });
  });
  const priceOfPage = async (page: { quote: { result: { lines: { amount: { pence: number } }[] } } }) =>
    page.quote.result.lines.reduce((sum, { amount }) => sum + amount.pence, 0);

  it("the fourth of three is refused at the quote, with who has the others and when one is back", async () => {
    for (const n of [1, 2, 3])
      await must("desk", "POST", "/stock", { kind: "bikeRack", name: `Rack ${n}`, count: 1 });
    const first = await enquire(period(1, 8, "09"));
    await must("desk", "POST", `/hires/${first}/take`, {
      vehicleId: "pv2",
      extras: [{ id: "bikeRack", count: 3 }],
    });
    const second = await enquire(period(3, 12, "09"), { vehicleId: "pv2-b" });
    const body = { extras: [{ id: "bikeRack", count: 1 }], accept: false };
    const refused = await depot.call("desk", "POST", `/hires/${second}/quote`, body);
    expect(refused.status).toBe(409);
    expect(refused.body.error.findings).toMatchObject([
      { code: "stock.short", facts: { wanted: 1, have: 3, free: 0, backAt: "2027-09-08T14:00" } },
    ]);
    const asked = { countries: [], drivers: 1, extras: body.extras };
    const answer = await must("desk", "POST", "/availability", {
      party: PARTY,
      ...period(3, 12, "09"),
      asked,
    });
    expect(answer.short).toMatchObject([
      { kind: "bikeRack", holders: [{ customer: CUSTOMER.name }, {}, {}], backAt: "2027-09-08T14:00" },
    ]);
    // Siskin is free but for the racks; of Heron, which is taken, leaving them out would not help
    const changesOf = (vehicleId: string) =>
      answer.vehicles.find(({ id }: { id: string }) => id === vehicleId).nearestChanges;
    expect(changesOf("pv2").map(({ kind: of }: { kind: string }) => of)).toEqual(["shift", "shift"]);
    expect(changesOf("pv2-b")).toContainEqual({
      kind: "fewerExtras",
      extra: "bikeRack",
      count: 0,
    });
    // it goes out when the first is back and looked over
    await must("desk", "POST", `/hires/${first}/end`, { as: "cancelled", reason: "again" });
    expect((await must("desk", "POST", `/hires/${second}/quote`, body)).quote.total).not.toBeNull();
  });

  it("of two who book the last rack at once one has it, and the other's vehicle stays free", async () => {
    const dates = period(1, 6, "10");
    const rack = { extras: [{ id: "bikeRack", count: 2 }] };
    const [a, b] = [await enquire(dates), await enquire(dates)];
    const answers = await Promise.all([take(a, "pv2", rack), take(b, "pv2-b", rack)]);
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409]);
    expect(answers.find(({ status }) => status === 409)?.body.error.findings).toMatchObject([
      { code: "stock.short" },
    ]);
    const { vehicles } = await must("desk", "POST", "/availability", { party: PARTY, ...dates });
    expect(vehicles.filter((each: { possible: boolean }) => each.possible)).toHaveLength(1);
  });

  it("kit counts as aboard only once it is packed; what is out of date cannot be packed", async () => {
    const id = await enquire(period(1, 8, "11"));
    await must("desk", "POST", `/hires/${id}/take`, { vehicleId: "pv2" });
    const add = async (body: object) => (await must("desk", "POST", "/stock", { count: 1, ...body })).item;
    const kit = await add({ kind: "europeKit", name: "Kit 1", puts: ["vest", "triangle"] });
    await add({
      kind: "onHireCertificate",
      name: "Certificate 1",
      vehicleId: "pv2",
      validFrom: "2027-01-01",
      expiresOn: "2027-12-31",
    });
    const asks = [
      { kind: "europeKit", count: 1 },
      { kind: "onHireCertificate", count: 1 },
    ];
    const { holds } = await must("desk", "PUT", `/hires/${id}/stock`, { asks });
    expect(holds).toHaveLength(2);
    const aboard = async () => (await must("desk", "GET", `/hires/${id}/abroad`)).abroad;
    expect(await aboard()).toMatchObject({ kitAboard: [], papers: {} });
    for (const hold of holds) await must("yard", "POST", `/hires/${id}/stock/${hold.id}`, { act: "pack" });
    expect(await aboard()).toMatchObject({
      kitAboard: ["vest", "triangle"],
      papers: { certificate: { validFrom: "2027-01-01", validTo: "2027-12-31" } },
    });
    const kitHold = holds.find((each: { kind: string }) => each.kind === "europeKit");
    await must("yard", "POST", `/hires/${id}/stock/${kitHold.id}`, { act: "unpack" });
    expect((await aboard()).kitAboard).toEqual([]);
    await must("desk", "PUT", `/stock/${kit.id}`, {
      kind: "europeKit",
      name: "Kit 1",
      count: 1,
      puts: ["vest", "triangle"],
      expiresOn: "2027-11-07",
      version: kit.version,
      reason: "the first-aid kit in it ends",
    });
    const refused = await depot.call("yard", "POST", `/hires/${id}/stock/${kitHold.id}`, { act: "pack" });
    expect(refused.body.error.findings).toMatchObject([{ code: "stock.outOfDate", basis: "safety" }]);
    const { history } = await must("desk", "GET", `/stock/${kit.id}`);
    expect(history.map(({ act }: { act: string }) => act)).toEqual([
      "changed",
      "unpacked",
      "packed",
      "added",
    ]);
    await must("desk", "POST", `/hires/${id}/end`, { as: "cancelled", reason: "again" });
  });

  it("when a hire is cancelled, whoever waits for the days shows with the vehicle, and one step books it", async () => {
    const dates = period(1, 8, "07");
    const [x, y] = [await enquire(dates), await enquire(dates)];
    await must("desk", "POST", `/hires/${x}/take`, { vehicleId: "pv2" });
    await must("desk", "POST", `/hires/${y}/take`, { vehicleId: "pv2-b" });
    const waiter = await enquire(dates);
    const page = await must("desk", "PUT", `/hires/${waiter}/waiting`, {
      classes: ["panelVan"],
      flexDays: 0,
    });
    expect(page.waiting).toMatchObject({ classes: ["panelVan"], flexDays: 0 });
    const listed = async () => (await must("desk", "GET", "/enquiries")).waiting;
    expect(await listed()).toMatchObject([{ hireId: waiter, customer: CUSTOMER.name, could: [] }]);
    await must("desk", "POST", `/hires/${x}/payments`, {
      id: "pay-test-1",
      kind: "payment",
      method: "card",
      on: "2026-07-01",
      pence: 50000,
    });
    depot.at("2027-06-20T08:00:00.000Z");
    const preview = await must("desk", "GET", `/hires/${x}/ending`);
    const total = (await must("desk", "GET", `/hires/${x}`)).quote.total.pence;
    expect(preview).toMatchObject({
      charge: {
        daysBefore: { value: 11 },
        keepPercent: { value: 70 },
        keep: { pence: Math.round(total * 0.7) },
      },
      nextInLine: [{ hireId: waiter }],
    });
    const ended = await must("desk", "POST", `/hires/${x}/end`, {
      as: "cancelled",
      reason: "a broken leg",
      code: "illness",
    });
    expect(ended.ending).toMatchObject({
      code: "illness",
      termsId: "terms-demo-2026",
      charge: preview.charge,
    });
    expect(await listed()).toMatchObject([{ hireId: waiter, could: [{ id: "pv2", ...dates }] }]);
    expect((await must("desk", "POST", `/hires/${waiter}/take`, { vehicleId: "pv2" })).hire.stage).toBe(
      "booked",
    );
    const after = await must("desk", "GET", "/enquiries");
    expect(after.waiting).toEqual([]);
    expect(after.ended.find((each: { hireId: string }) => each.hireId === x)).toMatchObject({
      as: "cancelled",
      code: "illness",
      reason: "a broken leg",
    });
    depot.at("2026-07-01T08:00:00.000Z");
  });

  it("a new rate card holds from its day for new quotes; a hire quoted before keeps its own", async () => {
    const { hire } = await must("manager", "GET", "/terms");
    const dates = period(1, 8, "12");
    const id = await enquire(dates, { vehicleId: "pv2" });
    const before = await must("desk", "POST", `/hires/${id}/quote`, { extras: [], accept: true });
    const dearer = {
      ...hire.terms,
      id: "terms-2",
      validFrom: "2026-07-01",
      cancellation: [{ atLeastDaysBefore: 0, keepPercent: 100 }],
      discounts: [{ id: "returning", mostPercent: { manager: 20, desk: 5 } }],
      seasons: hire.terms.seasons.map((season: { nightPence: Record<string, number> }) => ({
        ...season,
        nightPence: Object.fromEntries(Object.keys(season.nightPence).map((each) => [each, 50_000])),
      })),
    };
    const gap = { ...dearer, seasons: dearer.seasons.slice(0, 3) };
    const checked = await must("manager", "POST", "/terms/check", { terms: gap, from: "2027-01-01" });
    expect(checked.gaps.length).toBeGreaterThan(0);
    expect(checked.days).toHaveLength(365);
    const refused = await depot.call("manager", "PUT", "/terms", { hire: gap });
    expect([refused.status, refused.body.error.findings[0].code]).toEqual([409, "terms.gap"]);
    const [first, ...others] = dearer.seasons;
    const run = {
      ...dearer,
      seasons: [{ ...first, id: "runs", spans: [{ from: "08-20", to: "09-20" }] }, first, ...others],
    };
    const overlap = await depot.call("manager", "PUT", "/terms", { hire: run });
    expect([overlap.status, overlap.body.error.findings[0].code]).toEqual([409, "terms.straddle"]);
    expect((await depot.call("desk", "PUT", "/terms", { hire: dearer })).status).toBe(403);
    await must("manager", "PUT", "/terms", { hire: dearer });
    const { versions } = await must("desk", "GET", "/terms/versions");
    expect(versions.map(({ termsId, when }: { termsId: string; when: string }) => [termsId, when])).toEqual([
      ["terms-2", "now"],
      ["terms-demo-2026", "before"],
    ]);
    const old = await must("desk", "GET", `/hires/${id}`);
    expect([old.quote.total.pence, old.quote.result.termsId]).toEqual([
      before.quote.total.pence,
      "terms-demo-2026",
    ]);
    expect((await must("desk", "GET", `/hires/${id}/ending`)).charge.keepPercent.value).toBe(15);
    const fresh = await enquire(dates, { vehicleId: "pv2-b" });
    const quote = (as: As, percent: number) =>
      depot.call(as, "POST", `/hires/${fresh}/quote`, {
        extras: [],
        discount: { kind: "returning", percent, reason: "their third hire" },
      });
    expect((await quote("desk", 6)).body.error.findings).toMatchObject([{ code: "quote.discountBeyond" }]);
    const given = (await quote("desk", 5)).body;
    expect(given.quote.result.lines).toContainEqual(
      expect.objectContaining({
        code: "discount",
        about: "returning",
        amount: { currency: "GBP", pence: -16625 },
      }),
    );
    expect(given.history).toContainEqual(
      expect.objectContaining({
        what: "hire.discounted",
        facts: { kind: "returning", reason: "their third hire", pence: 16625 },
      }),
    );
  });
});
