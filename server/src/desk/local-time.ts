import { type IsoDate, type IsoInstant, type IsoLocal, Temporal, toInstant } from "@setfair/engine";
import { badField } from "../api/refusal.ts";

/** An instant as civil time `YYYY-MM-DDTHH:MM` in a zone. */
export function localOf(instant: IsoInstant, timeZone: string): IsoLocal {
  return Temporal.Instant.from(instant)
    .toZonedDateTimeISO(timeZone)
    .toPlainDateTime()
    .toString({ smallestUnit: "minute" });
}

export const dateOf = (local: IsoLocal): IsoDate => local.slice(0, 10);

/** The civil time as an instant; refused with the field's name where that time does not exist. */
export function instantOf(local: IsoLocal, timeZone: string, path: string): IsoInstant {
  try {
    return toInstant(local, timeZone);
  } catch {
    throw badField(path, "expected a civil time that exists in this zone");
  }
}

/** Refuses a period that does not run forward, or is longer than a year. */
export function checkPeriod(
  from: IsoLocal,
  to: IsoLocal,
  timeZone: string,
): { readonly from: IsoInstant; readonly to: IsoInstant } {
  const start = instantOf(from, timeZone, "from");
  const end = instantOf(to, timeZone, "to");
  const hours = Temporal.Instant.from(start).until(Temporal.Instant.from(end)).total("hours");
  if (hours <= 0) throw badField("to", "expected a time after `from`");
  if (hours > 366 * 24) throw badField("to", "expected at most a year after `from`");
  return { from: start, to: end };
}
