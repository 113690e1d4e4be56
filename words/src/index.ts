/** The only door of the words. */
export { type Catalogue, ENGLISH_CATALOGUE, isMessageId, type MessageId } from "./catalogue.ts";
export { type DateStyle, isDateText } from "./date-text.ts";
export type { Written } from "./figure-text.ts";
export { type Argument, type Arguments, createWords, type Piece, type Words } from "./words.ts";
