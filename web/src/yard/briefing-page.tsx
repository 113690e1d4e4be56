import type { YardJob } from "../offline/database.ts";
import { cardsToShow, cardText, cardTitle } from "../parts/cards.ts";
import { t } from "../parts/words.ts";
import { SignPage } from "./sign-page.tsx";
import type { WalkActs } from "./use-walk.ts";

const HOW = ["shown", "ownHands", "declined"] as const;

/** What was shown, item by item; what the hirer did with their own hands is kept apart. */
export function BriefingPage({ job, acts }: { readonly job: YardJob; readonly acts: WalkActs }) {
  const cards = cardsToShow(job.briefing);
  const open = cards.filter(({ id }) => !acts.walk.briefed.has(id));
  return (
    <SignPage
      job={job}
      acts={acts}
      purpose="briefing"
      notYet={open.length === 0 ? null : t("yard.briefing.open", { n: open.length })}
    >
      <ul className="stack">
        {cards.map((card) => {
          const now = acts.walk.briefed.get(card.id);
          const caution = card.hasCaution ? cardText(card, "caution") : null;
          return (
            <li key={card.id} className="card stack-tight">
              <h2>{cardTitle(card)}</h2>
              <p>{cardText(card, "do")}</p>
              {caution !== null && <p className="yard-note yard-warn">{caution}</p>}
              {card.hasQuestion && cardText(card, "ask") !== null && (
                <p className="yard-note">
                  {cardText(card, "ask")} {cardText(card, "answer")}
                </p>
              )}
              <fieldset className="chips three-chips">
                <legend className="visually-hidden">{cardTitle(card)}</legend>
                {HOW.map((how) => (
                  <button
                    key={how}
                    type="button"
                    className="chip"
                    aria-pressed={now === how}
                    onClick={() => void acts.keep("briefed", { about: card.id, how })}
                  >
                    {t(`yard.briefed.${how}`)}
                  </button>
                ))}
              </fieldset>
            </li>
          );
        })}
      </ul>
    </SignPage>
  );
}
