// `npm run shots`: a picture of every screen at phone, tablet and desktop size, into e2e/out.
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
const PARTS = ["now", "people", "trip", "load", "briefing", "money", "handover", "back"];
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
  await on.waitForLoadState("networkidle");
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

try {
  await shoot(page, "sign-in", "/");
  const manager = DEMO_SIGN_INS[0];
  const signedIn = await page.request.post(`${server.url}/api/session`, {
    data: { login: manager.login, password: manager.password },
    headers: { origin: server.url },
  });
  if (!signedIn.ok()) throw new Error(`signing in: ${signedIn.status()} ${await signedIn.text()}`);
  const hires = (await (await page.request.get(`${server.url}/api/hires`)).json()) as {
    hires: { id: string; stage: string }[];
  };
  const vehicles = (await (await page.request.get(`${server.url}/api/vehicles`)).json()) as {
    vehicles: { id: string }[];
  };
  await shoot(page, "today", "/");
  await shoot(page, "enquiry", "/enquiry");
  await shoot(page, "hires", "/hires");
  await shoot(page, "fleet", "/fleet");
  await shoot(page, "outcomes", "/outcomes");
  await shoot(page, "vehicle", `/fleet/${vehicles.vehicles[0]?.id}`);
  for (const hire of hires.hires) {
    for (const part of PARTS)
      await shoot(page, `hire-${hire.stage}-${hire.id.slice(-4)}-${part}`, `/hires/${hire.id}/${part}`);
  }
  await shoot(page, "yard", "/yard");
  const hire = hires.hires.find(({ stage }) => stage === "onHire") ?? hires.hires[0];
  const link = (await (
    await page.request.post(`${server.url}/api/hires/${hire?.id}/hirer-link`, {
      data: {},
      headers: { origin: server.url },
    })
  ).json()) as { url?: string };
  if (link.url) await shoot(page, "guide", new URL(link.url).pathname);
  console.log(`${violations} violations found by axe; pictures in e2e/out`);
} finally {
  await close();
  await server.stop();
}
