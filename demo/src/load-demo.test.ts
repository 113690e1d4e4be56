import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { verifyRecords } from "@setfair/records";
import { buildApp, type Database, openDatabase, openFiles, type Store } from "@setfair/server";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { addDays, mayFriday } from "./dates.ts";
import { DEMO_SIGN_INS, loadDemo, twoAdults } from "./index.ts";

describe.each([
  "2026-11-25T08:00:00.000Z",
  "2026-06-10T09:00:00.000Z",
  "2027-05-08T22:30:00.000Z",
  "2028-02-29T12:00:00.000Z",
])("the invented firm, loaded at %s", (instant) => {
  let folder = "";
  let database: Database;
  let app: Awaited<ReturnType<typeof buildApp>>;
  let cookie = "";
  let store: Store;
  const now = () => new Date(instant);
  const today = new Intl.DateTimeFormat("en-CA", { timeZone: "Europe/London" }).format(now());
  const get = async (url: string) => (await app.inject({ url: `/api${url}`, headers: { cookie } })).json();
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "setfair-demo-"));
    database = await openDatabase({ dataFolder: folder, now });
    await loadDemo(database, now(), openFiles({ dataFolder: folder }));
    const [depot] = await database.system.depots();
    if (depot === undefined) throw new Error("the demo made no depot");
    store = database.storeFor({ firmId: depot.firmId, depotId: depot.id });
    const context = {
      database,
      files: openFiles({ dataFolder: folder }),
      now,
      publicUrl: "http://test",
      secure: false,
      demo: true,
    };
    app = await buildApp(context, { webFolder: null });
    const { login, password } = DEMO_SIGN_INS[1];
    const answer = await app.inject({ method: "POST", url: "/api/session", payload: { login, password } });
    cookie = String(answer.headers["set-cookie"]).split(";")[0] ?? "";
  });
  afterAll(async () => {
    await app.close();
    await database.close();
    await rm(folder, { recursive: true, force: true });
  });

  it("has entered all that a new firm is asked for", async () => {
    const { login, password } = DEMO_SIGN_INS[0];
    const manager = await app.inject({ method: "POST", url: "/api/session", payload: { login, password } });
    const headers = { cookie: String(manager.headers["set-cookie"]).split(";")[0] ?? "" };
    const answer = await app.inject({ url: "/api/first-steps", headers });
    expect(answer.json()).toMatchObject({ open: [] });
  });

  it("shows the hire that is to be settled side by side: four sides out and back, and each mark", async () => {
    const { hires } = await get("/hires?stage=returned");
    const [{ id }] = hires.filter(({ customer }: { customer: string }) => customer === "Eva Novak");
    const { differences, outPhotographs } = await get(`/hires/${id}/differences`);
    expect(outPhotographs.map(({ about }: { about: string }) => about).sort()).toEqual(
      expect.arrayContaining(["view.front", "view.nearside", "view.offside", "view.rear"]),
    );
    const mark = differences.find(({ kind }: { kind: string }) => kind === "mark");
    for (const sha256 of [...mark.asItLeft.photographs, ...mark.difference.photographs]) {
      const answer = await app.inject({ url: `/api/photos/${sha256}?size=large`, headers: { cookie } });
      expect([answer.statusCode, answer.headers["content-type"]]).toEqual([200, "image/jpeg"]);
    }
    expect([mark.asItLeft.photographs.length > 0, mark.difference.photographs.length]).toEqual([true, 1]);
  });

  it("has an outbox with something at every state, school holidays, and people on a usual day", async () => {
    const { messages } = await get("/messages?show=all");
    const states = new Set(messages.map(({ state }: { state: string }) => state));
    expect([...states].sort()).toEqual(["bounced", "failed", "sent", "waiting"]);
    for (const { to } of messages) expect(to).toMatch(/@example\.org$/);
    const depot = await get("/depot");
    expect(depot.schoolHolidays).toHaveLength(21);
    expect(depot.crew).toMatchObject({ desk: 2 });
  });

  it("has one vehicle free for the Highlands in May, one out, one whose MOT falls due on the way", async () => {
    const friday = mayFriday(today);
    const asked = { party: twoAdults(), from: `${friday}T13:30`, to: `${addDays(friday, 7)}T15:30` };
    const answer = await app.inject({
      method: "POST",
      url: "/api/availability",
      headers: { cookie },
      payload: asked,
    });
    const found = Object.fromEntries(
      answer
        .json()
        .vehicles.map(
          (each: { name: string; possible: boolean; findings: { gate: string; severity: string }[] }) => [
            each.name,
            [
              each.possible,
              ...each.findings.filter(({ severity }) => severity === "refuse").map(({ gate }) => gate),
            ],
          ],
        ),
    );
    expect(Object.keys(found)).toHaveLength(7);
    const refused = (name: string) => [...new Set(found[name]?.slice(1))];
    // yearly duties fall due again before a May that is most of a year ahead
    if (friday > addDays(today, 270)) expect(["", "dueDates"]).toContain(refused("Heron").join());
    else expect(found.Heron).toEqual([true]);
    expect(found.Curlew).toContain("diary");
    expect(refused("Gannet")).toEqual(["dueDates"]);
  });

  it("has a season of hires at every stage, and some to do on the day itself", async () => {
    const { rows } = await store.hires.list({ limit: 200 });
    expect(rows.length).toBeGreaterThan(120);
    expect(rows.length).toBeLessThan(200);
    expect(new Set(rows.map(({ stage }) => stage))).toEqual(
      new Set([
        "enquiry",
        "quote",
        "booked",
        "onHire",
        "returned",
        "settled",
        "closed",
        "lost",
        "cancelled",
        "noShow",
      ]),
    );
    const at = (instant: string) => instant.slice(0, 10);
    for (const { stage, from, to } of rows) {
      if (stage === "closed") expect(at(to) < today).toBe(true);
      if (stage === "onHire") expect(at(from) < today && at(to) >= today).toBe(true);
      if (stage === "booked" || stage === "enquiry") expect(at(from) >= today).toBe(true);
    }
    const back = rows.find(({ stage }) => stage === "returned");
    const page = await get(`/hires/${back?.id}`);
    expect(page.waits).toMatchObject([{ code: "secondLook", whose: "yard" }]);
    const day = await get("/today");
    expect(day.out.length).toBeGreaterThanOrEqual(2);
    expect(day.back.length).toBeGreaterThanOrEqual(2);
    expect((await get("/yard/jobs")).jobs.length).toBeGreaterThanOrEqual(5);
  });

  it("has customers who came again, and every price in whole pence", async () => {
    const { rows } = await store.hires.list({ limit: 200 });
    const times = new Map<string, number>();
    for (const { customerId } of rows) times.set(customerId ?? "", (times.get(customerId ?? "") ?? 0) + 1);
    expect([...times.values()].filter((count) => count > 1).length).toBeGreaterThan(10);
    for (const { id } of rows.slice(0, 40)) {
      const part = (await store.hires.part(id, "quote"))?.document as {
        answer: { result: { total: { pence: number } } };
      };
      if (part !== undefined) expect(Number.isInteger(part.answer.result.total.pence)).toBe(true);
    }
  });

  it("answers the page of a hire at each stage, and every record is whole", async () => {
    const { rows } = await store.hires.list({ limit: 200 });
    const ofEach = new Map(rows.map((row) => [row.stage, row]));
    for (const { id } of ofEach.values()) expect((await get(`/hires/${id}`)).hire.id).toBe(id);
    const eva = rows.find(({ customerName }) => customerName === "Eva Novak");
    const { differences } = await get(`/hires/${eva?.id}/differences`);
    expect(differences.map(({ kind }: { kind: string }) => kind).sort()).toEqual(["mark", "reading"]);
    expect(verifyRecords(await get(`/hires/${eva?.id}/records`)).ok).toBe(true);
  });

  it("has a quote that goes abroad, with a driver who may not and a card for each country", async () => {
    const { rows } = await store.hires.list({ stages: ["quote"], limit: 200 });
    const id = rows.find(({ customerName }) => customerName === "Hal Merrin")?.id;
    const { gates } = (await get(`/hires/${id}`)).glass;
    const { findings } = gates.find(({ gate }: { gate: string }) => gate === "licence");
    expect(findings.map(({ finding }: { finding: { code: string } }) => finding.code)).toContain(
      "licence.categoryTooSmall",
    );
    const { cards } = (await get(`/hires/${id}/abroad`)).countries;
    expect(cards.map(({ country }: { country: string }) => country)).toEqual(["GB", "FR", "DE", "AT"]);
  });

  it("has the use of every hire that came back, and of a year before, to be set beside forecasts", async () => {
    const { rows } = await store.hires.list({ stages: ["settled", "closed"], limit: 200 });
    for (const { id } of rows.slice(0, 10)) expect(await store.uses.ofHire(id)).not.toBeNull();
    const first = await get("/forecast-outcomes");
    expect(first.waiting).toBeGreaterThan(0);
    expect(first.returns).toBeGreaterThan(0);
    const waiting = await store.uses.waiting("no engine yet", 1000);
    expect(waiting.length).toBeGreaterThan(rows.length + 60);
    expect(waiting[0]?.hireId).toBeNull();
  });

  it("is loaded once only", async () => {
    await expect(loadDemo(database, now())).rejects.toThrow(/already/);
  });
});
