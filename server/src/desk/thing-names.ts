import { ENGLISH_CATALOGUE, type Words } from "@setfair/words";

/** Where the name of a part, a check or a kind of system stands among the words; the first that is there. */
const PREFIXES = ["part.", "check.", "thing.", "firmPrices.any."] as const;

/** The name of what a price of the terms is for; its id where it has none. */
export function thingName(id: string, words: Words): string {
  const found = PREFIXES.map((prefix) => `${prefix}${id}`).find((each) => words.has(each));
  return found === undefined ? id : words.say(found);
}

const fold = (name: string): string => name.trim().toLowerCase();

/** Ids that a price may be for, by themselves and by their names; a name that two share finds neither. */
export function thingIds(words: Words): ReadonlyMap<string, string> {
  const ids = Object.keys(ENGLISH_CATALOGUE).flatMap((key) => {
    const prefix = PREFIXES.find((each) => key.startsWith(each));
    return prefix === undefined ? [] : [key.slice(prefix.length)];
  });
  const found = new Map<string, string>();
  const shared = new Set<string>();
  for (const id of new Set(ids)) {
    const name = fold(thingName(id, words));
    if (found.has(name)) shared.add(name);
    found.set(name, id);
  }
  for (const name of shared) found.delete(name);
  for (const id of ids) found.set(fold(id), id);
  return found;
}

export const foldThing = fold;
