import { describe, expect, test } from "vitest";
import { makeDevice } from "../../api/depot-for-tests.ts";
import { codes, depotOfChanges, driver, party } from "./changes-for-tests.ts";

const { here, bookedHire, look, confirm, page, everything, isDoubleBooked } = depotOfChanges();

describe("another vehicle before the hire", () => {
  test("shows what is void, asks for what the new plate needs, keeps the price, and writes nothing when left", async () => {
    const id = await bookedHire("Ada Invented", "2026-08-03T14:00", "2026-08-10T10:00", "pv2");
    const device = makeDevice(
      "a-device-of-the-yard",
      `${id}.out`,
      { hireId: id, vehicleId: "pv2" },
      () => new Date("2026-08-01T08:00:00Z"),
    );
    const item = device("look", { about: "cab.lights", saw: "inOrder" });
    const sign = device("signature", {
      records: [{ id: item.id, hash: item.hash }],
      signer: { name: "Ada" },
      role: "hirer",
      purpose: "agreement",
      shown: { text: "as shown", language: "en-GB" },
      strokes: [[{ x: 0, y: 0 }]],
    });
    expect((await here.depot.call("desk", "POST", "/records", { records: [item, sign] })).status).toBe(200);
    const before = await everything();
    const change = {
      kind: "vehicle",
      vehicleId: "pv2-c",
      reason: "Heater does not start",
      offTheRoadTo: null,
    };
    const seen = await look(id, change);
    expect(seen.status).toBe(200);
    expect(codes(seen.body.voided)).toEqual(["agreement", "liability", "walkRound"]);
    expect(codes(seen.body.toDo)).toEqual(["agreement", "insurer", "walkRound"]);
    expect(seen.body.brief.again.map((card: { id: string }) => card.id).sort()).toEqual([
      "cab.height",
      "cab.tailSwing",
      "cab.width",
    ]);
    expect(seen.body.money.hirer.pence).toBe(0);
    expect(await everything()).toEqual(before);
    const done = await confirm(id, change, seen.body.hash);
    expect(done.status).toBe(200);
    expect(done.body.vehicle.description.registration).toBe("WR26 ENN");
    expect(done.body.signatures).toEqual([]);
    expect(done.body.records.out.started).toBe(false);
    expect((await here.depot.store.bookings.of(id))?.vehicleId).toBe("pv2-c");
    expect(done.body.history[0].what).toBe("hire.changed.vehicle");
    expect((await here.depot.store.notes.ofHire(id)).map(({ text }) => text)).toContain(
      "Tell the insurer that WR26 ENN goes instead",
    );
    // looked at before the change: no longer what was seen
    expect((await confirm(id, change, seen.body.hash)).status).not.toBe(200);
    await here.depot.call("desk", "POST", `/hires/${id}/end`, { as: "cancelled", reason: "A test" });
  });

  test("goes nowhere that another hire has", async () => {
    const id = await bookedHire("Bo Invented", "2026-08-03T14:00", "2026-08-10T10:00", "pv2");
    const other = await bookedHire("Cleo Invented", "2026-08-04T14:00", "2026-08-11T10:00", "pv2-b");
    const change = { kind: "vehicle", vehicleId: "pv2-b", reason: "Asked for it", offTheRoadTo: null };
    const seen = (await look(id, change)).body;
    expect(seen.canConfirm).toBe(false);
    expect(codes(seen.findings)).toContain("diary.taken");
    expect((await confirm(id, change, seen.hash)).status).toBe(409);
    expect(await isDoubleBooked()).toBe(false);
    for (const each of [id, other])
      await here.depot.call("desk", "POST", `/hires/${each}/end`, { as: "cancelled", reason: "A test" });
  });
});

describe("a longer hire", () => {
  test("that makes the next one late is refused, offers where the next can go, and is done with that move", async () => {
    const id = await bookedHire("Dot Invented", "2026-08-11T14:00", "2026-08-18T10:00", "pv2");
    const next = await bookedHire("Eve Invented", "2026-08-18T15:00", "2026-08-25T10:00", "pv2");
    const change = { kind: "extension", to: "2026-08-19T10:00", moves: [] };
    const seen = (await look(id, change)).body;
    expect(seen.canConfirm).toBe(false);
    expect(seen.people).toMatchObject([
      { hireId: next, code: "nextLate", facts: { readyAt: "2026-08-19T14:00" } },
    ]);
    expect(seen.people[0].offers.map((offer: { vehicleId: string }) => offer.vehicleId)).toContain("pv2-b");
    expect((await confirm(id, change, seen.hash)).status).toBe(409);
    expect((await page(id)).hire.to).toBe("2026-08-18T10:00");
    const moved = { ...change, moves: [{ hireId: next, vehicleId: "pv2-b" }] };
    const again = (await look(id, moved)).body;
    expect(again).toMatchObject({ canConfirm: true, people: [] });
    expect(again.money.hirer.pence).toBeGreaterThan(0);
    const done = await confirm(id, moved, again.hash);
    expect(done.body.hire.to).toBe("2026-08-19T10:00");
    expect(done.body.money.price.pence).toBe(again.money.after.pence);
    expect((await page(next)).vehicle.id).toBe("pv2-b");
    expect(await isDoubleBooked()).toBe(false);
  });
});

