import type { CardLine, CountryCard } from "@setfair/engine";
import type { ReactNode } from "react";
import type { Guide } from "../offline/database.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { dateText, figureText, t } from "../parts/words.ts";

/** What holds in each country of the route for this vehicle, with its doubt and its sources. */
export default function CountriesPage({ guide }: { readonly guide: Guide }) {
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t("hirer.countries.title")}</h1>
      <p>{t("hirer.countries.lead")}</p>
      {(guide.countries ?? []).map(({ card, sources }) => (
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

function Rules({ card, sources }: CountryProps) {
  return (
    <>
      <dl className="country-rules">
        <Limits card={card} />
        <Kit card={card} />
        {card.zone !== null && (
          <Line name={t("abroad.zones")} line={card.zone}>
            {t("country.zone", { value: card.zone.value })}
          </Line>
        )}
        {card.tolls.map((line) => (
          <Line key={line.ruleId} name={t("abroad.tolls")} line={line}>
            {t("country.toll", { value: line.value })}
          </Line>
        ))}
        {card.night !== null && (
          <Line name={t("abroad.night")} line={card.night}>
            {t("country.night", { value: card.night.value })}
          </Line>
        )}
        {card.lpgFiller !== null && (
          <Line name={t("abroad.filler")} line={card.lpgFiller}>
            {card.lpgFiller.adaptors.map((adaptor) => t("country.adaptor", { adaptor })).join(", ")}
          </Line>
        )}
        <Alcohol alcohol={card.alcohol} />
      </dl>
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
}

function Doubt({ line }: { readonly line: CardLine }) {
  const said = [
    ...(line.unsettled ? [t("abroad.unsettled")] : []),
    ...(line.fromMemory ? [t("abroad.fromMemory")] : []),
  ];
  return said.length === 0 ? null : <em className="country-doubt">({said.join("; ")})</em>;
}

interface LineProps {
  readonly name: string;
  readonly line: CardLine;
  readonly children: ReactNode;
}

const Line = ({ name, line, children }: LineProps) => (
  <div>
    <dt>{name}</dt>
    <dd>
      {children} <Doubt line={line} />
    </dd>
  </div>
);

const Limits = ({ card }: { readonly card: CountryCard }) => (
  <div>
    <dt>{t("abroad.limits")}</dt>
    <dd>
      {card.speeds.length === 0 ? (
        t("country.signed")
      ) : (
        <ul>
          {card.speeds.map(({ road, limit, line }) => (
            <li key={road}>
              {t("country.road", { road })}: <strong className="nowrap">{figureText(limit)}</strong>{" "}
              <Doubt line={line} />
            </li>
          ))}
        </ul>
      )}
    </dd>
  </div>
);

function Kit({ card }: { readonly card: CountryCard }) {
  if (card.kit.length === 0) return null;
  return (
    <div>
      <dt>{t("abroad.kitOf")}</dt>
      <dd>
        <ul>
          {card.kit.map((line) => (
            <li key={line.ruleId}>
              {t("country.thing", { thing: line.thing })}: {t("country.kit.value", { value: line.value })}
              {line.aboard && `, ${t("abroad.aboard")}`} <Doubt line={line} />
            </li>
          ))}
        </ul>
      </dd>
    </div>
  );
}

function Alcohol({ alcohol }: { readonly alcohol: CountryCard["alcohol"] }) {
  if (alcohol === null) return null;
  const { limit, novice } = alcohol;
  return (
    <div>
      <dt>{t("abroad.alcohol")}</dt>
      <dd>
        {figureText(limit)}
        {novice !== null && `, ${t("abroad.novice")} ${figureText(novice)}`}
      </dd>
    </div>
  );
}
