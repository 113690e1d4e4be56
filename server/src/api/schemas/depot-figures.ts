import * as z from "zod";
import { LONGEST_AFTER_RETURN_DAYS } from "../../auth/hirer-links.ts";
import { dateSchema, localSchema } from "./common.ts";
import { named } from "./named.ts";

const figures = {
  /** days from a message to the keys or the return, or from the settlement to the statement; at 9:00 of that day */
  messageDays: z.strictObject({
    preHire: z.int().min(2).max(60),
    dayBefore: z.int().min(1).max(14),
    returnReminder: z.int().min(1).max(14),
    /** 0: as soon as it is settled */
    statement: z.int().min(0).max(30),
  }),
  /** days after the return, or after the day on which it is made where that is later */
  linkDays: z.int().min(1).max(LONGEST_AFTER_RETURN_DAYS),
  /** km that a vehicle on hire is taken to go in a day */
  kmADay: z.number().min(1).max(1000),
};

export const putDepotFiguresSchema = named("PutDepotFigures", z.strictObject(figures));
export const depotFiguresSchema = named(
  "DepotFigures",
  z.object({
    figures: putDepotFiguresSchema,
    /** what holds where a depot has entered nothing: common practice, no source */
    usual: putDepotFiguresSchema,
    /** of these figures alone: what a save is based on */
    version: z.string(),
    /** the booked hire whose keys go next, as an example; null where there is none */
    next: z.object({ reference: z.string(), from: localSchema, to: localSchema }).nullable(),
    /** civil time at the depot */
    now: localSchema,
    /** of messages that go by themselves: days of the keys or the return of hires that have not had theirs */
    unsent: z.array(
      z.object({
        kind: z.enum(["preHire", "dayBefore", "returnReminder"]),
        /** what should have gone before this never goes by itself */
        since: localSchema,
        days: z.array(dateSchema),
      }),
    ),
  }),
);
