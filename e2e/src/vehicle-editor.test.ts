import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { typeDate, typeNumber } from "./desk-acts.ts";
import { openDesk } from "./desk-screen.ts";
import { type RunningServer, root } from "./server.ts";

// A fleet manager opens a description with a gap and a fault, mends both, keeps it, and weighs the vehicle.

let server: RunningServer;
let page: Page;
let errors: string[];

beforeAll(async () => {
  const opened = await openDesk();
  ({ server, desk: page, errors } = opened);
  return opened.close;
});

/** Free of faults that axe can see, and of anything that the security policy refused. */
async function expectCleanPage(): Promise<void> {
  expect(await axeViolations(page)).toEqual([]);
  expect(errors).toEqual([]);
}

/** The example vehicle under another number, its mass left out and its water tank impossible. */
function faulty(): string {
  const vehicle = JSON.parse(readFileSync(join(root, "examples", "pv2.json"), "utf8"));
  const { miroKg: _, ...masses } = vehicle.masses;
  const systems = vehicle.systems.map((system: { kind: string; spec: object }) =>
    system.kind === "freshWater" ? { ...system, spec: { ...system.spec, litres: -5 } } : system,
  );
  return JSON.stringify({ ...vehicle, name: "Dunlin", registration: "SF26 DUN", masses, systems });
}

test("a file with a gap and a fault opens whole, and each is told at its field", async () => {
  await page.goto(`${server.url}/fleet/new`);
  await page.getByRole("button", { name: "low-profile coachbuilt" }).waitFor();
  await expectCleanPage();
  await page.locator("input[type=file]").setInputFiles({
    name: "dunlin.json",
    mimeType: "application/json",
    buffer: Buffer.from(faulty()),
  });
  await page.getByLabel("Registration number").waitFor();
  expect(await page.getByLabel("Registration number").inputValue()).toBe("SF26 DUN");
  await page.getByRole("button", { name: "5 Check and keep" }).click();
  await page.getByRole("heading", { name: "2 things are still open" }).waitFor();
  await expectCleanPage();
  await page.reload();
  await page.getByRole("button", { name: "Mass in running order" }).click();
  await typeNumber(page, "Mass in running order, kg", 2930);
  await page.getByRole("button", { name: "5 Check and keep" }).click();
  await page.getByRole("button", { name: /fresh water: Holds/ }).click();
  // the field is open and has the focus
  await page.waitForFunction(() => document.activeElement?.closest("[data-path$='spec.litres']") !== null);
  await page.keyboard.press("Control+A");
  await page.keyboard.type("95");
  await page.keyboard.press("Tab");
});

test("the vehicle is kept, and a weighbridge ticket replaces its stated masses", async () => {
  await page.getByRole("button", { name: "5 Check and keep" }).click();
  await page.getByRole("heading", { name: "Nothing is missing" }).waitFor();
  await page.getByRole("button", { name: "Keep this vehicle" }).click();
  await page.getByRole("heading", { name: "Dunlin SF26 DUN" }).waitFor();
  await expectCleanPage();
  await page.getByRole("button", { name: "Add a ticket" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Number of the ticket").fill("4711");
  await typeDate(dialog, "Weighed on", new Date().toISOString().slice(0, 10));
  const typed = { "Front axle": 1580, "Rear axle": 1540, Fuel: 90, "Fresh water": 0, "Gas bottles": 1 };
  for (const [label, value] of Object.entries(typed)) await typeNumber(dialog, new RegExp(label), value);
  await typeNumber(dialog, /People in front/, 75);
  await dialog.getByRole("button", { name: "Keep the ticket" }).click();
  await page.getByText(/Masses from ticket 4711/).waitFor();
  await page.getByRole("link", { name: "Versions" }).click();
  await page.getByText("The first description").waitFor();
  await expectCleanPage();
});
