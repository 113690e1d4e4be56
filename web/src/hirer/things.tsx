import type { BriefingCard } from "@setfair/engine";
import type { Guide } from "../offline/database.ts";
import { cardsToRead, cardsToShow } from "../parts/cards.ts";
import { has, say, t } from "../parts/words.ts";
import { Cards } from "./cards-list.tsx";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const thingName = (kind: string): string => capital(has(`thing.${kind}`) ? say(`thing.${kind}`) : kind);

/** The same cards by thing, for when something is wrong or somebody wonders. */
export function Things({ guide }: { readonly guide: Guide }) {
  const groups = new Map<string, BriefingCard[]>();
  for (const card of [...cardsToShow(guide.briefing), ...cardsToRead(guide.briefing)]) {
    const kind = card.id.split(".")[0] ?? "";
    groups.set(kind, [...(groups.get(kind) ?? []), card]);
  }
  const sorted = [...groups].sort(([a], [b]) => thingName(a).localeCompare(thingName(b)));
  return (
    <section id="things" aria-labelledby="things-title">
      <h2 id="things-title">{t("hirer.things.title")}</h2>
      <p className="quiet">{t("hirer.things.help")}</p>
      <ul className="things">
        {sorted.map(([kind, cards]) => (
          <li key={kind}>
            <details className="day-place">
              <summary>
                <strong className="day-name">{thingName(kind)}</strong>
              </summary>
              <div className="day-inside">
                <Cards cards={cards} />
              </div>
            </details>
          </li>
        ))}
      </ul>
    </section>
  );
}
