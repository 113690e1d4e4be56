import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { ENGLISH_CATALOGUE } from "./english.ts";
import { GUIDE_FIRST, wholeGuide } from "./guide.ts";

const web = join(import.meta.dirname, "../../web/src");
const textOf = (folder: string) =>
  readdirSync(join(web, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.includes(".test."))
    .map((name) => readFileSync(join(web, folder, name), "utf8"))
    .join("\n");
const guide = await wholeGuide();

it("the phone brings every message that its pages and the shared parts name", () => {
  const text = ["hirer", "parts", "offline"].map(textOf).join("\n");
  const named = [...text.matchAll(/["'`]([a-z][A-Za-z]*(?:\.[A-Za-z0-9]+)+)["'`]/g)].map(
    (match) => match[1]!,
  );
  const ids = [...new Set(named)].filter((id) => Object.hasOwn(ENGLISH_CATALOGUE, id));
  expect(ids.length).toBeGreaterThan(60);
  expect(ids.filter((id) => !Object.hasOwn(guide, id))).toEqual([]);
});

it("and leaves the words of desk, yard and command line at home", () => {
  for (const id of ["hire.part.money", "yard.sign.title.agreement"])
    expect([Object.hasOwn(ENGLISH_CATALOGUE, id), Object.hasOwn(guide, id)]).toEqual([true, false]);
});

it("has the dangers and the titles of all cards from the first moment, in a fifth of the weight", () => {
  for (const id of ["hirer.danger.gas.1", "hirer.call", "card.heating.switchOnGas.title", "thing.lpg"])
    expect(Object.hasOwn(GUIDE_FIRST, id), id).toBe(true);
  const weigh = (messages: object) => JSON.stringify(messages).length;
  expect(weigh(GUIDE_FIRST)).toBeLessThan(weigh(guide) / 5);
});
