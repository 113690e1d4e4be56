import type { CountryCard } from "@setfair/engine";
import { CountryLines } from "../../../parts/country-lines.tsx";
import { FigureTap } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";

/** One country as the hirer gets it; each figure opens to where it comes from. */
export function CountryCardView({ card }: { readonly card: CountryCard }) {
  const name = t("country.name", { country: card.country });
  const dates = { enter: dateText(card.enter, "short"), leave: dateText(card.leave, "short") };
  return (
    <section className="card" aria-label={name}>
      <h2>{t("abroad.card", { country: name, ...dates })}</h2>
      {card.known && (
        <CountryLines card={card} figure={(figure, label) => <FigureTap figure={figure} label={label} />} />
      )}
    </section>
  );
}
