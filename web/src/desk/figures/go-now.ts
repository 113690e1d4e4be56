import { addDays } from "@setfair/engine";
import type { Kept } from "./piece-props.ts";

/** Civil time at which messages go. */
export const MORNING = "09:00";
export type Dated = Kept["unsent"][number]["kind"];

/**
 * How many messages of a kind go out as soon as it goes so many days before: their moment would have come already, and
 * they were turned on before it.
 */
export function goNow({ unsent, now }: Pick<Kept, "unsent" | "now">, id: Dated, days: number): number {
  const one = unsent.find(({ kind }) => kind === id);
  if (one === undefined) return 0;
  return one.days
    .map((day) => `${addDays(day, -days)}T${MORNING}`)
    .filter((moment) => moment <= now && moment >= one.since).length;
}
