import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { ENGLISH_CATALOGUE } from "./english.ts";
import { GUIDE_CATALOGUE } from "./guide.ts";

const web = join(import.meta.dirname, "../../web/src");
const textOf = (folder: string) =>
  readdirSync(join(web, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.includes(".test."))
    .map((name) => readFileSync(join(web, folder, name), "utf8"))
    .join("\n");

it("the phone brings every message that its pages and the shared parts name", () => {
  const text = ["hirer", "parts", "offline"].map(textOf).join("\n");
  const named = [...text.matchAll(/["'`]([a-z][A-Za-z]*(?:\.[A-Za-z0-9]+)+)["'`]/g)].map(
    (match) => match[1]!,
  );
  const ids = [...new Set(named)].filter((id) => Object.hasOwn(ENGLISH_CATALOGUE, id));
  expect(ids.length).toBeGreaterThan(60);
  expect(ids.filter((id) => !Object.hasOwn(GUIDE_CATALOGUE, id))).toEqual([]);
});

it("and leaves the words of desk, yard and command line at home", () => {
  for (const id of ["hire.part.money", "yard.sign.title.agreement"])
    expect([Object.hasOwn(ENGLISH_CATALOGUE, id), Object.hasOwn(GUIDE_CATALOGUE, id)]).toEqual([true, false]);
});
