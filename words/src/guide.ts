/** The light door, for the hirer's phone: no text of desk, yard, papers or the command line. */
export type { MessageId, PageCatalogue } from "./catalogue.ts";
export { type DateStyle, isDateText } from "./date-text.ts";
export { GUIDE as GUIDE_CATALOGUE } from "./en/guide.generated.ts";
export type { Written } from "./figure-text.ts";
export { type Argument, type Arguments, makeWords, type Piece, type Words } from "./words.ts";
