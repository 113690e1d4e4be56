import { readFileSync } from "node:fs";
import { figure } from "@setfair/engine";
import { IntlMessageFormat } from "intl-messageformat";
import { expect, test } from "vitest";
// @ts-expect-error plain JavaScript, no types
import { guideText, indexText } from "../generate-index.mjs";
import { ENGLISH, ENGLISH_FILES } from "./en/index.generated.ts";
import { createWords } from "./index.ts";

const words = createWords("en-GB");
const kilos = (value: number) => figure(value, "kg", "-", {}, "declared");

test("the list of catalogue files is up to date (node words/generate-index.mjs)", () => {
  expect(readFileSync(new URL("./en/index.generated.ts", import.meta.url), "utf8")).toBe(indexText());
  expect(readFileSync(new URL("./en/guide.generated.ts", import.meta.url), "utf8")).toBe(guideText());
});

test("every message parses as an ICU message", () => {
  const broken = Object.entries(ENGLISH).filter(([, text]) => {
    try {
      return new IntlMessageFormat(text, "en-GB").getAst().length === 0 && text !== "";
    } catch {
      return true;
    }
  });
  expect(broken).toEqual([]);
});

test("no message is given in two files", () => {
  const ids = Object.values(ENGLISH_FILES).flatMap((file) => Object.keys(file));
  expect(ids.filter((id, k) => ids.indexOf(id) !== k)).toEqual([]);
});

test("every {thing_…} token has a name", () => {
  const lacking = Object.values(ENGLISH)
    .flatMap((text) => [...text.matchAll(/\{thing_([A-Za-z0-9]+)\}/g)].map((match) => `thing.${match[1]}`))
    .filter((id) => !words.has(id));
  expect(lacking).toEqual([]);
});

test("one night and two nights", () => {
  expect(words.figureText(figure(1, "nights", "-", {}, "declared"))).toBe("1 night");
  expect(words.figureText(figure(2, "nights", "-", {}, "declared"))).toBe("2 nights");
});

test("a price for each of something is written in pounds", () => {
  const rate = (value: number, unit: string) => words.figureText({ value, unit });
  expect(rate(3200, "pence/h")).toBe("£32 an hour");
  expect(rate(12, "pence/km")).toBe("£0.12 a km");
  expect(rate(165, "pence/L")).toBe("£1.65 a litre");
  expect(rate(1250, "pence/kg")).toBe("£12.50 a kilogram");
});

test("figures carry their unit and no digits that say nothing", () => {
  expect(words.figureText(kilos(215.6))).toBe("216 kg");
  expect(words.figureText(kilos(-12.4))).toBe("−12.4 kg");
  expect(words.figureText(kilos(3499.6))).toBe("3,500 kg");
  expect(words.figureText({ value: 0.7, unit: "share" })).toBe("70 %");
  expect(words.figureText({ value: 2.891, unit: "m" })).toBe("2.89 m");
});

test("whole pounds have no pence, others have two digits", () => {
  expect(words.moneyText({ currency: "GBP", pence: 114800 })).toBe("£1,148");
  expect(words.moneyText({ currency: "GBP", pence: 114850 })).toBe("£1,148.50");
  expect(words.moneyText({ currency: "GBP", pence: -50 })).toBe("−£0.50");
});

test("dates are civil: no zone moves them", () => {
  expect(words.dateText("2026-07-03")).toBe("Fri 3 July");
  expect(words.dateText("2026-07-03T12:15", "dayTime")).toBe("Fri 3 July 12:15");
  expect(words.dateText("2026-07-03T11:15:00Z", "time", "Europe/London")).toBe("12:15");
  expect(() => words.dateText("3 July")).toThrow(/neither/);
});

test("a missing message is a type error and throws", () => {
  // @ts-expect-error there is no such message
  expect(() => words.t("no.such.message")).toThrow(/no\.such\.message/);
  expect(() => words.say("no.such.message")).toThrow(/no\.such\.message/);
});

test("a missing argument throws", () => {
  expect(() => words.t("unit.nights", { n: 1 })).toThrow(/text/);
});

test("a finding without a text says so and names its code", () => {
  expect(words.findingText({ code: "noSuchCode", facts: {} })).toMatch(/noSuchCode/);
});
