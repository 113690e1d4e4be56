import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { loadDemo } from "@setfair/demo";
import { serve } from "@setfair/server";
import type { Page } from "playwright-core";
import { linkOfHirer, openPhone, SLOWED } from "./hirer-phone.ts";
import { type Line, lineOf, median } from "./line.ts";

const VISITS = 5;
/** At the edge of a village. */
const LATENCY_MS = 150;
const MBIT_S = 1.6;
const PATIENCE_MS = 60_000;

/** Slows the processor and the net of one page. */
async function slow(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", {
    offline: false,
    latency: LATENCY_MS,
    downloadThroughput: (MBIT_S * 1_000_000) / 8,
    uploadThroughput: (MBIT_S * 1_000_000) / 8,
  });
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
}

/** Runs in the page: notes when the first card has been drawn. */
function noteFirstCard(): void {
  const page = globalThis as { firstCardMs?: number };
  new MutationObserver((_changes, observer) => {
    if (document.querySelector(".matters, .day-place") === null) return;
    observer.disconnect();
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        page.firstCardMs = performance.now();
      }),
    );
  }).observe(document, { childList: true, subtree: true });
}

/** Milliseconds from asking for the address to the first card that can be read, on a phone that was never here. */
async function firstVisit(url: string): Promise<number> {
  const { context, close } = await openPhone();
  try {
    const page = await context.newPage();
    // by the page's own clock: what the driver does in it is slowed as well
    await page.addInitScript(noteFirstCard);
    await slow(page);
    await page.goto(url, { waitUntil: "commit", timeout: PATIENCE_MS });
    const seen = await page.waitForFunction(
      () => (globalThis as { firstCardMs?: number }).firstCardMs,
      undefined,
      { polling: 500, timeout: PATIENCE_MS },
    );
    return Number(await seen.jsonValue());
  } finally {
    await close();
  }
}

/** How soon a hirer reads the first card, on a slow phone with little signal. */
export async function benchGuideReady(): Promise<readonly Line[]> {
  const line = lineOf(
    `the hirer's page, processor slowed ${SLOWED} times, ${MBIT_S} Mbit/s, ${LATENCY_MS} ms`,
  );
  const folder = mkdtempSync(join(tmpdir(), "setfair-bench-"));
  const served = await serve({ port: 0, dataDir: folder, demo: true, loadDemo });
  try {
    const url = await linkOfHirer(served.url);
    const times: number[] = [];
    for (let k = 0; k < VISITS; k++) times.push(await firstVisit(url));
    return [
      line(
        "to the first card, first visit",
        median(times),
        "ms",
        `median of ${VISITS}, each on an empty profile`,
      ),
      line("the slowest of them", Math.max(...times), "ms"),
    ];
  } finally {
    await served.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
