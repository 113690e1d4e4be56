import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { openDesk } from "./desk-screen.ts";
import type { RunningServer } from "./server.ts";

// What lost things are worth and what repairs cost: changed with the keyboard alone, and exchanged as files.

let server: RunningServer;
let desk: Page;
let errors: string[];

beforeAll(async () => {
  const opened = await openDesk({ width: 1366, height: 900 });
  ({ server, desk, errors } = opened);
  return opened.close;
});

const line = (name: string) =>
  desk.locator("section[aria-labelledby=kit-title] li").filter({ hasText: name });

async function openPrices(): Promise<void> {
  await desk.goto(`${server.url}/more`);
  await desk.getByRole("link", { name: "Lost things and repairs" }).click();
  await desk.getByRole("heading", { level: 1, name: "Lost things and repairs" }).waitFor();
}

test("a value is changed, taken off and kept from today by keyboard, and says who did it and what it was", async () => {
  await openPrices();
  expect(await axeViolations(desk)).toEqual([]);
  await line("Hook-up leads").getByRole("button").focus();
  await desk.keyboard.press("Enter");
  const dialog = desk.getByRole("dialog");
  const worth = dialog.getByLabel("Worth new");
  await worth.focus();
  await desk.keyboard.press("ControlOrMeta+a");
  await desk.keyboard.type("71.50");
  await desk.keyboard.press("Enter");
  await dialog.waitFor({ state: "detached" });
  await expect.poll(() => line("Hook-up leads").textContent()).toMatch(/changed, not kept yet/);
  // what was typed outlives a reload of the tab
  await desk.reload();
  await expect.poll(() => line("Hook-up leads").textContent()).toMatch(/£71\.50/);
  await line("Warning triangles").getByRole("button").focus();
  await desk.keyboard.press("Enter");
  await dialog.getByRole("button", { name: "Take off the list" }).focus();
  await desk.keyboard.press("Enter");
  await expect.poll(() => desk.getByText("2 lines are changed and not kept yet.").count()).toBe(2);
  await desk.getByRole("button", { name: "Keep these prices" }).focus();
  await desk.keyboard.press("Enter");
  await desk.getByText("Nothing is changed.").waitFor();
  await expect.poll(() => line("Hook-up leads").textContent()).toMatch(/since .*, R\. Okafor/);
  const history = desk.locator("section[aria-labelledby=prices-history-title]");
  await history.getByText("by R. Okafor").click();
  await history.getByText("Hook-up leads: £62 → £71.50").waitFor();
  await history.getByText(/Warning triangles: £11 → no price entered/).waitFor();
  expect(await axeViolations(desk)).toEqual([]);
});

test("a repair that lacks something names the field, and one that is there already is not entered twice", async () => {
  await openPrices();
  await desk.getByRole("button", { name: "Add a repair of Awning" }).click();
  const dialog = desk.getByRole("dialog");
  await dialog.getByRole("button", { name: "Put it on the list" }).click();
  expect(await dialog.getByText("Needed").count()).toBe(2);
  expect(await axeViolations(desk)).toEqual([]);
  await dialog.getByRole("button", { name: /Damage/ }).click();
  await desk.getByRole("option", { name: "Tear" }).click();
  await dialog.getByLabel("Price").fill("150");
  await dialog.getByLabel("Price").press("Tab");
  await dialog.getByRole("button", { name: "Put it on the list" }).click();
  await dialog.getByText("This damage and size has a price already").waitFor();
  await dialog.getByLabel("Up to").fill("20");
  await dialog.getByLabel("Up to").press("Tab");
  await dialog.getByRole("button", { name: "Put it on the list" }).click();
  await dialog.waitFor({ state: "detached" });
  await desk.getByText("Tear up to 20 mm").waitFor();
  await desk.getByRole("button", { name: "Drop my changes" }).click();
});

test("a saved list comes back as it is; of a file with a wrong row the row is named and the rest is taken", async () => {
  await openPrices();
  const [download] = await Promise.all([
    desk.waitForEvent("download"),
    desk.getByRole("link", { name: "Save what things are worth (CSV)" }).click(),
  ]);
  const saved = readFileSync(await download.path(), "utf8");
  expect(saved).toContain("hookUp.leads,Hook-up leads,71.50,GBP,6,10");
  const rows = saved.split("\r\n");
  const file = [rows[0], "Hook-up leads,,75,GBP,6,10", "awning.crank,,38 pounds,GBP,8,10"].join("\r\n");
  const [chooser] = await Promise.all([
    desk.waitForEvent("filechooser"),
    desk.getByRole("button", { name: "Choose a file" }).click(),
  ]);
  await chooser.setFiles({ name: "prices.csv", mimeType: "text/csv", buffer: Buffer.from(file) });
  const refused = desk.getByRole("row").filter({ hasText: "38 pounds" });
  await refused.getByText("newValue").waitFor();
  expect(await refused.textContent()).toMatch(/^3newValue/);
  expect(await axeViolations(desk)).toEqual([]);
  await desk.getByRole("button", { name: "Put 1 line on the list" }).click();
  await expect.poll(() => line("Hook-up leads").textContent()).toMatch(/£75/);
  expect(errors.filter((text) => !/401/.test(text))).toEqual([]);
});
