import { DEMO_SIGN_INS } from "@setfair/demo";
import type { Page } from "playwright-core";
import { openBrowser, watchErrors } from "./browser.ts";
import { signIn } from "./desk-acts.ts";
import { everyDay } from "./every-day.ts";
import { type RunningServer, startServer } from "./server.ts";

export interface DeskScreen {
  readonly server: RunningServer;
  readonly desk: Page;
  /** what the security policy refused and what the page logged as an error since the sign-in */
  readonly errors: string[];
  close(): Promise<void>;
}

/** The screen that most desks have, px. */
export const DESK_SCREEN = { width: 1366, height: 768 } as const;

/** A server of its own with the invented firm, and a desk at which its manager is signed in. */
export async function openDesk(
  screen: { readonly width: number; readonly height: number } = DESK_SCREEN,
): Promise<DeskScreen> {
  const server = await startServer();
  const browser = await openBrowser(screen).catch(async (error) => {
    await server.stop();
    throw error;
  });
  const close = async () => {
    await browser.close();
    await server.stop();
  };
  try {
    const desk = await browser.context.newPage();
    const [manager] = DEMO_SIGN_INS;
    await signIn(desk, server.url, manager.login, manager.password);
    return { server, desk, errors: watchErrors(desk), close };
  } catch (error) {
    await close();
    throw error;
  }
}

/** Opens the depot at every hour, for tests in which keys go out and come back now, whenever that is. */
export async function openDayAndNight(page: Page): Promise<void> {
  const { timeZone: _, country: __, ...settings } = await ask<Record<string, unknown>>(page, "GET", "/depot");
  await ask(page, "PUT", "/depot", { ...settings, hours: everyDay("00:00", "24:00") });
}

/** Asks the API by the same door as the page's own, as the page that is signed in; `Error` with the answer where it says no. */
export function ask<T>(page: Page, method: string, path: string, body?: unknown): Promise<T> {
  return page.evaluate(
    async ([how, where, what]) => {
      const headers = { "content-type": "application/json" };
      const sent = what === undefined ? {} : { headers, body: JSON.stringify(what) };
      const answer = await fetch(`/api${where}`, { method: how as string, ...sent });
      if (!answer.ok) throw new Error(`${how} ${where}: ${answer.status} ${await answer.text()}`);
      return (await answer.json()) as never;
    },
    [method, path, body] as const,
  );
}
