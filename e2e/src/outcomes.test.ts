import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { openDesk } from "./desk-screen.ts";
import type { RunningServer } from "./server.ts";

// Forecast and outcome: found under More, filled while it is looked at, a figure opened by keyboard; and what a hire used.

let server: RunningServer;
let desk: Page;
let errors: string[];

beforeAll(async () => {
  const opened = await openDesk();
  ({ server, desk, errors } = opened);
  return opened.close;
});

test("the page fills itself, and a rate opens to where it comes from", async () => {
  await desk.goto(`${server.url}/more`);
  await desk.getByRole("link", { name: "Forecast and outcome" }).click();
  await desk.getByRole("heading", { name: "What each vehicle uses, against its description" }).waitFor();
  // first impressions: others are compared while one looks
  await expect.poll(() => desk.getByText("This page fills itself").count(), { timeout: 120_000 }).toBe(0);
  await desk.getByText(/^Of [78] stores/).waitFor();
  expect(await axeViolations(desk)).toEqual([]);
  const rate = desk.getByRole("button", { name: /^Heron, Fuel: times the description/ });
  await rate.focus();
  await desk.keyboard.press("Enter");
  await desk.getByRole("dialog").getByText("calibration.rate").waitFor();
  await desk.keyboard.press("Escape");
  await desk.getByRole("button", { name: /All vehicles/ }).click();
  await desk.getByRole("option", { name: /^Heron/ }).click();
  await expect.poll(() => desk.getByRole("button", { name: /^Curlew, Fuel/ }).count()).toBe(0);
  await desk.setViewportSize({ width: 320, height: 700 });
  await expect.poll(() => desk.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  await desk.setViewportSize({ width: 1366, height: 768 });
});

test("what a hire used is written down on its part Back and set beside its forecast", async () => {
  const listed = await desk.request.get(`${server.url}/api/hires?stage=settled`);
  const { hires } = (await listed.json()) as {
    hires: { id: string; vehicle: { name: string } | null }[];
  };
  // one that drives on diesel
  const hire = hires.find(({ vehicle }) => vehicle !== null && vehicle.name !== "Avocet");
  await desk.goto(`${server.url}/hires/${hire?.id}/back`);
  const card = desk.getByRole("region", { name: "What was used" });
  await card.getByLabel("Fuel bought, all of it, L").fill("77");
  await card.getByRole("button", { name: "Keep" }).click();
  await card.getByText(/^Fuel: 77 L used/).waitFor();
  expect(await axeViolations(desk)).toEqual([]);
  expect(errors).toEqual([]);
});
