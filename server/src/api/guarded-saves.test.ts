import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { bookHire, liveHire } from "./lived-hire-for-tests.ts";
import type { Operation } from "./operation.ts";
import { basedOn } from "./operations/shared.ts";
import { type OperationId, operations } from "./operations.ts";
import { CUSTOMER, DRIVER, PARTY } from "./samples-for-tests.ts";
import {
  ADD_OR_ACT,
  FROM_ANOTHER_BASE,
  ONLY_LOOK,
  REPLACE_ALL_THE_SAME,
  type World,
} from "./saves-for-tests.ts";
import { must } from "./settlement-for-tests.ts";

const ids = (table: object) => Object.keys(table) as OperationId[];
const ALL: readonly (readonly [OperationId, Operation])[] = ids(operations).map((id) => [id, operations[id]]);

describe("what is sent to the API", () => {
  it("is told, each once, as guarded, replacing with a reason, adding or acting, or only looking", () => {
    const told = [...ids(FROM_ANOTHER_BASE), ...ids(REPLACE_ALL_THE_SAME), ...ADD_OR_ACT, ...ONLY_LOOK];
    const sent = ALL.filter(([, { method }]) => method !== "GET" && method !== "HEAD").map(([id]) => id);
    expect(told.toSorted()).toEqual(sent.toSorted());
  });

  it("by PUT, which replaces, is guarded or has a reason; whatever takes a base is tried with another one", () => {
    const puts = ALL.filter(([, { method }]) => method === "PUT").map(([id]) => id);
    const known = [...ids(FROM_ANOTHER_BASE), ...ids(REPLACE_ALL_THE_SAME)];
    expect(puts.filter((id) => !known.includes(id))).toEqual([]);
    const takesBase = ALL.filter(([, { query }]) => query === basedOn).map(([id]) => id);
    expect(takesBase.length).toBeGreaterThan(20);
    expect(takesBase.filter((id) => FROM_ANOTHER_BASE[id] === undefined)).toEqual([]);
  });
});

describe("a save that began from another version", () => {
  let world: World;
  beforeAll(async () => {
    const depot = await makeDepot("sqlite");
    const { id: back } = await liveHire(depot);
    depot.at("2026-07-01T08:00:00.000Z");
    const body = { customer: CUSTOMER, party: PARTY, from: "2026-07-20T12:00", to: "2026-07-28T10:00" };
    const enquire = async (more: object) =>
      (await must(depot.call("desk", "POST", "/hires", { ...body, ...more }))).hire.id;
    const booked = await enquire({ vehicleId: "pv2" });
    await must(depot.call("desk", "POST", `/hires/${booked}/quote`, { extras: [], accept: true }));
    await must(depot.call("desk", "POST", `/hires/${booked}/book`));
    await must(depot.call("desk", "PUT", `/hires/${booked}/drivers`, { drivers: [DRIVER] }));
    world = { depot, back, booked, open: await enquire({ vehicleId: "pv2" }) };
  });
  afterAll(() => world.depot.close());

  it.each(ids(FROM_ANOTHER_BASE))("%s is refused as stale", async (id) => {
    const save = await FROM_ANOTHER_BASE[id]?.(world);
    const { method } = operations[id];
    const { status, body } = await world.depot.call("manager", method as "PUT", save?.url ?? "", save?.body);
    expect([status, body.error?.code, body.error?.problems]).toMatchObject([409, "stale", expect.anything()]);
  });
});

