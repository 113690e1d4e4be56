import { describe, expect, it } from "vitest";
import { draftOf, sheetOf } from "./use-sheet.ts";

const trip = { depart: "2026-07-03T12:00", return: "2026-07-06T10:00" };
const draft = { fuel: 42.5, fuelFull: true, def: 1.5, lpg: null, distanceKm: 410 };

describe("the sheet of what was used", () => {
  it("is the same again after it was kept", () => {
    expect(draftOf(sheetOf(draft, trip))).toEqual(draft);
    const bare = { fuel: 20, fuelFull: false, def: null, lpg: 6, distanceKm: null };
    expect(draftOf(sheetOf(bare, trip))).toEqual(bare);
  });

  it("says that a tank was full at both ends only where somebody filled it", () => {
    const none = sheetOf({ ...draft, fuel: null, def: 0 }, trip);
    expect(none).toEqual({ added: [], readings: [], distanceKm: 410 });
  });
});
