import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { openDesk } from "./desk-screen.ts";
import type { RunningServer } from "./server.ts";

// The diary by keyboard: days taken together, an enquiry from them, a vehicle off the road and back.

let server: RunningServer;
let desk: Page;
let errors: string[];

beforeAll(async () => {
  const opened = await openDesk();
  ({ server, desk, errors } = opened);
  return opened.close;
});

const cursor = () => desk.locator('[role="gridcell"][tabindex="0"]');
const press = async (key: string, times = 1) => {
  for (let n = 0; n < times; n++) await desk.keyboard.press(key);
};

test("days are taken by keyboard, and an enquiry begins with them and the vehicle", async () => {
  await desk.goto(`${server.url}/diary`);
  await cursor().waitFor();
  await cursor().focus();
  await press("PageDown", 10);
  await expect.poll(() => cursor().getAttribute("aria-label")).toMatch(/free/);
  await press("Shift+ArrowRight", 3);
  await desk.getByRole("button", { name: "Enquiry for these days" }).waitFor();
  await expect.poll(() => desk.locator('[role="gridcell"][aria-selected="true"]').count()).toBe(4);
  expect(await axeViolations(desk)).toEqual([]);
  await desk.getByRole("button", { name: "Enquiry for these days" }).click();
  await desk.getByRole("heading", { name: /Can we take/ }).waitFor();
  await desk
    .getByText(/^3 nights/)
    .first()
    .waitFor();
});

test("a vehicle goes off the road and comes back", async () => {
  await desk.goto(`${server.url}/diary`);
  await cursor().waitFor();
  await cursor().focus();
  await desk.getByRole("button", { name: "Take it off the road" }).click();
  await desk.getByRole("dialog").getByRole("button", { name: "Take it off the road" }).click();
  await expect.poll(() => cursor().getAttribute("aria-label")).toMatch(/MOT test/);
  await desk.getByRole("button", { name: "Back on the road" }).click();
  await expect.poll(() => cursor().getAttribute("aria-label")).toMatch(/free/);
  expect(errors).toEqual([]);
});
