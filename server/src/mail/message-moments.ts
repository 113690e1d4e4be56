import { addDays, type IsoInstant } from "@setfair/engine";
import type { DepotFigures } from "../desk/documents.ts";
import { dateOf, instantOf, localOf } from "../desk/local-time.ts";
import type { MessageKind } from "../store/message-types.ts";
import type { HireRow } from "../store/types.ts";

/** When messages that hang on a day go out, civil time of the depot. */
const MORNING = "09:00";

/** Moments that are known from the hire alone. */
export type DatedKind = Extract<MessageKind, "preHire" | "dayBefore" | "returnReminder">;

/** Whose days and mornings count. */
export interface MomentsOfDepot {
  readonly timeZone: string;
  readonly days: DepotFigures["messageDays"];
}

// with milliseconds, as instants are kept, so that text order is time order
const morningOf = (day: string, timeZone: string): IsoInstant =>
  new Date(instantOf(`${day}T${MORNING}`, timeZone, "from")).toISOString();

/** The day of the keys or of the return, which the message counts from. */
export const endOf = (kind: DatedKind, hire: HireRow, timeZone: string): string =>
  dateOf(localOf(kind === "returnReminder" ? hire.to : hire.from, timeZone));

export const momentOf = (kind: DatedKind, hire: HireRow, { timeZone, days }: MomentsOfDepot): IsoInstant =>
  morningOf(addDays(endOf(kind, hire, timeZone), -days[kind]), timeZone);

/** When the statement of a settlement goes: at once, or on a morning so many days later. */
export const statementMoment = (settledAt: string, { timeZone, days }: MomentsOfDepot): string =>
  days.statement === 0
    ? settledAt
    : morningOf(addDays(dateOf(localOf(settledAt, timeZone)), days.statement), timeZone);

/** After this it is of no use any more; null where it always is. */
export function uselessAfter(kind: MessageKind, hire: HireRow): IsoInstant | null {
  if (kind === "preHire" || kind === "dayBefore") return hire.from;
  return kind === "returnReminder" ? hire.to : null;
}
