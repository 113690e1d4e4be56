import { type DayHours, type OpeningHours, sameEveryDay } from "@setfair/engine";
import type { z } from "zod";
import type { openingHoursSchema } from "../api/schemas/depot.ts";

/** Stands for the hours of a day on which the depot is closed, where somebody works all the same. */
export const ALL_DAY: DayHours = { opens: "00:00", closes: "24:00" };

/** The hours as an answer carries them. */
export function hoursAnswer({ week, closed }: OpeningHours): z.input<typeof openingHoursSchema> {
  return { week: { ...sameEveryDay(ALL_DAY).week, ...week }, closed: closed.map((each) => ({ ...each })) };
}
