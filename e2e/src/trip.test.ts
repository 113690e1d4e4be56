import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { openDesk } from "./desk-screen.ts";
import { makeHireWithTrip } from "./hire-with-trip.ts";
import type { RunningServer } from "./server.ts";

// The forecast explains itself: what a post can do, what moves the answer, where the weather comes from.

let server: RunningServer;
let desk: Page;
let errors: string[];

beforeAll(async () => {
  const opened = await openDesk({ width: 1366, height: 900 });
  ({ server, desk, errors } = opened);
  return opened.close;
});

/** Three cold nights: one off the post, then two on one of 6 A. */
const makeHire = () =>
  makeHireWithTrip(desk, {
    customer: { name: "Wilma Postlethwaite", email: "wilma@example.org", telephone: "01632 960321" },
    adults: 2,
    inDays: 80,
    postAmperes: 6,
  });

test("the trip says what its post can do, what moves the answer, and takes a forecast by hand", async () => {
  const id = await makeHire();
  await desk.goto(`${server.url}/hires/${id}/trip`);
  const posts = desk.locator("section[aria-labelledby=posts-title]");
  await posts.getByText("an ordinary kettle, up to 13").waitFor();
  expect(await posts.textContent()).toMatch(/ordinary kettle, up to 13.A: trips it/);
  expect(await posts.textContent()).toContain("Mains can kill");

  // the chart is worked out beside the page and drawn with its bars
  const why = desk.locator("section[aria-labelledby=why-title]");
  await why.locator(".swing-row [role=img]").first().waitFor();
  expect(await why.locator(".swing-row [role=img]").count()).toBeLessThanOrEqual(5);

  // by keys alone: a day that nobody may enter the wrong way round
  const weather = desk.locator("section[aria-labelledby=weather-title]");
  expect(await weather.textContent()).toContain("climate of its places");
  await weather.getByRole("button", { name: "Enter it by hand" }).focus();
  await desk.keyboard.press("Enter");
  const low = weather.getByLabel("Lowest, °C").first();
  const high = weather.getByLabel("Highest, °C").first();
  await low.focus();
  await desk.keyboard.type("-9");
  await desk.keyboard.press("Tab");
  await desk.keyboard.type("-12");
  await desk.keyboard.press("Tab");
  await weather.getByText("Not below the lowest").waitFor();
  expect(await weather.getByRole("button", { name: "Keep it and run" }).isDisabled()).toBe(true);
  await high.focus();
  await desk.keyboard.press("ControlOrMeta+A");
  await desk.keyboard.type("-2");
  await desk.keyboard.press("Tab");
  await weather.getByRole("button", { name: "Keep it and run" }).focus();
  await desk.keyboard.press("Enter");
  await weather.getByText("1 day by this forecast").waitFor();
  await desk.getByText("1 day by forecast (Entered at the desk)").waitFor({ state: "attached" });

  expect(await axeViolations(desk)).toEqual([]);
  await desk.setViewportSize({ width: 320, height: 700 });
  await expect.poll(() => desk.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  expect(errors).toEqual([]);
});

test("the plan stands apart from the trip as asked, states its objective and sets each stop", async () => {
  const id = await makeHire();
  await desk.setViewportSize({ width: 1366, height: 900 });
  await desk.goto(`${server.url}/hires/${id}/trip`);
  const last = desk.locator("section[aria-labelledby=last-title]");
  await last.getByText("the chance of getting there with nothing run out").waitFor();
  // the depot at the start has no chance to be reached, every stop and the return have
  expect(await last.locator(".road-stop").count()).toBe(
    (await last.locator(".road-stop-chance").count()) + 1,
  );

  const plan = desk.locator("section[aria-labelledby=plan-title]");
  await plan.getByRole("button", { name: "Search a plan" }).click();
  await plan.getByText("effort + cost × chance of trouble").waitFor();
  expect(await plan.textContent()).toMatch(/as asked £[\d.,]+, of it effort £[\d.,]+; with the plan £/);
  const cards = plan.locator(".plan-card");
  expect(await cards.first().textContent()).toMatch(/Leaving the depot.*Battery charged.*of fresh water/);
  expect(await cards.nth(1).textContent()).toContain("Heater: on gas");
  expect(await cards.last().textContent()).toMatch(/Heater: electric, [\d,]+.W, gas for the rest/);
  expect(await axeViolations(desk)).toEqual([]);
  expect(errors).toEqual([]);
});
