import { createHash } from "node:crypto";
import type { DepotRecord } from "@setfair/records";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { civilIn, openPart, typeNumber } from "./desk-acts.ts";
import { ask, openDesk } from "./desk-screen.ts";
import type { RunningServer } from "./server.ts";
import { drawPicture, makeTablet } from "./tablet-records.ts";
import { signWalk, walkRound } from "./yard-acts.ts";

// The settlement at the desk, from the return to the refund of what the invoice was lower.

const TORN = "awning.fullyOut";
const WET = "cab.rear";

let server: RunningServer;
let desk: Page;
let errors: string[];
/** odometer as it left, km */
let left = 0;
let hire: { readonly id: string; readonly vehicle: { readonly id: string; readonly registration: string } };

beforeAll(async () => {
  const opened = await openDesk({ width: 1366, height: 900 });
  ({ server, desk, errors } = opened);
  return opened.close;
});
beforeAll(() => cameBack());

/** Draws a picture, keeps it as a tablet does, and gives its hash. */
async function photograph(shade: string): Promise<string> {
  const data = await drawPicture(desk, shade);
  const hash = createHash("sha256").update(data).digest("hex");
  const headers = { "content-type": "image/jpeg", origin: server.url };
  const answer = await desk.request.put(`${server.url}/api/photos/${hash}`, { data, headers });
  if (!answer.ok()) throw new Error(await answer.text());
  return hash;
}

/** A tablet at this hire. */
function tablet(deviceId: string, chain: string, direction: "out" | "back") {
  const refs = { hireId: hire.id, vehicleId: hire.vehicle.id };
  const { made, add } = makeTablet({ deviceId, chain, direction, refs });
  return { made, add, send: () => ask(desk, "POST", "/records", { records: made }) };
}

/** A hire on the road comes back with a torn awning, a wet rear and two readings of the odometer. */
async function cameBack(): Promise<void> {
  const { hires } = await ask<{ hires: (typeof hire & { readonly stage: string })[] }>(
    desk,
    "GET",
    "/hires?stage=onHire&limit=100",
  );
  const found = hires.find(({ vehicle }) => vehicle.id === "oc6") ?? hires[0];
  if (found === undefined) throw new Error("the invented firm has nothing on the road");
  hire = found;
  const out = tablet("tablet-out", `${hire.id}.also.out`, "out");
  out.add("photograph", { about: TORN, checkId: TORN, sha256: await photograph("#7a9") });
  await out.send();
  await ask(desk, "POST", `/hires/${hire.id}/return`, { at: civilIn(0) });
  const back = tablet("tablet-a", `${hire.id}.back`, "back");
  back.add("walkStarted", {});
  const { jobs } = await ask<{ jobs: { id: string; outRecords: DepotRecord[] }[] }>(
    desk,
    "GET",
    "/yard/jobs",
  );
  const read = jobs
    .find(({ id }) => id === `${hire.id}.back`)
    ?.outRecords.find(({ kind, content }) => kind === "reading" && content.about === "cab.odometer");
  left = Number(read?.content.value);
  const odometer = { about: "cab.odometer", checkId: "cab.odometer", unit: "km" };
  back.add("reading", { ...odometer, value: left + 100 });
  back.add("look", { about: WET, checkId: WET, saw: "tooWetOrDirty" });
  back.add("mark", {
    about: TORN,
    checkId: TORN,
    part: "awning.cassette",
    view: "nearside",
    xShare: 0.5,
    yShare: 0.2,
    markKind: "tear",
    sizeMm: 300,
    photographs: [await photograph("#c63")],
  });
  back.add("signature", {
    purpose: "condition",
    records: back.made.map(({ id, hash }) => ({ id, hash })),
    signer: { name: "Tom Braithe" },
    role: "yard",
    shown: { text: "As recorded.", language: "en-GB" },
    strokes: [[{ x: 1, y: 1 }]],
  });
  back.add("walkFinished", {});
  await back.send();
  const other = tablet("tablet-b", `${hire.id}.other.back`, "back");
  other.add("reading", { ...odometer, value: left + 200 });
  await other.send();
}

/** The yard has the second look as a job of its own: only what was too wet, photographed and signed for. */
async function lookAgain(): Promise<void> {
  const yard = await desk.context().newPage();
  await yard.setViewportSize({ width: 820, height: 1180 });
  await yard.goto(`${server.url}/yard`);
  await yard
    .locator(".yard-row", { hasText: hire.vehicle.registration })
    .filter({ hasText: "Second look after the wash" })
    .click();
  await yard.getByRole("heading", { name: "Rear", exact: true }).waitFor();
  await walkRound(yard);
  await yard.getByRole("button", { name: "Sign for the condition" }).click();
  await signWalk(yard);
  await yard.getByText("All sent").waitFor({ timeout: 60_000 });
  await yard.close();
}

const part = () => desk.locator(".hire-columns > div.stack");
const card = (name: string | RegExp) => part().getByRole("region", { name });
const dialog = () => desk.getByRole("dialog");

async function expectCleanPage(): Promise<void> {
  expect(await axeViolations(desk)).toEqual([]);
  // settling too early is refused on purpose
  expect(errors.filter((text) => !/409/.test(text))).toEqual([]);
}

