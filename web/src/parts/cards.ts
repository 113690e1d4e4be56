import type { BriefingCard } from "@setfair/engine";
import { has, say } from "./words.ts";

/** Cards of a composed briefing, in order; the API carries it as the engine made it. */
export function cardsOf(briefing: unknown): readonly BriefingCard[] {
  const cards =
    (briefing as { readonly cards?: readonly (BriefingCard | { readonly card: BriefingCard })[] } | null)
      ?.cards ?? [];
  return cards.map((entry) => ("card" in entry ? entry.card : entry));
}

/** A message of a card with its facts; null where the catalogue has none. */
export function cardText(
  card: Pick<BriefingCard, "id" | "facts">,
  part: "title" | "do" | "caution" | "ask" | "answer",
): string | null {
  const id = `card.${card.id}.${part}`;
  if (!has(id)) return null;
  try {
    return say(id, card.facts);
  } catch {
    // a text that wants a fact which the card lacks must not take the page down
    return null;
  }
}

export const cardTitle = (card: Pick<BriefingCard, "id" | "facts">): string =>
  cardText(card, "title") ?? card.id;
