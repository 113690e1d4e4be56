import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import type { Guide } from "./database.ts";
import { DeviceDatabase, type YardJob } from "./database.ts";
import { fetchGuide, keepGuide } from "./fetch-guide.ts";
import { fetchJobs, fetchPictures } from "./fetch-jobs.ts";

let made = 0;
const openDevice = () => new DeviceDatabase(`jobs-${made++}`);
const job = (id: string, outRecords: unknown[] = []) =>
  ({ id, due: "2026-07-03T12:15", outRecords }) as unknown as YardJob;
const answer =
  (body: unknown, status = 200) =>
  async () =>
    Response.json(body, { status });

describe("bringing the day to the device", () => {
  it("drops what the depot no longer lists, but never a walk-round that was begun here", async () => {
    const db = openDevice();
    await fetchJobs(db, answer({ date: "2026-07-03", jobs: [job("a"), job("b"), job("c")] }));
    await db.rounds.put({ jobId: "b", state: {} });
    expect(await fetchJobs(db, answer({ date: "2026-07-04", jobs: [job("c")] }))).toBe("fresh");
    expect((await db.jobs.toCollection().primaryKeys()).sort()).toEqual(["b", "c"]);
  });

  it("keeps the list as it was when there is no signal, the server is ill or nobody is signed in", async () => {
    const db = openDevice();
    await fetchJobs(db, answer({ date: "2026-07-03", jobs: [job("a")] }));
    expect(await fetchJobs(db, () => Promise.reject(new TypeError("failed to fetch")))).toBe("kept");
    expect(await fetchJobs(db, answer({}, 503))).toBe("kept");
    expect(await fetchJobs(db, answer({}, 401))).toBe("signIn");
    expect(await db.jobs.count()).toBe(1);
  });

  it("brings each picture of the walk out once", async () => {
    const db = openDevice();
    const sha256 = "a".repeat(64);
    await fetchJobs(
      db,
      answer({ date: "2026-07-03", jobs: [job("a", [{ content: { sha256 } }, { content: {} }])] }),
    );
    let asked = 0;
    const request = async () => {
      asked += 1;
      return new Response(new Uint8Array([0xff, 0xd8]));
    };
    await fetchPictures(db, request);
    await fetchPictures(db, request);
    expect(asked).toBe(1);
    expect([...(await db.pictures.get(sha256))!.bytes]).toEqual([0xff, 0xd8]);
  });
});

describe("bringing the guide to the phone", () => {
  const guide = { hireId: "h1" };
  const cut = () => Promise.reject(new TypeError("failed to fetch"));

  it("tells the guide, an ended link and no answer apart", async () => {
    expect(await fetchGuide("token", answer(guide))).toEqual({ outcome: "fresh", guide });
    expect(await fetchGuide("token", cut)).toEqual({ outcome: "noAnswer" });
    expect(await fetchGuide("token", answer({}, 500))).toEqual({ outcome: "noAnswer" });
    expect(await fetchGuide("token", answer({}, 404))).toEqual({ outcome: "gone" });
  });

  it("keeps it, and says so only where it is kept", async () => {
    const db = openDevice();
    expect(await keepGuide(db, "token", guide as Guide)).toBe(true);
    expect((await db.guides.get("token"))?.guide.hireId).toBe("h1");
  });

  it("says that a full phone, or one that keeps nothing, has not kept it", async () => {
    const full = openDevice();
    full.guides.hook("creating", () => {
      throw new DOMException("no room", "QuotaExceededError");
    });
    expect(await keepGuide(full, "token", guide as Guide)).toBe(false);
    expect(await full.guides.get("token")).toBeUndefined();
    const shut = openDevice();
    shut.close({ disableAutoOpen: true });
    expect(await keepGuide(shut, "token", guide as Guide)).toBe(false);
  });
});
