import { afterAll, beforeAll, expect, test } from "vitest";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";

let depot: TestDepot;
const ids: string[] = [];
const party = { travellers: [{ id: "t1", kind: "adult" }], dogs: 0, experience: "first" };

/** A hire that is booked, without its papers. */
async function bookedHire(name: string, from: string, to: string, vehicleId: string): Promise<string> {
  const customer = { name, telephone: "07700 900123", email: "e@example.org" };
  const made = await depot.call("desk", "POST", "/hires", { customer, party, from, to, vehicleId });
  const { id } = made.body.hire;
  expect((await depot.call("desk", "POST", `/hires/${id}/quote`, { accept: true })).status).toBe(200);
  expect((await depot.call("desk", "POST", `/hires/${id}/book`)).status).toBe(200);
  return id;
}

beforeAll(async () => {
  depot = await makeDepot("sqlite");
  ids.push(await bookedHire("Ada Invented", "2026-08-03T14:00", "2026-08-10T10:00", "pv2"));
  ids.push(await bookedHire("Bo Invented", "2026-08-12T14:00", "2026-08-19T10:00", "pv2"));
}, 60_000);
afterAll(() => depot.close());

const diary = async () => (await depot.call("yard", "GET", "/diary?from=2026-08-01&to=2026-08-31")).body;

test("the diary shows vehicles, what holds them, and no hire that only asks", async () => {
  const page = await diary();
  expect(page.vehicles.map(({ id }: { id: string }) => id).sort()).toEqual(["pv2", "pv2-b"]);
  expect(page.hires).toMatchObject([
    { id: ids[0], vehicleId: "pv2", from: "2026-08-03T14:00", pinned: false },
    { id: ids[1], customer: "Bo Invented" },
  ]);
  const late = await depot.call("desk", "GET", "/diary?from=2026-08-01&to=2029-08-31");
  expect(late).toMatchObject({ status: 400, body: { error: { problems: [{ path: "to" }] } } });
});

test("a hire goes to another vehicle, its booking with it; who looked at it before is told so", async () => {
  const asked = await depot.call("desk", "GET", `/hires/${ids[0]}/vehicles`);
  expect(asked.body.current).toBe("pv2");
  expect(asked.body.vehicles.every(({ possible }: { possible: boolean }) => possible)).toBe(true);
  const move = { vehicleId: "pv2-b", was: "pv2" };
  const both = await Promise.all([
    depot.call("desk", "POST", `/hires/${ids[0]}/move`, move),
    depot.call("manager", "POST", `/hires/${ids[0]}/move`, move),
  ]);
  expect(both.map(({ status }) => status).sort()).toEqual([200, 409]);
  expect(both.find(({ status }) => status === 409)?.body.error.code).toBe("stale");
  expect((await depot.store.bookings.of(ids[0]!))?.vehicleId).toBe("pv2-b");
});

test("off the road is refused while a hire has the vehicle, and then refuses a hire", async () => {
  const block = { kind: "mot", from: "2026-08-09T08:00", to: "2026-08-11T17:00" };
  expect(await depot.call("desk", "POST", "/vehicles/pv2-b/blocks", block)).toMatchObject({
    status: 409,
    body: { error: { code: "taken" } },
  });
  const off = await depot.call("desk", "POST", "/vehicles/pv2/blocks", block);
  expect(off.status).toBe(200);
  const back = { vehicleId: "pv2", was: "pv2-b" };
  const refused = await depot.call("desk", "POST", `/hires/${ids[0]}/move`, back);
  expect(refused).toMatchObject({
    status: 409,
    body: { error: { code: "taken", findings: [{ code: "diary.offTheRoad" }] } },
  });
  const asked = await depot.call("desk", "GET", `/hires/${ids[0]}/vehicles`);
  const [here, there] = asked.body.vehicles;
  expect([here.id, here.possible, there.id, there.possible]).toEqual(["pv2-b", true, "pv2", false]);
  expect((await depot.call("yard", "DELETE", `/blocks/${off.body.id}`)).status).toBe(403);
  expect((await depot.call("desk", "DELETE", `/blocks/${off.body.id}`)).body).toEqual({ done: true });
  expect((await depot.call("desk", "POST", `/hires/${ids[0]}/move`, back)).status).toBe(200);
});

test("moves of a tidy are made all or none, and never with a pinned hire", async () => {
  const third = await bookedHire("Cleo Invented", "2026-08-12T14:00", "2026-08-19T10:00", "pv2-b");
  const swap = {
    moves: [
      { hireId: ids[1], from: "pv2", to: "pv2-b" },
      { hireId: third, from: "pv2-b", to: "pv2" },
    ],
  };
  expect((await depot.call("desk", "POST", "/diary/tidy", { moves: swap.moves.slice(0, 1) })).status).toBe(
    409,
  );
  expect((await depot.store.bookings.of(ids[1]!))?.vehicleId).toBe("pv2");
  expect((await depot.call("desk", "PUT", `/hires/${third}/pin`, { pinned: true })).status).toBe(200);
  expect((await depot.call("desk", "POST", "/diary/tidy", swap)).body.error.code).toBe("stale");
  expect((await depot.call("desk", "PUT", `/hires/${third}/pin`, { pinned: false })).status).toBe(200);
  expect((await depot.call("desk", "POST", "/diary/tidy", swap)).status).toBe(200);
  expect((await depot.store.bookings.of(third))?.vehicleId).toBe("pv2");
});

test("hires are found by telephone, by what is in hand, by days, and the ended ones on request", async () => {
  const found = async (query: string) =>
    (await depot.call("desk", "GET", `/hires?${query}`)).body.hires.map(({ id }: { id: string }) => id);
  expect(await found("q=07700900123")).toHaveLength(3);
  expect(await found("which=inHand")).toEqual([ids[0], expect.any(String), expect.any(String)]);
  expect(await found("from=2026-08-10&to=2026-08-10")).toEqual([ids[0]]);
  expect(await found("which=over")).toEqual([]);
  await depot.call("desk", "POST", `/hires/${ids[0]}/end`, { as: "cancelled", reason: "A test" });
  expect(await found("q=ada")).toEqual([]);
  expect(await found("q=ada&ended=true")).toEqual([ids[0]]);
  expect(await found("stage=cancelled")).toEqual([ids[0]]);
});

test("the day has what goes out and comes back, and what should have gone by now holds it up", async () => {
  depot.at("2026-08-12T16:00:00.000Z");
  const day = (await depot.call("desk", "GET", "/today")).body;
  expect(day.out).toHaveLength(2);
  expect(day.out[0].late).toBe("out");
  expect(day.blockers).toMatchObject([
    { why: "glass", lateMinutes: 180 },
    { why: "glass", lateMinutes: 180 },
  ]);
  const later = (await depot.call("desk", "GET", "/today?date=2026-08-19")).body;
  expect(later.out).toEqual([]);
  expect(later.back).toHaveLength(2);
  const between = (await depot.call("desk", "GET", "/today?date=2026-08-15")).body;
  expect(between.onTheRoad).toHaveLength(2);
});
