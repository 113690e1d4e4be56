import { expect, it } from "vitest";
import { easeOfCards, easeOfFaultChecks, medianOf, readingEase } from "./reading-ease.ts";

it("measures what the formula says", () => {
  // 8 words, 2 sentences, 8 syllables: 206.835 − 1.015 · 4 − 84.6 · 1
  expect(readingEase("Push the door shut. Turn the small key.")).toBeCloseTo(118.175, 6);
  expect(readingEase("Operating instructions necessitate familiarisation.")).toBeLessThan(0);
});

it("takes the middle of an odd and of an even number", () => {
  const eases = (values: readonly number[]) => values.map((ease) => ({ id: "", text: "", ease }));
  expect(medianOf(eases([3, 1, 2]))).toBe(2);
  expect(medianOf(eases([4, 1, 2, 3]))).toBe(2.5);
});

it("the cards are easy to read: median 65 or more, none under 45", () => {
  const cards = easeOfCards();
  expect(cards.length).toBeGreaterThan(80);
  const hard = cards.filter(({ ease }) => ease < 45).map(({ id, ease }) => `${id} ${ease.toFixed(0)}`);
  expect(hard).toEqual([]);
  expect(medianOf(cards)).toBeGreaterThanOrEqual(65);
});

it("the steps of the fault finder are easy to read: median 65 or more", () => {
  expect(medianOf(easeOfFaultChecks())).toBeGreaterThanOrEqual(65);
});
