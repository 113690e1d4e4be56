import { DEMO_SIGN_INS } from "@setfair/demo";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations, openBrowser } from "./browser.ts";
import { signIn } from "./desk-acts.ts";
import { ask, openDesk } from "./desk-screen.ts";
import { lowContrast, sidewaysPx, smallTargets } from "./page-checks.ts";
import type { RunningServer } from "./server.ts";

// The same screens in the hand: a phone of 360 px, a dark field at 320 px, a tablet with gloves.

/** The size of text that a person with poor sight sets for all pages: twice the usual 16 px. */
const LARGE_TEXT = "--blink-settings=defaultFontSize=32";

interface Hire {
  readonly id: string;
  readonly stage: string;
  readonly vehicle: { readonly id: string } | null;
}
interface Trip {
  readonly departWith: Readonly<Record<string, number>>;
}

let server: RunningServer;
let desk: Page;
let hires: readonly Hire[];

beforeAll(async () => {
  const opened = await openDesk({ width: 360, height: 740 });
  ({ server, desk } = opened);
  const listed = await ask<{ hires: Hire[] }>(desk, "GET", "/hires?which=inHand&limit=100");
  hires = listed.hires;
  return opened.close;
});

/** Boxes on the page that must be moved sideways to be read. */
const boxesToMove = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll(".scroll-x")]
      .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth)
      .map((box) => box.getAttribute("aria-label") ?? ""),
  );

test("on a phone the due-date book and the enquiries are read without moving a table sideways", async () => {
  for (const path of ["fleet/due", "enquiries"]) {
    await desk.goto(`${server.url}/${path}`);
    await desk.locator(".rows-as-cards tr").nth(1).waitFor();
    expect(await boxesToMove(desk)).toEqual([]);
    expect(await sidewaysPx(desk)).toBe(0);
    expect(await axeViolations(desk)).toEqual([]);
  }
});

test("a fault that is chosen far down the list shows what to ask, in sight", async () => {
  const hire = hires.find(({ stage }) => stage === "onHire");
  await desk.goto(`${server.url}/help/${hire?.id}`);
  await desk.getByRole("button", { name: /^A wheel shakes/ }).waitFor();
  await desk.getByRole("button", { name: /^The tyre pressure light/ }).click();
  const question = desk.locator(".help-next .check-text");
  await question.waitFor();
  await expect
    .poll(() => question.evaluate((element) => element.getBoundingClientRect().top))
    .toBeLessThan(600);
});

test("findings and strips of a hire come of one forecast, though something changed between the two answers", async () => {
  const id = hires.find(({ stage, vehicle }) => stage === "booked" && vehicle !== null)?.id ?? "";
  const hashes = { page: "", strips: "" };
  let isChanged = false;
  desk.on("response", async (response) => {
    if (response.request().method() !== "GET") return;
    if (response.url().endsWith(`/hires/${id}`)) hashes.page = (await response.json()).forecastHash;
    if (response.url().endsWith(`/hires/${id}/forecast`)) hashes.strips = (await response.json()).inputHash;
  });
  await desk.route(/\/forecast$/, async (route) => {
    if (!isChanged) {
      isChanged = true;
      const { trip, versions } = await ask<{ trip: Trip; versions: { trip: number } }>(
        desk,
        "GET",
        `/hires/${id}?`,
      );
      const departWith = { ...trip.departWith, battery12: 0.55 };
      await ask(desk, "PUT", `/hires/${id}/trip?basedOn=${versions.trip}`, { ...trip, departWith });
    }
    await route.continue();
  });
  await desk.goto(`${server.url}/hires/${id}/trip`);
  await desk.locator(".strip-plot").first().waitFor();
  await desk.unroute(/\/forecast$/);
  expect(isChanged).toBe(true);
  expect(hashes.page).toBe(hashes.strips);
});

