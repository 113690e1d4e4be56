import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { openPart } from "./desk-acts.ts";
import { openDesk } from "./desk-screen.ts";
import type { RunningServer } from "./server.ts";

// A load that is over, and the change that makes it legal.

let server: RunningServer;
let desk: Page;

beforeAll(async () => {
  const opened = await openDesk();
  ({ server, desk } = opened);
  return opened.close;
});

const part = () => desk.locator(".hire-columns > div.stack");

async function addThing(name: string, massKg: number, behindFrontAxleM: number): Promise<void> {
  await desk.getByRole("button", { name: "Add a thing" }).click();
  await part().getByRole("textbox", { name: "Thing", exact: true }).last().fill(name);
  await part().getByRole("textbox", { name: /^Mass/ }).last().fill(String(massKg));
  await part()
    .getByRole("textbox", { name: /^Behind the front axle/ })
    .last()
    .fill(String(behindFrontAxleM));
  await part()
    .getByRole("textbox", { name: /^Behind the front axle/ })
    .last()
    .press("Tab");
}

test("an overload cannot go, and nobody may let it pass", async () => {
  await desk.goto(`${server.url}/hires`);
  await desk
    .getByRole("link", { name: /Ada Okoye/ })
    .first()
    .click();
  await openPart(desk, "Load");
  await part()
    .getByRole("textbox", { name: /^Water on the road/ })
    .fill("95");
  await desk.keyboard.press("Tab");
  await addThing("Tiles for a friend", 450, 3);
  await desk.getByRole("button", { name: "Keep the load and weigh it" }).click();
  await part().getByRole("heading", { name: "Over its masses: cannot go like this" }).waitFor();
  await desk.locator(".dial-says", { hasText: "Cannot go" }).waitFor();
  expect(await axeViolations(desk)).toEqual([]);
  await openPart(desk, "Now");
  const masses = part().locator("li, section", { hasText: "Masses and axles" }).last();
  await masses.waitFor();
  expect(await masses.getByRole("button", { name: "Let it pass" }).count()).toBe(0);
});

test("the least change that comes off makes it legal, and one tap does it", async () => {
  await openPart(desk, "Load");
  await part().getByRole("heading", { name: "What would help" }).waitFor();
  await part()
    .getByText(/Leave Tiles for a friend/)
    .waitFor();
  await desk.getByRole("button", { name: "Do it so" }).click();
  await part()
    .getByRole("heading", { name: /^Within its masses/ })
    .waitFor();
  await expect
    .poll(() => desk.locator(".dial-says", { hasText: "Cannot go" }).count(), { timeout: 20_000 })
    .toBe(0);
});
