import type { Locator, Page } from "playwright-core";

/** A civil time some hours from now in the depot's zone, cut to the quarter hour: `YYYY-MM-DDTHH:MM`. */
export function civilIn(hours: number): string {
  const at = new Date(Math.floor(Date.now() / 900_000) * 900_000 + hours * 3_600_000);
  return at.toLocaleString("sv-SE", { timeZone: "Europe/London" }).slice(0, 16).replace(" ", "T");
}

export async function signIn(page: Page, url: string, login: string, password: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel("Name to sign in with").fill(login);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByRole("button", { name: "Sign out" }).waitFor();
}

/** Types a date, or a date and time, into a field of segments as a person with a keyboard does. */
export async function typeDate(within: Page | Locator, label: string | RegExp, iso: string): Promise<void> {
  const group = within.getByRole("group", { name: label }).first();
  const [date, time] = iso.split("T");
  const [year, month, day] = (date ?? "").split("-");
  await group.waitFor();
  const segments = group.getByRole("spinbutton");
  const count = await segments.count();
  const texts = [day, month, year, ...(time ?? "").split(":")];
  for (let k = 0; k < count; k++) {
    await segments.nth(k).click();
    await segments.nth(k).pressSequentially(String(Number(texts[k])).padStart(k === 2 ? 4 : 2, "0"));
  }
}

export async function typeNumber(
  within: Page | Locator,
  label: string | RegExp,
  value: number,
): Promise<void> {
  const field = within.getByLabel(label).first();
  await field.fill(String(value));
  await field.press("Tab");
}

/** Draws something like a signature on a canvas. */
export async function drawSignature(page: Page, canvas: Locator): Promise<void> {
  await canvas.scrollIntoViewIfNeeded();
  const box = await canvas.boundingBox();
  if (box === null) throw new Error("the signature field is not on the page");
  await page.mouse.move(box.x + 20, box.y + box.height / 2);
  await page.mouse.down();
  for (let k = 1; k <= 8; k++)
    await page.mouse.move(box.x + 20 + k * 15, box.y + box.height / 2 + (k % 2 === 0 ? 14 : -14));
  await page.mouse.up();
}

/** Opens a part of the hire's page by its tab. */
export async function openPart(page: Page, name: string): Promise<void> {
  await page
    .getByRole("navigation", { name: "Parts of this hire" })
    .getByRole("link", { name, exact: true })
    .click();
}

/** Signs what is shown in the open dialog. */
export async function signDialog(page: Page): Promise<void> {
  const dialog = page.getByRole("dialog");
  await drawSignature(page, dialog.locator("canvas"));
  await dialog.getByRole("button", { name: "Keep the signature" }).click();
  await dialog.waitFor({ state: "detached" });
}

/** Names one driver with a car licence that was checked today. */
export async function nameDriver(page: Page, name: string): Promise<void> {
  await openPart(page, "People");
  await page.getByRole("button", { name: "Add a driver" }).click();
  await page.getByLabel("Name", { exact: true }).first().fill(name);
  await typeDate(page, "Born", "1985-04-02");
  await typeDate(page, "Full car licence since", "2004-06-01");
  await typeDate(page, "Valid from", "2004-06-01");
  await typeDate(page, "Valid to", "2055-04-01");
  await page.getByRole("button", { name: "Checked today" }).click();
  await page.getByRole("button", { name: "Keep the drivers" }).click();
}
