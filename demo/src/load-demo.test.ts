import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { verifyRecords } from "@setfair/records";
import { buildApp, type Database, openDatabase, openFiles } from "@setfair/server";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { addDays, mayFriday } from "./dates.ts";
import { DEMO_SIGN_INS, loadDemo, twoAdults } from "./index.ts";

describe.each(["2026-11-25T08:00:00.000Z", "2027-05-08T22:30:00.000Z", "2028-02-29T12:00:00.000Z"])(
  "the invented firm, loaded at %s",
  (instant) => {
    let folder = "";
    let database: Database;
    let app: Awaited<ReturnType<typeof buildApp>>;
    let cookie = "";
    const now = () => new Date(instant);
    const today = new Intl.DateTimeFormat("en-CA", { timeZone: "Europe/London" }).format(now());
    const get = async (url: string) => (await app.inject({ url: `/api${url}`, headers: { cookie } })).json();
    beforeAll(async () => {
      folder = await mkdtemp(join(tmpdir(), "setfair-demo-"));
      database = await openDatabase({ dataFolder: folder, now });
      await loadDemo(database, now());
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
      expect(found).toEqual({ Heron: [true], Siskin: [false, "diary"], Teal: [false, "dueDates"] });
    });

    it("answers every page of every hire, and every record is whole", async () => {
      const { hires } = await get("/hires?limit=100");
      expect(hires.map(({ stage }: { stage: string }) => stage).sort()).toEqual([
        "booked",
        "booked",
        "enquiry",
        "lost",
        "onHire",
        "quote",
        "returned",
      ]);
      for (const { id } of hires) expect((await get(`/hires/${id}`)).hire.id).toBe(id);
      const returned = hires.find(({ stage }: { stage: string }) => stage === "returned");
      const { differences } = await get(`/hires/${returned.id}/differences`);
      expect(differences.map(({ kind }: { kind: string }) => kind)).toEqual(["mark"]);
      expect(verifyRecords(await get(`/hires/${returned.id}/records`)).ok).toBe(true);
      expect((await get("/today")).out).toHaveLength(1);
      expect((await get("/yard/jobs")).jobs.length).toBeGreaterThanOrEqual(2);
    });

    it("is loaded once only", async () => {
      await expect(loadDemo(database, now())).rejects.toThrow(/already/);
    });
  },
);