test("nothing is settled before the second look, and of two readings whoever signs says which holds", async () => {
  await desk.goto(`${server.url}/hires/${hire.id}`);
  await openPart(desk, "Return");
  await card("Second look after the wash")
    .getByText(/at the latest until/)
    .waitFor();
  await desk.getByRole("button", { name: "Settle as shown" }).click();
  await part()
    .getByRole("alert")
    .getByText(/second look/)
    .waitFor();
  const question = card("Two readings do not agree");
  await question
    .getByText(`${(left + 200).toLocaleString("en-GB")} km`, { exact: true })
    .last()
    .click();
  await question.getByLabel("Why").fill("Read again from the photograph of the dashboard");
  await expectCleanPage();
  await question.getByRole("button", { name: "This one holds" }).click();
  await question.waitFor({ state: "detached" });
  await lookAgain();
  await desk.reload();
  await card(/Not as it left/).waitFor();
  expect(await card("Second look after the wash").count()).toBe(0);
});

test("a mark is decided with both sides in sight, its estimate charged at what is left of the part", async () => {
  const mark = part().locator("li.line-box", { hasText: "Tear" });
  await expect.poll(() => mark.locator(".evidence-side img").count()).toBe(2);
  await mark.getByText("hirer", { exact: true }).click();
  await mark.getByLabel("On what evidence").fill("Whole on the photograph when it left.");
  await mark.getByLabel("Incident").fill("Wind on Saturday");
  await mark.getByRole("button", { name: /Before the next hire/ }).click();
  await desk.getByRole("option", { name: "order the part" }).click();
  await expectCleanPage();
  await mark.getByRole("button", { name: "Keep this" }).click();
  await part().getByText("Wind on Saturday").first().waitFor();
  await part()
    .getByRole("button", { name: /^Age of the part/ })
    .click();
  await typeNumber(dialog(), /^Age/, 4);
  await dialog().getByLabel("How that is known").fill("Invoice of the awning");
  await dialog().getByRole("button", { name: "Enter it" }).click();
  await dialog().waitFor({ state: "detached" });
  await enterCost("Estimate", 400, 100);
  await part().locator("tr", { hasText: "To pay" }).getByText("£", { exact: false }).waitFor();
});

async function enterCost(kind: "Estimate" | "Invoice", parts: number, work: number): Promise<void> {
  await part()
    .getByRole("button", { name: /^Estimate or invoice/ })
    .first()
    .click();
  await dialog().getByText(kind, { exact: true }).click();
  await typeNumber(dialog(), /^Parts with VAT/, parts);
  await typeNumber(dialog(), /^Work with VAT/, work);
  await dialog()
    .getByLabel(/^Who wrote it/)
    .fill(`Invented Bodyshop ${kind}`);
  expect(await axeViolations(desk)).toEqual([]);
  await dialog().getByRole("button", { name: "Enter it" }).click();
  await dialog().waitFor({ state: "detached" });
  await part().getByText(`Invented Bodyshop ${kind}`).waitFor();
}

const damage = async () =>
  (await part().locator("tr", { hasText: "Damage:" }).locator("td").last().textContent()) ?? "";

test("the deposit goes back, and what the invoice is lower is paid back through the ledger", async () => {
  // parts of £400 at four years of eight, work of £100 in full
  expect(await damage()).toBe("£300");
  await desk.getByRole("button", { name: "Settle as shown" }).click();
  await desk.getByRole("button", { name: "Give the deposit back" }).click();
  await desk.getByRole("button", { name: "Give the deposit back" }).waitFor({ state: "detached" });
  await enterCost("Invoice", 140, 100);
  expect(await damage()).toBe("£170");
  await card("Deposit and refund").getByText("£130 is to be paid back.").waitFor();
  await expectCleanPage();
  await desk.getByRole("button", { name: "Pay £130 back" }).click();
  await dialog().getByLabel("Reason").fill("The invoice is lower than the estimate");
  await dialog().getByRole("button", { name: "Record as paid back" }).click();
  await dialog().waitFor({ state: "detached" });
  await part().getByText("£130 is to be paid back.").waitFor({ state: "detached" });
});

test("what was left behind is written down with the hire, the keys with the vehicle, and the hire closes", async () => {
  await desk.getByRole("button", { name: "Write it down" }).click();
  await dialog().getByLabel("What was left behind").fill("A child's rucksack");
  await dialog().getByLabel("Where it lay").fill("Overcab bed");
  await dialog().getByRole("button", { name: "Enter it" }).click();
  await card("Left behind")
    .getByText(/rucksack/)
    .waitFor();
  await card("Who had the keys")
    .getByText(/^Hirer:/)
    .waitFor();
  await desk.getByRole("button", { name: "The keys pass on" }).click();
  await dialog().getByLabel("Name").fill("Invented Bodyshop");
  await dialog().getByRole("button", { name: "Write it down" }).click();
  await dialog().waitFor({ state: "detached" });
  await card("Who had the keys").getByText("Workshop: Invented Bodyshop").waitFor();
  await expectCleanPage();
  await desk.getByRole("button", { name: "Close the hire" }).click();
  await desk.getByText("Closed").first().waitFor();
});
