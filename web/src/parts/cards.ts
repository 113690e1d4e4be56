import type { Briefing, BriefingCard } from "@setfair/engine";
import { has, say } from "./words.ts";

/** Cards of a composed briefing in the order of the demonstration; the API carries it as the engine made it. */
export function cardsToShow(briefing: unknown): readonly BriefingCard[] {
  return ((briefing as Briefing | null)?.demonstrate ?? []).map(({ card }) => card);
}

/** Cards that are sent to read, the greatest risk first. */
export function cardsToRead(briefing: unknown): readonly BriefingCard[] {
  return ((briefing as Briefing | null)?.reading ?? []).map(({ card }) => card);
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
