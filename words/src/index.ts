/** The door of the words; a page that needs few of them goes through `guide.ts`. */
export type { Catalogue, MessageId, PageCatalogue } from "./catalogue.ts";
export { type DateStyle, isDateText } from "./date-text.ts";
export type { DistanceUnit } from "./distances.ts";
export { createWords, ENGLISH_CATALOGUE, isMessageId } from "./english.ts";
export type { Written } from "./figure-text.ts";
export { MESSAGE_DRAFTS } from "./message-drafts.ts";
export { spanText } from "./span-text.ts";
export { type Argument, type Arguments, makeWords, type Piece, type Words } from "./words.ts";
