import type { CardLine, CountryCard } from "@setfair/engine";
import { spanText, type Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { Refusal } from "../api/refusal.ts";
import { countriesAnswer, sourcesOfCards } from "../desk/abroad.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, heading, quiet, table } from "./pieces.ts";

/** For the hirer: limits, kit, zones, tolls, nights and alcohol of each country of the route, with the doubt said. */
export function countryPaper(call: PaperCall): Content[] {
  const { data, words } = call;
  const answer = countriesAnswer(data);
  if (answer === null) {
    throw new Refusal("missing", {
      problems: [{ path: "trip", expected: "a vehicle and a trip on this hire" }],
    });
  }
  const { cards } = answer.result;
  return [
    facts(hireFacts({ ...call, withoutAddress: true })),
    ...cards.filter(({ known }) => known).flatMap((card) => country(card, words)),
    heading(words.t("papers.sources")),
    { ul: sourcesOfCards(cards, data.ruleBook).map((text) => ({ text, style: "quiet" })) },
    quiet(words.t("abroad.caution")),
  ];
}

const doubt = (line: CardLine, words: Words): string => {
  const said = [
    ...(line.unsettled ? [words.t("abroad.unsettled")] : []),
    ...(line.fromMemory ? [words.t("abroad.fromMemory")] : []),
    ...(line.notChecked.length === 0
      ? []
      : [
          words.t("abroad.notChecked", {
            facts: line.notChecked.map((fact) => words.t("abroad.fact", { fact })).join(", "),
          }),
        ]),
    ...(line.changesOn === null ? [] : [words.t("abroad.changesOn", { on: words.dateText(line.changesOn) })]),
  ];
  return said.length === 0 ? "" : ` (${said.join("; ")})`;
};

/** The doubt, and what the rule says besides. */
const besides = (line: CardLine, words: Words): string =>
  doubt(line, words) + (line.note === null ? "" : ` – ${line.note}`);

function country(card: CountryCard, words: Words): Content[] {
  const rows: (readonly [string, string])[] = [
    ...card.kit.map(
      (line) =>
        [
          words.t("country.thing", { thing: line.thing }),
          words.t("country.kit.value", { value: line.value }) + besides(line, words),
        ] as const,
    ),
    ...card.winter.map(
      (line) =>
        [
          words.t("abroad.winter"),
          words.t("country.winter.days", {
            what: words.t("country.winter", {
              thing: line.thing,
              weather: line.wintryOnly ? "yes" : "no",
              roads: line.roads ?? "all",
            }),
            span: spanText(words, line.value),
          }) + besides(line, words),
        ] as const,
    ),
    ...named("abroad.zones", "country.zone", card.zone === null ? [] : [card.zone], words),
    ...named("abroad.tolls", "country.toll", card.tolls, words),
    ...named("abroad.night", "country.night", card.night === null ? [] : [card.night], words),
    ...(card.lpgFiller === null
      ? []
      : [
          [
            words.t("abroad.filler"),
            card.lpgFiller.adaptors.map((adaptor) => words.t("country.adaptor", { adaptor })).join(", ") +
              besides(card.lpgFiller, words),
          ] as const,
        ]),
    ...(card.alcohol === null ? [] : [[words.t("abroad.alcohol"), alcohol(card.alcohol, words)] as const]),
  ];
  return [
    heading(words.t("country.name", { country: card.country })),
    limits(card, words),
    ...notesOnLimits(card, words),
    facts(rows),
  ];
}

const named = (
  name: "abroad.zones" | "abroad.tolls" | "abroad.night",
  text: "country.zone" | "country.toll" | "country.night",
  lines: readonly CardLine[],
  words: Words,
) =>
  lines.map((line) => [words.t(name), words.t(text, { value: line.value }) + besides(line, words)] as const);

const limits = (card: CountryCard, words: Words): Content =>
  card.speeds.length === 0
    ? { text: `${words.t("abroad.limits")}: ${words.t("country.signed")}` }
    : table(
        card.speeds.map(({ road }) => words.t("country.road", { road })),
        [card.speeds.map(({ limit, line }) => words.figureText(limit) + doubt(line, words))],
        { widths: card.speeds.map(() => "*" as const) },
      );

/** What the limits of single roads say besides, under their table. */
function notesOnLimits(card: CountryCard, words: Words): Content[] {
  const said = card.speeds.flatMap(({ road, line: { note } }) =>
    note === null ? [] : [`${words.t("country.road", { road })}: ${note}`],
  );
  return said.length === 0 ? [] : [{ ul: said.map((text) => ({ text, style: "quiet" })) }];
}

function alcohol({ limit, novice, line }: NonNullable<CountryCard["alcohol"]>, words: Words): string {
  const newDrivers = novice === null ? "" : `, ${words.t("abroad.novice")} ${words.figureText(novice)}`;
  return words.figureText(limit) + newDrivers + besides(line, words);
}
