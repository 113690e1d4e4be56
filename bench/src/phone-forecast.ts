import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { loadDemo } from "@setfair/demo";
import { serve } from "@setfair/server";
import { linkOfHirer, openPhone, SLOWED, slowDown } from "./hirer-phone.ts";
import { type Line, lineOf, median } from "./line.ts";
import { ROOT } from "./root.ts";

const RUNS = 5;
/** The issue's own limit for a task on the page's thread. */
const LONG_MS = 50;

/** Runs in the page: notes every task on its thread that is longer than 50 ms. */
function noteLongTasks(): void {
  const page = globalThis as { longTasks?: { at: number; ms: number }[] };
  page.longTasks = [];
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries())
      page.longTasks?.push({ at: startTime, ms: duration });
  }).observe({ type: "longtask", buffered: true });
}

/** Runs in the page: touches the button, and gives when the answer to the reading has been drawn. */
function touchAndWait(): Promise<{ ms: number; longest: number }> {
  const began = performance.now();
  return new Promise((resolve) => {
    const seen = new MutationObserver(() => {
      if (document.querySelector("#uses") === null) return;
      seen.disconnect();
      requestAnimationFrame(() =>
        requestAnimationFrame(() => {
          const ms = performance.now() - began;
          // what follows the answer counts as well, and the observer is told late
          setTimeout(() => {
            const { longTasks = [] } = globalThis as { longTasks?: { at: number; ms: number }[] };
            const own = longTasks.filter(({ at }) => at >= began - 1);
            resolve({ ms, longest: Math.max(0, ...own.map((task) => task.ms)) });
          }, 1000);
        }),
      );
    });
    seen.observe(document, { childList: true, subtree: true });
    document.querySelector<HTMLButtonElement>("form button[type=submit]")?.click();
  });
}

/** From the touch to the answer on a page whose own thread is slowed; the worker beside it runs at full speed. */
async function readPanel(link: string, at: string): Promise<{ ms: number; longest: number }> {
  const { context, close } = await openPhone();
  try {
    const page = await context.newPage();
    await page.addInitScript(noteLongTasks);
    // the reading stays on this phone, so that each run begins where the first began
    await context.route("**/records", (route) => route.abort());
    await page.goto(link);
    await page.getByText("It is kept on this phone").waitFor();
    await page.evaluate(() => {
      location.hash = "#panel";
    });
    await page.getByLabel(/The number, in/).fill("12.4");
    await page.locator("input[type=datetime-local]").fill(at);
    await page.waitForTimeout(1500);
    await slowDown(page, SLOWED);
    return await page.evaluate(touchAndWait);
  } finally {
    await close();
  }
}

/** Runs in the page: lives the trip again with the worker's own script, here, where it can be slowed. */
async function liveHere([script, token, at]: readonly [string, string, string]): Promise<number> {
  const guide = (await (await fetch(`/api/guide/${token}`)).json()) as { forecastInput: unknown };
  const data = { input: guide.forecastInput, readings: [{ store: "battery12", value: 12.4, unit: "V", at }] };
  const answered = new Promise<{ ok: boolean; message?: string }>((resolve) => {
    globalThis.postMessage = ((answer: { ok: boolean }) => resolve(answer)) as typeof postMessage;
  });
  const began = performance.now();
  await new Promise((resolve, reject) => {
    const element = document.createElement("script");
    element.src = script;
    element.type = "module";
    element.onload = resolve;
    element.onerror = reject;
    document.head.append(element);
  });
  dispatchEvent(new MessageEvent("message", { data }));
  const { ok, message } = await answered;
  if (!ok) throw new Error(message);
  return performance.now() - began;
}

async function liveOnPage(link: string, at: string, rate: number): Promise<number> {
  const { context, close } = await openPhone();
  try {
    const page = await context.newPage();
    const { origin, pathname } = new URL(link);
    // a page of the same place with nothing of ours running in it
    await page.goto(`${origin}/api/health`);
    await slowDown(page, rate);
    const script = readdirSync(join(ROOT, "web/dist/assets")).find((name) =>
      /^trip-worker-.*\.js$/.test(name),
    );
    if (script === undefined) throw new Error("bench: no trip-worker in web/dist/assets; build first");
    return await page.evaluate(liveHere, [`/assets/${script}`, pathname.replace("/g/", ""), at] as const);
  } finally {
    await close();
  }
}

/** How soon a hirer has the forecast again after a reading of the panel, on a slow phone, and whether the page stands still meanwhile. */
export async function benchPhoneForecast(): Promise<readonly Line[]> {
  const line = lineOf(`the forecast on the hirer's phone, processor slowed ${SLOWED} times`);
  const folder = mkdtempSync(join(tmpdir(), "setfair-bench-"));
  const served = await serve({ port: 0, dataDir: folder, demo: true, loadDemo });
  try {
    const link = await linkOfHirer(served.url);
    const guide = (await (await fetch(link.replace("/g/", "/api/guide/"))).json()) as {
      trip: { depart: string; return: string };
    };
    // read at the start, so that the whole trip is lived again
    const at = guide.trip.depart.slice(0, 16);
    const days = (Date.parse(guide.trip.return) - Date.parse(guide.trip.depart)) / 86_400_000;
    const touches: { ms: number; longest: number }[] = [];
    const slowed: number[] = [];
    const full: number[] = [];
    for (let k = 0; k < RUNS; k++) {
      touches.push(await readPanel(link, at));
      slowed.push(await liveOnPage(link, at, SLOWED));
      full.push(await liveOnPage(link, at, 1));
    }
    const page = median(touches.map(({ ms }) => ms));
    return [
      line(
        "from the touch to the answer",
        page + (SLOWED - 1) * median(full),
        "ms",
        `median of ${RUNS}; the browser slows the page alone, so the worker's time counts ${SLOWED} times`,
      ),
      line(
        "the forecast itself, slowed by the browser",
        median(slowed),
        "ms",
        `a trip of ${days.toFixed(1)} days; at full speed ${median(full).toFixed(0)} ms`,
      ),
      line(
        "longest task on the page's thread",
        Math.max(...touches.map(({ longest }) => longest)),
        "ms",
        `0 where none took more than ${LONG_MS} ms; the slowest of ${RUNS}`,
      ),
    ];
  } finally {
    await served.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
