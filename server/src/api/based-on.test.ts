import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { TEST_DATABASE_URL } from "../store/stores-for-tests.ts";
import { differingPaths } from "./based-on.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, DRIVER, LOAD, PARTY, PERIOD, TRIP } from "./samples-for-tests.ts";

it("what differs is named by its path, however deep, and what is left out equals undefined", () => {
  expect(differingPaths({ a: 1, b: [{ c: 2 }] }, { a: 1, b: [{ c: 3 }], d: undefined })).toEqual(["b.0.c"]);
  expect(differingPaths({ a: [1, 2] }, { a: [1] })).toEqual(["a.1"]);
  expect(differingPaths({ a: {} }, { a: [] })).toEqual(["a"]);
  expect(differingPaths({ a: { b: null } }, { a: { b: null } })).toEqual([]);
});

const kinds = ["sqlite", ...(TEST_DATABASE_URL === "" ? [] : ["postgres"])] as ("sqlite" | "postgres")[];
describe.each(kinds)("what two desks change at once, on %s", (kind) => {
  let depot: TestDepot;
  let id = "";
  beforeAll(async () => {
    depot = await makeDepot(kind);
    const body = { customer: CUSTOMER, party: PARTY, ...PERIOD, vehicleId: "pv2" };
    id = (await depot.call("desk", "POST", "/hires", body)).body.hire.id;
  });
  afterAll(() => depot.close());
  const read = async () => (await depot.call("desk", "GET", `/hires/${id}`)).body;

  it.each([
    ["trip", TRIP, { ...TRIP, returnDrive: { ...TRIP.returnDrive, minutes: 99 } }],
    ["party", PARTY, { ...PARTY, dogs: 1 }],
    ["drivers", { drivers: [DRIVER] }, { drivers: [{ ...DRIVER, name: "Nan Sample" }] }],
    ["load", LOAD, { ...LOAD, items: [] }],
    ["customer", CUSTOMER, { ...CUSTOMER, telephone: "07700 900111" }],
  ])(
    "the second save of a %s from the same page is refused, and what the first kept stays",
    async (part, one, two) => {
      const base = (await read()).versions[part];
      const url = `/hires/${id}/${part}?basedOn=${base}`;
      const first = await depot.call("desk", "PUT", url, one);
      expect(first.status).toBe(200);
      const before = await read();
      const second = await depot.call("manager", "PUT", url, two);
      expect([second.status, second.body.error.code]).toEqual([409, "stale"]);
      expect(second.body.error.problems[0].path).toBe(part);
      expect((await read())[part]).toEqual(before[part]);
      // seen, it is meant: from the version that is there now it goes through
      const again = await depot.call(
        "manager",
        "PUT",
        `/hires/${id}/${part}?basedOn=${before.versions[part]}`,
        two,
      );
      expect(again.status).toBe(200);
      expect(again.body.versions[part]).toBe(before.versions[part] + 1);
    },
  );

  it("the refusal says who kept the other one, when, and at which fields it differs", async () => {
    const { versions, trip } = await read();
    depot.at("2026-07-01T13:32:00.000Z");
    const url = `/hires/${id}/trip?basedOn=${versions.trip}`;
    const later = {
      ...trip,
      stops: [{ ...trip.stops[0], leave: "2026-07-05T09:00" }, ...trip.stops.slice(1)],
    };
    expect((await depot.call("desk", "PUT", url, later)).status).toBe(200);
    const { body } = await depot.call("manager", "PUT", url, trip);
    expect(body.error.problems).toEqual([
      {
        path: "trip",
        expected: "Dee Desk kept another on Wed 1 July 14:32, after you began.",
      },
      { path: "stops.0.leave", expected: "Kept by now: Sun 5 July 09:00" },
    ]);
  });

  it("both at the very same moment: one is kept, one is refused", async () => {
    const { versions, trip } = await read();
    const url = `/hires/${id}/trip?basedOn=${versions.trip}`;
    const both = await Promise.all(
      ["desk", "manager"].map((as) => depot.call(as as "desk", "PUT", url, trip)),
    );
    expect(both.map(({ status }) => status).sort()).toEqual([200, 409]);
  });

  it("a journey abroad, things that travel, an account, a vehicle, the rate card and the firm likewise", async () => {
    const page = async (path: string) => (await depot.call("manager", "GET", path)).body;
    const twice = async (path: string, base: string | number, body: object) => {
      const url = `${path}?basedOn=${base}`;
      const put = async (sent: object) => (await depot.call("manager", "PUT", url, sent)).status;
      return [await put(body), await put(body)];
    };
    const { abroad, version } = await page(`/hires/${id}/abroad`);
    expect(await twice(`/hires/${id}/abroad`, version, { ...abroad, overhang: true })).toEqual([200, 409]);
    const stock = await page(`/hires/${id}/stock`);
    expect(await twice(`/hires/${id}/stock`, stock.version, { asks: [] })).toEqual([200, 409]);
    const { accounts } = await page("/accounts");
    const yard = accounts.find(({ login }: { login: string }) => login === "yard");
    const shut = { name: yard.name, role: "yard", shut: true };
    expect(await twice(`/accounts/${yard.id}`, yard.version, shut)).toEqual([200, 409]);
    const vehicle = await page("/vehicles/pv2");
    const description = { ...vehicle.description, name: "Heron the second", validFrom: "2026-07-01" };
    const { vehicleClass, maxDogs } = vehicle;
    const described = { description, vehicleClass, maxDogs };
    expect(await twice("/vehicles/pv2", vehicle.newest.versionId, described)).toEqual([200, 409]);
    const terms = await page("/terms");
    const hire = { ...terms.hire.terms, validFrom: "2026-07-01", id: "two" };
    expect(await twice("/terms", terms.newest.hire.versionId, { hire })).toEqual([200, 409]);
    const { firmVersion } = await page("/money");
    const firm = { name: "Invented Hire", address: "1 Invented Row, Nowhere", vatNumber: null };
    expect(firmVersion).toBe("none");
    expect(await twice("/money/firm", firmVersion, firm)).toEqual([200, 409]);
  });

  it("a quote: extras that another desk put in are neither priced away nor accepted unseen", async () => {
    const { versions } = await read();
    const ask = (base: number, body: object) =>
      depot.call("desk", "POST", `/hires/${id}/quote?basedOn=${base}`, body);
    const bedding = { extras: [{ id: "bedding", count: 2 }], accept: false };
    expect((await ask(versions.quote, bedding)).status).toBe(200);
    const second = await ask(versions.quote, { extras: [], accept: true });
    expect([second.status, second.body.error.code]).toEqual([409, "stale"]);
    expect(second.body.error.problems.map(({ path }: { path: string }) => path)).toEqual([
      "quote",
      "extras.0",
    ]);
    const { quote, versions: now } = await read();
    expect([
      quote.acceptedAt,
      quote.result.lines.some(({ about }: { about: string }) => about === "bedding"),
    ]).toEqual([null, true]);
    expect((await ask(now.quote, { ...bedding, accept: true })).status).toBe(200);
  });

  it("a script that names no base sets the value, as before", async () => {
    expect((await depot.call("desk", "PUT", `/hires/${id}/party`, PARTY)).status).toBe(200);
    expect((await depot.call("desk", "PUT", `/hires/${id}/party?basedOn=`, PARTY)).status).toBe(400);
  });
});
