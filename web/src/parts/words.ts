import { createWords } from "@setfair/words";

/** The words of this page. One language for now; another is chosen here, once, before the page is drawn. */
export const words = createWords("en-GB");
export const { t, say, has, figureText, moneyText, dateText, findingText, mendText } = words;
