import { describe, expect, it } from "vitest";
import { draftOf, sheetOf } from "./use-sheet.ts";

const trip = { depart: "2026-07-03T12:00", return: "2026-07-06T10:00" };
const EMPTY = { added: [], readings: [], distanceKm: null };
const draft = { fuel: 42.5, fuelFull: true, def: 1.5, lpg: null, distanceKm: 410 };

describe("the sheet of what was used", () => {
  it("is the same again after it was kept", () => {
    expect(draftOf(sheetOf(draft, trip, EMPTY))).toEqual(draft);
    const bare = { fuel: 20, fuelFull: false, def: null, lpg: 6, distanceKm: null };
    expect(draftOf(sheetOf(bare, trip, EMPTY))).toEqual(bare);
  });

  it("leaves what it does not ask for as it was", () => {
    const read = { store: "lpg" as const, value: 9, unit: "kg" as const, at: trip.return };
    const emptied = { store: "cassette" as const, amount: 12, at: trip.return };
    const kept = sheetOf(draft, trip, { added: [emptied], readings: [read], distanceKm: 1 });
    expect(kept.readings).toContainEqual(read);
    expect(kept.added).toContainEqual(emptied);
    expect(sheetOf(draft, trip, kept)).toEqual(kept);
  });

  it("says that a tank was full at both ends only where somebody filled it", () => {
    const none = sheetOf({ ...draft, fuel: null, def: 0 }, trip, EMPTY);
    expect(none).toEqual({ added: [], readings: [], distanceKm: 410 });
  });
});
