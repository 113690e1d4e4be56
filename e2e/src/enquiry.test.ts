import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { civilIn, typeDate } from "./desk-acts.ts";
import { openDesk } from "./desk-screen.ts";
import { coveredFocus } from "./page-checks.ts";
import type { RunningServer } from "./server.ts";

// From the telephone to the booking, the shelf, the waiting list and the rate card, as the desk works them.

let server: RunningServer;
let desk: Page;
let errors: string[];

beforeAll(async () => {
  const opened = await openDesk();
  ({ server, desk, errors } = opened);
  return opened.close;
});

const DAY = 24;
const answers = () => desk.locator("section[aria-labelledby=answers-title]");
const wait = (text: string | RegExp) => desk.getByText(text).first().waitFor();

async function ask(name: string, days: readonly [number, number]): Promise<void> {
  await desk.goto(`${server.url}/enquiry`);
  await wait("Where to and what along");
  const startAgain = desk.getByRole("button", { name: "Start again" });
  if ((await startAgain.count()) > 0) await startAgain.click();
  await typeDate(desk, "Out", civilIn(days[0] * DAY));
  await typeDate(desk, "Back", civilIn(days[1] * DAY));
  await desk.getByLabel("Name", { exact: true }).fill(name);
  await desk.getByLabel("Telephone").fill("07700 900355");
  await desk.getByLabel("Mail address").fill("caller@example.org");
}

test("no field that the keyboard comes to lies behind the foot of the page", async () => {
  await desk.goto(`${server.url}/enquiry`);
  await wait("Where to and what along");
  expect(await coveredFocus(desk, 40)).toEqual([]);
});

test("more racks than there are: what is short, who has the others, and one tap takes what is free", async () => {
  await ask("Orla Penhallow", [60, 74]);
  await desk.getByText(/^Taken along/).click();
  await desk.getByRole("textbox", { name: "Bike rack" }).fill("4");
  await desk.keyboard.press("Tab");
  await answers()
    .getByText(/4 are asked for, .* of 3/)
    .waitFor();
  await answers()
    .getByText(/^None of 7 could/)
    .waitFor();
  expect(await axeViolations(desk)).toEqual([]);
  await answers()
    .getByRole("button", { name: /^Take \d$/ })
    .first()
    .click();
  await answers()
    .getByText(/^\d of 7 could do it\.$/)
    .waitFor();
});

test("one tap keeps the enquiry, quotes, accepts and books", async () => {
  await answers().getByRole("button", { name: "Choose" }).first().click();
  await desk.getByRole("button", { name: "Keep it and book at this price" }).click();
  await wait("Booked");
  await desk
    .getByRole("link", { name: /Handover/ })
    .first()
    .click();
  await wait("Travels with it");
  await desk.getByRole("button", { name: "Pack Rack 1" }).click();
  await desk.getByRole("button", { name: "Take Rack 1 out again" }).waitFor();
  expect(await axeViolations(desk)).toEqual([]);
});

test("whoever waits is listed with what could serve them, and is booked from the list", async () => {
  await ask("Petroc Vane", [90, 104]);
  await answers()
    .getByText(/of 7 could/)
    .waitFor();
  await desk.getByRole("button", { name: "Put on the waiting list" }).click();
  const line = desk.locator("li", { hasText: "Petroc Vane" }).first();
  await line.waitFor();
  expect(await axeViolations(desk)).toEqual([]);
  await line
    .getByRole("button", { name: /^Book / })
    .first()
    .click();
  await desk.getByText("Booked").first().waitFor();
  await desk.getByRole("link", { name: "Money", exact: true }).last().click();
  await desk.getByRole("button", { name: "Lost, cancelled or no-show …" }).click();
  await desk.getByText(/% of £.* is kept, by the scale that was accepted/).waitFor();
  await desk.keyboard.press("Escape");
});

test("a discount is a line of its own in the quote, beyond the limit it is refused with the limit", async () => {
  await ask("Senara Quill", [120, 134]);
  await answers().getByRole("button", { name: "Choose" }).first().click();
  await desk.getByRole("button", { name: "Keep it and quote" }).click();
  await desk.getByText("Discount", { exact: true }).click();
  await desk.getByRole("button", { name: /Kind/ }).click();
  await desk.getByRole("option", { name: "Hirer who comes again" }).click();
  await desk.getByRole("textbox", { name: /Off the nights/ }).fill("25");
  await desk.getByLabel(/^Reason/).fill("third hire with us");
  await desk.getByRole("button", { name: "Make the quote" }).click();
  await wait(/at most 10 % of the nights/);
  await desk.getByRole("textbox", { name: /Off the nights/ }).fill("10");
  await desk.getByRole("button", { name: "Make the quote" }).click();
  await wait("Discount: hirer who comes again");
  expect(await axeViolations(desk)).toEqual([]);
  await desk.getByRole("button", { name: "The customer accepts it" }).click();
  await desk.getByRole("button", { name: "Book it" }).click();
  await wait("Booked");
});

test("a rate card with a gap is refused before it can be kept, and the year shows it", async () => {
  await desk.goto(`${server.url}/terms`);
  await wait("Every day of the year has a price for every class.");
  expect(await axeViolations(desk)).toEqual([]);
  await desk.getByRole("button", { name: "Remove middle" }).click();
  await wait(/No price: 21 March to 31 March/);
  await desk.locator("td.year-gap").first().waitFor();
  expect(await desk.getByRole("button", { name: "Keep the new version" }).isDisabled()).toBe(true);
  await desk.getByRole("button", { name: "Drop my changes" }).click();
  await wait("Every day of the year has a price for every class.");
  expect(errors.filter((text) => !/409/.test(text))).toEqual([]);
});
