import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toJson } from "../desk/documents.ts";
import { storeJobs } from "../jobs/index.ts";
import { runDueJobs } from "../jobs/run-jobs.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { PARTY, TRIP } from "./samples-for-tests.ts";

/** three nights in a place without anything, then home */
const WILD = {
  ...TRIP,
  departWith: { ...TRIP.departWith, freshWater: 1 },
  stops: TRIP.stops.map((stop) => ({
    ...stop,
    pitch: { postAmperes: 0, freshWater: false, wasteDrain: false, cassettePoint: false, lpgExchange: false },
    acts: [],
  })),
};
const full = (store: string, at: string) => ({ store, value: 100, unit: "%", at, sd: 1 });

describe("what returns teach", () => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot("sqlite", "2026-07-10T09:00:00.000Z");
  });
  afterAll(() => depot.close());

  /** a hire of Heron that came back */
  async function returned(
    stage: "returned" | "onHire" = "returned",
    trip: object | null = WILD,
    period = { from: "2026-07-03T11:15:00Z", to: "2026-07-06T09:00:00Z" },
  ) {
    const { store } = depot;
    const row = await store.hires.create({ ...period, stage: "enquiry" });
    await store.hires.putPart(row.id, "party", toJson(PARTY), 0, "desk");
    if (trip !== null) await store.hires.putPart(row.id, "trip", toJson(trip), 0, "desk");
    await store.hires.update(row.id, { stage, vehicleId: "pv2", registration: "" }, row.version);
    return row.id;
  }
  const sheet = (litres: number) => ({
    added: [{ store: "fuel", amount: litres, at: WILD.return }],
    readings: [full("fuel", WILD.depart), full("fuel", WILD.return)],
    distanceKm: 80,
  });
  const write = (id: string, body: unknown) => depot.call("desk", "PUT", `/hires/${id}/use`, body);
  const written = async () => {
    const id = await returned();
    await write(id, sheet(12));
    return id;
  };
  const forecastOf = async (id: string) => (await depot.call("desk", "GET", `/hires/${id}/forecast`)).body;

  it("sets what the desk wrote beside the forecast of the same hours, and keeps the sheet", async () => {
    const id = await returned();
    const { status, body } = await write(id, sheet(10));
    expect(status).toBe(200);
    expect(body.sheet.distanceKm).toBe(80);
    const fuel = body.compared.find(({ store }: { store: string }) => store === "fuel");
    expect(fuel.used.value).toBeCloseTo(10, 9);
    expect(fuel.p10).toBeLessThan(fuel.mean.value);
    expect(fuel.mean.value).toBeCloseTo(8.4, 0);
    expect(body.leftOut).toContainEqual({ store: "lpg", why: "notRead" });
    expect((await depot.call("yard", "GET", `/hires/${id}/use`)).body).toEqual(body);
  });

  it("moves later forecasts of the vehicle, says by how much, and leaves other stores alone", async () => {
    const other = await returned("onHire");
    const ratesNow = async () => {
      const { body } = await depot.call("desk", "GET", "/forecast-outcomes");
      return body.rates.find(({ vehicleId }: { vehicleId: string | null }) => vehicleId === "pv2");
    };
    const first = await ratesNow();
    const before = await forecastOf(other);
    for (let n = 0; n < 5; n++) expect((await write(await returned(), sheet(12))).status).toBe(200);
    const own = await ratesNow();
    expect(own).toMatchObject({ store: "fuel", count: 6 });
    expect(own.rate.value).toBeGreaterThan(1.2);
    expect(own.rate.value).toBeLessThan(1.45);
    expect(own.rate.formula).toBe("calibration.rate");
    const after = await forecastOf(other);
    const used = (answer: typeof before, store: string) => {
      const found = answer.result.stores.find((each: { store: string }) => each.store === store);
      return found.usePerDay.value;
    };
    expect(used(after, "fuel") / used(before, "fuel")).toBeCloseTo(own.rate.value / first.rate.value, 1);
    expect(used(after, "lpg")).toBe(used(before, "lpg"));
  });

  it("judges each forecast by the returns before its departure, before and after, and by vehicle", async () => {
    const later = JSON.parse(
      JSON.stringify(WILD).replaceAll(
        /2026-07-0(\d)/g,
        (_, day) => `2026-07-${String(+day + 4).padStart(2, "0")}`,
      ),
    );
    const period = { from: "2026-07-07T11:15:00Z", to: "2026-07-10T09:00:00Z" };
    for (let n = 0; n < 4; n++) {
      const id = await returned("returned", later, period);
      const { added, readings, distanceKm } = sheet(12);
      const [out, back] = readings.map((reading, k) => ({
        ...reading,
        at: k === 0 ? later.depart : later.return,
      }));
      const moved = {
        added: added.map((put) => ({ ...put, at: later.return })),
        readings: [out, back],
        distanceKm,
      };
      expect((await write(id, moved)).status).toBe(200);
    }
    const { body } = await depot.call("desk", "GET", "/forecast-outcomes");
    expect(body.waiting).toBe(0);
    expect(body.returns).toBe(10);
    expect(body.taught.count).toBe(2);
    expect(body.judged.count).toBe(8);
    const [fuel] = body.stores;
    expect(fuel.before.bias.value).toBeGreaterThan(0.3);
    // half of them left before anybody was back
    expect(fuel.after.bias.value).toBeLessThan(0.75 * fuel.before.bias.value);
    expect(fuel.points).toHaveLength(8);
    const none = await depot.call("desk", "GET", "/forecast-outcomes?vehicleId=pv2-b");
    expect(none.body.stores).toEqual([]);
    expect(none.body.rates.every(({ vehicleId }: { vehicleId: string | null }) => vehicleId === null)).toBe(
      true,
    );
  });

  it("refuses a hire that is not back, one without a trip, and what cannot be, by the field's name", async () => {
    expect((await write(await returned("onHire"), sheet(10))).status).toBe(409);
    const noTrip = await write(await returned("returned", null), sheet(10));
    expect(noTrip.body.error.problems[0].path).toBe("trip");
    const id = await returned();
    const negative = await write(id, {
      ...sheet(10),
      added: [{ store: "fuel", amount: -2, at: WILD.return }],
    });
    expect(negative.status).toBe(400);
    expect(negative.body.error.problems[0].path).toContain("added");
    const strange = { store: "fuel", value: 12, unit: "V", at: WILD.return };
    const unit = await write(id, { ...sheet(10), readings: [strange] });
    expect(unit.status).toBe(400);
    expect(unit.body.error.problems[0].path).toBe("readings.0.unit");
    const early = await write(id, {
      ...sheet(10),
      readings: [{ ...strange, unit: "%", at: "2026-06-01T10:00" }],
    });
    expect(early.body.error.problems[0].path).toBe("readings.0.at");
    expect((await depot.call("yard", "PUT", `/hires/${id}/use`, sheet(10))).status).toBe(403);
  });

  it("is learnt by itself after a return was written down, without anybody asking", async () => {
    await depot.store.uses.putRates([]);
    const { id } = await depot.store.uses.put({
      ...(await depot.store.uses.ofHire(await written()))!,
      hireId: "of another book",
    });
    expect(id).not.toBe("");
    const done = await runDueJobs(depot.context.database, storeJobs);
    expect(done.failed).toBe(0);
    expect(done.done).toBeGreaterThan(0);
    expect((await depot.store.uses.rates()).map(({ vehicleId }) => vehicleId)).toEqual(["*", "pv2"]);
  });

  it("a sheet that another desk wrote meanwhile is not written over", async () => {
    const id = await returned();
    const { version } = (await depot.call("desk", "GET", `/hires/${id}/use`)).body;
    const put = (base: string, litres: number) =>
      depot.call("desk", "PUT", `/hires/${id}/use?basedOn=${base}`, sheet(litres));
    const first = await put(version, 10);
    expect([version, first.status, (await put(version, 11)).status]).toEqual(["none", 200, 409]);
    expect((await put(first.body.version, 11)).body.sheet.added[0].amount).toBe(11);
  });
});
