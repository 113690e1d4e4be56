import type { ENGLISH } from "./en/index.generated.ts";

/** Every message of the catalogue; a missing one does not compile. */
export type MessageId = keyof typeof ENGLISH;
/** One language: every message, in ICU message format. */
export type Catalogue = Readonly<Record<MessageId, string>>;
/** The messages of one page; asked for another it throws. */
export type PageCatalogue = Readonly<Partial<Catalogue>>;
