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
      z.object({ hireId: idSchema, hire: hireSummarySchema, why: z.enum(["glass", "late", "dueDate"]) }),
    ),
    /** still to be answered or settled */
    open: z.object({ enquiries: z.int(), quotes: z.int(), toSettle: z.int() }),
    enquiries: z.array(hireSummarySchema),
    toSettle: z.array(hireSummarySchema),
  }),
);
export const todayQuerySchema = z.object({ date: dateSchema.optional() });
