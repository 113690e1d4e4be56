import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations, watchErrors } from "./browser.ts";
import { civilIn, openPart, typeNumber } from "./desk-acts.ts";
import { ask, openDesk } from "./desk-screen.ts";
import type { RunningServer } from "./server.ts";

// The firm's own figures: kept, there after a reload, and never written over by the other desk.

let server: RunningServer;
let desk: Page;
let other: Page;
let errors: string[];
let others: string[];

beforeAll(async () => {
  const opened = await openDesk({ width: 1366, height: 900 });
  ({ server, desk, errors } = opened);
  other = await desk.context().newPage();
  others = watchErrors(other);
  return opened.close;
});

const both = (page: Page) =>
  page.getByRole("region", { name: "Somebody else kept another version meanwhile" });
const shown = (page: Page, label: string) => page.getByLabel(label).first().inputValue();
const openBoth = async (path: string, label: string) => {
  for (const page of [desk, other]) {
    await page.goto(`${server.url}${path}`);
    await page.getByLabel(label).first().waitFor();
  }
};

/** Presses keep, and waits until the server has answered. */
async function keep(page: Page, name: string, path: string, status = 200): Promise<void> {
  await Promise.all([
    page.waitForResponse((answer) => {
      const { pathname } = new URL(answer.url());
      return pathname === `/api${path}` && answer.request().method() === "PUT" && answer.status() === status;
    }),
    page.getByRole("button", { name }).click(),
  ]);
}

test("times of the depot are kept and there after a reload; two desks put theirs together", async () => {
  await openBoth("/depot/times", "A handover");
  expect(await axeViolations(desk)).toEqual([]);
  await typeNumber(desk, "A handover", 50);
  await typeNumber(desk, "Money", 96);
  await typeNumber(other, "Taking a vehicle back", 35);
  await typeNumber(other, "Money", 72);
  await keep(desk, "Keep these times", "/depot/times");
  await desk.reload();
  await desk.getByLabel("A handover").first().waitFor();
  expect([await shown(desk, "A handover"), await shown(desk, "Money")]).toEqual(["50", "96"]);
  await keep(other, "Keep these times", "/depot/times", 409);
  await both(other).waitFor();
  expect(await both(other).textContent()).toMatch(/Yours: 72.*Theirs: 96/);
  expect(await axeViolations(other)).toEqual([]);
  await both(other).getByRole("button", { name: "Put it together as chosen" }).click();
  await keep(other, "Keep these times", "/depot/times");
  // each has what only one changed; of what both changed the one that was chosen
  const { times } = await ask<{ times: Record<string, unknown> }>(desk, "GET", "/depot/times");
  expect(times).toMatchObject({ handOverMinutes: 50, takeBackMinutes: 35, leadHours: { money: 72 } });
});

test("the later fields of the rate card are kept, there after a reload, and not written over", async () => {
  await openBoth("/terms", "Distance that is let pass");
  await typeNumber(desk, "Distance that is let pass", 4);
  await typeNumber(desk, "A second person signs after", 6);
  await desk.getByRole("button", { name: "Add a charge on every hire" }).click();
  await desk.getByLabel("Name of the charge").last().fill("linen");
  const price = desk.locator(".span-row").filter({ hasText: "Name of the charge" }).last();
  await typeNumber(price, "Price", 12.5);
  // typed, not kept: a reload of the tab loses nothing
  await desk.reload();
  await desk.getByLabel("Name of the charge").last().waitFor();
  expect(await shown(desk, "Distance that is let pass")).toBe("4");
  await typeNumber(other, "Distance that is let pass", 7);
  await typeNumber(other, "Deposit back within", 9);
  await keep(desk, "Keep the new version", "/terms");
  await desk.reload();
  await desk.getByLabel("Name of the charge").last().waitFor();
  expect(await desk.getByLabel("Name of the charge").last().inputValue()).toBe("linen");
  expect([
    await shown(desk, "Distance that is let pass"),
    await shown(desk, "A second person signs after"),
  ]).toEqual(["4", "6"]);
  await keep(other, "Keep the new version", "/terms", 409);
  await both(other).waitFor();
  expect(await both(other).textContent()).toMatch(/Yours: 7.*Theirs: 4/);
  expect(await axeViolations(other)).toEqual([]);
  await both(other).getByRole("button", { name: "Put it together as chosen" }).click();
  await keep(other, "Keep the new version", "/terms");
  const { newest } = await ask<{ newest: { hire: { terms: Record<string, unknown> } } }>(
    desk,
    "GET",
    "/terms",
  );
  expect(newest.hire.terms).toMatchObject({
    allowance: { gracePercent: 7 },
    security: { releaseWorkingDays: 9 },
    secondSignatureAfterDays: 6,
  });
  expect(JSON.stringify(newest.hire.terms.compulsory)).toContain('"id":"linen","pence":1250');
});

