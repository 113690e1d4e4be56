import { createWords } from "@setfair/words";

let zone = "Europe/London";

/** The depot's time zone, in which instants are written; known once somebody has signed in. */
export function writeTimesIn(timeZone: string): void {
  zone = timeZone;
}

/** The words of this page. One language for now; another is chosen here, once, before the page is drawn. */
export const words = createWords("en-GB", undefined, () => zone);
export const { t, say, has, figureText, moneyText, dateText, findingText, findingPieces, mendText } = words;
