import type { CardLine, CountryCard } from "@setfair/engine";
import type { ReactNode } from "react";
import { FigureTap } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";

/** One country as the hirer gets it, with what is unsettled or from memory said beside each line. */
export function CountryCardView({ card }: { readonly card: CountryCard }) {
  const name = t("country.name", { country: card.country });
  const dates = { enter: dateText(card.enter, "short"), leave: dateText(card.leave, "short") };
  return (
    <section className="card" aria-label={name}>
      <h2>{t("abroad.card", { country: name, ...dates })}</h2>
      {card.known && (
        <dl className="country-lines">
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
      )}
    </section>
  );
}

interface LineProps {
  readonly name: string;
  readonly line: CardLine;
  readonly children: ReactNode;
}

function Line({ name, line, children }: LineProps) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {children} <Doubt line={line} />
      </dd>
    </div>
  );
}

function Doubt({ line }: { readonly line: CardLine }) {
  const words = [
    ...(line.unsettled ? [t("abroad.unsettled")] : []),
    ...(line.fromMemory ? [t("abroad.fromMemory")] : []),
  ];
  return words.length === 0 ? null : <span className="doubt">({words.join("; ")})</span>;
}

function Limits({ card }: { readonly card: CountryCard }) {
  return (
    <div>
      <dt>{t("abroad.limits")}</dt>
      <dd>
        {card.speeds.length === 0
          ? t("country.signed")
          : card.speeds.map(({ road, limit, line }) => (
              <span key={road} className="limit">
                {t("country.road", { road })} <FigureTap figure={limit} label={t("country.road", { road })} />{" "}
                <Doubt line={line} />
              </span>
            ))}
      </dd>
    </div>
  );
}

function Kit({ card }: { readonly card: CountryCard }) {
  if (card.kit.length === 0) return null;
  return (
    <div>
      <dt>{t("abroad.kitOf")}</dt>
      <dd>
        <ul className="kit-lines">
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
  return (
    <div>
      <dt>{t("abroad.alcohol")}</dt>
      <dd>
        <FigureTap figure={alcohol.limit} label={t("abroad.alcohol")} />
        {alcohol.novice !== null && (
          <>
            {", "}
            {t("abroad.novice")} <FigureTap figure={alcohol.novice} label={t("abroad.novice")} />
          </>
        )}
      </dd>
    </div>
  );
}
