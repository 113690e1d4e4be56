import type { BriefingCard } from "@setfair/engine";
import { useState } from "react";
import type { Guide } from "../offline/database.ts";
import { cardsToRead, cardsToShow, cardText } from "../parts/cards.ts";
import { alsoText } from "../parts/finder/fault-words.ts";
import { matches } from "../parts/finder/matches.ts";
import { has, say, t } from "../parts/words.ts";
import { Cards } from "./cards-list.tsx";
import { Opening } from "./opening.tsx";
import { SearchField } from "./search-field.tsx";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const thingName = (kind: string): string => capital(has(`thing.${kind}`) ? say(`thing.${kind}`) : kind);

/** Looked for in what the card says, in its thing and in its moment. */
const speaksOf = (card: BriefingCard, typed: string): boolean =>
  matches(
    typed,
    cardText(card, "title"),
    cardText(card, "do"),
    thingName(card.id.split(".")[0] ?? ""),
    alsoText(card.id.split(".")[0] ?? ""),
    t(`hirer.moment.${card.moment}`),
  );

/** The same cards by thing, for when something is wrong or somebody wonders. */
export function Things({ guide }: { readonly guide: Guide }) {
  const [typed, setTyped] = useState("");
  const groups = new Map<string, BriefingCard[]>();
  const all = [...cardsToShow(guide.briefing), ...cardsToRead(guide.briefing)];
  const cards = typed.trim() === "" ? all : all.filter((card) => speaksOf(card, typed));
  for (const card of cards) {
    const kind = card.id.split(".")[0] ?? "";
    groups.set(kind, [...(groups.get(kind) ?? []), card]);
  }
  const sorted = [...groups].sort(([a], [b]) => thingName(a).localeCompare(thingName(b)));
  return (
    <section id="things" aria-labelledby="things-title">
      <h2 id="things-title">{t("hirer.things.title")}</h2>
      <p className="quiet">{t("hirer.things.help")}</p>
      <SearchField label={t("hirer.things.search")} value={typed} onChange={setTyped} />
      {typed.trim() !== "" && (
        <div className="found-cards" role="status">
          <p className="quiet">{t("hirer.things.found", { n: cards.length })}</p>
          {cards.length > 0 && <Cards cards={cards} />}
        </div>
      )}
      <ul className="things">
        {typed.trim() === "" &&
          sorted.map(([kind, cards]) => (
            <li key={kind}>
              <Opening head={<strong className="day-name">{thingName(kind)}</strong>}>
                {() => <Cards cards={cards} />}
              </Opening>
            </li>
          ))}
      </ul>
    </section>
  );
}
