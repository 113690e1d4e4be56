import type { Door } from "./door.ts";

const fold = (text: string) => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();

/** The words by which something is found: each word of the texts without marks, whole and in its parts. */
export function wordsOf(texts: readonly string[]): string[] {
  const found = new Set<string>();
  for (const text of texts) {
    const words = fold(text).split(/\s+/);
    for (const word of [...words, words.join("")]) {
      const whole = word.replace(/[^\p{L}\p{N}]/gu, "");
      if (whole !== "") found.add(whole.slice(0, 60));
    }
    for (const part of fold(text).split(/[^\p{L}\p{N}]+/u)) if (part !== "") found.add(part.slice(0, 60));
  }
  return [...found];
}

/** What was typed, as beginnings of words. */
export function beginningsOf(typed: string): string[] {
  const words = fold(typed)
    .split(/\s+/)
    .map((word) => word.replace(/[^\p{L}\p{N}]/gu, "").slice(0, 60));
  return [...new Set(words.filter((word) => word !== ""))].slice(0, 8);
}

/** First text after every text that begins so, compared by code point. */
export const endOfBeginning = (beginning: string): string => `${beginning}\u{10ffff}`;

/** Replaces the words of one thing. */
export async function indexWords(
  door: Door,
  table: "hire_word" | "customer_word",
  targetId: string,
  texts: readonly string[],
): Promise<void> {
  await door.remove(table).where("target_id", "=", targetId).execute();
  const words = wordsOf(texts);
  if (words.length > 0) {
    await door
      .insert(
        table,
        words.map((word) => ({ word, target_id: targetId })),
      )
      .execute();
  }
}
