import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { heron, makeDepot, makeDevice, type TestDepot } from "../../api/depot-for-tests.ts";
import { toJson } from "../documents.ts";

let depot: TestDepot;
const party = {
  travellers: [
    { id: "t1", kind: "adult" },
    { id: "t2", kind: "adult" },
  ],
  dogs: 0,
  experience: "first",
};
const driver = (id: string, name: string, main: boolean) => ({
  id,
  name,
  born: "1980-05-05",
  main,
  licence: {
    issuedBy: "GB",
    firstCarEntitlement: "2000-01-01",
    categories: [{ category: "B", from: "2000-01-01", to: "2050-01-01" }],
    endorsements: [],
    checkedOn: "2026-07-30",
  },
  faultIncidents3y: 0,
  disqualified3y: false,
});

async function bookedHire(name: string, from: string, to: string, vehicleId: string): Promise<string> {
  const customer = { name, telephone: "07700 900123", email: "e@example.org", address: "1 Invented Street" };
  const made = await depot.call("desk", "POST", "/hires", { customer, party, from, to, vehicleId });
  const { id } = made.body.hire;
  expect((await depot.call("desk", "POST", `/hires/${id}/quote`, { accept: true })).status).toBe(200);
  expect((await depot.call("desk", "POST", `/hires/${id}/book`)).status).toBe(200);
  return id;
}
const look = (id: string, change: object) => depot.call("desk", "POST", `/hires/${id}/changes/look`, change);
const confirm = async (id: string, change: object, seen?: string) =>
  depot.call("desk", "POST", `/hires/${id}/changes`, {
    change,
    seen: seen ?? (await look(id, change)).body.hash,
  });
const page = async (id: string) => (await depot.call("desk", "GET", `/hires/${id}`)).body;
/** everything that a change might touch */
const everything = async () => ({
  hires: await depot.store.hires.all({}),
  bookings: await depot.store.bookings.between("2026-01-01T00:00:00Z", "2028-01-01T00:00:00Z"),
  blocks: await depot.store.blocks.between("2026-01-01T00:00:00Z", "2028-01-01T00:00:00Z"),
  notes: await depot.store.notes.open(),
  audit: (await depot.store.audit.list({ limit: 200 })).rows.length,
});
const codes = (lines: readonly { readonly code: string }[]) => lines.map(({ code }) => code);

async function isDoubleBooked(): Promise<boolean> {
  const held = await depot.store.bookings.between("2026-01-01T00:00:00Z", "2028-01-01T00:00:00Z");
  return held.some((a) =>
    held.some((b) => a.hireId !== b.hireId && a.vehicleId === b.vehicleId && a.from < b.to && b.from < a.to),
  );
}

/** What is booked is booked as its hire says: same vehicle, same days. */
async function isBookedAsItSays(): Promise<boolean> {
  const rows = await depot.store.hires.all({ stages: ["booked"] });
  const held = await Promise.all(rows.map(({ id }) => depot.store.bookings.of(id)));
  return rows.every((row, k) => held[k]?.vehicleId === row.vehicleId && held[k]?.to === row.to);
}

beforeAll(async () => {
  depot = await makeDepot("sqlite", "2026-08-01T08:00:00.000Z");
  const dueDates = ["tax", "insurance", "lpgCheck"].map((kind) => ({ kind, dueOn: "2027-12-31" }));
  const taller = {
    ...heron(),
    id: "pv2-c",
    name: "Wren",
    registration: "WR26 ENN",
    dimensions: { ...heron().dimensions, heightM: heron().dimensions.heightM + 0.2 },
  };
  const document = toJson({ description: taller, dueDates, maxDogs: 1, vehicleClass: "panelVan" });
  await depot.store.vehicles.put({ of: taller.id, validFrom: "2026-03-01", document });
}, 60_000);
afterAll(() => depot.close());

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
    expect((await depot.call("desk", "POST", "/records", { records: [item, sign] })).status).toBe(200);
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
    expect((await depot.store.bookings.of(id))?.vehicleId).toBe("pv2-c");
    expect(done.body.history[0].what).toBe("hire.changed.vehicle");
    expect((await depot.store.notes.ofHire(id)).map(({ text }) => text)).toContain(
      "Tell the insurer that WR26 ENN goes instead",
    );
    // looked at before the change: no longer what was seen
    expect((await confirm(id, change, seen.body.hash)).status).not.toBe(200);
    await depot.call("desk", "POST", `/hires/${id}/end`, { as: "cancelled", reason: "A test" });
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
      await depot.call("desk", "POST", `/hires/${each}/end`, { as: "cancelled", reason: "A test" });
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
    await depot.call("desk", "PUT", `/hires/${id}/drivers`, { drivers });
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
    depot.at("2026-09-15T16:00:00.000Z");
    expect((await confirm(id, change)).body.hire.stage).toBe("noShow");
    expect(await depot.store.bookings.of(id)).toBeNull();
    depot.at("2026-08-01T08:00:00.000Z");
  });
});

