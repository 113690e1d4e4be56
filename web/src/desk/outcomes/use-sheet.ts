import type { Schemas } from "../../api/client.ts";

export type Sheet = Schemas["UseSheet"];
/** What the form asks for; null while nothing is entered. */
export interface SheetDraft {
  readonly fuel: number | null;
  readonly fuelFull: boolean;
  readonly def: number | null;
  readonly lpg: number | null;
  readonly distanceKm: number | null;
}

/** a tank filled to the click twice: how far apart, % of the tank (practice) */
const CLICK_SD = 1;

function amountOf({ added }: Sheet, store: "fuel" | "def" | "lpg"): number | null {
  const own = added.filter((each) => each.store === store);
  return own.length === 0 ? null : own.reduce((sum, { amount }) => sum + amount, 0);
}

export function draftOf(sheet: Sheet): SheetDraft {
  return {
    fuel: amountOf(sheet, "fuel"),
    fuelFull: sheet.readings.some(({ store, value }) => store === "fuel" && value === 100),
    def: amountOf(sheet, "def"),
    lpg: amountOf(sheet, "lpg"),
    distanceKm: sheet.distanceKm,
  };
}

const ASKED: readonly string[] = ["fuel", "def", "lpg"];
const FILLED: readonly string[] = ["fuel", "def"];

/** The sheet as it is kept: amounts at the trip's end, tanks that were full at both, and what the form does not ask for as before. */
export function sheetOf(
  draft: SheetDraft,
  trip: { readonly depart: string; readonly return: string },
  before: Sheet,
): Sheet {
  const added = (["fuel", "def", "lpg"] as const).flatMap((store) => {
    const amount = draft[store];
    return amount === null || amount <= 0 ? [] : [{ store, amount, at: trip.return }];
  });
  const full = (store: "fuel" | "def") =>
    [trip.depart, trip.return].map((at) => ({ store, value: 100, unit: "%" as const, at, sd: CLICK_SD }));
  const has = (store: string) => added.some((each) => each.store === store);
  return {
    added: [...before.added.filter(({ store }) => !ASKED.includes(store)), ...added],
    readings: [
      ...before.readings.filter(({ store }) => !FILLED.includes(store)),
      ...(draft.fuelFull && has("fuel") ? full("fuel") : []),
      ...(has("def") ? full("def") : []),
    ],
    distanceKm: draft.distanceKm,
  };
}
