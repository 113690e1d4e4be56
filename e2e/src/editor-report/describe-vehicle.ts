import { systemGroups, type VehicleDescription } from "@setfair/engine";
import type { Page } from "playwright-core";
import { fillField, type Wanted } from "./fill-field.ts";
import { CountedKeyboard } from "./keystrokes.ts";

/** A vehicle at hand, as a person reads it off the plate, the certificate and the vehicle itself. */
interface Describing {
  readonly page: Page;
  readonly keyboard: CountedKeyboard;
  readonly target: VehicleDescription;
  /** every field as its papers have it; else only what the editor asks, and its usual values for the rest */
  readonly isExact: boolean;
}

const valueAt = (from: unknown, path: string): unknown =>
  path
    .split(".")
    .reduce<unknown>((value, name) => (value as Readonly<Record<string, unknown>> | undefined)?.[name], from);

/** Kinds in the order of the draft that the page keeps. */
const kindsInDraft = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const draft = JSON.parse(sessionStorage.getItem("setfair.draft.vehicle.new") ?? "null") as {
      description: { systems: { kind: string }[] };
    };
    return draft.description.systems.map(({ kind }) => kind);
  });

/** What the papers say for a field of the editor; undefined where they say nothing. */
function wantedAt(target: VehicleDescription, path: string, kinds: readonly string[]): Wanted | undefined {
  const [first, place, , name] = path.split(".");
  const value =
    first === "systems"
      ? (
          target.systems.find(({ kind }) => kind === kinds[Number(place)])?.spec as
            | Readonly<Record<string, unknown>>
            | undefined
        )?.[name ?? ""]
      : valueAt(target, path);
  // these two are shown in hundredths
  if (typeof value === "number" && /(fuel|water)Share$/.test(path)) return Math.round(value * 10_000) / 100;
  return value as Wanted | undefined;
}

/** Answers what this page of the editor asks and does not show as it is; folds are opened only where they must be. */
async function fillPage(describing: Describing): Promise<void> {
  const { page, keyboard, target, isExact } = describing;
  const kinds = await kindsInDraft(page);
  const paths = await page
    .locator("[data-path]")
    .evaluateAll((all) => all.map((each) => each.getAttribute("data-path") ?? ""));
  for (const path of paths) {
    const wanted = wantedAt(target, path, kinds);
    if (path.endsWith(".kind") || path === "validFrom" || wanted === undefined) continue;
    if (isExact) await openFold(describing, path, wanted);
    else if (await isFolded(page, path)) continue;
    await fillField(page, keyboard, { path, wanted });
  }
}

const isFolded = (page: Page, path: string): Promise<boolean> =>
  page.evaluate((at) => document.querySelector(`details:not([open]) [data-path="${at}"]`) !== null, path);

/** Opens what a field is folded into, the outermost first, where it does not show what the papers say. */
async function openFold(describing: Describing, path: string, wanted: Wanted): Promise<void> {
  const { page, keyboard } = describing;
  const isHidden = await page.evaluate(
    ([at, value]) => {
      const field = document.querySelector(`[data-path="${at}"]`);
      const inputs = [...(field?.querySelectorAll<HTMLInputElement>("input, select") ?? [])];
      const shows = inputs.some((each) =>
        each.type === "checkbox"
          ? String(each.checked) === value
          : each.value === value || Number(each.value.replaceAll(",", "")) === Number(value),
      );
      const folds = [...document.querySelectorAll("details:not([open])")];
      const fold = folds.find((each) => field !== null && each.contains(field));
      if (fold === undefined || shows) return false;
      fold.setAttribute("data-fold", "next");
      return true;
    },
    [path, String(wanted)] as const,
  );
  if (!isHidden) return;
  keyboard.decide();
  await keyboard.tabTo('[data-fold="next"] > summary');
  await keyboard.press("Enter");
  await page.locator('[data-fold="next"]').evaluate((fold) => fold.removeAttribute("data-fold"));
  await openFold(describing, path, wanted);
}

async function tickFitted({ page, keyboard, target }: Describing): Promise<void> {
  const order = systemGroups().flatMap(({ kinds }) => kinds);
  const wanted = new Set(target.systems.map(({ kind }) => kind as string));
  const ticks = page.locator(".editor-groups .tick");
  for (const [k, kind] of order.entries()) {
    const isFitted = await ticks.nth(k).locator("input").isChecked();
    if (isFitted === wanted.has(kind)) continue;
    await ticks.nth(k).evaluate((tick) => tick.setAttribute("data-tick", "next"));
    keyboard.decide();
    await keyboard.tabTo('[data-tick="next"]');
    await keyboard.press("Space");
    await ticks.nth(k).evaluate((tick) => tick.removeAttribute("data-tick"));
  }
}

async function addOptions({ page, keyboard, target }: Describing): Promise<void> {
  for (const [k, option] of target.masses.options.entries()) {
    keyboard.decide();
    await page
      .getByRole("button", { name: "Add a fitting" })
      .evaluate((button) => button.setAttribute("data-add", "next"));
    await keyboard.tabTo('[data-add="next"]');
    await keyboard.press("Enter");
    for (const name of ["name", "massKg", "behindFrontAxleM"] as const)
      await fillField(page, keyboard, { path: `masses.options.${k}.${name}`, wanted: option[name] });
  }
}

/** To the next page of the editor, or keeping it at the last. */
async function goOn({ page, keyboard }: Describing): Promise<void> {
  keyboard.decide();
  await keyboard.tabTo("button[type=submit]");
  await keyboard.press("Enter");
  await page.waitForTimeout(150);
}

/** Goes through the editor by keyboard alone and keeps the vehicle; what was pressed is counted. */
export async function describeVehicle(
  page: Page,
  target: VehicleDescription,
  start: string,
  isExact: boolean,
): Promise<CountedKeyboard> {
  const keyboard = new CountedKeyboard(page);
  const describing: Describing = { page, keyboard, target, isExact };
  const begin = page.getByRole("button", { name: start });
  await begin.waitFor();
  await begin.evaluate((button) => button.setAttribute("data-begin", "here"));
  keyboard.decide();
  await keyboard.tabTo('[data-begin="here"]');
  await keyboard.press("Enter");
  await page.locator("[data-path]").first().waitFor();
  await fillPage(describing);
  await goOn(describing);
  await fillPage(describing);
  if ((await page.locator(".editor-option").count()) === 0) await addOptions(describing);
  await goOn(describing);
  await tickFitted(describing);
  await goOn(describing);
  await fillPage(describing);
  await goOn(describing);
  await goOn(describing);
  await page.getByRole("heading", { name: `${target.name} ${target.registration}` }).waitFor();
  return keyboard;
}
