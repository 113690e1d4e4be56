/** Erasures that something holds, and what tablets of the yard keep and forget. */
import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { waitingEraser } from "../jobs/erase-waiting.ts";
import { storeJobs } from "../jobs/handlers.ts";
import { runDueJobs } from "../jobs/run-jobs.ts";
import { readPdf } from "../papers/read-pdf-for-tests.ts";
import { ERASE_WAITING } from "../store/erasure-wishes-store.ts";
import { testedStores } from "../store/stores-for-tests.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { type LivedHire, liveHire, makeJpeg, sendPhotograph, settleSums } from "./lived-hire-for-tests.ts";
import { CUSTOMER, PARTY } from "./samples-for-tests.ts";

describe.each(testedStores())("an erasure on $kind", ({ kind }) => {
  let depot: TestDepot;
  let hire: LivedHire;
  const path = () => `/hires/${hire.id}/customer/erasure`;
  const call = (...args: Parameters<TestDepot["call"]>) => depot.call(...args);
  const must = async (...args: Parameters<TestDepot["call"]>) => {
    const answer = await depot.call(...args);
    if (answer.status !== 200) throw new Error(`${args.join(" ")}: ${JSON.stringify(answer.body)}`);
    return answer.body;
  };
  const codes = async () =>
    (await must("manager", "GET", path())).holds.map(({ code }: { code: string }) => code).sort();
  const work = () =>
    runDueJobs(depot.context.database, {
      ...storeJobs,
      [ERASE_WAITING]: waitingEraser({ now: depot.context.now }),
    });
  const keeps = (tabletId: string, ...hires: string[]) =>
    must("yard", "POST", "/yard/kept", { tabletId, hires });
  const note = (body: object) => must("desk", "POST", `/hires/${hire.id}/settlement/notes`, body);
  const paper = async () => {
    const { rawPayload, statusCode } = await depot.app.inject({
      method: "GET",
      url: `/api${path()}/paper`,
      headers: { cookie: depot.cookie("manager") },
    });
    expect(statusCode).toBe(200);
    return (await readPdf(rawPayload)).pages.join(" ").replaceAll(/\s+/g, " ");
  };
  const file = { kind: "file", with: "insurer", name: "Invented Cover", reference: "IC-1", on: "2026-07-06" };
  const rest = { paidPence: 0, note: "" };

  beforeAll(async () => {
    depot = await makeDepot(kind);
    hire = await liveHire(depot);
    const shot = await sendPhotograph(depot, hire.id, await makeJpeg(90, 60));
    await note({ ...file, ...rest, state: "sent" });
    await must("desk", "POST", `/hires/${hire.id}/lost-property`, {
      what: "A red hat",
      where: "under the seat",
      now: "kept",
      costPence: 0,
      note: "",
    });
    const fine = {
      kind: "notice",
      id: randomUUID(),
      what: "fine",
      issuer: "Invented Council",
      reference: "P-1",
    };
    const where = { at: "2026-07-04T10:00", where: "Keswick", pence: 3500, feePence: 0, photographs: [shot] };
    await note({ ...fine, ...where });
  }, 60_000);
  afterAll(() => depot.close());

  it("is refused with everything that holds it, each with its hire and the day on which it ends", async () => {
    expect(await codes()).toEqual(["deposit", "file", "open", "owed", "property"]);
    const refused = await call("manager", "POST", path());
    expect(refused).toMatchObject({ status: 409, body: { error: { code: "wrongStage" } } });
    const said = refused.body.error.problems.map(({ expected }: { expected: string }) => expected).join(" ");
    expect(said).toMatch(/the file with Invented Cover is open/);
    expect(said).toMatch(/A red hat lies at the depot/);
    expect(said).toMatch(/£[\d,.]+ is owed/);
    expect(said).not.toMatch(/\{|\}|undefined|none/);
    expect((await call("desk", "POST", path())).status).toBe(403);
    expect((await call("desk", "GET", path())).status).toBe(403);
  });

  it("can be set to go by itself, is looked at each day, and can be taken back", async () => {
    const waits = await must("manager", "POST", `${path()}?when=whenClear`);
    expect(waits).toMatchObject({ state: "waits", by: "Pat Manager" });
    expect(waits.answerBy).toBe("2026-08-06");
    await must("manager", "POST", `${path()}?when=whenClear`);
    expect(await depot.store.erasureWishes.waiting()).toHaveLength(1);
    await work();
    expect((await must("manager", "GET", path())).state).toBe("waits");
    expect((await must("manager", "DELETE", path())).state).toBe("none");
    expect((await call("manager", "DELETE", path())).status).toBe(404);
    await must("manager", "POST", `${path()}?when=whenClear`);
  });

  it("tells a tablet nothing to forget while the person is there, and remembers what it keeps", async () => {
    expect(await keeps("tablet-first", hire.id, "of-another-depot")).toEqual({ forget: [] });
    expect(await keeps("tablet-second", hire.id)).toEqual({ forget: [] });
    const { tablets } = await must("manager", "GET", path());
    expect(tablets).toHaveLength(4);
    for (const tablet of tablets) expect(tablet.forgottenAt).toBeNull();
    expect(tablets.find(({ id }: { id: string }) => id === "tablet-s")).toMatchObject({ unseenDays: 0 });
  });

  it("goes once the last of it has ended", async () => {
    await note({ ...file, ...rest, state: "closed" });
    await must("desk", "POST", `/hires/${hire.id}/lost-property`, {
      what: "A red hat",
      where: "under the seat",
      now: "posted",
      costPence: 0,
      note: "",
    });
    const { differences } = await must("desk", "GET", `/hires/${hire.id}/differences`);
    const classes = differences.map(({ id }: { id: string }) => ({ id, class: "fairWear", reason: "worn" }));
    await must("desk", "PUT", `/hires/${hire.id}/classes`, { classes });
    await must("desk", "POST", `/hires/${hire.id}/settlement`);
    expect(await codes()).toContain("owed");
    await settleSums(depot, hire.id);
    await must("desk", "POST", `/hires/${hire.id}/close`);
    expect(await codes()).toEqual([]);
    depot.at("2026-07-08T09:00:00.000Z");
    await work();
    expect(await must("manager", "GET", path())).toMatchObject({
      state: "erased",
      by: "Pat Manager",
      holds: [],
    });
    expect((await must("manager", "GET", `/hires/${hire.id}`)).hire.customer).toBe("(erased)");
    expect(await depot.store.erasureWishes.waiting()).toEqual([]);
  });

  it("reaches each tablet at its next contact, which says when it has forgotten", async () => {
    const { headers } = await depot.app.inject({
      method: "POST",
      url: "/api/yard/kept",
      headers: { cookie: depot.cookie("yard") },
      payload: { tabletId: "tablet-first", hires: [hire.id] },
    });
    expect(headers["clear-site-data"]).toBe('"cache"');
    expect(await keeps("tablet-first", hire.id)).toEqual({ forget: [hire.id] });
    expect(await keeps("tablet-first")).toEqual({ forget: [] });
    const { tablets } = await must("manager", "GET", path());
    const first = tablets.find(({ id }: { id: string }) => id === "tablet-f");
    expect(first).toMatchObject({ forgottenAt: "2026-07-08T09:00:00.000Z", by: "Yo Yard" });
    expect(await paper()).not.toContain("look for");
  });

  it("names on its paper the tablets that were not heard of for long, and nobody else", async () => {
    depot.at("2026-07-25T09:00:00.000Z");
    const text = await paper();
    expect(text).toMatch(/tablet-s.* were not in contact for 14 days or more/);
    expect(text).not.toMatch(/Tablets (tablet-\w, )*tablet-f/);
    expect(text).not.toMatch(/Ingrid|900101|ingrid@/);
    expect(text).toContain("Yo Yard");
  });

  it("waits for nothing where nothing holds it", async () => {
    const asked = { customer: { ...CUSTOMER, name: "Only Asked" }, party: PARTY };
    const made = await must("desk", "POST", "/hires", {
      ...asked,
      from: "2026-09-01T12:00",
      to: "2026-09-03T10:00",
    });
    const { id } = made.hire;
    await must("desk", "POST", `/hires/${id}/end`, { as: "lost", reason: "changed their mind" });
    const gone = await must("manager", "POST", `/hires/${id}/customer/erasure?when=whenClear`);
    expect(gone).toMatchObject({ state: "erased", tablets: [] });
  });
});
