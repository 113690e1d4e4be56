import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import axe from "axe-core";
import { type BrowserContext, chromium, type Page } from "playwright-core";

/** A fresh Chromium with its own profile; nothing of it is kept. */
export async function openBrowser(
  viewport: { width: number; height: number },
  extraArgs: readonly string[] = [],
): Promise<{ context: BrowserContext; close(): Promise<void> }> {
  const profile = mkdtempSync(join(tmpdir(), "setfair-profile-"));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: process.env.SETFAIR_CHROMIUM ?? "/usr/bin/chromium",
    viewport,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      ...extraArgs,
    ],
  });
  context.setDefaultTimeout(20_000);
  return {
    context,
    close: async () => {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

interface Axe {
  run(
    context: { exclude: string[] },
    options: { runOnly: string[] },
  ): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
}

/** Violations of WCAG 2 A and AA that axe finds on the page, one line each. */
export async function axeViolations(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe } = globalThis as typeof globalThis & { axe: Axe };
    const answer = await axe.run(
      // the component library speaks to screen readers through this for a moment; it is never seen
      { exclude: ["[data-live-announcer]"] },
      { runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"] },
    );
    return answer.violations.flatMap((violation) =>
      violation.nodes.map((node) => `${violation.id}: ${node.html.slice(0, 200)}`),
    );
  });
}

/** Collects what the content security policy refused and what the page logged as an error. */
export function watchErrors(page: Page): string[] {
  const errors: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  page.on("pageerror", (error) => errors.push(String(error)));
  return errors;
}
