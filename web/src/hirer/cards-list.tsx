import type { BriefingCard } from "@setfair/engine";
import { cardText, cardTitle } from "../parts/cards.ts";
import { t } from "../parts/words.ts";

/** Cards in full: what to do, the caution in one line, and a question with its answer. */
export function Cards({ cards }: { readonly cards: readonly BriefingCard[] }) {
  if (cards.length === 0) return <p>{t("hirer.noCards")}</p>;
  return (
    <ul className="guide-cards">
      {cards.map((card) => {
        const caution = cardText(card, "caution");
        const ask = cardText(card, "ask");
        return (
          <li key={card.id}>
            <h3>{cardTitle(card)}</h3>
            <p>{cardText(card, "do")}</p>
            {caution !== null && <p className="guide-caution">{caution}</p>}
            {ask !== null && (
              <details className="guide-ask">
                <summary>{ask}</summary>
                <p>{cardText(card, "answer")}</p>
              </details>
            )}
          </li>
        );
      })}
    </ul>
  );
}
