// `npm run shots`: a picture of every screen at phone, tablet and desktop size, into e2e/out; with a word after it only of
// those that have it in their name. `npm run shots -- readme` makes the README's picture again.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { DEMO_SIGN_INS } from "@setfair/demo";
import type { Page } from "playwright-core";
import { axeViolations, openBrowser, watchErrors } from "./browser.ts";
import { root, startServer } from "./server.ts";

const SIZES = [
  { name: "phone", width: 360, height: 740 },
  { name: "tablet", width: 820, height: 1180 },
  { name: "desktop", width: 1366, height: 768 },
] as const;
const PARTS = [
  "now",
  "people",
  "trip",
  "load",
  "abroad",
  "notes",
  "briefing",
  "money",
  "handover",
  "back",
  "change",
] as const;
/** pages of the desk that stand by themselves */
const PAGES = [
  "enquiry",
  "enquiries",
  "diary",
  "hires",
  "help",
  "fleet",
  "fleet/due",
  "fleet/new",
  "money",
  "rules",
  "insurance",
  "outcomes",
  "stock",
  "terms",
  "depot",
  "accounts",
  "own",
  "messages",
  "import",
  "more",
] as const;
const only = process.argv[2];

const out = join(root, "e2e", "out");
mkdirSync(out, { recursive: true });
const server = await startServer();
const { context, close } = await openBrowser({ width: 1366, height: 768 });
const page = await context.newPage();
const errors = watchErrors(page);
let violations = 0;

async function shoot(on: Page, name: string, path: string): Promise<void> {
  if (only && !name.includes(only)) return;
  await on.goto(server.url + path);
  // an answer whose body nobody reads keeps the network busy for ever
  await on.waitForLoadState("networkidle", { timeout: 5000 }).catch(() => undefined);
  await on
    .getByText(/^One moment/)
    .first()
    .waitFor({ state: "detached" })
    .catch(() => undefined);
  for (const size of SIZES) {
    await on.setViewportSize(size);
    await on.waitForTimeout(150);
    await on.screenshot({ path: join(out, `${name}-${size.name}.png`), fullPage: true });
  }
  const found = await axeViolations(on);
  violations += found.length;
  for (const line of found) console.log(`${name}: ${line}`);
  for (const error of errors.splice(0)) console.log(`${name}: page error: ${error}`);
}

interface Hire {
  readonly id: string;
  readonly stage: string;
}

const oneOfEachStage = (hires: readonly Hire[]): readonly Hire[] =>
  hires.filter(({ stage }, k) => hires.findIndex((other) => other.stage === stage) === k);

/** The hirer's phone, by day and at night. */
async function shootGuide(hire: Hire | undefined): Promise<void> {
  const asked = await page.request.post(`${server.url}/api/hires/${hire?.id}/hirer-link`, {
    data: {},
    headers: { origin: server.url },
  });
  const path = new URL(((await asked.json()) as { url: string }).url).pathname;
  const night = await context.newPage();
  await night.emulateMedia({ colorScheme: "dark" });
  for (const place of ["day", "panel", "wrong", "danger", "countries", "missed", "statement"]) {
    await shoot(page, `guide-${place}`, `${path}#${place}`);
    await shoot(night, `guide-night-${place}`, `${path}#${place}`);
  }
  await night.close();
}

/** The README's picture: a hire that goes today, once the vehicle's rates are learnt from its returns. */
async function shootReadme(hire: Hire | undefined): Promise<void> {
  await page.goto(`${server.url}/outcomes`);
  await page.getByText(/^Of 7 stores/).waitFor({ timeout: 120_000 });
  await page.setViewportSize({ width: 1366, height: 1130 });
  await page.goto(`${server.url}/hires/${hire?.id}/now`);
  await page.getByRole("heading", { name: "Will it last?" }).waitFor();
  await page.waitForTimeout(1000);
  await page.screenshot({ path: join(root, "docs", "pictures", "hire.png") });
}

/** The yard, signed in by its own form. */
async function shootYard(): Promise<void> {
  // the desk's own sign-in serves the yard too
  if (only && !"yard-sign-in yard-outbox yard-walk".includes(only)) return;
  await context.clearCookies();
  await page.goto(`${server.url}/yard`);
  await shoot(page, "yard-sign-in", "/yard");
  const person = DEMO_SIGN_INS.find(({ role }) => role === "yard") ?? DEMO_SIGN_INS[0];
  await page.getByLabel("Sign-in name").fill(person.login);
  await page.getByLabel("Password").fill(person.password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByLabel("Password").waitFor({ state: "detached" });
  const walk = page.locator(".yard-row").first();
  await walk.waitFor();
  const to = await walk.getAttribute("href");
  await shoot(page, "yard", "/yard");
  await shoot(page, "yard-outbox", "/yard#/outbox");
  if (to !== null) await shoot(page, "yard-walk", `/yard${to.slice(to.indexOf("#"))}`);
}

try {
  await shoot(page, "sign-in", "/");
  const manager = DEMO_SIGN_INS[0];
  const signedIn = await page.request.post(`${server.url}/api/session`, {
    data: { login: manager.login, password: manager.password },
    headers: { origin: server.url },
  });
  if (!signedIn.ok()) throw new Error(`signing in: ${signedIn.status()} ${await signedIn.text()}`);
  const listed = async (which: "inHand" | "over") => {
    const answer = await page.request.get(`${server.url}/api/hires?which=${which}&limit=100`);
    return ((await answer.json()) as { hires: Hire[] }).hires;
  };
  // those in hand with the soonest first
  const hires = [...(await listed("inHand")), ...(await listed("over"))];
  const vehicles = (await (await page.request.get(`${server.url}/api/vehicles`)).json()) as {
    vehicles: { id: string }[];
  };
  if (only === "readme") await shootReadme(hires.find(({ stage }) => stage === "booked"));
  await shoot(page, "today", "/");
  for (const path of PAGES) await shoot(page, path.replace("/", "-"), `/${path}`);
  const [vehicle] = vehicles.vehicles;
  for (const path of ["", "/edit", "/versions"])
    await shoot(page, `vehicle${path.replace("/", "-")}`, `/fleet/${vehicle?.id}${path}`);
  for (const hire of oneOfEachStage(hires)) {
    for (const part of PARTS) await shoot(page, `hire-${hire.stage}-${part}`, `/hires/${hire.id}/${part}`);
  }
  await shootGuide(hires.find(({ stage }) => stage === "onHire"));
  await shootYard();
  console.log(`${violations} violations found by axe; pictures in e2e/out`);
} finally {
  await close();
  await server.stop();
}
