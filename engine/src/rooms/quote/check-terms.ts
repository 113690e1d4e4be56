import type { Finding, RoomAnswer } from "../../base/finding.ts";
import { addDays } from "../../base/years.ts";
import { makeFinding } from "../make-finding.ts";
import { seasonsOn } from "./night-charge.ts";
import type { Terms } from "./types.ts";

export interface TermsCheckInput {
  readonly terms: Terms;
  /** classes of the vehicles that the depot has */
  readonly classes: readonly string[];
}
/** Days of the year from one to another, both included, `MM-DD`. */
export interface DayRun {
  readonly from: string;
  readonly to: string;
  readonly days: number;
}
export interface TermsCheckResult {
  /** days without a price */
  readonly gaps: readonly DayRun[];
  /** days that two seasons hold, and which of them gives the price */
  readonly overlaps: readonly (DayRun & { readonly wins: string; readonly over: string })[];
}

/** A leap year, so that the 29th of February is asked as well. */
const YEAR = 2028;

/**
 * Whether a rate card can price every day for every class: a day or a class without a price refuses it, and so
 * do seasons that run into each other, and one that never gives a price. A season within a longer one is said,
 * with the one that wins (the first in the list).
 */
export function checkTerms({ terms, classes }: TermsCheckInput): RoomAnswer<TermsCheckResult> {
  const days = Array.from({ length: 366 }, (_, k) => {
    const date = addDays(`${YEAR}-01-01`, k);
    return { day: date.slice(5), seasons: seasonsOn(terms, date).map(({ id }) => id) };
  });
  const straddles = straddling(terms);
  const gaps = runs(days.map(({ day, seasons }) => ({ day, key: seasons.length === 0 ? "gap" : null })));
  const overlaps = pairs(terms).flatMap(([wins, over]) =>
    runs(
      days.map(({ day, seasons }) => ({
        day,
        key: seasons[0] === wins && seasons.includes(over) ? "both" : null,
      })),
    ).map((run) => ({ ...run, wins, over })),
  );
  return {
    result: { gaps, overlaps },
    findings: [
      ...gaps.map((gap) => refuse(terms, "terms.gap", runFacts(gap))),
      ...noPrice(terms, classes),
      ...sameIds(terms),
      ...scale(terms),
      ...straddles.map(({ first, second, run }) =>
        refuse(terms, "terms.straddle", { ...runFacts(run), first, second }),
      ),
      ...neverWins(terms, days),
      ...overlaps
        .filter((run) => !straddles.some(({ first, second }) => first === run.wins && second === run.over))
        .map((run) => note(terms, "terms.overlap", { ...runFacts(run), wins: run.wins, over: run.over })),
    ],
  };
}

/** The days of the year that a span holds, as a season of nothing else would. */
function daysOf(terms: Terms, season: Terms["seasons"][number], span: number): ReadonlySet<string> {
  const spans = season.spans.slice(span, span + 1);
  const alone = { ...terms, seasons: [{ ...season, spans }] };
  const year = Array.from({ length: 366 }, (_, k) => addDays(`${YEAR}-01-01`, k));
  return new Set(year.filter((date) => seasonsOn(alone, date).length > 0).map((date) => date.slice(5)));
}

/** Spans of two seasons that share days while neither lies within the other: nobody meant that. */
function straddling(terms: Terms): { first: string; second: string; run: DayRun }[] {
  const spans = terms.seasons.flatMap((season) =>
    season.spans.map((_, k) => ({ id: season.id, days: daysOf(terms, season, k) })),
  );
  return spans.flatMap((first, k) =>
    spans.slice(k + 1).flatMap((second) => {
      const shared = [...first.days].filter((day) => second.days.has(day)).sort();
      const isWithin = shared.length === first.days.size || shared.length === second.days.size;
      if (first.id === second.id || shared.length === 0 || isWithin) return [];
      const all = [...first.days, ...second.days].sort();
      const marked = [...new Set(all)].map((day) => ({ day, key: shared.includes(day) ? "both" : null }));
      return runs(marked).map((run) => ({ first: first.id, second: second.id, run }));
    }),
  );
}

