import type { Catalogue, MessageId } from "./catalogue.ts";
import type { DistanceUnit } from "./distances.ts";
import { ENGLISH } from "./en/index.generated.ts";
import { makeWords, type Words } from "./words.ts";

export const ENGLISH_CATALOGUE: Catalogue = ENGLISH;

/** True when a text of this name exists: for ids that come from the engine as plain strings. */
export function isMessageId(id: string): id is MessageId {
  return Object.hasOwn(ENGLISH, id);
}

/** The words of one language with every message, English where nothing else is handed in. */
export function createWords(
  locale = "en-GB",
  catalogue: Catalogue = ENGLISH_CATALOGUE,
  zoneOf: () => string = () => "UTC",
  distancesOf: () => DistanceUnit = () => "km",
): Words {
  return makeWords(locale, catalogue, zoneOf, distancesOf);
}
