import { createHash } from "node:crypto";
import { DEMO_SIGN_INS } from "@setfair/demo";
import { type DepotRecord, isErased, type RecordsExport, verifyRecords } from "@setfair/records";
import { type BrowserContext, type Page, request } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openBrowser } from "./browser.ts";
import { readDevice } from "./device-store.ts";
import { type HeldLine, holdLine } from "./held-line.ts";
import { type RunningServer, startServer } from "./server.ts";
import { signWalk, walkRound } from "./yard-acts.ts";

// A real browser over TLS: the line cut at each step, the tab killed in the middle of a photograph, the server killed
// with -9 in the middle of an upload. Afterwards everything that a person kept is at the depot exactly once.

const TAB_KILLS = 5;
const SERVER_KILLS = 3;
/** of a photograph, before the server dies */
const SENT_BYTES = 20_000;

let server: RunningServer;
let line: HeldLine;
let browser: { context: BrowserContext; close(): Promise<void> };
let yard: Page;
let hireId = "";

beforeAll(async () => {
  server = await startServer({ tls: true });
  line = await holdLine(server.url);
  browser = await openBrowser({ width: 820, height: 1180 }, server.trust);
  yard = await browser.context.newPage();
});
afterAll(async () => {
  await browser?.close();
  line?.close();
  await server?.stop();
});

async function openWalk(): Promise<void> {
  await yard.goto(`${line.url}/yard`);
  await yard.getByRole("region", { name: "Going out" }).getByRole("link").first().click();
  await yard.locator(".yard-foot").waitFor();
}

/** A picture that no other is like: what stands on the page, with a number drawn over it. */
async function makePicture(n: number): Promise<Buffer> {
  const made = await yard.evaluate(async (seed) => {
    const canvas = document.createElement("canvas");
    canvas.width = 2400;
    canvas.height = 1800;
    const pen = canvas.getContext("2d");
    for (let k = 0; pen !== null && k < 4000; k++) {
      pen.fillStyle = `hsl(${(seed * 97 + k * 37) % 360} 70% ${20 + ((k * 13) % 60)}%)`;
      pen.fillRect((k * 71 + seed * 13) % 2400, (k * 131) % 1800, 90, 60);
    }
    return canvas.toDataURL("image/jpeg", 0.9).slice("data:image/jpeg;base64,".length);
  }, n);
  return Buffer.from(made, "base64");
}

/** Ends the tab's process at once, as when the battery dies, and opens another. */
async function killTab(): Promise<void> {
  const dead = yard;
  const session = await browser.context.newCDPSession(dead);
  const isDown = new Promise((resolve) => dead.once("crash", resolve));
  void session.send("Page.crash").catch(() => undefined);
  await isDown;
  yard = await browser.context.newPage();
  await dead.close();
}

test("the device is filled and works with no signal", async () => {
  const person = DEMO_SIGN_INS.find(({ role }) => role === "yard") ?? DEMO_SIGN_INS[0];
  await yard.goto(`${line.url}/yard`);
  await yard.getByLabel("Sign-in name").fill(person.login);
  await yard.getByLabel("Password").fill(person.password);
  await yard.getByRole("button", { name: "Sign in" }).click();
  const job = yard.getByRole("region", { name: "Going out" }).getByRole("link").first();
  await job.waitFor();
  hireId = /#\/walk\/(.+)\.out$/.exec(decodeURIComponent((await job.getAttribute("href")) ?? ""))?.[1] ?? "";
  expect(hireId).not.toBe("");
  await yard.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await yard.reload();
  await browser.context.setOffline(true);
  await openWalk();
});

test("a tab killed in the middle of a photograph has kept it whole with its record, or not at all", async () => {
  let taken = 0;
  for (let n = 0; n < TAB_KILLS; n++) {
    const buffer = await makePicture(n);
    const input = yard.locator(".yard-foot input[type=file]").first();
    await input.setInputFiles({ name: "camera.jpg", mimeType: "image/jpeg", buffer });
    // from before the picture is read to after it is kept
    await yard.waitForTimeout(n * 70);
    await killTab();
    await openWalk();
    const { records, photographs } = await readDevice(yard);
    const named = records.flatMap(({ sha256 }) => sha256 ?? []);
    expect([...named].sort()).toEqual([...photographs].sort());
    expect(new Set(named).size).toBe(named.length);
    expect(named.length - taken).toBeLessThanOrEqual(1);
    taken = named.length;
  }
});