test("in a dark field, with no signal and text at twice its size, four touches name why the heater is off", async () => {
  const hire = hires.find(({ stage }) => stage === "onHire");
  const { url } = await ask<{ url: string }>(desk, "POST", `/hires/${hire?.id}/hirer-link`, {});
  const own = await openBrowser({ width: 320, height: 640 }, [LARGE_TEXT]);
  const phone = await own.context.newPage();
  await phone.emulateMedia({ colorScheme: "dark" });
  await phone.goto(server.url + new URL(url).pathname);
  await phone.getByText("It is kept on this phone").waitFor();
  await phone.context().setOffline(true);
  await phone.reload();
  await phone.getByRole("link", { name: "Something is wrong" }).first().waitFor();
  expect(await phone.locator("body").evaluate((body) => getComputedStyle(body).fontSize)).toBe("32px");
  const touches = [
    phone.getByRole("link", { name: "Something is wrong" }).first(),
    phone.locator("summary", { hasText: "Heater" }).first(),
    phone.getByRole("link", { name: "The heater gives no heat" }),
    phone.getByRole("button", { name: "That is it, but it does not work yet" }),
  ];
  for (const touch of touches) {
    expect(await sidewaysPx(phone)).toBe(0);
    expect(await smallTargets(phone, 44)).toEqual([]);
    expect(await lowContrast(phone, 4.5)).toEqual([]);
    expect(await axeViolations(phone)).toEqual([]);
    await touch.click();
  }
  await phone.getByRole("heading", { name: "Now you know what it is" }).waitFor();
  await own.close();
});

test("in the yard the answers of a check stand in sight, on a phone and on a tablet", async () => {
  const yard = await desk.context().newPage();
  await yard.goto(`${server.url}/yard`);
  const row = yard.locator(".yard-row", { hasText: "Not begun" }).first();
  await row.click();
  await yard.locator(".check-rows").waitFor();
  await yard.locator(".check-rows button").first().click();
  await yard.locator(".three button").last().waitFor();
  for (const size of [
    { width: 360, height: 740 },
    { width: 820, height: 1180 },
  ]) {
    await yard.setViewportSize(size);
    await yard.locator(".drawing-small").evaluate((pane) => pane.scrollIntoView({ block: "start" }));
    const [answers, foot] = await Promise.all([
      yard.locator(".three").boundingBox(),
      yard.locator(".yard-foot").boundingBox(),
    ]);
    const first = size.width < 400 ? 70 : (answers?.height ?? 0);
    expect((answers?.y ?? 9999) + first).toBeLessThanOrEqual(foot?.y ?? 0);
  }
  await yard.close();
});

test("magnified four times, what stays on the screen leaves at least half of it to read", async () => {
  const hire = hires.find(({ stage }) => stage === "onHire");
  const { url } = await ask<{ url: string }>(desk, "POST", `/hires/${hire?.id}/hirer-link`, {});
  const page = await desk.context().newPage();
  // 1280 × 1024 at 400 %
  await page.setViewportSize({ width: 320, height: 256 });
  for (const path of ["/enquiry", new URL(url).pathname]) {
    await page.goto(server.url + path);
    await page.getByRole("heading").first().waitFor();
    const stays = await page.evaluate(() =>
      [...document.querySelectorAll("body *")]
        .filter((element) => ["sticky", "fixed"].includes(getComputedStyle(element).position))
        .map((element) => element.getBoundingClientRect())
        .filter(({ width }) => width > 200)
        .reduce((sum, { height }) => sum + height, 0),
    );
    expect(stays).toBeLessThanOrEqual(128);
    expect(await sidewaysPx(page)).toBe(0);
  }
  await page.close();
});

test("in the colours of the reader's own system the open page and what is chosen are still marked", async () => {
  const page = await desk.context().newPage();
  await page.emulateMedia({ forcedColors: "active" });
  await page.goto(`${server.url}/enquiry`);
  await page.getByText("First time").waitFor();
  const here = page.locator("[aria-current=page]").first();
  expect(await here.evaluate((link) => getComputedStyle(link).outlineStyle)).toBe("solid");
  const chosen = page.locator(".choice[data-selected]").first();
  expect(await chosen.evaluate((choice) => getComputedStyle(choice).borderTopWidth)).toBe("4px");
  await page.close();
});

test("with text at twice its size no page of the day is moved sideways, on a phone and on a tablet", async () => {
  const own = await openBrowser({ width: 360, height: 740 }, [LARGE_TEXT]);
  const page = await own.context.newPage();
  const [manager] = DEMO_SIGN_INS;
  await signIn(page, server.url, manager.login, manager.password);
  for (const size of [
    { width: 360, height: 740 },
    { width: 820, height: 1180 },
  ]) {
    await page.setViewportSize(size);
    for (const path of ["", "enquiries", "enquiry", "help", "fleet/due", "yard"]) {
      await page.goto(`${server.url}/${path}`);
      await page.getByRole("heading", { level: 1 }).waitFor();
      await page.waitForLoadState("networkidle");
      expect({ path, px: await sidewaysPx(page) }).toEqual({ path, px: 0 });
    }
  }
  await own.close();
});
