import { mkdtemp, readdir, rm } from "node:fs/promises";
import { Agent, request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { sameEveryDay } from "@setfair/engine";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { serve, serveOptionsFromEnvironment } from "./serve.ts";

const WEEK = { ...sameEveryDay({ opens: "09:00", closes: "17:00" }).week, sunday: null };
const DEPOT = {
  name: "Invented Depot",
  telephone: "01632 960001",
  timeZone: "Europe/London",
  country: "GB",
  latitudeDeg: 54,
  longitudeDeg: -3,
  // closed on Sundays
  hours: { ...sameEveryDay({ opens: "09:00", closes: "17:00" }), week: WEEK },
};
const SET_UP = {
  firm: { name: "Invented Hire" },
  depot: DEPOT,
  manager: { name: "Pat Manager", login: "pat", password: "a long enough password" },
};

describe("serve", () => {
  let dataDir = "";
  beforeEach(async () => {
    dataDir = await mkdtemp(join(tmpdir(), "setfair-serve-"));
  });
  afterEach(() => rm(dataDir, { recursive: true, force: true }));
  const post = (url: string, body: unknown) =>
    fetch(url, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });

  it("offers a one-time set-up link where there is no firm, which makes one once", async () => {
    const served = await serve({ port: 0, dataDir, webFolder: null });
    try {
      const token = served.setUpLink?.split("/").at(-1) ?? "";
      expect(served.setUpLink).toBe(`${served.url}/setup/${token}`);
      const link = `${served.url}/api/setup/${token}`;
      expect(await (await fetch(link)).json()).toEqual({ open: true });
      const wrong = await post(link, { ...SET_UP, depot: { ...DEPOT, timeZone: "Nowhere/Town" } });
      expect(wrong.status).toBe(400);
      expect(await wrong.json()).toMatchObject({ error: { problems: [{ path: "depot.timeZone" }] } });
      const early = { ...WEEK, monday: { opens: "09:00", closes: "08:00" } };
      const backward = await post(link, {
        ...SET_UP,
        depot: { ...DEPOT, hours: { ...DEPOT.hours, week: early } },
      });
      expect(await backward.json()).toMatchObject({
        error: { problems: [{ path: "depot.hours.week.monday.closes" }] },
      });
      expect((await post(`${served.url}/api/setup/${"x".repeat(43)}`, SET_UP)).status).toBe(404);
      expect((await post(link, SET_UP)).status).toBe(200);
      expect((await post(link, { ...SET_UP, manager: { ...SET_UP.manager, login: "other" } })).status).toBe(
        404,
      );
      const signedIn = await post(`${served.url}/api/session`, {
        login: "pat",
        password: SET_UP.manager.password,
      });
      expect(await signedIn.json()).toMatchObject({
        user: { role: "manager" },
        firm: { name: "Invented Hire" },
        demo: false,
      });
      const cookie = signedIn.headers.get("set-cookie")?.split(";")[0] ?? "";
      const depot = await (await fetch(`${served.url}/api/depot`, { headers: { cookie } })).json();
      expect(depot.hours.week).toEqual(WEEK);
    } finally {
      await served.close();
    }
  });

  it("loads the invented firm only on this machine or when asked to, and keeps what is there", async () => {
    let loaded = 0;
    const loadDemo = async () => {
      loaded += 1;
      return [];
    };
    const elsewhere = await serve({ port: 0, host: "0.0.0.0", dataDir, webFolder: null, loadDemo });
    await elsewhere.close();
    expect(loaded).toBe(0);
    await (await serve({ port: 0, host: "0.0.0.0", demo: true, dataDir, webFolder: null, loadDemo })).close();
    await (await serve({ port: 0, dataDir, webFolder: null, loadDemo })).close();
    expect(loaded).toBe(2);
  });

  it("ends as soon as the request in hand is answered, though its caller keeps the line open", async () => {
    const served = await serve({ port: 0, dataDir, webFolder: null });
    const kept = new Agent({ keepAlive: true });
    const { port } = new URL(served.url);
    const answered = new Promise<number>((resolve, reject) => {
      // the body comes only after the closing began, so the line is busy then
      const asking = request({ host: "127.0.0.1", port, path: "/api/session", method: "POST", agent: kept });
      asking.setHeader("content-type", "application/json");
      asking.on("response", (answer) => {
        answer.resume();
        resolve(answer.statusCode ?? 0);
      });
      asking.on("error", reject);
      asking.flushHeaders();
      setTimeout(() => asking.end(JSON.stringify({ login: "nobody", password: "a long enough one" })), 300);
    });
    await new Promise((resolve) => setTimeout(resolve, 100));
    const begun = performance.now();
    await served.close();
    expect(await answered).toBe(401);
    expect(performance.now() - begun).toBeLessThan(5000);
    kept.destroy();
  });

  it("says what is wrong with its options", async () => {
    await expect(serve({ port: 0, dataDir, cert: "only-this.pem" })).rejects.toThrow(/cert and key/);
    expect(() => serveOptionsFromEnvironment({ PORT: "many" })).toThrow(/PORT/);
    expect(
      serveOptionsFromEnvironment({ PORT: "4601", SETFAIR_DATA: "d", SETFAIR_DEMO: "1", SETFAIR_URL: "" }),
    ).toEqual({ port: 4601, dataDir: "d", demo: true });
  });

  it("takes the key for what is encrypted from SETFAIR_KEY and makes no key file then", async () => {
    const { sealKey } = serveOptionsFromEnvironment({ SETFAIR_KEY: "ab".repeat(32) });
    const served = await serve({ port: 0, dataDir, webFolder: null, sealKey: sealKey ?? "" });
    await served.close();
    expect((await readdir(dataDir)).filter((name) => name.endsWith(".key"))).toEqual([]);
    await expect(serve({ port: 0, dataDir, webFolder: null, sealKey: "short" })).rejects.toThrow(
      /SETFAIR_KEY/,
    );
  });

  it.each([
    ["--port", { port: 99_999 }],
    ["--url or SETFAIR_URL", { url: "ftp://hire.example.org" }],
    ["--url or SETFAIR_URL", { url: "hire.example.org" }],
    ["SETFAIR_DATABASE_URL", { databaseUrl: "mysql://127.0.0.1/setfair" }],
    ["SETFAIR_WEATHER_URL", { weatherUrl: "nonsense" }],
    ["SETFAIR_WEATHER_URL", { weatherUrl: "https://weather.example.org/forecast" }],
    ["SETFAIR_BOUNCES", { bounceFolder: "/nowhere/at/all" }],
    ["cert and key", { cert: "only.pem" }],
  ])("a %s that cannot be used ends the start with its name", async (setting, options) => {
    const start = serve({
      port: 0,
      dataDir,
      webFolder: null,
      weatherContact: "desk@example.org",
      ...options,
    });
    await expect(start).rejects.toThrow(new RegExp(`^${setting}: expected`));
  });
});