describe("what two desks keep of one hire", () => {
  let depot: TestDepot;
  let id: string;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    id = await bookHire(depot);
  });
  afterAll(() => depot.close());
  const put = (as: "desk" | "manager", path: string, base: string | number, body: unknown) =>
    depot.call(as, "PUT", `/hires/${id}/${path}?basedOn=${base}`, body);

  it("as payer: the second is refused with who kept which other name, and what was kept stays", async () => {
    const payerOf = (name: string) => ({ payer: { name, email: "office@example.org" } });
    const { payerVersion } = await must(depot.call("desk", "GET", `/hires/${id}/notes`));
    expect(payerVersion).toBe(0);
    await must(put("desk", "payer", payerVersion, payerOf("First Invented")));
    const { status, body } = await put("manager", "payer", payerVersion, payerOf("Second Invented"));
    expect([status, body.error.problems]).toEqual([
      409,
      [
        { path: "payer", expected: "Dee Desk kept another on Wed 1 July 09:00, after you began." },
        { path: "payer.name", expected: "Kept by now: First Invented" },
      ],
    ]);
    const now = await must(depot.call("desk", "GET", `/hires/${id}/notes`));
    expect([now.payer.name, now.payerVersion]).toEqual(["First Invented", 1]);
    await must(put("manager", "payer", 1, payerOf("Second Invented")));
  });

  it("as agreed parts: the second is refused, and from what is there now it goes through", async () => {
    const money = () => must(depot.call("desk", "GET", `/hires/${id}/money`));
    const { price, agreedVersion } = await money();
    const parts = (dueOn: string) => ({ agreed: [{ dueOn, pence: price.pence }] });
    await must(put("desk", "money/parts", agreedVersion, parts("2026-07-01")));
    const half = [2, 4].map((day) => ({ dueOn: `2026-07-0${day}`, pence: price.pence / 2 }));
    const { status, body } = await put("manager", "money/parts", agreedVersion, { agreed: half });
    const pounds = (price.pence / 100).toFixed(2).replace(".00", "");
    expect([status, body.error.problems]).toEqual([
      409,
      [
        { path: "money", expected: "Dee Desk kept another on Wed 1 July 09:00, after you began." },
        { path: "agreed.0.dueOn", expected: "Kept by now: Wed 1 July 2026" },
        { path: "agreed.0.pence", expected: `Kept by now: £${pounds}` },
        { path: "agreed.1", expected: "Something else is kept by now" },
      ],
    ]);
    const now = await money();
    expect([now.agreed[0].dueOn, now.agreedVersion]).toEqual(["2026-07-01", agreedVersion + 1]);
    await must(put("manager", "money/parts", now.agreedVersion, parts("2026-07-02")));
  });

  it("as a driver's particulars: a number is replaced by nobody who has not seen that there is another, and never told", async () => {
    const drivers = async () =>
      (await must(depot.call("desk", "GET", `/hires/${id}/driver-checks`))).drivers[0];
    const path = "drivers/t1/particulars";
    const before = await drivers();
    expect(before.versions.particulars).toBe(0);
    await must(put("desk", path, 0, { licenceNumber: "SAMPL 850203 IN1XX" }));
    const { body } = await put("manager", path, 0, { licenceNumber: "SAMPL 850203 IN2XX", address: "1 Row" });
    expect(body.error.problems).toMatchObject([
      { path: "particulars" },
      { path: "address" },
      { path: "licenceNumber", expected: "Kept by now: a number that is kept sealed" },
    ]);
    expect(JSON.stringify(body)).not.toContain("IN1XX");
    const after = await drivers();
    expect(after).toMatchObject({ address: null, numberGiven: { by: "Dee Desk" } });
    const number = `/hires/${id}/drivers/t1/licence-number/reading`;
    expect(await must(depot.call("desk", "POST", number))).toEqual({ licenceNumber: "SAMPL 850203 IN1XX" });
    await must(put("manager", path, after.versions.particulars, { address: "1 Row" }));
  });

  it("as a check code: one that was used and asked for again is another, whatever its day", async () => {
    const path = "drivers/t1/check-code";
    const version = async () =>
      (await must(depot.call("desk", "GET", `/hires/${id}/driver-checks`))).drivers[0].versions.code;
    const code = (text: string) => ({ code: text, madeOn: "2026-07-01" });
    await must(put("desk", path, await version(), code("first one")));
    const first = await version();
    const look = { how: "code", consent: true, licence: DRIVER.licence };
    await must(depot.call("desk", "POST", `/hires/${id}/drivers/t1/checks`, look));
    expect(await version()).toBe(0);
    await must(put("desk", path, 0, code("second one")));
    expect(await version()).not.toBe(first);
    expect((await put("manager", path, first, code("third one"))).status).toBe(409);
  });
});
