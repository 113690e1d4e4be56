import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { makeBusyDay } from "./busy-day.ts";
import { DESK_SCREEN, openDesk } from "./desk-screen.ts";
import { type RunningServer, root } from "./server.ts";

// The fullest day that a depot has, on the screen that most desks have.

let server: RunningServer;
let desk: Page;
let errors: string[];
let day: string;

beforeAll(async () => {
  const opened = await openDesk();
  ({ server, desk, errors } = opened);
  return opened.close;
});
beforeAll(async () => {
  day = await makeBusyDay(desk, { out: 14, back: 12 });
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
  await expect.poll(() => rows.count()).toBe(answer.blockers.length);
  mkdirSync(join(root, "e2e", "out"), { recursive: true });
  await desk.screenshot({ path: join(root, "e2e", "out", "today-full.png") });
  expect(await desk.evaluate(() => window.scrollY)).toBe(0);
  for (let k = 0; k < answer.blockers.length; k++) {
    // reason and act, not only the line's upper edge
    for (const cell of await rows.nth(k).locator("> span").all()) {
      const box = await cell.boundingBox();
      expect(box?.y ?? -1).toBeGreaterThanOrEqual(0);
      expect((box?.y ?? 0) + (box?.height ?? 9999)).toBeLessThanOrEqual(DESK_SCREEN.height);
      expect((box?.x ?? 0) + (box?.width ?? 9999)).toBeLessThanOrEqual(DESK_SCREEN.width);
    }
  }
  expect(await axeViolations(desk)).toEqual([]);
  expect(errors).toEqual([]);
});
