const plain = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
const wordsOf = (text: string): readonly string[] =>
  plain(text)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");

/** So many letters alike at the beginning make two forms of one word: heating and heater, leaks and leaking. */
const STEM_LETTERS = 4;
/** Letters that an ending may have. */
const ENDING_LETTERS = 3;

/** Whether what was typed begins the word, or is another form of it. */
function isForm(typed: string, word: string): boolean {
  if (word.startsWith(typed)) return true;
  let alike = 0;
  while (alike < typed.length && typed[alike] === word[alike]) alike++;
  return (
    alike >= STEM_LETTERS && typed.length - alike <= ENDING_LETTERS && word.length - alike <= ENDING_LETTERS
  );
}

/** Words that say nothing of what is meant. */
const EMPTY = new Set(["a", "an", "and", "is", "it", "my", "no", "not", "of", "off", "on", "the", "to"]);

/**
 * Whether every word typed begins a word of one of the texts, or is another form of one; nothing typed matches all. Little
 * words count only where nothing else was typed.
 */
export function matches(typed: string, ...texts: readonly (string | null)[]): boolean {
  const words = wordsOf(texts.join(" "));
  const all = wordsOf(typed);
  const telling = all.filter((word) => !EMPTY.has(word));
  return (telling.length > 0 ? telling : all).every((part) => words.some((word) => isForm(part, word)));
}
