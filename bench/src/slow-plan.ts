import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serve } from "@setfair/server";
import { openPhone, SLOWED, slowDown } from "./hirer-phone.ts";
import { type Line, lineOf, median } from "./line.ts";
import { ROOT } from "./root.ts";
import { tour } from "./tour.ts";

const RUNS = 3;
const DAYS = 28;
const LIVES = 500;

/** Runs in the page: searches the plan with the worker's own script, here, where it can be slowed. */
async function planHere([script, input]: readonly [string, unknown]): Promise<number> {
  const answered = new Promise<{ ok: boolean; message?: string }>((resolve) => {
    globalThis.postMessage = ((answer: { ok: boolean }) => resolve(answer)) as typeof postMessage;
  });
  await new Promise((resolve, reject) => {
    const element = document.createElement("script");
    element.src = script;
    element.type = "module";
    element.onload = resolve;
    element.onerror = reject;
    document.head.append(element);
  });
  const began = performance.now();
  dispatchEvent(new MessageEvent("message", { data: { ask: "plan", input } }));
  const { ok, message } = await answered;
  if (!ok) throw new Error(message);
  return performance.now() - began;
}

async function planIn(url: string, rate: number): Promise<number> {
  const { context, close } = await openPhone();
  try {
    const page = await context.newPage();
    page.setDefaultTimeout(120_000);
    // a page of the same place with nothing of ours running in it
    await page.goto(`${url}/api/health`);
    await slowDown(page, rate);
    const script = readdirSync(join(ROOT, "web/dist/assets")).find((name) =>
      /^plan-worker-.*\.js$/.test(name),
    );
    if (script === undefined) throw new Error("bench: no plan-worker in web/dist/assets; build first");
    return await page.evaluate(planHere, [`/assets/${script}`, tour(DAYS, LIVES)] as const);
  } finally {
    await close();
  }
}

/** How long the browser searches the stop plan of a long trip, the first plan since the page was opened. */
export async function benchSlowPlan(): Promise<readonly Line[]> {
  const line = lineOf(`stop plan of ${DAYS} days in the browser`);
  const folder = mkdtempSync(join(tmpdir(), "setfair-bench-"));
  const served = await serve({ port: 0, dataDir: folder });
  try {
    const slowed: number[] = [];
    const full: number[] = [];
    for (let k = 0; k < RUNS; k++) {
      slowed.push(await planIn(served.url, SLOWED));
      full.push(await planIn(served.url, 1));
    }
    return [
      line("at full speed", median(full) / 1000, "s", `median of ${RUNS}; goal at most 3`),
      line(
        `processor slowed ${SLOWED} times`,
        median(slowed) / 1000,
        "s",
        `median of ${RUNS}, slowed by the browser; goal at most 10`,
      ),
    ];
  } finally {
    await served.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
