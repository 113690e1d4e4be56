import { fork } from "node:child_process";
import { once } from "node:events";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { addDepot, makePlace, type TestPlace, testedStores } from "./stores-for-tests.ts";
import type { BookingRow, Database, Scope, Store } from "./types.ts";

const hour = (n: number) => new Date(Date.UTC(2026, 6, 1) + n * 3_600_000).toISOString();

function clashes(a: BookingRow, b: BookingRow): boolean {
  const ready = (row: BookingRow) => Date.parse(row.to) + row.turnaroundMinutes * 60_000;
  return Date.parse(a.from) < ready(b) && Date.parse(b.from) < ready(a);
}

function expectNoneTwice(rows: readonly BookingRow[]): void {
  for (const [n, a] of rows.entries()) {
    for (const b of rows.slice(n + 1))
      if (a.vehicleId === b.vehicleId) expect(clashes(a, b), JSON.stringify([a, b])).toBe(false);
  }
}

describe.each(testedStores())("bookings on $kind", ({ kind }) => {
  let place: TestPlace;
  let database: Database;
  let scope: Scope;
  let store: Store;

  beforeAll(async () => {
    place = await makePlace(kind);
    database = await place.open();
    scope = await addDepot(database, "manager@example.org");
    store = database.storeFor(scope);
  });
  afterAll(() => place.remove());

  const newHire = async () => (await store.hires.create({ from: hour(0), to: hour(1) })).id;
  const booking = (
    hireId: string,
    from: number,
    to: number,
    vehicleId = "v",
    turnaroundMinutes = 0,
  ): BookingRow => ({
    hireId,
    vehicleId,
    from: hour(from),
    to: hour(to),
    turnaroundMinutes,
  });

  test("one hire may begin when another is back and ready, not before", async () => {
    const [first, second] = [await newHire(), await newHire()];
    expect(await store.bookings.book(booking(first, 10, 20, "half", 60))).toEqual({ ok: true });
    expect(await store.bookings.book(booking(second, 20, 30, "half"))).toMatchObject({
      ok: false,
      why: "taken",
      by: [{ hireId: first }],
    });
    expect(await store.bookings.book(booking(second, 21, 30, "half"))).toEqual({ ok: true });
    expect(await store.bookings.book(booking(second, 22, 31, "half"))).toEqual({ ok: true });
    expect(await store.bookings.of(second)).toMatchObject({ from: hour(22) });
    expect(await store.bookings.book(booking(second, 5, 9, "half", 120))).toMatchObject({ ok: false });
    expect(await store.bookings.of(second)).toMatchObject({ from: hour(22) });
    expect(await store.bookings.release(first)).toBe(true);
    expect(await store.bookings.book(booking(second, 5, 9, "half", 120))).toEqual({ ok: true });
  });

  test("a booking that makes no sense is named", async () => {
    const hire = await newHire();
    await expect(store.bookings.book(booking(hire, 5, 5))).rejects.toThrow(/^to: /);
    await expect(store.bookings.book(booking(hire, 5, 6, "v", -1))).rejects.toThrow(/^turnaroundMinutes: /);
    await expect(store.bookings.book(booking("nobody", 5, 6, "alone"))).rejects.toThrow();
  });

  test("of many who take one vehicle at once, one has it", async () => {
    const hires = await Promise.all(Array.from({ length: 16 }, newHire));
    const answers = await Promise.all(hires.map((id) => store.bookings.book(booking(id, 100, 110, "race"))));
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await store.bookings.between(hour(100), hour(110), "race")).toHaveLength(1);
  });

  test("whatever is booked, moved and released at once, no vehicle is held twice", async () => {
    const hires = await Promise.all(Array.from({ length: 8 }, newHire));
    const act = fc.record({
      hire: fc.nat({ max: 7 }),
      from: fc.integer({ min: 200, max: 230 }),
      hours: fc.integer({ min: 1, max: 12 }),
      vehicle: fc.constantFrom("p", "q"),
      turnaround: fc.constantFrom(0, 60, 180),
      release: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(act, { minLength: 1, maxLength: 16 }), async (acts) => {
        await Promise.all(
          acts.map(({ hire, from, hours, vehicle, turnaround, release }) =>
            release && from % 3 === 0
              ? store.bookings.release(hires[hire]!)
              : store.bookings.book(booking(hires[hire]!, from, from + hours, vehicle, turnaround)),
          ),
        );
        expectNoneTwice(await store.bookings.between(hour(0), hour(1000)));
      }),
      { numRuns: 25 },
    );
  });

  test("two processes at once do not book one vehicle twice", async () => {
    const hires = await Promise.all(Array.from({ length: 20 }, newHire));
    const workers = [0, 1].map((half) =>
      fork(new URL("./book-for-tests.ts", import.meta.url), {
        execArgv: ["--import", "tsx", "--conditions", "setfair-source"],
        env: {
          ...process.env,
          BOOK: JSON.stringify({
            dataFolder: place.dataFolder,
            url: place.url,
            scope,
            // both ask for the same twenty slots, every one overlapping the next
            bookings: hires
              .slice(half * 10, half * 10 + 10)
              .map((id, n) => booking(id, 500 + n, 502 + n, "two")),
          }),
        },
      }),
    );
    const codes = await Promise.all(workers.map(async (worker) => (await once(worker, "exit"))[0] as number));
    expect(codes).toEqual([0, 0]);
    const rows = await store.bookings.between(hour(500), hour(600), "two");
    expect(rows.length).toBeGreaterThanOrEqual(4);
    expectNoneTwice(rows);
  });
});