test("the server killed with -9 in the middle of uploads ends with each photograph once", async () => {
  let cutOff = 0;
  yard.on("requestfailed", (request) => {
    if (request.method() === "PUT") cutOff++;
  });
  let held = line.holdUpload(SENT_BYTES);
  await browser.context.setOffline(false);
  for (let n = 0; n < SERVER_KILLS; n++) {
    await held;
    await server.killAndStartAgain();
    line.cut();
    if (n < SERVER_KILLS - 1) held = line.holdUpload(SENT_BYTES);
    // the device tries again by itself every 20 s, and at once when it hears of a signal
    await yard.evaluate(() => dispatchEvent(new Event("online")));
  }
  await yard.getByText("All sent").waitFor({ timeout: 60_000 });
  expect(cutOff).toBeGreaterThanOrEqual(SERVER_KILLS);
  const { photographs } = await readDevice(yard);
  expect(photographs.length).toBeGreaterThan(1);
});

test("a walk-round with the line cut and mended at each step, signed, is there exactly once", async () => {
  let isOffline = false;
  const toggle = async () => {
    isOffline = !isOffline;
    await browser.context.setOffline(isOffline);
  };
  await walkRound(yard, { marksOn: ["Nearside"], reloadAfter: 12, onCheck: toggle });
  await browser.context.setOffline(true);
  await yard.getByRole("button", { name: "Sign for the condition" }).click();
  await yard.getByRole("heading", { level: 1 }).waitFor();
  await signWalk(yard);
  await yard.getByText(/No signal · \d+ kept here, to send/).waitFor();
  await browser.context.setOffline(false);
  await yard.getByText("All sent").waitFor({ timeout: 60_000 });
  const device = await readDevice(yard);
  expect(device.records.filter(({ state }) => state !== "sent")).toEqual([]);
  await expectOnce(device);
});

/** The records of the hire as the desk is given them; the yard is not. */
async function exported(options: { readonly ignoreHTTPSErrors: boolean }): Promise<RecordsExport> {
  const { login, password } = DEMO_SIGN_INS.find(({ role }) => role === "desk") ?? DEMO_SIGN_INS[0];
  const desk = await request.newContext(options);
  await desk.post(`${server.url}/api/session`, { data: { login, password } });
  const answer = await desk.get(`${server.url}/api/hires/${hireId}/records`);
  const all = (await answer.json()) as RecordsExport;
  await desk.dispose();
  return all;
}

async function expectOnce(device: Awaited<ReturnType<typeof readDevice>>): Promise<void> {
  const options = { ignoreHTTPSErrors: true };
  const all = await exported(options);
  expect(verifyRecords(all).ok).toBe(true);
  const own = all.records.filter((record): record is DepotRecord => !isErased(record));
  const walk = own.filter(({ chain }) => chain === `${hireId}.out`);
  expect(walk.map(({ id }) => id).sort()).toEqual(device.records.map(({ id }) => id).sort());
  for (const kind of ["reading", "count"]) {
    const abouts = walk.filter((record) => record.kind === kind).map(({ content }) => content.checkId);
    expect(abouts.length, kind).toBeGreaterThan(0);
    expect(new Set(abouts).size, kind).toBe(abouts.length);
  }
  expect(walk.filter(({ kind }) => kind === "mark")).toHaveLength(1);
  expect(walk.filter(({ kind }) => kind === "signature")).toHaveLength(2);
  expect(device.photographs.length).toBeGreaterThan(2);
  for (const sha256 of device.photographs) {
    const kept = await yard.request.get(`${server.url}/api/photos/${sha256}?size=original`, options);
    expect(
      createHash("sha256")
        .update(await kept.body())
        .digest("hex"),
    ).toBe(sha256);
    expect(
      walk.filter(({ kind, content }) => kind === "photograph" && content.sha256 === sha256),
    ).toHaveLength(1);
  }
}
