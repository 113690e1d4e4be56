import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations, watchErrors } from "./browser.ts";
import { typeNumber } from "./desk-acts.ts";
import { ask, openDesk } from "./desk-screen.ts";
import { makeHireWithTrip } from "./hire-with-trip.ts";
import type { RunningServer } from "./server.ts";

// One thing open at two desks: the second save shows both, and nothing that anybody typed is lost.

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

const makeHire = () =>
  makeHireWithTrip(desk, {
    customer: { name: "Tobias Twicewell", email: "tobias@example.org", telephone: "01632 960377" },
    adults: 1,
    inDays: 90,
  });

const stopsOf = (page: Page) => page.locator("section[aria-labelledby=stops-title]");
const both = (page: Page) =>
  page.getByRole("region", { name: "Somebody else kept another version meanwhile" });

test("a trip that two desks change at once is put together by the second, place by place", async () => {
  const id = await makeHire();
  for (const page of [desk, other]) {
    await page.goto(`${server.url}/hires/${id}/trip`);
    await page.getByRole("button", { name: "Change the trip" }).click();
  }
  // both begin from the same; each changes one drive of their own, and both the way back
  await typeNumber(stopsOf(desk), "Drive to here", 77);
  await typeNumber(stopsOf(desk), "Drive home", 60);
  await typeNumber(stopsOf(other), "Drive home", 61);
  await typeNumber(stopsOf(other), "Time home", 88);
  await stopsOf(desk).getByRole("button", { name: "Keep the trip" }).click();
  await desk.getByRole("button", { name: "Change the trip" }).waitFor();
  await stopsOf(other).getByRole("button", { name: "Keep the trip" }).click();
  await both(other).waitFor();
  expect(await both(other).textContent()).toContain("kept another on");
  expect(await axeViolations(other)).toEqual([]);
  // what was typed still stands in the fields, also after the page was read anew
  await other.reload();
  await both(other).waitFor();
  const back = await stopsOf(other).getByLabel("Drive home").inputValue();
  expect(back).toBe("61");
  const choices = await both(other).getByRole("radiogroup").allTextContents();
  expect(choices.filter((text) => text.includes("You both changed it"))).toHaveLength(1);
  expect(choices.find((text) => text.includes("You both changed it"))).toMatch(/Yours: 61.*Theirs: 60/);
  // nothing was written over so far
  const read = async () => ask<{ trip: Record<string, unknown> }>(desk, "GET", `/hires/${id}`);
  expect((await read()).trip).toMatchObject({ returnDrive: { distanceKm: 60 } });
  await both(other).getByRole("button", { name: "Put it together as chosen" }).click();
  await stopsOf(other).getByRole("button", { name: "Keep the trip" }).click();
  await other.getByRole("button", { name: "Change the trip" }).waitFor();
  expect((await read()).trip).toMatchObject({
    stops: [{ drive: { distanceKm: 77 } }, {}],
    returnDrive: { distanceKm: 61, minutes: 88 },
  });
});

test("the depot's settings stand side by side too, and theirs is taken with one touch", async () => {
  for (const page of [desk, other]) await page.goto(`${server.url}/depot`);
  await typeNumber(desk, "Turnaround", 300);
  await typeNumber(other, "Turnaround", 330);
  await Promise.all([
    desk.waitForResponse((answer) => answer.url().endsWith("/api/depot") && answer.ok()),
    desk.getByRole("button", { name: "Keep the settings" }).click(),
  ]);
  await other.getByRole("button", { name: "Keep the settings" }).click();
  await both(other).waitFor();
  expect(await both(other).textContent()).toMatch(/Yours: 330.*Theirs: 300/);
  await both(other).getByRole("button", { name: "Drop mine, take theirs" }).click();
  expect(await other.getByLabel("Turnaround").first().inputValue()).toBe("300");
  expect(await both(other).count()).toBe(0);
  expect([...errors, ...others].filter((each) => !each.includes("409"))).toEqual([]);
});
