import { DEMO_SIGN_INS } from "@setfair/demo";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { axeViolations, openBrowser } from "./browser.ts";
import { readDevice } from "./device-store.ts";
import { lowContrast, sidewaysPx, smallTargets } from "./page-checks.ts";
import { type RunningServer, startServer } from "./server.ts";
import { signWalk, walkRound } from "./yard-acts.ts";

// The yard on its smallest screen, in bright sun, with gloves, and with keys only.

const AAA = 7;
const TARGET_PX = 60;

let server: RunningServer;
let browser: { context: BrowserContext; close(): Promise<void> };
let yard: Page;

beforeAll(async () => {
  server = await startServer({ tls: true });
  browser = await openBrowser({ width: 320, height: 640 }, [
    ...server.trust,
    "--use-fake-device-for-media-stream",
    "--use-fake-ui-for-media-stream",
  ]);
  yard = await browser.context.newPage();
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

/** What must hold on every screen of the yard. */
async function expectUsable(name: string): Promise<void> {
  expect.soft(await axeViolations(yard), name).toEqual([]);
  expect.soft(await lowContrast(yard, AAA), name).toEqual([]);
  expect.soft(await smallTargets(yard, TARGET_PX), name).toEqual([]);
  expect.soft(await sidewaysPx(yard), name).toBe(0);
}

/** Goes on with Tab until what has the focus says this, as a person without a pointer does. */
async function tabTo(wanted: RegExp): Promise<void> {
  for (let k = 0; k < 120; k++) {
    await yard.keyboard.press("Tab");
    const said = await yard.evaluate(() => {
      const at = document.activeElement;
      const label = at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : null;
      return at?.getAttribute("aria-label") ?? label ?? at?.textContent ?? "";
    });
    if (wanted.test(said)) return;
  }
  throw new Error(`no way to ${wanted} with Tab`);
}

async function byKeys(wanted: RegExp): Promise<void> {
  await tabTo(wanted);
  await yard.keyboard.press("Enter");
  // a second touch right after another is taken for rain
  await yard.waitForTimeout(400);
}

test("signing in and the list of the day", async () => {
  await yard.goto(`${server.url}/yard`);
  await yard.getByLabel("Sign-in name").waitFor();
  await expectUsable("sign-in");
  const person = DEMO_SIGN_INS.find(({ role }) => role === "yard") ?? DEMO_SIGN_INS[0];
  await yard.getByLabel("Sign-in name").fill(person.login);
  await yard.getByLabel("Password").fill(person.password);
  await yard.getByRole("button", { name: "Sign in" }).click();
  await yard.getByRole("region", { name: "Going out" }).getByRole("link").first().waitFor();
  await expectUsable("list");
  await yard.goto(`${server.url}/yard#/outbox`);
  await yard.getByRole("heading", { level: 1 }).waitFor();
  await expectUsable("outbox");
});

test("a side photographed by our viewfinder over its outline, a mark put, read and kept with keys only", async () => {
  await yard.goto(`${server.url}/yard`);
  await yard.getByRole("region", { name: "Going out" }).getByRole("link").first().focus();
  await yard.keyboard.press("Enter");
  await yard.locator(".yard-foot").waitFor();
  await expectUsable("side");
  await byKeys(/^Photograph$/);
  await yard.locator(".viewfinder svg.outline").waitFor();
  await yard.getByRole("button", { name: "Take it" }).and(yard.locator(":focus")).waitFor();
  await expectUsable("viewfinder");
  // the key that a device's shutter or volume button gives
  await yard.evaluate(() => dispatchEvent(new KeyboardEvent("keydown", { key: "AudioVolumeUp" })));
  await yard.locator(".viewfinder").waitFor({ state: "detached" });
  await expect.poll(async () => (await readDevice(yard)).photographs.length).toBe(1);
  const part = yard.locator(".drawing [data-part]").first();
  await part.focus();
  await yard.keyboard.press("Enter");
  await yard.getByRole("button", { name: /^(Mark|New mark)$/ }).waitFor();
  await expectUsable("part");
  await byKeys(/^(Mark|New mark)$/);
  await byKeys(/^Scratch$/);
  await byKeys(/right/i);
  await expectUsable("mark");
  await byKeys(/^Photograph$/);
  await yard.getByRole("button", { name: "Take it" }).and(yard.locator(":focus")).waitFor();
  await yard.keyboard.press("Enter");
  await yard.locator(".viewfinder").waitFor({ state: "detached" });
  await byKeys(/^Keep the mark$/);
  await yard.locator(".drawing .mark-new").first().waitFor();
});

test("one touch in the viewfinder takes the picture and answers the check that is open", async () => {
  const needs = yard.locator(".check-rows .yard-row", { hasText: "Photograph" });
  // the photograph of the front did for all there
  await yard.getByRole("button", { name: /^Side looked at/ }).click();
  await needs.first().waitFor();
  const before = await needs.count();
  const was = await readDevice(yard);
  await needs.first().click();
  await yard.locator(".photo-button button").click();
  const shutter = yard.getByRole("button", { name: "Take it: as it should be" });
  await shutter.waitFor();
  await expect.poll(() => shutter.isEnabled()).toBe(true);
  await expectUsable("viewfinder of a check");
  await shutter.click();
  await yard.locator(".viewfinder").waitFor({ state: "detached" });
  const now = await readDevice(yard);
  expect(now.photographs).toHaveLength(was.photographs.length + 1);
  expect(
    now.records
      .slice(was.records.length)
      .map(({ kind }) => kind)
      .sort(),
  ).toEqual(["look", "photograph"]);
  await yard
    .getByRole("button", { name: "Close" })
    .click()
    .catch(() => undefined);
  await expect.poll(() => needs.count()).toBeLessThan(before);
});

test("the rest of the walk-round, its summary, the signatures and the rain lock", async () => {
  let seen = 0;
  await walkRound(yard, {
    // the first reading and the first count on the way are looked at
    onCheck: async () => {
      if (seen >= 2 || (await yard.locator(".number-pad").count()) === 0) return;
      seen += 1;
      await expectUsable(`reading ${seen}`);
    },
  });
  expect(seen).toBeGreaterThan(0);
  await expectUsable("summary");
  await yard.getByRole("button", { name: /Lock|lock/ }).click();
  await yard.locator(".rain-lock").waitFor();
  await expectUsable("rain lock");
  const hold = yard.getByRole("button", { name: /Hold/ });
  await hold.focus();
  await yard.keyboard.down("Enter");
  await yard.locator(".rain-lock").waitFor({ state: "detached" });
  await yard.keyboard.up("Enter");
  await yard.getByRole("button", { name: "Sign for the condition" }).click();
  await yard.getByRole("heading", { level: 1 }).waitFor();
  await expectUsable("signing");
  await signWalk(yard);
  await yard.getByText("All sent").waitFor({ timeout: 60_000 });
});
