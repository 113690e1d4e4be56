import type { CardLine, CountryCard, Figure, WinterLine } from "@setfair/engine";
import { spanText } from "@setfair/words/guide";
import type { ReactNode } from "react";
import { t, words } from "./words.ts";

interface CountryLinesProps {
  readonly card: CountryCard;
  /** how this page shows a figure: the desk opens it with a tap, the phone says it */
  readonly figure: (figure: Figure, label: string) => ReactNode;
}

/** What holds in one country for this vehicle; what is unsettled or from memory is said beside its line. */
export function CountryLines({ card, figure }: CountryLinesProps) {
  return (
    <dl className="country-lines">
      <Limits card={card} figure={figure} />
      <Kit card={card} />
      {/* a guide kept from before has no such lines */}
      {(card.winter ?? []).map((line) => (
        <Line key={line.ruleId} name={t("abroad.winter")} line={line}>
          {winterText(line)}
        </Line>
      ))}
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
      <Alcohol card={card} figure={figure} />
    </dl>
  );
}

/** What is asked for, where and on which days. */
const winterText = ({ thing, wintryOnly, roads, value }: WinterLine): string =>
  t("country.winter.days", {
    what: t("country.winter", { thing, weather: wintryOnly ? "yes" : "no", roads: roads ?? "all" }),
    span: spanText(words(), value),
  });

/** What is in doubt of a line, when it changes, and what the rule says besides; less of it in a guide kept from before. */
function Doubt({ line }: { readonly line: CardLine | undefined }) {
  if (line === undefined) return null;
  const changesOn = line.changesOn ?? null;
  const said = [
    ...(line.unsettled ? [t("abroad.unsettled")] : []),
    ...(line.fromMemory ? [t("abroad.fromMemory")] : []),
    ...(changesOn === null ? [] : [t("abroad.changesOn", { on: changesOn })]),
    ...((line.notChecked ?? []).length === 0
      ? []
      : [
          t("abroad.notChecked", {
            facts: line.notChecked.map((fact) => t("abroad.fact", { fact })).join(", "),
          }),
        ]),
  ];
  return (
    <>
      {said.length > 0 && <em className="country-doubt">({said.join("; ")})</em>}
      {(line.note ?? null) !== null && <small className="country-note">{line.note}</small>}
    </>
  );
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

const Limits = ({ card, figure }: CountryLinesProps) => (
  <div>
    <dt>{t("abroad.limits")}</dt>
    <dd>
      {card.speeds.length === 0 ? (
        t("country.signed")
      ) : (
        <ul className="country-limits">
          {card.speeds.map(({ road, limit, line }) => (
            <li key={road}>
              {t("country.road", { road })}: {figure(limit, t("country.road", { road }))}{" "}
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

function Alcohol({ card, figure }: CountryLinesProps) {
  if (card.alcohol === null) return null;
  const { limit, novice, line } = card.alcohol;
  return (
    <div>
      <dt>{t("abroad.alcohol")}</dt>
      <dd>
        {figure(limit, t("abroad.alcohol"))}
        {novice !== null && (
          <>
            , {t("abroad.novice")} {figure(novice, t("abroad.novice"))}
          </>
        )}{" "}
        <Doubt line={line} />
      </dd>
    </div>
  );
}
