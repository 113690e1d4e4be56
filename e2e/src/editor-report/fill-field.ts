import type { Page } from "playwright-core";
import type { CountedKeyboard } from "./keystrokes.ts";

export type Wanted = string | number | boolean;

/** How a field of the editor stands: what it is and what it shows. */
interface Shown {
  readonly kind: "tick" | "select" | "date" | "text" | "none";
  readonly value: string;
}

const showField = (page: Page, path: string): Promise<Shown> =>
  page.evaluate((at): Shown => {
    const field = document.querySelector(`[data-path="${at}"]`);
    if (field === null) return { kind: "none", value: "" };
    const tick = field.querySelector<HTMLInputElement>("input[type=checkbox]");
    if (tick !== null) return { kind: "tick", value: String(tick.checked) };
    const select = field.querySelector<HTMLSelectElement>("select");
    if (select !== null) return { kind: "select", value: select.value };
    const segments = [...field.querySelectorAll('[role="spinbutton"]')];
    if (segments.length > 1)
      return {
        kind: "date",
        value: segments.map((each) => each.getAttribute("aria-valuenow") ?? "").join("/"),
      };
    return { kind: "text", value: field.querySelector("input")?.value ?? "" };
  }, path);

const isShown = ({ kind, value }: Shown, wanted: Wanted): boolean => {
  if (kind === "date") {
    const [year, month, day] = String(wanted).split("-").map(Number);
    return value === `${day}/${month}/${year}`;
  }
  return typeof wanted === "number" ? Number(value.replaceAll(",", "")) === wanted : value === String(wanted);
};

/** Opens the list and walks to the option by its key. */
async function choose(page: Page, keyboard: CountedKeyboard, wanted: Wanted): Promise<void> {
  await keyboard.press("Enter");
  await page.locator("[role=listbox]").waitFor();
  for (let k = 0; k < 40; k++) {
    const at = await page.evaluate(() => document.activeElement?.getAttribute("data-key"));
    if (at === String(wanted)) break;
    const keys = await page
      .locator("[role=option]")
      .evaluateAll((all) => all.map((each) => each.getAttribute("data-key")));
    await keyboard.press(keys.indexOf(String(wanted)) < keys.indexOf(at ?? "") ? "ArrowUp" : "ArrowDown");
  }
  await keyboard.press("Enter");
  await page.locator("[role=listbox]").waitFor({ state: "detached" });
}

/**
 * Answers one field as its papers have it, where it does not show that already.
 * @returns whether anything was to be done
 */
export async function fillField(
  page: Page,
  keyboard: CountedKeyboard,
  { path, wanted }: { readonly path: string; readonly wanted: Wanted },
): Promise<boolean> {
  const shown = await showField(page, path);
  if (shown.kind === "none" || isShown(shown, wanted)) return false;
  keyboard.decide(true);
  await keyboard.tabTo(`[data-path="${path}"]`);
  if (shown.kind === "tick") await keyboard.press("Space");
  else if (shown.kind === "select") await choose(page, keyboard, wanted);
  else if (shown.kind === "date") {
    const [year = "", month = "", day = ""] = String(wanted).split("-");
    await keyboard.type(`${day}${month}${year}`);
  } else await keyboard.type(String(wanted));
  return true;
}
