import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_SIGN_INS } from "@setfair/demo";
import { type BrowserContext, chromium, type Page } from "playwright-core";

/** How many times slower than this machine the processor of a cheap phone is taken to be. */
export const SLOWED = 4;

/** A browser of the size of a phone, with a profile that was never anywhere. */
export async function openPhone(): Promise<{ context: BrowserContext; close(): Promise<void> }> {
  const profile = mkdtempSync(join(tmpdir(), "setfair-bench-profile-"));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: process.env.SETFAIR_CHROMIUM ?? "/usr/bin/chromium",
    viewport: { width: 360, height: 740 },
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
    ],
  });
  return {
    context,
    close: async () => {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

/** Makes the page's own thread so many times slower; a worker beside it runs on at full speed. */
export async function slowDown(page: Page, rate: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
}

/** The link of a hirer on the road, with their forecast already lived, as it is before the link is opened. */
export async function linkOfHirer(url: string): Promise<string> {
  const { login, password } = DEMO_SIGN_INS[1];
  const headers = { "content-type": "application/json", origin: url };
  const signedIn = await fetch(`${url}/api/session`, {
    method: "POST",
    headers,
    body: JSON.stringify({ login, password }),
  });
  const cookie = signedIn.headers
    .getSetCookie()
    .map((one) => one.split(";")[0])
    .join("; ");
  const ask = async (method: string, path: string): Promise<unknown> => {
    const answer = await fetch(`${url}/api${path}`, {
      method,
      headers: { ...headers, cookie },
      ...(method === "POST" ? { body: "{}" } : {}),
    });
    if (!answer.ok) throw new Error(`${path}: ${answer.status} ${(await answer.text()).slice(0, 200)}`);
    return answer.json();
  };
  const { hires } = (await ask("GET", "/hires?stage=onHire")) as { hires: { id: string }[] };
  for (const { id } of hires) {
    const page = (await ask("GET", `/hires/${id}`)) as { trip: unknown };
    if (page.trip === null) continue;
    const link = (await ask("POST", `/hires/${id}/hirer-link`)) as { token: string };
    await ask("GET", `/guide/${link.token}`);
    return `${url}/g/${link.token}`;
  }
  throw new Error("bench: expected a hire on the road with a trip");
}
