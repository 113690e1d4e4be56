import { expect, it } from "vitest";
import { matches } from "./matches.ts";

it("finds a card by the beginnings of its words, whatever the case and the accents", () => {
  expect(matches("gas bot", "Shut the gas bottle", null)).toBe(true);
  expect(matches("CAFE", "Café on the pitch")).toBe(true);
  expect(matches("ottle", "Shut the gas bottle")).toBe(false);
  expect(matches("", "anything")).toBe(true);
  expect(matches("gas heater", "Shut the gas", "Heater")).toBe(true);
});
