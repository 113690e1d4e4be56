import { createHash } from "node:crypto";
import { DEMO_SIGN_INS } from "@setfair/demo";
import type { NewRecord } from "@setfair/records";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { axeViolations, openBrowser, watchErrors } from "./browser.ts";
import { civilIn } from "./desk-acts.ts";
import { type RunningServer, startServer } from "./server.ts";
import { drawPicture, makeTablet } from "./tablet-records.ts";

// The settlement on the hirer's phone: shown line by line, disputed with no signal, answered by the desk.

const PART = "awning.cassette";

let server: RunningServer;
let browser: { context: BrowserContext; close(): Promise<void> };
let phone: Page;
let errors: string[];
let cookie = "";
let id = "";

/** The same doors as the desk's own page. */
async function ask<T>(method: string, path: string, body?: unknown): Promise<T> {
  const answer = await fetch(`${server.url}/api${path}`, {
    method,
    headers: { "content-type": "application/json", origin: server.url, cookie },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
  cookie ||= answer.headers
    .getSetCookie()
    .map((one) => one.split(";")[0])
    .join("; ");
  return (await answer.json()) as T;
}

async function photograph(background: string): Promise<string> {
  const bytes = await drawPicture(phone, background);
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  const answer = await fetch(`${server.url}/api/photos/${sha256}?hire=${id}`, {
    method: "PUT",
    headers: { "content-type": "image/jpeg", origin: server.url, cookie },
    body: new Uint8Array(bytes),
  });
  if (!answer.ok) throw new Error(await answer.text());
  return sha256;
}

type Entry = readonly [kind: NewRecord["kind"], content: NewRecord["content"]];

/** What a tablet kept of one walk-round. */
async function keep(vehicleId: string, direction: "out" | "back", entries: readonly Entry[]): Promise<void> {
  const refs = { hireId: id, vehicleId };
  const deviceId = `tablet-${direction}`;
  const { made, add } = makeTablet({ deviceId, chain: `${id}.test.${direction}`, direction, refs });
  for (const [kind, content] of entries) add(kind, content);
  await ask("POST", "/records", { records: made });
}

/** A hire on the road comes back with a dented awning, which the desk puts down to the hirer and settles. */
async function settledHire(): Promise<string> {
  const { hires } = await ask<{ hires: { id: string; vehicle: { id: string } }[] }>(
    "GET",
    "/hires?stage=onHire",
  );
  const hire = hires.find(({ vehicle }) => vehicle.id === "oc6") ?? hires[0];
  if (hire === undefined) throw new Error("the invented firm has nothing on the road");
  id = hire.id;
  const place = { about: PART, part: PART, view: "nearside", xShare: 0.5, yShare: 0.2 };
  await keep(hire.vehicle.id, "out", [["photograph", { ...place, sha256: await photograph("#7a9988") }]]);
  await ask("POST", `/hires/${id}/return`, { at: civilIn(0) });
  const marked = { markKind: "dent", sizeMm: 80, photographs: [await photograph("#aa7755")] };
  await keep(hire.vehicle.id, "back", [["mark", { ...place, ...marked }]]);
  const { differences } = await ask<{ differences: { id: string; kind: string }[] }>(
    "GET",
    `/hires/${id}/differences`,
  );
  const mark = differences.find(({ kind }) => kind === "mark");
  const classes = [{ id: mark?.id, class: "hirer", reason: "Whole in the photograph of the departure" }];
  await ask("PUT", `/hires/${id}/classes`, { classes });
  await ask("POST", `/hires/${id}/settlement/costs`, {
    differenceId: mark?.id,
    kind: "estimate",
    partsPence: 20_000,
    labourPence: 6000,
    reference: "Invented workshop 12",
  });
  await ask("POST", `/hires/${id}/settlement`, {});
  return (await ask<{ url: string }>("POST", `/hires/${id}/hirer-link`, {})).url;
}

beforeAll(async () => {
  server = await startServer();
  await ask("POST", "/session", { login: DEMO_SIGN_INS[0].login, password: DEMO_SIGN_INS[0].password });
  browser = await openBrowser({ width: 360, height: 740 });
  phone = await browser.context.newPage();
  const link = new URL(await settledHire()).pathname;
  errors = watchErrors(phone);
  await phone.goto(server.url + link);
  await phone.getByText("It is kept on this phone").waitFor();
  await phone.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
});

afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const line = () => phone.locator(".statement-line", { hasText: "Damage:" });

/** Free of faults that axe can see, nothing wider than the screen, nothing refused. */
async function expectCleanPage(): Promise<void> {
  expect(await axeViolations(phone)).toEqual([]);
  const wider = await phone.evaluate(() =>
    [document.documentElement, document.querySelector("main")].map((each) =>
      each === null ? 0 : each.scrollWidth - each.clientWidth,
    ),
  );
  expect(wider).toEqual([0, 0]);
  expect(errors.filter((text) => !/ERR_INTERNET_DISCONNECTED/.test(text))).toEqual([]);
}

test("each line has its sum, how it comes about, and how the place went out and came back", async () => {
  await phone.getByRole("link", { name: "Look at it line by line" }).click();
  await line().waitFor();
  const text = await line().textContent();
  expect(text).toMatch(/Charged: £/);
  expect(text).toMatch(/Parts, by the estimate: £200/);
  expect(text).toMatch(/Labour, by the estimate: £60/);
  for (const side of ["As it went out", "As it came back"]) {
    const shot = line().getByRole("region", { name: side }).locator("img");
    await expect
      .poll(() => shot.evaluate((img) => (img as HTMLImageElement).naturalWidth))
      .toBeGreaterThan(0);
  }
  await expectCleanPage();
  await phone.setViewportSize({ width: 320, height: 640 });
  await expectCleanPage();
});

test("a line is disputed with the keys alone and no signal, and the answer outlives a reload", async () => {
  await browser.context.setOffline(true);
  await line()
    .getByRole("button", { name: /^Dispute/ })
    .focus();
  await phone.keyboard.press("Enter");
  await line().getByLabel("Why? In your words").focus();
  await phone.keyboard.press("Tab");
  expect(await phone.evaluate(() => document.activeElement?.getAttribute("type"))).toBe("file");
  await line().getByRole("button", { name: "Send" }).focus();
  await phone.keyboard.press("Enter");
  await line().getByText("Write why, in a few words.").waitFor();
  await line().getByLabel("Why? In your words").focus();
  await phone.keyboard.type("It was dented when we took it.");
  const file = { name: "ours.jpg", mimeType: "image/jpeg", buffer: await drawPicture(phone, "#556677") };
  await line().locator("input[type=file]").setInputFiles(file);
  await line().getByRole("img", { name: "Your photograph 1" }).waitFor();
  await expectCleanPage();
  await line().getByRole("button", { name: "Send" }).focus();
  await phone.keyboard.press("Enter");
  await line().getByText("kept on this phone").waitFor();
  await phone.reload();
  await line().getByText("kept on this phone").waitFor();
  expect(await line().textContent()).toContain("You dispute this line.");
});

test("it goes to the desk once when there is signal, and the desk's answer and promised day are shown", async () => {
  await browser.context.setOffline(false);
  await expect.poll(() => line().getByText("goes when there is signal").count(), { timeout: 60_000 }).toBe(0);
  const { settlement } = await ask<{
    settlement: { entries: { kind: string; about: string; document: { photographs?: string[] } }[] };
  }>("GET", `/hires/${id}`);
  const disputes = settlement.entries.filter(({ kind }) => kind === "dispute");
  expect(disputes).toHaveLength(1);
  expect(disputes[0]?.document.photographs).toHaveLength(1);
  const lineId = disputes[0]?.about;
  await ask("POST", `/hires/${id}/settlement/replies`, { lineId, answer: "reply", text: "We look again." });
  await ask("POST", `/hires/${id}/settlement/hold`, {
    promisedOn: civilIn(120).slice(0, 10),
    reason: "the workshop looks at it",
  });
  await phone.reload();
  await line().getByText("We look again.").waitFor();
  await phone.getByText(/promised for/).waitFor();
  await expectCleanPage();
});

test("a phone that can keep nothing shows the guide, and says what that means with no signal", async () => {
  const { url } = await ask<{ url: string }>("POST", `/hires/${id}/hirer-link`, {});
  const shut = await browser.context.newPage();
  await shut.addInitScript(() => Object.defineProperty(globalThis, "indexedDB", { value: undefined }));
  await shut.goto(server.url + new URL(url).pathname);
  const notice = shut.getByRole("status", { name: "This phone could not keep the guide" });
  await notice.waitFor();
  expect(await notice.textContent()).toMatch(
    /With no signal you would have nothing of it\. Write down now: 01632/,
  );
  expect(await shut.getByText("It is kept on this phone").count()).toBe(0);
  expect(await axeViolations(shut)).toEqual([]);
  await shut.getByRole("link", { name: "Look at it line by line" }).click();
  await shut
    .locator(".statement-line")
    .first()
    .getByRole("button", { name: /^Accept/ })
    .click();
  await shut.getByText("This phone could not keep it").waitFor();
  await shut.close();
});
