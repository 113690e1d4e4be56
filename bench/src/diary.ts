import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_SIGN_INS } from "@setfair/demo";
import { chromium, type Page } from "playwright-core";
import { startBuilt } from "./built-server.ts";
import { fillLargeDiary } from "./large-diary.ts";
import { type Line, lineOf, median } from "./line.ts";

const FRAMES = 300;
/** As a firm swipe: a day and a half, or a row, in each frame. */
const ACROSS_PX = 60;
const DOWN_PX = 46;
const KEYS = 60;

interface Scrolled {
  readonly frames: readonly number[];
  readonly workMs: readonly number[];
}

/** Runs in the page: scrolls by so much in every frame, there and back; the time of each frame and the work in it. */
function scrollFrames([frames, across, down]: readonly [number, number, number]): Promise<Scrolled> {
  const scroller = document.querySelector(".diary-scroll");
  if (scroller === null) throw new Error("the diary is not on the page");
  const times: number[] = [];
  const workMs: number[] = [];
  const channel = new MessageChannel();
  let begun = 0;
  // after the frame was drawn: what this thread did in it, style and layout with it
  channel.port1.onmessage = () => workMs.push(performance.now() - begun);
  return new Promise((resolve) => {
    let last: number | null = null;
    let [dx, dy] = [across, down];
    const step = (now: number) => {
      if (last !== null) times.push(now - last);
      last = now;
      if (times.length >= frames) return resolve({ frames: times, workMs });
      begun = now;
      const { scrollLeft, scrollTop, scrollWidth, clientWidth, scrollHeight, clientHeight } = scroller;
      if (scrollLeft + dx < 0 || scrollLeft + dx > scrollWidth - clientWidth) dx = -dx;
      if (scrollTop + dy < 0 || scrollTop + dy > scrollHeight - clientHeight) dy = -dy;
      scroller.scrollBy(dx, dy);
      channel.port2.postMessage(null);
      requestAnimationFrame(step);
    };
    requestAnimationFrame(step);
  });
}

const p95 = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length * 0.95)] ?? Number.NaN;

async function openDiary(page: Page, url: string): Promise<void> {
  const { login, password } = DEMO_SIGN_INS[0];
  await page.goto(url);
  await page.getByLabel("Name to sign in with").fill(login);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByRole("button", { name: "Sign out" }).waitFor();
  await page.goto(`${url}/diary`);
  await page.locator(".diary-bar").first().waitFor();
  await page.waitForTimeout(1000);
}

/** Milliseconds from a key to the cursor's new place with the focus on it. */
async function keyTimes(page: Page): Promise<readonly number[]> {
  await page.locator('[role="gridcell"][tabindex="0"]').focus();
  const times: number[] = [];
  for (let k = 0; k < KEYS; k++) {
    const was = await page.evaluate(() => document.activeElement?.id ?? "");
    const begun = performance.now();
    await page.keyboard.press(k % 2 === 0 ? "ArrowRight" : "ArrowDown");
    await page.waitForFunction((id) => document.activeElement?.id !== id, was, { polling: "raf" });
    times.push(performance.now() - begun);
  }
  return times;
}

/** Smoothness of the diary with 60 vehicles and 400 days at full processor speed. */
export async function benchDiary(): Promise<readonly Line[]> {
  const line = lineOf("the diary, 60 vehicles × 400 days");
  const folder = mkdtempSync(join(tmpdir(), "setfair-bench-"));
  await fillLargeDiary(folder);
  const server = await startBuilt(folder);
  const profile = mkdtempSync(join(tmpdir(), "setfair-bench-profile-"));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: process.env.SETFAIR_CHROMIUM ?? "/usr/bin/chromium",
    viewport: { width: 1366, height: 768 },
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
    ],
  });
  try {
    const page = await context.newPage();
    // the runner names inner functions by a helper that the page does not have
    await page.addInitScript("globalThis.__name ??= (given) => given");
    await openDiary(page, server.url);
    const ways = [
      ["across", ACROSS_PX, 0],
      ["down", 0, DOWN_PX],
      ["both ways", ACROSS_PX, DOWN_PX],
    ] as const;
    const lines: Line[] = [];
    for (const [name, across, down] of ways) {
      const { frames, workMs } = await page.evaluate(scrollFrames, [FRAMES, across, down] as const);
      lines.push(
        line(`frame while scrolling ${name}`, median(frames), "ms", `median of ${FRAMES}`),
        line(`  its 95th percentile`, p95(frames), "ms"),
        line(
          `  work of the page's thread in a frame`,
          median(workMs),
          "ms",
          `P95 ${p95(workMs).toFixed(1)} ms`,
        ),
      );
    }
    const keys = await keyTimes(page);
    lines.push(
      line(
        "from a key to the cursor's new place",
        median(keys),
        "ms",
        `P95 ${p95(keys).toFixed(0)} ms, ${KEYS} keys, the driver's time in it`,
      ),
    );
    return lines;
  } finally {
    await context.close();
    await server.end();
    rmSync(profile, { recursive: true, force: true });
    rmSync(folder, { recursive: true, force: true });
  }
}
