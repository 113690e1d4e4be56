import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toJson } from "../desk/documents.ts";
import { readHireData, VEHICLE_ROOM } from "../desk/hire-data.ts";
import { testedStores } from "../store/stores-for-tests.ts";
import { heron, makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { PERIOD } from "./samples-for-tests.ts";

const TICKET = {
  reference: "4711",
  weighedOn: "2026-06-20",
  frontKg: 1570,
  rearKg: 1500,
  aboard: { fuelShare: 0.9, waterLitres: 0, lpgCylinders: 1, frontPeopleKg: 75, rearPeopleKg: 0 },
};

describe.each(testedStores())("describing vehicles on $kind", ({ kind }) => {
  let depot: TestDepot;
  const must = async (...args: Parameters<TestDepot["call"]>) => {
    const answer = await depot.call(...args);
    expect(answer, JSON.stringify(answer.body)).toMatchObject({ status: 200 });
    return answer.body;
  };
  const create = (change: object, as: "manager" | "desk" = "manager") =>
    depot.call(as, "POST", "/vehicles", { description: { ...heron(), ...change } });
  beforeAll(async () => {
    depot = await makeDepot(kind);
  });
  afterAll(() => depot.close());

  it("a manager adds a vehicle, the desk sees it and may not", async () => {
    expect(await create({ id: "teal", name: "Teal", registration: "SF26 TEA" }, "desk")).toMatchObject({
      status: 403,
    });
    expect(await create({ id: "teal", name: "Teal", registration: "SF26 TEA" })).toMatchObject({
      status: 200,
    });
    const { vehicles } = await must("desk", "GET", "/vehicles");
    expect(vehicles.find(({ id }: { id: string }) => id === "teal")).toMatchObject({
      payloadKg: 525,
      fitted: heron().systems.map(({ kind: each }) => each),
    });
  });

  it("a registration number serves one vehicle, however it is spaced, and the refusal names the field", async () => {
    const answer = await create({ id: "other", registration: "sf26tea" });
    expect(answer).toMatchObject({ status: 400 });
    expect(answer.body.error.problems[0].path).toBe("description.registration");
    expect((await create({ id: "teal", registration: "SF26 OWN" })).body.error.problems[0].path).toBe(
      "description.id",
    );
    const broken = { ...heron().masses, miroKg: 3600 };
    expect((await create({ id: "x", registration: "X", masses: broken })).body.error.problems[0].path).toBe(
      "description.masses.miroKg",
    );
  });

  it("of two who add the same number at once, one is refused", async () => {
    const both = await Promise.all([
      create({ id: "twin-a", registration: "SF26 TWN" }),
      create({ id: "twin-b", registration: "SF26 TWN" }),
    ]);
    expect(both.map(({ status }) => status).sort()).toEqual([200, 400]);
  });

  it("an edit is a version from its own day, told with what changed", async () => {
    const next = { ...heron(), id: "teal", name: "Teal", registration: "SF26 TEA", validFrom: "2026-08-01" };
    const systems = next.systems.filter(({ id }) => id !== "awning");
    await must("manager", "PUT", "/vehicles/teal", { description: { ...next, systems } });
    const { versions } = await must("desk", "GET", "/vehicles/teal/versions");
    expect(versions).toHaveLength(2);
    expect(versions[0]).toMatchObject({
      validFrom: "2026-08-01",
      isInForce: false,
      by: "Pat Manager",
      changes: [{ what: "system", kind: "awning", change: "removed" }],
    });
    expect(versions[1]).toMatchObject({ isInForce: true, changes: [] });
    const one = await must("desk", "GET", `/vehicles/teal/versions/${versions[1].versionId}`);
    expect(one.description.systems).toHaveLength(heron().systems.length);
    expect(await depot.call("desk", "GET", `/vehicles/pv2/versions/${versions[1].versionId}`)).toMatchObject({
      status: 404,
    });
  });

  it("a ticket replaces the stated masses until it is withdrawn; one that cannot be is refused by its field", async () => {
    const page = await must("manager", "POST", "/vehicles/teal/tickets", TICKET);
    expect(page.weighed).toMatchObject({ isOlderThanFitting: false });
    expect(page.derived.payload.value).not.toBe(525);
    const absurd = await depot.call("manager", "POST", "/vehicles/teal/tickets", {
      ...TICKET,
      frontKg: 3100,
    });
    expect(absurd.body.error.problems[0].path).toBe("frontKg");
    const early = { ...TICKET, weighedOn: "2026-07-02" };
    expect(
      (await depot.call("manager", "POST", "/vehicles/teal/tickets", early)).body.error.problems[0].path,
    ).toBe("weighedOn");
    expect(await depot.call("desk", "POST", "/vehicles/teal/tickets", TICKET)).toMatchObject({ status: 403 });
    const after = await must("manager", "DELETE", `/vehicles/teal/tickets/${page.weighed.ticketId}`);
    expect(after).toMatchObject({ weighed: null, tickets: [{ by: "Pat Manager" }] });
    expect(after.derived.payload.value).toBe(525);
  });

  it("a hire keeps the description it left with, whatever is described or weighed later", async () => {
    const { store } = depot;
    const hire = await store.hires.create({
      from: `${PERIOD.from}:00.000Z`,
      to: `${PERIOD.to}:00.000Z`,
      stage: "onHire",
    });
    await store.hires.update(hire.id, { vehicleId: "pv2" }, hire.version);
    const now = depot.context.now();
    const left = (await readHireData(store, hire.id, now)).vehicle!;
    const document = toJson({ versionId: left.version.versionId, document: left.document });
    await store.frozen.add({ hireId: hire.id, room: VEHICLE_ROOM, document, by: "manager" });

    await must("manager", "PUT", "/vehicles/pv2", {
      description: { ...heron(), validFrom: left.document.description.validFrom, name: "Renamed since" },
    });
    await must("manager", "POST", "/vehicles/pv2/tickets", TICKET);
    const kept = (await readHireData(store, hire.id, now)).vehicle!;
    expect(kept.version.versionId).toBe(left.version.versionId);
    expect(kept.document).toEqual(left.document);

    const booked = await store.hires.create({
      from: `${PERIOD.from}:00.000Z`,
      to: `${PERIOD.to}:00.000Z`,
      stage: "booked",
    });
    await store.hires.update(booked.id, { vehicleId: "pv2" }, booked.version);
    const { description } = (await readHireData(store, booked.id, now)).vehicle!.document;
    expect(description.name).toBe("Renamed since");
    expect(description.masses.miroBasis).toMatchObject({ weighed: true, weighedOn: "2026-06-20" });
  });
});