describe("on the road", () => {
  const goOut = async (id: string, at: string) => {
    // the keys themselves are tested elsewhere
    const row = await depot.store.hires.get(id);
    await depot.store.hires.update(id, { stage: "onHire" }, row!.version);
    const readiness = await depot.store.hires.part(id, "readiness");
    await depot.store.hires.putPart(
      id,
      "readiness",
      { ...readiness!.document, keysOutAt: at },
      readiness!.version,
      "desk",
    );
  };

  test("late, early, breakdown and another vehicle, each with its people and its records", async () => {
    const id = await bookedHire("Jon Invented", "2026-10-01T14:00", "2026-10-08T10:00", "pv2");
    const next = await bookedHire("Kim Invented", "2026-10-08T15:00", "2026-10-12T10:00", "pv2");
    await goOut(id, "2026-10-01T13:30:00.000Z");
    depot.at("2026-10-04T09:00:00.000Z");
    const late = (await look(id, { kind: "late", eta: "2026-10-08T13:00", moves: [] })).body;
    expect(late.people).toMatchObject([
      { hireId: next, telephone: "07700 900123", facts: { readyAt: "2026-10-08T17:00", minutes: 120 } },
    ]);
    expect(codes(late.says)).toEqual(["coverMayEnd", "lateCharge"]);
    expect((await confirm(id, { kind: "late", eta: "2026-10-08T13:00", moves: [] }, late.hash)).status).toBe(
      200,
    );
    expect(await isDoubleBooked()).toBe(false);
    const broken = {
      kind: "breakdown",
      what: "The heater does not start",
      where: "A place",
      at: "2026-10-03T20:00",
      drivable: false,
      cause: "ours",
      nightsLost: 2,
      insurerToldAt: null,
    };
    const breakdown = (await look(id, broken)).body;
    expect(breakdown.money.hirer.pence).toBeLessThan(0);
    expect(breakdown.people).toMatchObject([{ hireId: next, code: "vehicleAtRisk" }]);
    expect((await confirm(id, broken, breakdown.hash)).status).toBe(200);
    expect((await depot.store.defects.ofVehicles(["pv2"])).at(-1)).toMatchObject({
      class: "safety",
      hireId: id,
    });
    const change = {
      kind: "vehicle",
      vehicleId: "pv2-b",
      reason: "Heater",
      offTheRoadTo: "2026-10-07T10:00",
    };
    const seen = (await look(id, change)).body;
    expect(codes(seen.toDo)[0]).toBe("walkBack");
    expect(codes(seen.says)).toContain("twoHires");
    const done = await confirm(id, change, seen.hash);
    expect(done.status).toBe(200);
    expect(done.body.hire.stage).toBe("returned");
    const { done: changes } = (await depot.call("desk", "GET", `/hires/${id}/changes`)).body;
    const goesOn = await page(changes[0].continuedBy.hireId);
    expect(goesOn).toMatchObject({
      hire: { stage: "booked", to: "2026-10-08T10:00", customer: "Jon Invented" },
      vehicle: { id: "pv2-b" },
      money: { owed: { pence: 0 }, depositDue: { pence: 0 } },
    });
    expect(await isDoubleBooked()).toBe(false);
    expect(
      await depot.store.blocks.between("2026-10-04T10:00:00Z", "2026-10-05T10:00:00Z", ["pv2"]),
    ).toHaveLength(1);
  });

  test("a notice finds the hire, hirer and drivers of that minute, counts its days, and both papers are PDFs", async () => {
    const id = await bookedHire("Lea Invented", "2026-11-02T14:00", "2026-11-09T10:00", "pv2-c");
    await depot.call("desk", "PUT", `/hires/${id}/drivers`, { drivers: [driver("d1", "Lea", true)] });
    await goOut(id, "2026-11-02T14:20:00.000Z");
    depot.at("2026-11-20T09:00:00.000Z");
    const other = await bookedHire("Mia Invented", "2026-12-01T14:00", "2026-12-05T10:00", "pv2");
    await goOut(other, "2026-11-20T08:00:00.000Z");
    const notice = {
      kind: "notice",
      notice: "privateParking",
      reference: "PP 1",
      registration: "wr26enn",
      at: "2026-11-05T12:00",
      givenOn: "2026-11-18",
      note: "",
    };
    const before = { ...notice, at: "2026-11-02T14:10" };
    expect((await look(other, before)).body).toMatchObject({
      canConfirm: false,
      stops: [{ code: "withUsThen" }],
    });
    const seen = (await look(other, notice)).body;
    expect(seen.people).toMatchObject([{ hireId: id, customer: "Lea Invented", facts: { names: "Lea" } }]);
    expect(seen.toDo[0]).toMatchObject({ code: "answerNotice", by: "2026-12-16" });
    expect((await confirm(other, notice, seen.hash)).status).toBe(200);
    const { done } = (await depot.call("desk", "GET", `/hires/${id}/changes`)).body;
    for (const paper of done[0].papers) {
      const pdf = await depot.app.inject({
        method: "GET",
        url: `/api/hires/${id}/changes/${done[0].id}/papers/${paper}`,
        headers: { cookie: depot.cookie("desk") },
      });
      expect([pdf.statusCode, pdf.headers["content-type"], pdf.rawPayload.subarray(0, 5).toString()]).toEqual(
        [200, "application/pdf", "%PDF-"],
      );
    }
  });

  test("someone ill: the day is put in time again, and whom it moves is rung, the soonest first", async () => {
    depot.at("2026-12-01T09:00:00.000Z");
    const ids = [];
    for (const [name, vehicle] of [
      ["Nan", "pv2-b"],
      ["Oz", "pv2-c"],
    ] as const)
      ids.push(await bookedHire(`${name} Invented`, "2026-12-01T14:00", "2026-12-04T10:00", vehicle));
    const change = { kind: "teamIll", skill: "desk" };
    const seen = (await look(ids[0]!, change)).body;
    expect(seen.people).toHaveLength(1);
    expect(seen.people[0]).toMatchObject({ code: "movedTo", facts: { to: "2026-12-01T15:00", minutes: 60 } });
    depot.at("2026-12-01T09:03:00.000Z");
    expect((await confirm(ids[0]!, change, seen.hash)).status).toBe(200);
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
    depot.at("2027-01-12T10:00:00.000Z");
    const id = await bookedHire("Una", "2027-01-12T11:00", "2027-01-18T10:00", "pv2");
    await depot.call("desk", "PUT", `/hires/${id}/abroad`, abroad);
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
      depot.call("desk", "PUT", `/hires/${id}/abroad`, {
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

describe("whatever is confirmed", () => {
  test("a hire that stays longer does not give way to itself", async () => {
    depot.at("2027-01-04T09:00:00.000Z");
    const own = await bookedHire("Ole", "2027-01-20T14:00", "2027-01-25T10:00", "pv2");
    const moves = [{ hireId: own, vehicleId: "pv2-c" }];
    const seen = await look(own, { kind: "extension", to: "2027-01-26T10:00", moves });
    expect(seen.body.error.problems).toMatchObject([{ path: "moves" }]);
  });

  test("no vehicle is ever booked twice, and of two that want the last vehicle one has it", async () => {
    depot.at("2027-01-05T09:00:00.000Z");
    const span = ["2027-02-01T14:00", "2027-02-05T10:00"] as const;
    const [a, b] = [await bookedHire("Pia", ...span, "pv2"), await bookedHire("Quin", ...span, "pv2-b")];
    const change = { kind: "vehicle", vehicleId: "pv2-c", reason: "Both want it", offTheRoadTo: null };
    const seen = [(await look(a, change)).body, (await look(b, change)).body];
    expect(seen.map(({ canConfirm }) => canConfirm)).toEqual([true, true]);
    const both = await Promise.all([confirm(a, change, seen[0].hash), confirm(b, change, seen[1].hash)]);
    expect(both.map(({ status }) => status).sort()).toEqual([200, 409]);
    expect(await isDoubleBooked()).toBe(false);
  });

  test("no sequence of changes books a vehicle twice, and what is only looked at changes nothing", async () => {
    depot.at("2027-02-20T09:00:00.000Z");
    const hires = [
      await bookedHire("Ros", "2027-03-01T14:00", "2027-03-05T10:00", "pv2"),
      await bookedHire("Sol", "2027-03-05T15:00", "2027-03-09T10:00", "pv2"),
      await bookedHire("Tam", "2027-03-02T14:00", "2027-03-08T10:00", "pv2-b"),
    ];
    const day = (n: number) => `2027-03-${String(n).padStart(2, "0")}T10:00`;
    const change = fc.oneof(
      fc.record({
        kind: fc.constant("vehicle"),
        vehicleId: fc.constantFrom("pv2", "pv2-b", "pv2-c"),
        reason: fc.constant("A test"),
        offTheRoadTo: fc.constant(null),
      }),
      fc.record({
        kind: fc.constant("extension"),
        to: fc.integer({ min: 5, max: 16 }).map(day),
        moves: fc.oneof(
          fc.constant([]),
          fc.constantFrom("pv2-b", "pv2-c").map((vehicleId) => [{ hireId: hires[1]!, vehicleId }]),
        ),
      }),
      fc.record({
        kind: fc.constant("early"),
        to: fc.integer({ min: 4, max: 10 }).map(day),
        backPence: fc.constant(0),
      }),
    );
    const step = fc.record({ hire: fc.constantFrom(...hires), change, confirmed: fc.boolean() });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 4 }), async (steps) => {
        for (const { hire, change: asked, confirmed } of steps) {
          const before = await everything();
          const seen = await look(hire, asked);
          expect(await everything()).toEqual(before);
          if (!confirmed || seen.status !== 200) continue;
          const { status } = await confirm(hire, asked, seen.body.hash);
          expect(status).toBe(seen.body.canConfirm ? 200 : 409);
          if (status !== 200) expect(await everything()).toEqual(before);
          expect(await isDoubleBooked()).toBe(false);
          expect(await isBookedAsItSays()).toBe(true);
        }
      }),
      { numRuns: 12 },
    );
  }, 120_000);
});
