import { Temporal } from "temporal-polyfill";

export { Temporal };

/** A civil date, ISO 8601 `YYYY-MM-DD`. */
export type IsoDate = string;
/** A civil date and time without a zone, `YYYY-MM-DDTHH:MM`. */
export type IsoLocal = string;
/** An instant in UTC, ISO 8601 with `Z`. */
export type IsoInstant = string;

/** Hours from one civil time to another in a zone, counting the clock changes between them. */
export function hoursBetween(from: IsoLocal, to: IsoLocal, timeZone: string): number {
  const start = Temporal.PlainDateTime.from(from).toZonedDateTime(timeZone);
  const end = Temporal.PlainDateTime.from(to).toZonedDateTime(timeZone);
  return (end.epochMilliseconds - start.epochMilliseconds) / 3_600_000;
}

/** The civil time in a zone as an instant. A time skipped by the clock change is an error, never shifted. */
export function toInstant(local: IsoLocal, timeZone: string): IsoInstant {
  return Temporal.PlainDateTime.from(local)
    .toZonedDateTime(timeZone, { disambiguation: "reject" })
    .toInstant()
    .toString();
}
