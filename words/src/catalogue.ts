import { ENGLISH } from "./en/index.generated.ts";

/** Every message of the catalogue; a missing one does not compile. */
export type MessageId = keyof typeof ENGLISH;
/** One language: every message, in ICU message format. */
export type Catalogue = Readonly<Record<MessageId, string>>;

export const ENGLISH_CATALOGUE: Catalogue = ENGLISH;

/** True when a text of this name exists: for ids that come from the engine as plain strings. */
export function isMessageId(id: string): id is MessageId {
  return Object.hasOwn(ENGLISH, id);
}
