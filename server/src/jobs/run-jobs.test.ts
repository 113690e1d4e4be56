import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { addDepot, makePlace, type TestPlace, testedStores } from "../store/stores-for-tests.ts";
import type { Database, Store } from "../store/types.ts";
import { MOST_ATTEMPTS, waitSeconds } from "./backoff.ts";
import { type JobHandler, storeJobs } from "./handlers.ts";
import { LEASE_SECONDS, runDueJobs, startJobs } from "./run-jobs.ts";

test("the wait doubles from 15 seconds and stops at 6 hours", () => {
  expect([1, 2, 3, 4].map(waitSeconds)).toEqual([15, 30, 60, 120]);
  expect(waitSeconds(50)).toBe(6 * 3600);
  expect(() => waitSeconds(0)).toThrow();
});

describe.each(testedStores())("jobs on $kind", ({ kind }) => {
  let place: TestPlace;
  let database: Database;
  let store: Store;
  let clock = Date.parse("2026-07-01T08:00:00Z");
  const later = (seconds: number) => {
    clock += seconds * 1000;
  };

  beforeAll(async () => {
    place = await makePlace(kind);
    database = await place.open({ now: () => new Date(clock) });
    store = database.storeFor(await addDepot(database, "manager@example.org"));
  });
  afterAll(() => place.remove());

  test("a job is begun again until it is done, however often it fails or its worker dies", async () => {
    let round = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.constantFrom("done", "fails", "dies"), { maxLength: MOST_ATTEMPTS - 1 }),
        async (fates) => {
          const kindOfJob = `round-${round++}`;
          await store.jobs.add({ kind: kindOfJob, payload: { n: round }, dedupeKey: kindOfJob });
          expect(await store.jobs.add({ kind: kindOfJob, payload: {}, dedupeKey: kindOfJob })).toEqual({
            added: false,
          });
          let isDone = false;
          for (const fate of [...fates, "done"]) {
            const [job] = await database.system.jobs.claim(1, LEASE_SECONDS);
            if (isDone) {
              expect(job).toBeUndefined();
              continue;
            }
            expect(job).toMatchObject({ kind: kindOfJob, payload: { n: round } });
            expect(await database.system.jobs.claim(1, LEASE_SECONDS)).toEqual([]);
            if (fate === "done") await database.system.jobs.finish(job!.id);
            if (fate === "fails") await database.system.jobs.fail(job!.id, "no\0 post");
            isDone ||= fate === "done";
            later(6 * 3600);
          }
          expect(isDone).toBe(true);
        },
      ),
      { numRuns: 30 },
    );
    expect(await database.system.jobs.counts()).toMatchObject({ waiting: 0, dead: 0 });
  });

  test("after a failure it waits longer each time, and in the end is left for a person to see", async () => {
    await store.jobs.add({ kind: "hopeless", payload: {} });
    for (let attempt = 1; attempt <= MOST_ATTEMPTS; attempt++) {
      const [job] = await database.system.jobs.claim(5, LEASE_SECONDS);
      const before = attempt === 1 ? null : `failure ${attempt - 1}`;
      expect(job).toMatchObject({ kind: "hopeless", attempts: attempt, lastError: before });
      await database.system.jobs.fail(job!.id, `fail\0ure ${attempt}`);
      if (attempt === MOST_ATTEMPTS) break;
      later(waitSeconds(attempt) - 1);
      expect(await database.system.jobs.claim(5, LEASE_SECONDS)).toEqual([]);
      later(1);
    }
    later(7 * 86_400);
    expect(await database.system.jobs.claim(5, LEASE_SECONDS)).toEqual([]);
    expect((await database.system.jobs.counts()).dead).toBe(1);
  });

  test("one whose worker dies every time is given up too", async () => {
    const before = (await database.system.jobs.counts()).dead;
    await store.jobs.add({ kind: "deadly", payload: {} });
    for (let attempt = 1; attempt <= MOST_ATTEMPTS; attempt++) {
      expect(await database.system.jobs.claim(5, LEASE_SECONDS)).toHaveLength(1);
      later(LEASE_SECONDS);
    }
    expect(await database.system.jobs.claim(5, LEASE_SECONDS)).toEqual([]);
    expect((await database.system.jobs.counts()).dead).toBe(before + 1);
  });

  test("many workers at once take every job, and none takes one that another holds", async () => {
    for (let n = 0; n < 40; n++) await store.jobs.add({ kind: "many", payload: { n } });
    const taken: unknown[] = [];
    await Promise.all(
      Array.from({ length: 8 }, async () => {
        for (;;) {
          const jobs = await database.system.jobs.claim(3, LEASE_SECONDS);
          if (jobs.length === 0) return;
          taken.push(...jobs.map(({ payload }) => payload.n));
          for (const { id } of jobs) await database.system.jobs.finish(id);
        }
      }),
    );
    expect([...taken].sort((a, b) => Number(a) - Number(b))).toEqual(Array.from({ length: 40 }, (_, n) => n));
  });

  test("what has been due longest is taken first", async () => {
    const at = (minutes: number) => new Date(clock - minutes * 60_000).toISOString();
    for (const [name, minutes] of [
      ["second", 5],
      ["third", 1],
      ["first", 9],
    ] as const)
      await store.jobs.add({ kind: name, payload: {}, dedupeKey: name, runAt: at(minutes) });
    const kinds: string[] = [];
    for (let n = 0; n < 3; n++) {
      const [job] = await database.system.jobs.claim(1, LEASE_SECONDS);
      kinds.push(job!.kind);
      await database.system.jobs.finish(job!.id);
    }
    expect(kinds).toEqual(["first", "second", "third"]);
  });

  test("a job added in work that fails is not there", async () => {
    const before = await database.system.jobs.counts();
    const work = store.within(async (inner) => {
      await inner.jobs.add({ kind: "never", payload: {} });
      throw new Error("half way");
    });
    await expect(work).rejects.toThrow("half way");
    expect(await database.system.jobs.counts()).toEqual(before);
  });

  test("a job that waits for its time is not begun before, and one without a handler is seen as failing", async () => {
    const done: string[] = [];
    const handlers = {
      mail: async (job: { payload: { to?: unknown } }) => void done.push(String(job.payload.to)),
    };
    await store.jobs.add({ kind: "mail", payload: { to: "now" } });
    await store.jobs.add({
      kind: "mail",
      payload: { to: "later" },
      runAt: new Date(clock + 60_000).toISOString(),
    });
    await store.jobs.add({ kind: "toString", payload: {} });
    expect(await runDueJobs(database, handlers)).toEqual({ done: 1, failed: 1 });
    later(10);
    expect(done).toEqual(["now"]);
    later(60);
    await runDueJobs(database, handlers);
    expect(done).toEqual(["now", "later"]);
  });

  test("licence numbers are erased by their job when their time has come", async () => {
    const hire = await store.hires.create({ from: "2026-07-04T14:00:00Z", to: "2026-07-11T09:00:00Z" });
    const eraseAt = new Date(clock + 86_400_000).toISOString();
    await store.licences.put({ hireId: hire.id, driverId: "d1", number: "INVEN", eraseAt });
    await runDueJobs(database, storeJobs);
    expect(await store.licences.read(hire.id, "d1", "desk")).toBe("INVEN");
    later(86_400);
    await runDueJobs(database, storeJobs);
    expect(await store.licences.read(hire.id, "d1", "desk")).toBeNull();
  });

  test("a long job hears that the worker is to stop, and the next is not begun", async () => {
    let heard = 0;
    let begun = 0;
    for (const n of [1, 2]) await store.jobs.add({ kind: "long", payload: { n } });
    const long: JobHandler = async (_job, _store, isStopping) => {
      begun += 1;
      while (!isStopping()) await new Promise((resolve) => setTimeout(resolve, 5));
      heard += 1;
    };
    const worker = startJobs(database, { ...storeJobs, long }, () => {}, 5);
    await expect.poll(() => begun).toBe(1);
    await worker.stop();
    expect({ begun, heard }).toEqual({ begun: 1, heard: 1 });
    // the other is still there
    const [left] = await database.system.jobs.claim(1, LEASE_SECONDS);
    expect(left).toMatchObject({ kind: "long", payload: { n: 2 } });
    await database.system.jobs.finish(left!.id);
  });

  test("a worker runs until it is stopped", async () => {
    let begun = 0;
    await store.jobs.add({ kind: "tick", payload: {} });
    const worker = startJobs(database, { ...storeJobs, tick: async () => void begun++ }, () => {}, 5);
    await expect.poll(() => begun).toBe(1);
    await worker.stop();
    await store.jobs.add({ kind: "tick", payload: {} });
    await new Promise((resolve) => setTimeout(resolve, 40));
    expect(begun).toBe(1);
  });
});
