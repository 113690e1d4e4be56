import type { CountryCard } from "@setfair/engine";
import type { Guide } from "../offline/database.ts";
import { CountryLines } from "../parts/country-lines.tsx";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { dateText, figureText, t } from "../parts/words.ts";

/** What holds in each country of the route for this vehicle, with its doubt and its sources. */
export default function CountriesPage({ guide }: { readonly guide: Guide }) {
  const countries = guide.countries ?? [];
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t("hirer.countries.title")}</h1>
      <p>{t(countries.length === 0 ? "hirer.countries.none" : "hirer.countries.lead")}</p>
      {countries.map(({ card, sources }) => (
        <Country key={(card as CountryCard).country} card={card as CountryCard} sources={sources} />
      ))}
      <p className="guide-caution">{t("abroad.caution")}</p>
      <a className="button" href="#day">
        {t("hirer.panel.back")}
      </a>
    </ScrollMain>
  );
}

interface CountryProps {
  readonly card: CountryCard;
  readonly sources: readonly string[];
}

function Country({ card, sources }: CountryProps) {
  const name = t("country.name", { country: card.country });
  const dates = { enter: dateText(card.enter, "short"), leave: dateText(card.leave, "short") };
  return (
    <section className="card stack-tight" aria-label={name}>
      <h2>{t("abroad.card", { country: name, ...dates })}</h2>
      {card.known ? <Rules card={card} sources={sources} /> : <p>{t("hirer.countries.unknown")}</p>}
    </section>
  );
}

const Rules = ({ card, sources }: CountryProps) => (
  <>
    <CountryLines card={card} figure={(figure) => <strong className="nowrap">{figureText(figure)}</strong>} />
    <details>
      <summary>{t("hirer.countries.sources")}</summary>
      <ul className="country-sources">
        {sources.map((source) => (
          <li key={source}>{source}</li>
        ))}
      </ul>
    </details>
  </>
);
