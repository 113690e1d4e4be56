import { type DistanceUnit, makeWords, type PageCatalogue, type Words } from "@setfair/words/guide";

let zone = "Europe/London";
let spoken: Words | undefined;

/** The depot's time zone, in which instants are written; known once somebody has signed in. */
export function writeTimesIn(timeZone: string): void {
  zone = timeZone;
}

const DISTANCES = "setfair.distances";
let distanceUnit: DistanceUnit | null = null;

/** Whether this depot writes distances in miles; kept on the device, since a tablet starts with no signal too. */
export function writeDistancesIn(unit: DistanceUnit): void {
  distanceUnit = unit;
  try {
    localStorage.setItem(DISTANCES, unit);
  } catch {
    // storage refused: this page still knows it
  }
}

/** What distances are written and typed in on this page. */
export function distancesIn(): DistanceUnit {
  if (distanceUnit !== null) return distanceUnit;
  try {
    distanceUnit = localStorage.getItem(DISTANCES) === "mi" ? "mi" : "km";
  } catch {
    distanceUnit = "km";
  }
  return distanceUnit;
}

/** Chooses the messages of this page, once, before the page is drawn: the phone brings fewer than the desk. */
export function speak(catalogue: PageCatalogue, locale = "en-GB"): void {
  spoken = makeWords(locale, catalogue, () => zone, distancesIn);
}

/** The words of this page. */
export function words(): Words {
  if (spoken === undefined) throw new Error("words: the page has not chosen its messages; call speak first");
  return spoken;
}

export const t: Words["t"] = (id, args) => words().t(id, args);
export const say: Words["say"] = (id, args) => words().say(id, args);
export const has: Words["has"] = (id) => words().has(id);
export const figureText: Words["figureText"] = (figure) => words().figureText(figure);
export const moneyText: Words["moneyText"] = (money) => words().moneyText(money);
export const dateText: Words["dateText"] = (iso, style, timeZone) => words().dateText(iso, style, timeZone);
export const findingText: Words["findingText"] = (finding) => words().findingText(finding);
export const findingPieces: Words["findingPieces"] = (finding) => words().findingPieces(finding);
export const mendText: Words["mendText"] = (mend) => words().mendText(mend);
