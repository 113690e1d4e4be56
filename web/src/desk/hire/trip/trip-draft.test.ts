import { expect, it } from "vitest";
import { isAtPlaceBefore, type Trip } from "./trip-draft.ts";

const at = (name: string, latitudeDeg: number) => ({ name, latitudeDeg, longitudeDeg: -3, country: "GB" });
const trip = (...places: readonly ReturnType<typeof at>[]) =>
  ({ depot: at("Depot", 54), stops: places.map((place) => ({ place })) }) as unknown as Trip;

it("a place that was typed and not chosen from the list still stands at the place before it, and that is said", () => {
  expect(isAtPlaceBefore(trip(at("Lakeside pitch", 54)), 0)).toBe(true);
  expect(isAtPlaceBefore(trip(at("Keswick", 54.6), at("Hill farm", 54.6)), 1)).toBe(true);
});

it("nothing is said of a place with a point of its own, of a name not yet typed, or of a second night at one place", () => {
  expect(isAtPlaceBefore(trip(at("Keswick", 54.6)), 0)).toBe(false);
  expect(isAtPlaceBefore(trip(at("", 54)), 0)).toBe(false);
  expect(isAtPlaceBefore(trip(at("Keswick", 54.6), at("Keswick", 54.6)), 1)).toBe(false);
  expect(isAtPlaceBefore(trip(), 3)).toBe(false);
});
