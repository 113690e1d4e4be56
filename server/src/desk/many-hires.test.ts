import { afterAll, beforeAll, expect, test } from "vitest";
import { type TwoDepots, twoDepots } from "../store/stores-for-tests.ts";
import type { Store } from "../store/types.ts";
import { custodyOf } from "./custody.ts";
import { mendedMarks } from "./mended-marks.ts";

// A vehicle that has been let out for years: what counts is its last hires, not its first.

let depots: TwoDepots;
beforeAll(async () => {
  depots = await twoDepots("sqlite");
});
afterAll(() => depots.place.remove());

const day = (n: number, hour: number) => new Date(Date.UTC(2020, 0, 1 + 3 * n, hour)).toISOString();

const HIRES = 205;

/** So many that are over, then what is booked: it has had no keys yet. */
async function letOut(store: Store): Promise<void> {
  for (let n = 0; n < HIRES; n++) {
    const customerId = (await store.customers.create({ name: `Hirer ${n}`, document: {} })).id;
    const period = { from: day(n, 10), to: day(n + 2, 9) };
    const { id, version } = await store.hires.create({ ...period, stage: "closed", customerId });
    await store.hires.update(id, { vehicleId: "pv2" }, version);
    const keys = { keysOutAt: day(n, 10), keysBackAt: day(n + 2, 9) };
    await store.hires.putPart(id, "readiness", { glass: null, glassBefore: null, ...keys }, 0, "a");
    const about = `mark:r${n}`;
    await store.settlementEntries.add({
      hireId: id,
      kind: "mended",
      about,
      document: { on: "2026-07-01" },
      by: "a",
    });
  }
  // what is booked has had no keys yet, and pushes nobody out
  for (let n = 0; n < 45; n++) {
    const { id, version } = await store.hires.create({
      from: day(900 + n, 10),
      to: day(902 + n, 9),
      stage: "booked",
    });
    await store.hires.update(id, { vehicleId: "pv2" }, version);
  }
}

test("after two hundred hires it is still known who had the keys last, and which mark was repaired", async () => {
  const { here } = depots;
  await here.within(letOut);
  const names = (await custodyOf(here, "pv2")).map(({ who }) => who);
  expect(names).toContain(`Hirer ${HIRES - 1}`);
  expect(names).not.toContain("Hirer 0");
  const mended = await mendedMarks(here, "pv2");
  expect([mended.size, mended.get(`r${HIRES - 1}`)]).toEqual([HIRES, "2026-07-01"]);
});
