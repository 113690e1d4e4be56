import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";

describe("upkeep by the API", () => {
  let depot: TestDepot;
  const must = async (role: "desk" | "yard", method: "GET" | "POST", url: string, body?: object) => {
    const answer = await depot.call(role, method, url, body);
    expect(answer, JSON.stringify(answer.body)).toMatchObject({ status: 200 });
    return answer.body;
  };
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());

  it("what was done gives the next due date, and the fleet's book shows it", async () => {
    const page = await must("yard", "POST", "/vehicles/pv2/upkeep", {
      kind: "done",
      duty: "habitation",
      on: "2026-06-20",
      who: "An invented workshop",
      reference: "INV-77",
      km: 20_000,
    });
    expect(page.history[0]).toMatchObject({ duty: "habitation", reference: "INV-77", dueOn: "2027-06-19" });
    expect(page.due.find(({ kind }: { kind: string }) => kind === "habitation")).toMatchObject({
      state: "inDate",
      last: { on: "2026-06-20", who: "An invented workshop" },
    });
    expect(page.odometer).toMatchObject({ km: 20_000 });
    const { vehicles } = await must("desk", "GET", "/upkeep?days=800");
    const heron = vehicles.find(({ vehicle }: { vehicle: { id: string } }) => vehicle.id === "pv2");
    expect(heron.due.map(({ kind }: { kind: string }) => kind)).toContain("habitation");
    const ahead = await depot.call("desk", "POST", "/vehicles/pv2/upkeep", {
      kind: "water",
      on: "2031-01-01",
      who: "x",
      act: "flushed",
    });
    expect(ahead.status).toBe(400);
  });

  it("damp is read in bands, frost says how the vehicle stands", async () => {
    const damp = {
      kind: "damp",
      on: "2026-06-20",
      who: "Tom",
      position: "Rear corner",
      meter: "pins",
      weather: "dry",
    };
    const page = await must("yard", "POST", "/vehicles/pv2/upkeep", { ...damp, percent: 23 });
    expect(page.damp[0]).toMatchObject({ position: "Rear corner", percent: 23, band: "investigate" });
    const after = await must("yard", "POST", "/vehicles/pv2/upkeep", {
      kind: "frost",
      on: "2026-06-21",
      who: "Tom",
      state: "drained",
    });
    expect(after.frost).toMatchObject({ state: "drained", on: "2026-06-21" });
  });

  it("a defect is noted and closed, by whom and how", async () => {
    const body = { class: "comfort", what: "Blind torn", where: "Rear window" };
    const { defects } = await must("yard", "POST", "/vehicles/pv2/defects", body);
    expect(defects[0]).toMatchObject({ what: "Blind torn", closed: null });
    const closed = await must("yard", "POST", `/defects/${defects[0].id}/close`, { how: "New blind fitted" });
    expect(closed.defects[0].closed).toMatchObject({ how: "New blind fitted" });
    expect((await depot.call("desk", "POST", "/defects/nobody/close", { how: "x" })).status).toBe(404);
  });

  it("the yard sees no turnaround while nothing is back", async () => {
    expect((await must("yard", "GET", "/yard/turnarounds")).turnarounds).toEqual([]);
  });
});
