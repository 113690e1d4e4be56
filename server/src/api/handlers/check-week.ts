import { WEEKDAYS } from "@setfair/engine";
import type { z } from "zod";
import { badField } from "../refusal.ts";
import type { openingHoursSchema } from "../schemas/depot.ts";

/** @throws a refusal that names the first day which closes no later than it opens; `at` is the path of the hours */
export function checkWeek({ week }: z.output<typeof openingHoursSchema>, at: string): void {
  for (const day of WEEKDAYS) {
    const hours = week[day];
    if (hours !== null && hours.closes <= hours.opens)
      throw badField(`${at}.week.${day}.closes`, "expected a time after `opens`, at the latest 24:00");
  }
}