describe("people at the counter", () => {
  test("a third person in a vehicle with two belts cannot go", async () => {
    const id = await bookedHire("Fay Invented", "2026-09-01T14:00", "2026-09-08T10:00", "pv2");
    const three = { ...party, travellers: [...party.travellers, { id: "t3", kind: "adult" }] };
    const seen = (await look(id, { kind: "party", party: three })).body;
    expect(seen.canConfirm).toBe(false);
    expect(seen.findings[0]).toMatchObject({ gate: "seats", severity: "refuse" });
    const dog = (await look(id, { kind: "party", party: { ...party, dogs: 1 } })).body;
    expect(dog.canConfirm).toBe(true);
  });

  test("a second driver who is absent is taken off, the price with it; the last one cannot be", async () => {
    const id = await bookedHire("Gus Invented", "2026-09-08T14:00", "2026-09-12T10:00", "pv2");
    const drivers = [driver("d1", "Gus", true), driver("d2", "Hal", false)];
    await here.depot.call("desk", "PUT", `/hires/${id}/drivers`, { drivers });
    const done = await confirm(id, { kind: "driverAbsent", driverId: "d2" });
    expect(done.body.drivers.map(({ name }: { name: string }) => name)).toEqual(["Gus"]);
    const last = (await look(id, { kind: "driverAbsent", driverId: "d1" })).body;
    expect(last).toMatchObject({ canConfirm: false, stops: [{ code: "noDriverLeft" }] });
  });
});

describe("nobody came", () => {
  test("only after the hour; then the vehicle is free and the scale says what is kept", async () => {
    const id = await bookedHire("Ida Invented", "2026-09-15T14:00", "2026-09-18T10:00", "pv2");
    const change = { kind: "noShow", reason: "Nobody answers" };
    expect((await look(id, change)).body).toMatchObject({
      canConfirm: false,
      stops: [{ code: "notYetDue" }],
    });
    here.depot.at("2026-09-15T16:00:00.000Z");
    expect((await confirm(id, change)).body.hire.stage).toBe("noShow");
    expect(await here.depot.store.bookings.of(id)).toBeNull();
    here.depot.at("2026-08-01T08:00:00.000Z");
  });
});

describe("a crossing with its hour", () => {
  const crossing = { kind: "ferry", on: "2027-01-12", at: "20:00", zone: "Europe/Paris" };
  const abroad = {
    through: ["FR"],
    crossings: [crossing],
    noCrossing: false,
    papers: {},
    kitAboard: [],
    got: [],
    overhang: false,
    plateShowsUk: true,
  };

  test("is counted down by the depot's clock, with what cannot be had before it leaves", async () => {
    here.depot.at("2027-01-12T10:00:00.000Z");
    const id = await bookedHire("Una", "2027-01-12T11:00", "2027-01-18T10:00", "pv2");
    await here.depot.call("desk", "PUT", `/hires/${id}/abroad`, abroad);
    const change = { kind: "vehicle", vehicleId: "pv2-b", reason: "It does not start", offTheRoadTo: null };
    const { says, toDo } = (await look(id, change)).body;
    expect(says).toContainEqual({ code: "hoursToCrossing", facts: { at: "2027-01-12T19:00", hours: 9 } });
    const misses = toDo.filter((each: { misses?: string }) => each.misses === "2027-01-12T19:00");
    expect(misses.map(({ code }: { code: string }) => code)).toContain("certificate");
    expect(toDo.find(({ code }: { code: string }) => code === "crossing")).toMatchObject({
      by: "2027-01-12T19:00",
      facts: { port: "20:00 Europe/Paris" },
    });
  });

  test("is refused at an hour that its zone skips, or in a zone that nobody knows", async () => {
    const id = await bookedHire("Vic", "2027-03-27T11:00", "2027-04-02T10:00", "pv2-c");
    const put = (change: object) =>
      here.depot.call("desk", "PUT", `/hires/${id}/abroad`, {
        ...abroad,
        crossings: [{ ...crossing, ...change }],
      });
    const skipped = await put({ on: "2027-03-28", at: "02:30" });
    expect(skipped.body.error.problems).toMatchObject([{ path: "crossings.0.at" }]);
    expect((await put({ zone: "Europe/Nowhere" })).body.error.problems).toMatchObject([
      { path: "crossings.0.zone" },
    ]);
  });
});
