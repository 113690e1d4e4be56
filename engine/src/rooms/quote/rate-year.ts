import type { IsoDate } from "../../base/time.ts";
import { addDays } from "../../base/years.ts";
import { nightCharge, seasonsOn } from "./night-charge.ts";
import type { Terms } from "./types.ts";

/** What one night of a day costs by class, and how many must be taken; season null where the terms name none. */
export interface RateDay {
  readonly date: IsoDate;
  readonly season: string | null;
  /** seasons that hold the day as well and give way to the first */
  readonly under: readonly string[];
  readonly minimumNights: number;
  readonly nightPence: Readonly<Record<string, number>>;
  /** seven nights from here as they would be charged, before anything compulsory; a class without a price is left out */
  readonly weekPence: Readonly<Record<string, number>>;
}

/** The prices of every day from one on: a year's preview of a rate card. */
export function rateDays(terms: Terms, from: IsoDate, days: number): readonly RateDay[] {
  return Array.from({ length: days }, (_, k) => rateDay(terms, addDays(from, k)));
}

function rateDay(terms: Terms, date: IsoDate): RateDay {
  const [season, ...under] = seasonsOn(terms, date);
  return {
    date,
    season: season?.id ?? null,
    under: under.map(({ id }) => id),
    minimumNights: season?.minimumNights ?? 0,
    nightPence: season?.nightPence ?? {},
    weekPence: Object.fromEntries(
      Object.keys(season?.nightPence ?? {}).flatMap((vehicleClass) => {
        const pence = weekOf(terms, vehicleClass, date);
        return pence === null ? [] : [[vehicleClass, pence]];
      }),
    ),
  };
}

/** Null where a day within what it looks at has no price. */
function weekOf(terms: Terms, vehicleClass: string, date: IsoDate): number | null {
  const length = 7;
  const priced = Array.from(
    { length: Math.max(length, terms.maximumNights) },
    (_, k) => seasonsOn(terms, addDays(date, k)).at(0)?.nightPence[vehicleClass],
  );
  return priced.includes(undefined) ? null : nightCharge(terms, vehicleClass, date, length).pence;
}
