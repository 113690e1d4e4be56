import { addDays, type IsoInstant } from "@setfair/engine";
import { dateOf, instantOf, localOf } from "../desk/local-time.ts";
import type { MessageKind } from "../store/message-types.ts";
import type { HireRow } from "../store/types.ts";

/** When messages that hang on a day go out, civil time of the depot. */
const MORNING = "09:00";
const PACK_DAYS_BEFORE = 7;

/** Moments that are known from the hire alone. */
export type DatedKind = Extract<MessageKind, "preHire" | "dayBefore" | "returnReminder">;

export function momentOf(kind: DatedKind, hire: HireRow, timeZone: string): IsoInstant {
  const end = kind === "returnReminder" ? hire.to : hire.from;
  const days = kind === "preHire" ? PACK_DAYS_BEFORE : 1;
  const day = addDays(dateOf(localOf(end, timeZone)), -days);
  // with milliseconds, as instants are kept, so that text order is time order
  return new Date(instantOf(`${day}T${MORNING}`, timeZone, "from")).toISOString();
}

/** After this it is of no use any more; null where it always is. */
export function uselessAfter(kind: MessageKind, hire: HireRow): IsoInstant | null {
  if (kind === "preHire" || kind === "dayBefore") return hire.from;
  return kind === "returnReminder" ? hire.to : null;
}
