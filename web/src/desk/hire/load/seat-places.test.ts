import { expect, it } from "vitest";
import { seatPlaces } from "./seat-places.ts";

const ROWS = [
  { place: "driver", behindFrontAxleM: 0.5, seats: 1 },
  { place: "passenger", behindFrontAxleM: 0.5, seats: 1 },
  { place: "rowTwo", behindFrontAxleM: 2, seats: 2 },
] as const;
const sits = (travellerId: string, behindFrontAxleM: number, place?: (typeof ROWS)[number]["place"]) => ({
  travellerId,
  behindFrontAxleM,
  place,
});
const read = (...seats: readonly ReturnType<typeof sits>[]) => [...seatPlaces(seats, ROWS).values()];

it("two people in front are driver and passenger, not both on the driver's seat", () => {
  expect(read(sits("a", 0.5), sits("b", 0.5), sits("c", 2))).toEqual(["driver", "passenger", "rowTwo"]);
});

it("a seat that is named is kept, and the other takes what is left", () => {
  expect(read(sits("a", 0.5), sits("b", 0.5, "driver"))).toEqual(["passenger", "driver"]);
});

it("more people than a row has seats stay in that row; where no seat stands none is named", () => {
  expect(read(sits("a", 0.5), sits("b", 0.5), sits("c", 0.5))).toEqual(["driver", "passenger", "driver"]);
  expect(read(sits("a", 3.3))).toEqual([null]);
});