/** A season that others cover on each of its days. */
const neverWins = (terms: Terms, days: readonly { readonly seasons: readonly string[] }[]): Finding[] =>
  terms.seasons
    .filter(({ id }) => days.every(({ seasons }) => seasons[0] !== id))
    .map(({ id }) => refuse(terms, "terms.seasonHidden", { season: id }, id));

/** The days as the words name them: day and month apart. */
function runFacts({ from, to, days }: DayRun): Finding["facts"] {
  const [fromMonth = "", fromDay = ""] = from.split("-");
  const [toMonth = "", toDay = ""] = to.split("-");
  return { fromDay: Number(fromDay), fromMonth, toDay: Number(toDay), toMonth, days };
}

const refuse = (terms: Terms, code: string, facts: Finding["facts"], about?: string) =>
  makeFinding("money", code, "refuse", "policy", {
    facts,
    sources: [terms.id],
    mends: ["terms.mend"],
    ...(about === undefined ? {} : { about }),
  });
const note = (terms: Terms, code: string, facts: Finding["facts"]) =>
  makeFinding("money", code, "note", "policy", { facts, sources: [terms.id] });

const pairs = ({ seasons }: Terms): readonly (readonly [string, string])[] =>
  seasons.flatMap((first, k) =>
    seasons
      .slice(k + 1)
      .filter(({ id }) => id !== first.id)
      .map((later) => [first.id, later.id] as const),
  );

function runs(days: readonly { readonly day: string; readonly key: string | null }[]): DayRun[] {
  const found: { from: string; to: string; days: number }[] = [];
  let open: (typeof found)[number] | null = null;
  for (const { day, key } of days) {
    if (key === null) open = null;
    else if (open === null) {
      open = { from: day, to: day, days: 1 };
      found.push(open);
    } else {
      open.to = day;
      open.days += 1;
    }
  }
  return found;
}

/** A class of the fleet, or of another season, that a season has no price for. */
function noPrice(terms: Terms, classes: readonly string[]): Finding[] {
  const all = new Set([...classes, ...terms.seasons.flatMap(({ nightPence }) => Object.keys(nightPence))]);
  return terms.seasons.flatMap(({ id, nightPence }) =>
    [...all]
      .filter((vehicleClass) => nightPence[vehicleClass] === undefined)
      .map((vehicleClass) =>
        refuse(terms, "terms.classWithoutPrice", { season: id, vehicleClass }, `${id}.${vehicleClass}`),
      ),
  );
}

function sameIds({ seasons, ...terms }: Terms): Finding[] {
  const ids = seasons.map(({ id }) => id);
  const twice = [...new Set(ids.filter((id, k) => ids.indexOf(id) !== k))];
  return twice.map((season) => refuse({ seasons, ...terms }, "terms.seasonTwice", { season }, season));
}

/** The nearer the first day, the more is kept; and the last step reaches the day itself. */
function scale(terms: Terms): Finding[] {
  const steps = [...terms.cancellation].sort((a, b) => b.atLeastDaysBefore - a.atLeastDaysBefore);
  const falls = steps.filter((step, k) => k > 0 && step.keepPercent < (steps[k - 1]?.keepPercent ?? 0));
  return [
    ...falls.map(({ atLeastDaysBefore, keepPercent }) =>
      refuse(
        terms,
        "terms.scaleFalls",
        { days: atLeastDaysBefore, percent: keepPercent },
        String(atLeastDaysBefore),
      ),
    ),
    ...(steps.some(({ atLeastDaysBefore }) => atLeastDaysBefore === 0)
      ? []
      : [note(terms, "terms.scaleOpen", { days: steps.at(-1)?.atLeastDaysBefore ?? 0 })]),
  ];
}
