/** The light door, for the hirer's phone: no text of desk, yard, papers or the command line. */
import type { PageCatalogue } from "./catalogue.ts";
import { GUIDE_FIRST } from "./en/guide-first.ts";

export type { MessageId, PageCatalogue } from "./catalogue.ts";
export { type DateStyle, isDateText } from "./date-text.ts";
export { type DistanceUnit, keptOf, timesTyped } from "./distances.ts";
export { GUIDE_FIRST } from "./en/guide-first.ts";
export type { Written } from "./figure-text.ts";
export { spanText } from "./span-text.ts";
export { type Argument, type Arguments, makeWords, type Piece, type Words } from "./words.ts";

/** Every message of the guide: what the first card needs and the rest, which is fetched now. Rejects with no signal. */
export async function wholeGuide(): Promise<PageCatalogue> {
  const { GUIDE_REST } = await import("./en/guide-rest.ts");
  return { ...GUIDE_FIRST, ...GUIDE_REST };
}
