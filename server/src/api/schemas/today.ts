import * as z from "zod";
import { dateSchema, idSchema, localSchema } from "./common.ts";
import { hireSummarySchema } from "./hires.ts";
import { named } from "./named.ts";

export const todaySchema = named(
  "Today",
  z.object({
    date: dateSchema,
    /** civil time now in the depot's zone */
    now: localSchema,
    out: z.array(hireSummarySchema),
    back: z.array(hireSummarySchema),
    onTheRoad: z.array(hireSummarySchema),
    /** what holds things up, worst first */
    blockers: z.array(
      z.object({
        hireId: idSchema,
        hire: hireSummarySchema,
        /** the glass holds the keys, or the vehicle should be back */
        why: z.enum(["glass", "late"]),
        /** since when the keys should have gone or come; 0 before that */
        lateMinutes: z.int(),
        /** who waits for the same vehicle today */
        next: z.object({ hireId: idSchema, customer: z.string(), from: localSchema }).nullable(),
        /** when it could go again, were it to come back this minute */
        readyAt: localSchema.nullable(),
      }),
    ),
    /** still to be answered or settled */
    open: z.object({ enquiries: z.int(), quotes: z.int(), toSettle: z.int() }),
    enquiries: z.array(hireSummarySchema),
    toSettle: z.array(hireSummarySchema),
  }),
);
export const todayQuerySchema = z.object({ date: dateSchema.optional() });
