import { describe, expect, test } from "vitest";
import { codes, depotOfChanges, driver } from "./changes-for-tests.ts";

const { here, bookedHire, look, confirm, page, isDoubleBooked } = depotOfChanges();

describe("on the road", () => {
  const goOut = async (id: string, at: string) => {
    // the keys themselves are tested elsewhere
    const row = await here.depot.store.hires.get(id);
    await here.depot.store.hires.update(id, { stage: "onHire" }, row!.version);
    const readiness = await here.depot.store.hires.part(id, "readiness");
    await here.depot.store.hires.putPart(
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
    here.depot.at("2026-10-04T09:00:00.000Z");
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
    expect((await here.depot.store.defects.ofVehicles(["pv2"])).at(-1)).toMatchObject({
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
    const { done: changes } = (await here.depot.call("desk", "GET", `/hires/${id}/changes`)).body;
    const goesOn = await page(changes[0].continuedBy.hireId);
    expect(goesOn).toMatchObject({
      hire: { stage: "booked", to: "2026-10-08T10:00", customer: "Jon Invented" },
      vehicle: { id: "pv2-b" },
      money: { owed: { pence: 0 }, depositDue: { pence: 0 } },
    });
    expect(await isDoubleBooked()).toBe(false);
    expect(
      await here.depot.store.blocks.between("2026-10-04T10:00:00Z", "2026-10-05T10:00:00Z", ["pv2"]),
    ).toHaveLength(1);
  });

  test("a notice finds the hire, hirer and drivers of that minute, counts its days, and both papers are PDFs", async () => {
    const id = await bookedHire("Lea Invented", "2026-11-02T14:00", "2026-11-09T10:00", "pv2-c");
    await here.depot.call("desk", "PUT", `/hires/${id}/drivers`, { drivers: [driver("d1", "Lea", true)] });
    await goOut(id, "2026-11-02T14:20:00.000Z");
    here.depot.at("2026-11-20T09:00:00.000Z");
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
    const { done } = (await here.depot.call("desk", "GET", `/hires/${id}/changes`)).body;
    for (const paper of done[0].papers) {
      const pdf = await here.depot.app.inject({
        method: "GET",
        url: `/api/hires/${id}/changes/${done[0].id}/papers/${paper}`,
        headers: { cookie: here.depot.cookie("desk") },
      });
      expect([pdf.statusCode, pdf.headers["content-type"], pdf.rawPayload.subarray(0, 5).toString()]).toEqual(
        [200, "application/pdf", "%PDF-"],
      );
    }
  });

  test("someone ill: the day is put in time again, and whom it moves is rung, the soonest first", async () => {
    here.depot.at("2026-12-01T09:00:00.000Z");
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
    here.depot.at("2026-12-01T09:03:00.000Z");
    expect((await confirm(ids[0]!, change, seen.hash)).status).toBe(200);
  });
});
