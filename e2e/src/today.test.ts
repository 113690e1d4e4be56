import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { DEMO_SIGN_INS } from "@setfair/demo";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { axeViolations, openBrowser, watchErrors } from "./browser.ts";
import { makeBusyDay } from "./busy-day.ts";
import { signIn } from "./desk-acts.ts";
import { type RunningServer, root, startServer } from "./server.ts";

// The fullest day that a depot has, on the screen that most desks have.

const SCREEN = { width: 1366, height: 768 };

let server: RunningServer;
let browser: { context: BrowserContext; close(): Promise<void> };
let desk: Page;
let errors: string[];
let day: string;

beforeAll(async () => {
  server = await startServer();
  browser = await openBrowser(SCREEN);
  desk = await browser.context.newPage();
  errors = watchErrors(desk);
  const manager = DEMO_SIGN_INS[0];
  await signIn(desk, server.url, manager.login, manager.password);
  errors.length = 0;
  day = await makeBusyDay(desk, { out: 14, back: 12 });
});

afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

/** Steps the screen to the busy day with the keyboard. */
async function openDay(): Promise<void> {
  await desk.goto(server.url);
  const days = Math.round((Date.parse(day) - Date.parse(new Date().toISOString().slice(0, 10))) / 86_400_000);
  await desk.getByRole("heading", { name: /^Out · / }).waitFor();
  for (let k = 0; k < days; k++) await desk.keyboard.press("ArrowRight");
  await desk.getByRole("heading", { name: /^Out · (1[4-9]|2\d)/ }).waitFor();
}

test("with 14 out and 12 back every blocker is seen at 1366 × 768 without scrolling", async () => {
  await openDay();
  await desk.getByRole("heading", { name: /^Back · (1[2-9]|2\d)/ }).waitFor();
  const rows = desk.locator(".hold-line");
  const answer = await desk.evaluate(
    async (date) => (await fetch(`/api/today?date=${date}`)).json() as Promise<{ blockers: unknown[] }>,
    day,
  );
  expect(answer.blockers.length).toBeGreaterThanOrEqual(14);
  expect(await rows.count()).toBe(answer.blockers.length);
  mkdirSync(join(root, "e2e", "out"), { recursive: true });
  await desk.screenshot({ path: join(root, "e2e", "out", "today-full.png") });
  expect(await desk.evaluate(() => window.scrollY)).toBe(0);
  for (let k = 0; k < answer.blockers.length; k++) {
    // reason and act, not only the line's upper edge
    for (const cell of await rows.nth(k).locator("> span").all()) {
      const box = await cell.boundingBox();
      expect(box?.y ?? -1).toBeGreaterThanOrEqual(0);
      expect((box?.y ?? 0) + (box?.height ?? 9999)).toBeLessThanOrEqual(SCREEN.height);
      expect((box?.x ?? 0) + (box?.width ?? 9999)).toBeLessThanOrEqual(SCREEN.width);
    }
  }
  expect(await axeViolations(desk)).toEqual([]);
  expect(errors).toEqual([]);
});