test("days of messages, life of a link and km a day say what follows, are kept and not written over", async () => {
  await desk.goto(`${server.url}/more`);
  await desk.getByRole("link", { name: "Messages, links and distance" }).click();
  await openBoth("/depot/figures", "Pack, before the keys");
  expect(await axeViolations(desk)).toEqual([]);
  const link = desk.locator("section[aria-labelledby=link-title]");
  const before = await link.getByText(/Next hire, .*: until/).textContent();
  await typeNumber(desk, "It serves after the return", 30);
  await expect.poll(() => link.getByText(/Next hire, .*: until/).textContent()).not.toBe(before);
  await typeNumber(desk, "Pack, before the keys", 5);
  // out of order: named at its field, nothing is kept
  await typeNumber(desk, "Short message, before the keys", 6);
  await keep(desk, "Keep these figures", "/depot/figures", 400);
  await desk.getByText(/fewer days than the pack before the hire, 5/).waitFor();
  await typeNumber(desk, "Short message, before the keys", 2);
  await keep(desk, "Keep these figures", "/depot/figures");
  await desk.reload();
  await desk.getByLabel("Pack, before the keys").first().waitFor();
  expect([
    await shown(desk, "It serves after the return"),
    await shown(desk, "Short message, before the keys"),
  ]).toEqual(["30", "2"]);
  await typeNumber(other, "It serves after the return", 21);
  await keep(other, "Keep these figures", "/depot/figures", 409);
  await both(other).waitFor();
  expect(await both(other).textContent()).toMatch(/Yours: 21.*Theirs: 30/);
  await both(other).getByRole("button", { name: "Drop mine, take theirs" }).click();
  expect(await shown(other, "It serves after the return")).toBe("30");
});

test("who pays stands side by side where the other desk kept somebody else meanwhile", async () => {
  const day = (days: number) => civilIn(24 * days).slice(0, 10);
  const { hire } = await ask<{ hire: { id: string } }>(desk, "POST", "/hires", {
    customer: { name: "Tilda Twopayers", email: "tilda@example.org", telephone: "01632 960378" },
    party: { travellers: [{ id: "a", kind: "adult" }], dogs: 0, experience: "first" },
    from: `${day(80)}T14:00`,
    to: `${day(88)}T10:00`,
  });
  for (const page of [desk, other]) {
    await page.goto(`${server.url}/hires/${hire.id}`);
    await openPart(page, "Notes");
    await page.getByText("Somebody else pays").click();
  }
  const card = (page: Page) => page.locator("section[aria-labelledby=payer-title]");
  for (const [page, name] of [
    [desk, "First Invented Club"],
    [other, "Second Invented Club"],
  ] as const) {
    await card(page).getByLabel("Name or firm").fill(name);
    await card(page).getByLabel(/Mail/).fill("club@example.org");
  }
  const path = `/hires/${hire.id}/payer`;
  await keep(desk, "Keep the payer", path);
  await keep(other, "Keep the payer", path, 409);
  await both(other).waitFor();
  expect(await both(other).textContent()).toMatch(/kept another on .*Yours: Second.*Theirs: First/);
  await both(other).getByRole("button", { name: "All as I typed it" }).click();
  await keep(other, "Keep the payer", path);
  const { payer } = await ask<{ payer: { name: string } }>(desk, "GET", `/hires/${hire.id}/notes`);
  expect(payer.name).toBe("Second Invented Club");
  expect([...errors, ...others].filter((each) => !/40[09]/.test(each))).toEqual([]);
});
