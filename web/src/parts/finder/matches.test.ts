import { expect, it } from "vitest";
import { matches } from "./matches.ts";

it("finds a card by the beginnings of its words, whatever the case and the accents", () => {
  expect(matches("gas bot", "Shut the gas bottle", null)).toBe(true);
  expect(matches("CAFE", "Café on the pitch")).toBe(true);
  expect(matches("ottle", "Shut the gas bottle")).toBe(false);
  expect(matches("", "anything")).toBe(true);
  expect(matches("gas heater", "Shut the gas", "Heater")).toBe(true);
});

it("finds other forms of a word, since nobody types the word that the list has", () => {
  expect(matches("heating", "The heater gives no heat")).toBe(true);
  expect(matches("leaking", "The tap leaks")).toBe(true);
  expect(matches("toilets", "The toilet does not flush")).toBe(true);
  expect(matches("heart", "The heater gives no heat")).toBe(false);
  expect(matches("water", "The waste tank")).toBe(false);
});

it("does not ask for the little words of a sentence", () => {
  expect(matches("the heating is off", "The heater gives no heat")).toBe(true);
  expect(matches("no", "The heater gives no heat")).toBe(true);
  expect(matches("not the fridge", "The heater gives no heat")).toBe(false);
});
