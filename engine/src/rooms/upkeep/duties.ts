import type { IsoDate } from "../../base/time.ts";
import { addDays } from "../../base/years.ts";
import data from "../../rules/data/duties.json" with { type: "json" };
import type { VehicleDescription } from "../../vehicle/description.ts";
import type { DueKind } from "../diary/due-kinds.ts";
import type { DueEntry, Duty } from "./types.ts";

/** Every duty that the tool knows, as dated data with who says so; check locally. */
export const DUTIES: readonly Duty[] = data as readonly Duty[];

export const dutyOf = (kind: DueKind): Duty | undefined => DUTIES.find((duty) => duty.kind === kind);

/** Duties of this vehicle on a day: those of every vehicle and those of what it is fitted with. */
export function dutiesOf(vehicle: VehicleDescription, on: IsoDate): readonly Duty[] {
  const fitted = new Set<string>(vehicle.systems.map(({ kind }) => kind));
  return DUTIES.filter(
    ({ fits, validFrom }) => validFrom <= on && (fits.length === 0 || fits.some((kind) => fitted.has(kind))),
  );
}

/** The same day so many months on; the last day of a month that is shorter. */
export function addMonths(date: IsoDate, months: number): IsoDate {
  const year = Number(date.slice(0, 4));
  const month = Number(date.slice(5, 7)) - 1 + months;
  const inYear = ((month % 12) + 12) % 12;
  const thatYear = year + Math.floor(month / 12);
  const isLeap = (thatYear % 4 === 0 && thatYear % 100 !== 0) || thatYear % 400 === 0;
  const longest = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][inYear] ?? 31;
  const day = Math.min(Number(date.slice(8, 10)), longest);
  return `${thatYear}-${String(inYear + 1).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/**
 * When a duty that was done falls due again, by its interval: the day before the interval is over, and the
 * odometer at which it is over. Null where no interval by day or by distance is known.
 */
export function nextDue(kind: DueKind, doneOn: IsoDate, doneKm: number | null): DueEntry | null {
  const duty = dutyOf(kind);
  if (duty === undefined) return null;
  const again =
    duty.everyMonths !== undefined
      ? addDays(addMonths(doneOn, duty.everyMonths), -1)
      : duty.everyDays !== undefined
        ? addDays(doneOn, duty.everyDays)
        : null;
  const dueKm = duty.everyKm !== undefined && doneKm !== null ? doneKm + duty.everyKm : null;
  return again === null && dueKm === null ? null : { kind, dueOn: again, dueKm };
}
