import type { Page } from "playwright-core";

/** Text on the page whose contrast with what lies behind it is less than `least` (WCAG 2.2, 1.4.3 and 1.4.6), one line each. */
export function lowContrast(page: Page, least: number): Promise<string[]> {
  return page.evaluate((wanted) => {
    type Colour = readonly [number, number, number, number];
    const canvas = document.createElement("canvas").getContext("2d", { willReadFrequently: true });
    /** any colour that CSS can write, as red, green, blue 0 to 255 and opacity 0 to 1 */
    const read = (css: string): Colour => {
      if (canvas === null) throw new Error("no canvas");
      canvas.clearRect(0, 0, 1, 1);
      canvas.fillStyle = css;
      canvas.fillRect(0, 0, 1, 1);
      const [r = 0, g = 0, b = 0, a = 0] = canvas.getImageData(0, 0, 1, 1).data;
      return [r, g, b, a / 255];
    };
    const over = (top: Colour, under: Colour): Colour => [
      top[0] * top[3] + under[0] * (1 - top[3]),
      top[1] * top[3] + under[1] * (1 - top[3]),
      top[2] * top[3] + under[2] * (1 - top[3]),
      1,
    ];
    const light = ([r, g, b]: Colour): number => {
      const part = (value: number) => {
        const share = value / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      };
      return 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
    };
    const ratio = (one: Colour, other: Colour): number => {
      const [high, low] = [light(one), light(other)].sort((a, b) => b - a) as [number, number];
      return (high + 0.05) / (low + 0.05);
    };
    const behind = (element: Element | null): Colour => {
      if (element === null) return [255, 255, 255, 1];
      const own = read(getComputedStyle(element).backgroundColor);
      return own[3] >= 1 ? own : over(own, behind(element.parentElement));
    };
    /** an SVG text lies on the shape drawn before it in the same group */
    const behindText = (element: Element): Colour => {
      const shape = element instanceof SVGElement ? element.previousElementSibling : null;
      const fill = shape === null ? "none" : getComputedStyle(shape).fill;
      return fill === "none" || fill === "" ? behind(element) : over(read(fill), behind(element));
    };
    const found = new Set<string>();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const element = node.parentElement;
      const text = node.textContent?.trim() ?? "";
      if (
        element === null ||
        text === "" ||
        ["TITLE", "SCRIPT", "STYLE"].includes(element.tagName.toUpperCase())
      )
        continue;
      if (element.closest("[data-live-announcer], .visually-hidden") !== null) continue;
      const box = element.getBoundingClientRect();
      if (box.width < 2 || box.height < 2 || !element.checkVisibility()) continue;
      const style = getComputedStyle(element);
      const ground = behindText(element);
      const ink = over(read(element instanceof SVGElement ? style.fill : style.color), ground);
      const at = ratio(ink, ground);
      if (at < wanted)
        found.add(`${at.toFixed(2)}:1 "${text.slice(0, 40)}" <${element.tagName} ${element.className}>`);
    }
    return [...found];
  }, least);
}

/** Things to touch that are smaller than `px` either way, one line each. A field's label touches the field. */
export function smallTargets(page: Page, px: number): Promise<string[]> {
  return page.evaluate((least) => {
    const found: string[] = [];
    const all = document.querySelectorAll(
      "button, a[href], input, select, textarea, label.button, [role=button]",
    );
    for (const element of all) {
      if (element.closest(".visually-hidden") !== null || element.classList.contains("visually-hidden"))
        continue;
      if (!element.checkVisibility()) continue;
      // parts of the drawing are as large as the vehicle's own parts; each stands in the list below it as a row
      if (element.closest("svg") !== null) continue;
      const own = element.getBoundingClientRect();
      if (own.width === 0) continue;
      const label = element instanceof HTMLInputElement ? element.closest("label") : null;
      const box = label?.getBoundingClientRect() ?? own;
      const high = Math.max(own.height, box.height);
      const wide = Math.max(own.width, box.width);
      if (high < least - 0.5 || wide < least - 0.5)
        found.push(
          `${Math.round(wide)} × ${Math.round(high)} "${(element.textContent ?? "").trim().slice(0, 30)}" <${element.tagName} ${element.className}>`,
        );
    }
    return found;
  }, px);
}

/** How far the page can be moved sideways, px; 0 on a page that fits. */
export const sidewaysPx = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const root = document.scrollingElement ?? document.documentElement;
    const widest = Math.max(
      ...[...document.querySelectorAll("main")].map((main) => main.scrollWidth - main.clientWidth),
      0,
    );
    return Math.max(root.scrollWidth - root.clientWidth, widest);
  });

/** What the tab key comes to, in so many presses, that lies behind something else (WCAG 2.2, 2.4.11), one line each. */
export async function coveredFocus(page: Page, presses: number): Promise<string[]> {
  const found: string[] = [];
  for (let k = 0; k < presses; k++) {
    await page.keyboard.press("Tab");
    const covered = await page.evaluate(() => {
      const focused = document.activeElement;
      if (focused === null || focused === document.body) return null;
      const shown = focused.closest("label") ?? focused;
      const box = shown.getBoundingClientRect();
      const top = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
      if (top !== null && (shown.contains(top) || top.contains(shown))) return null;
      return `<${focused.tagName} ${focused.id}> "${(shown.textContent ?? "").trim().slice(0, 30)}" at ${Math.round(box.top)} px`;
    });
    if (covered !== null) found.push(covered);
  }
  return found;
}
