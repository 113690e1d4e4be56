import { WEEKDAYS, type Weekday } from "@setfair/engine";
import * as z from "zod";
import { CREW_SKILLS } from "./changes.ts";
import { dateSchema, distancesSchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, "a time as HH:MM, such as 09:00");
/** the midnight that ends a day is `24:00` */
const closing = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$|^24:00$/, "a time as HH:MM, such as 17:30, or 24:00 for midnight");
const dayHours = z.strictObject({ opens: clock, closes: closing });

/** When keys go out and come back, civil times of the depot. */
export const openingHoursSchema = named(
  "OpeningHours",
  z.strictObject({
    /** the same each week; null: closed all day */
    week: z.strictObject(
      Object.fromEntries(WEEKDAYS.map((day) => [day, dayHours.nullable()])) as Record<
        Weekday,
        z.ZodNullable<typeof dayHours>
      >,
    ),
    /** closed whatever the week says: first and last day, as the firm entered them */
    closed: z
      .array(z.strictObject({ from: dateSchema, to: dateSchema, name: z.string().trim().max(60) }))
      .max(120),
  }),
);
/** people of a skill on a usual day */
const people = z.int().min(0).max(50);

const settings = {
  name: textSchema(80),
  telephone: textSchema(30),
  hours: openingHoursSchema,
  distances: distancesSchema,
  /** where trips begin and end; a wrong point makes every drive and every forecast wrong */
  latitudeDeg: z.number().min(34).max(72),
  longitudeDeg: z.number().min(-25).max(40),
  /** between two hires of a vehicle, minutes; bookings made before keep theirs */
  turnaroundMinutes: z.int().min(0).max(2880),
  /** people of each skill on a usual day */
  crew: z.strictObject(
    Object.fromEntries(CREW_SKILLS.map((skill) => [skill, people])) as Record<
      (typeof CREW_SKILLS)[number],
      typeof people
    >,
  ),
  /** first and last days, as the councils around the depot publish them */
  schoolHolidays: z.array(z.strictObject({ from: dateSchema, to: dateSchema })).max(60),
};

export const depotSettingsSchema = named(
  "DepotSettings",
  z.object({ ...settings, version: z.int(), timeZone: z.string(), country: z.string() }),
);
export const FIRST_STEPS = ["vehicle", "rateCard", "prices", "insurer", "firm", "people"] as const;
export const firstStepsSchema = named(
  "FirstSteps",
  z.object({ open: z.array(z.enum(FIRST_STEPS)), of: z.int() }),
);
export const putDepotSchema = named(
  "PutDepot",
  z.strictObject({
    ...settings,
    /** the version that was read */
    version: z.int(),
  }),
);
