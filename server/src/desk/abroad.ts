import {
  addDays,
  type CountriesInput,
  type CountriesResult,
  type CountryCard,
  type CrossingInput,
  type CrossingResult,
  checkCountries,
  checkCrossing,
  citeSource,
  type Finding,
  type RoomAnswer,
  type RuleBook,
  withRules,
} from "@setfair/engine";
import { type AbroadDocument, NOTHING_ABROAD } from "./documents.ts";
import { type HireData, partOf } from "./hire-data.ts";

export const abroadOf = (data: HireData): AbroadDocument => partOf(data, "abroad") ?? NOTHING_ABROAD;

type Stay = CountriesInput["route"][number];

/** Each country of the route once, in the order in which it is entered; null while there is no trip. */
export function routeOf(data: HireData): readonly Stay[] | null {
  const trip = partOf(data, "trip");
  if (trip === null) return null;
  const [first, last] = [data.from.slice(0, 10), data.to.slice(0, 10)];
  const stays: Stay[] = [
    { country: data.depotDocument.country, enter: first, leave: last },
    ...trip.stops.map(({ place, arrive, leave }) => ({
      country: place.country,
      enter: arrive.slice(0, 10),
      leave: leave.slice(0, 10),
    })),
    ...abroadOf(data).through.map((country) => ({ country, enter: first, leave: last })),
  ];
  const byCountry = new Map<string, Stay>();
  for (const stay of stays) {
    const known = byCountry.get(stay.country);
    byCountry.set(stay.country, known === undefined ? stay : spanOf(known, stay));
  }
  return [...byCountry.values()];
}

function spanOf(a: Stay, b: Stay): Stay {
  const days = [a.enter, a.leave, b.enter, b.leave].sort();
  return { country: a.country, enter: days[0] ?? a.enter, leave: days[3] ?? a.leave };
}

/** The countries of the route; null while there is no vehicle or no trip. */
export function countriesAnswer(data: HireData): RoomAnswer<CountriesResult> | null {
  const route = routeOf(data);
  if (data.vehicle === null || route === null) return null;
  const said = abroadOf(data);
  const input: CountriesInput = {
    vehicle: data.vehicle.document.description,
    home: data.depotDocument.country,
    route: [...route],
    today: data.today,
    papers: said.papers,
    kitAboard: [...said.kitAboard],
    got: [...said.got],
    avoided: [...(said.avoided ?? [])],
    overhang: said.overhang,
    plateShowsUk: said.plateShowsUk,
  };
  return withRules(data.ruleBook, () => checkCountries(input));
}

/** Papers, stickers and registrations with a lead time are brought to mind this many days before their day (our choice). */
const SOON_DAYS = 7;
const TO_GET: readonly string[] = ["countries.toGet", "countries.toGetLate", "countries.noPaper"];

/** What must be got for the countries of the route by a day that is near or over, the soonest first. */
export function toGetSoon(data: HireData): { finding: Finding; doBy: string }[] {
  const route = routeOf(data) ?? [];
  if (route.every(({ country }) => country === data.depotDocument.country)) return [];
  const soon = addDays(data.today, SOON_DAYS);
  return (countriesAnswer(data)?.findings ?? [])
    .filter(({ code }) => TO_GET.includes(code))
    .flatMap((finding) => {
      const { doBy } = finding.facts;
      return typeof doBy === "string" && doBy <= soon ? [{ finding, doBy }] : [];
    })
    .sort((a, b) => (a.doBy < b.doBy ? -1 : 1));
}

/** What the lines of these cards rest on, each source once, with the day it was read. */
export function sourcesOfCards(cards: readonly CountryCard[], book: RuleBook): string[] {
  const ids = cards.flatMap((card) =>
    [
      ...card.speeds.map(({ line }) => line),
      ...card.kit,
      ...card.winter,
      ...card.tolls,
      card.zone,
      card.night,
      card.lpgFiller,
    ].flatMap((line) => (line === null ? [] : [line.ruleId])),
  );
  const alcohol = cards.flatMap(({ alcohol: said }) => [said?.limit.source, said?.novice?.source]);
  const all = [...ids, ...alcohol.filter((id) => id !== undefined)];
  return [...new Set(withRules(book, () => all.map(citeSource)))].sort();
}

/** Each country of the route for the hirer's own phone, with its sources; none while there is no trip. */
export const countriesForHirer = (data: HireData): { card: CountryCard; sources: string[] }[] =>
  (countriesAnswer(data)?.result.cards ?? []).map((card) => ({
    card,
    sources: sourcesOfCards([card], data.ruleBook),
  }));

/** How the water is crossed with gas aboard; null while there is no vehicle or no trip. */
export function crossingAnswer(data: HireData): RoomAnswer<CrossingResult> | null {
  const route = routeOf(data);
  if (data.vehicle === null || route === null) return null;
  const said = abroadOf(data);
  const input: CrossingInput = {
    vehicle: data.vehicle.document.description,
    abroad: route.some(({ country }) => country !== data.depotDocument.country),
    crossings: said.crossings.map(({ kind, on }) => ({ kind, on })),
    noCrossing: said.noCrossing,
    fillShare: said.fillShare,
    gaugeWorks: said.gaugeWorks,
  };
  return withRules(data.ruleBook, () => checkCrossing(input));
}

export const countryFindings = (data: HireData): readonly Finding[] | null =>
  countriesAnswer(data)?.findings ?? null;
export const crossingFindings = (data: HireData): readonly Finding[] | null =>
  crossingAnswer(data)?.findings ?? null;
