import { BadInput } from "../../base/bad-input.ts";
import { roundPence } from "../../base/money.ts";
import type { IsoDate } from "../../base/time.ts";
import { addDays } from "../../base/years.ts";
import type { Terms } from "./types.ts";

type Season = Terms["seasons"][number];

/** What the nights cost before compulsory charges and extras; all in pence. */
export interface NightCharge {
  readonly seasons: readonly {
    readonly season: string;
    readonly count: number;
    readonly eachPence: number;
  }[];
  readonly longHirePercent: number;
  readonly longHirePence: number;
  /** taken off so that no longer hire from the same day is cheaper, and how long that one is */
  readonly longerPeriodPence: number;
  readonly longerNights: number;
  readonly pence: number;
}

/** Every season whose spans hold a night, the one that gives its price first; spans include both ends and may cross the new year. */
export function seasonsOn(terms: Terms, night: IsoDate): readonly Season[] {
  const day = night.slice(5);
  const holds = ({ from, to }: { from: string; to: string }) =>
    from <= to ? day >= from && day <= to : day >= from || day <= to;
  return terms.seasons.filter(({ spans }) => spans.some(holds));
}

/** The season of a night: the first whose spans hold the day. */
export function seasonOf(terms: Terms, night: IsoDate): Season {
  const season = seasonsOn(terms, night)[0];
  if (season === undefined)
    throw new BadInput([
      { path: "terms.seasons", expected: `expected a season for every day; ${night} has none` },
    ]);
  return season;
}

/** Charge for so many nights from a day: the least of its own price and of every longer hire's that the terms allow. */
export function nightCharge(terms: Terms, vehicleClass: string, first: IsoDate, nights: number): NightCharge {
  const longest = Math.max(nights, terms.maximumNights);
  let longerNights = nights;
  let best = Infinity;
  let rates = 0;
  for (let n = 1; n <= longest; n++) {
    rates += nightPence(terms, vehicleClass, addDays(first, n - 1));
    const price = rates - reduction(terms, n, rates).pence;
    if (n >= nights && price < best) [best, longerNights] = [price, n];
  }
  const seasons = groupBySeason(terms, vehicleClass, first, nights);
  const full = seasons.reduce((sum, { count, eachPence }) => sum + count * eachPence, 0);
  const own = reduction(terms, nights, full);
  return {
    seasons,
    longHirePercent: own.percent,
    longHirePence: own.pence,
    longerPeriodPence: full - own.pence - best,
    longerNights,
    pence: best,
  };
}

function nightPence(terms: Terms, vehicleClass: string, night: IsoDate): number {
  const pence = seasonOf(terms, night).nightPence[vehicleClass];
  if (pence === undefined)
    throw new BadInput([
      {
        path: "vehicleClass",
        expected: `expected one of ${Object.keys(seasonOf(terms, night).nightPence).join(", ")}`,
      },
    ]);
  return pence;
}

function reduction(terms: Terms, nights: number, pence: number): { percent: number; pence: number } {
  const reached = terms.longHire.filter(({ fromNights }) => fromNights <= nights);
  const percent = Math.max(0, ...reached.map(({ reductionPercent }) => reductionPercent));
  return { percent, pence: roundPence((pence * percent) / 100) };
}

function groupBySeason(
  terms: Terms,
  vehicleClass: string,
  first: IsoDate,
  nights: number,
): NightCharge["seasons"] {
  const groups = new Map<string, { season: string; count: number; eachPence: number }>();
  for (let k = 0; k < nights; k++) {
    const night = addDays(first, k);
    const { id } = seasonOf(terms, night);
    const group = groups.get(id) ?? {
      season: id,
      count: 0,
      eachPence: nightPence(terms, vehicleClass, night),
    };
    groups.set(id, { ...group, count: group.count + 1 });
  }
  return [...groups.values()];
}
