/**
 * How easy the English texts are to read, on Flesch's scale: 206.835 − 1.015 words per sentence − 84.6 syllables
 * per word (R. Flesch, "A new readability yardstick", 1948; formula from memory). 60 to 70 is plain English.
 * A sentence ends at . ? ! and, as each half stands by itself, at : and ; — a title counts as one. Syllables are
 * counted by the package `syllable`, offline. Numbers are read as a word of one syllable.
 */
import { IntlMessageFormat } from "intl-messageformat";
import { syllable } from "syllable";
import { ENGLISH_CATALOGUE } from "../src/english.ts";

const TEXTS: Readonly<Record<string, string>> = ENGLISH_CATALOGUE;

export interface Ease {
  readonly id: string;
  readonly ease: number;
  readonly text: string;
}

/** Reading ease of a text as it is heard; higher is easier. */
export function readingEase(text: string): number {
  const words = text.match(/[A-Za-z'’]+/g) ?? [];
  const sentences = text.split(/[.?!:;]+(?:\s|$)/).filter((part) => /[A-Za-z]/.test(part)).length;
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  return (
    206.835 - 1.015 * (words.length / Math.max(1, sentences)) - 84.6 * (syllables / Math.max(1, words.length))
  );
}

/** Every card, title and act and caution together, hardest first. */
export function easeOfCards(): readonly Ease[] {
  return Object.keys(TEXTS)
    .filter((id) => /^card\..+\.title$/.test(id))
    .map((id) => easeOf(id.replace(/^card\.|\.title$/g, ""), cardTexts(id.replace(/\.title$/, ""))))
    .sort((a, b) => a.ease - b.ease);
}

/** Every step of the fault finder, hardest first. */
export function easeOfFaultChecks(): readonly Ease[] {
  return Object.keys(TEXTS)
    .filter((id) => id.startsWith("faultCheck."))
    .map((id) => easeOf(id, [plain(id)]))
    .sort((a, b) => a.ease - b.ease);
}

/** Middle value. */
export function medianOf(eases: readonly Ease[]): number {
  const sorted = eases.map(({ ease }) => ease).sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle) - 1]!) / 2;
}

function cardTexts(card: string): readonly string[] {
  return ["title", "do", "caution"]
    .map((part) => `${card}.${part}`)
    .filter((id) => id in TEXTS)
    .map(plain);
}

function easeOf(id: string, texts: readonly string[]): Ease {
  const text = texts.map((part) => (/[.?!:]$/.test(part) ? part : `${part}.`)).join(" ");
  return { id, ease: readingEase(text), text };
}

/** A text with its things named, every number nine, and the last branch of every choice. */
function plain(id: string): string {
  const text = TEXTS[id]!;
  const args = Object.fromEntries(
    [...text.matchAll(/\{\s*(\w+)\s*(?:\}|,\s*(\w+))/g)].map(([, name, kind]) => [
      name!,
      name!.startsWith("thing_") ? TEXTS[`thing.${name!.slice(6)}`]! : kind === "select" ? "other" : 9,
    ]),
  );
  return String(new IntlMessageFormat(text, "en-GB").format(args)).replace(/\d+(?:[.,]\d+)*/g, "nine");
}
