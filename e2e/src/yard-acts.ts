import type { Locator, Page } from "playwright-core";
import { drawSignature } from "./desk-acts.ts";

export interface WalkPlan {
  /** value to type for a reading, by the start of its name; the middle of its range otherwise */
  readonly readings?: Readonly<Record<string, number>>;
  /** names of sides on which a mark is put */
  readonly marksOn?: readonly string[];
  /** after this many answers the tab is reloaded */
  readonly reloadAfter?: number;
  /** called with every check that is open, before it is answered */
  readonly onCheck?: () => Promise<void>;
}

async function takePhotograph(page: Page): Promise<void> {
  const buffer = await page.screenshot({ type: "jpeg", quality: 40 });
  await page
    .locator(".yard-foot input[type=file]")
    .first()
    .setInputFiles({ name: "camera.jpg", mimeType: "image/jpeg", buffer });
  await page.locator(".yard-foot .photo-button", { hasText: "Photograph" }).first().waitFor();
}

async function typeReading(page: Page, plan: WalkPlan): Promise<void> {
  const name = (await page.locator("#check-name").textContent()) ?? "";
  const range = (await page.locator(".number-pad .field-note").textContent()) ?? "";
  const [min = 0, max = 0] = [...range.matchAll(/[\d.,]+/g)].map((match) =>
    Number(match[0].replace(/,/g, "")),
  );
  const planned = Object.entries(plan.readings ?? {}).find(([start]) => name.includes(start))?.[1];
  const value = planned ?? Math.round((min + max) / 2);
  for (const key of String(value)) {
    await page
      .locator(".number-keys")
      .getByRole("button", { name: key === "." ? "Decimal point" : key, exact: true })
      .click();
  }
}

/** Presses until the answer is kept: a second touch right after another is taken for rain and does nothing. */
async function pressUntilKept(page: Page, button: Locator, name: string | null): Promise<void> {
  for (let tries = 0; tries < 5; tries++) {
    await button.click();
    const isKept = await page
      .waitForFunction((before) => document.querySelector("#check-name")?.textContent !== before, name, {
        timeout: 3000,
      })
      .then(
        () => true,
        () => false,
      );
    if (isKept) return;
  }
  throw new Error(`the answer to "${name}" is not kept`);
}

async function putMark(page: Page): Promise<void> {
  await takePhotograph(page);
  await page
    .locator(".drawing-pane svg, .drawing svg")
    .first()
    .click({ position: { x: 220, y: 90 }, force: true });
  await page.getByRole("button", { name: "Scratch" }).click();
  await page.getByRole("button", { name: "Keep the mark" }).click();
}

/** Answers the check that is open. */
async function answerCheck(page: Page, plan: WalkPlan): Promise<void> {
  await plan.onCheck?.();
  const wanted = page.getByText("Photograph it first");
  if ((await wanted.count()) > 0) {
    await takePhotograph(page);
    await wanted.first().waitFor({ state: "detached" });
  }
  const simple = page.getByRole("button", {
    name: /^(As it should be|Same as it left|All \d+ are there|It is there|None, as it should be)$/,
  });
  const name = await page.locator("#check-name").textContent();
  const isSimple = (await simple.count()) > 0;
  if (!isSimple) await typeReading(page, plan);
  const answer = isSimple ? simple.first() : page.getByRole("button", { name: "Keep it" });
  await pressUntilKept(page, answer, name);
}

/** Presses the next step, which is always last in the foot; what was pressed before may still be on its way. */
async function next(page: Page): Promise<void> {
  const button = page.locator(".yard-foot button").last();
  if (await button.isEnabled()) await button.click();
}

/** Walks round the vehicle with whatever each side asks for, until the summary stands there. */
export async function walkRound(page: Page, plan: WalkPlan = {}): Promise<void> {
  const marksLeft = new Set(plan.marksOn ?? []);
  for (let act = 0; act < 250; act++) {
    const heading = (await page.locator("h1").first().textContent()) ?? "";
    if (heading === "What was seen") return;
    if (plan.reloadAfter === act) await page.reload();
    if (marksLeft.has(heading) && (await page.locator("#check-name").count()) > 0) {
      const mark = page.getByRole("button", { name: /^(Mark|New mark)$/ });
      if ((await mark.count()) > 0) {
        marksLeft.delete(heading);
        await mark.click();
        await putMark(page);
        continue;
      }
    }
    if ((await page.locator("#check-name").count()) > 0) await answerCheck(page, plan);
    else await next(page);
    await page.waitForTimeout(80);
  }
  throw new Error("the walk-round does not come to its end");
}

/** Hirer and staff sign what stands there. */
export async function signWalk(page: Page): Promise<void> {
  await page.getByRole("textbox", { name: "For the depot" }).fill("Tom Ash");
  const canvases = page.locator(".signature canvas");
  for (let k = 0; k < (await canvases.count()); k++) await drawSignature(page, canvases.nth(k));
  await page.getByRole("button", { name: "Signed", exact: true }).click();
}
