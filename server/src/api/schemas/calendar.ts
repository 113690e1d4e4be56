import { BLOCK_KINDS } from "@setfair/engine";
import * as z from "zod";
import { FEED_KINDS } from "../../store/message-types.ts";
import { idSchema, instantSchema, localSchema } from "./common.ts";
import { named } from "./named.ts";

export const calendarFeedSchema = named(
  "CalendarFeed",
  z.object({
    id: idSchema,
    kind: z.enum(FEED_KINDS),
    /** the vehicle or the hire in words; null for the whole diary */
    about: z.string().nullable(),
    withNames: z.boolean(),
    by: z.string(),
    at: instantSchema,
    revokedAt: instantSchema.nullable(),
  }),
);
export const calendarFeedsSchema = named("CalendarFeeds", z.object({ feeds: z.array(calendarFeedSchema) }));
export const newCalendarFeedSchema = named(
  "NewCalendarFeed",
  z.strictObject({
    kind: z.enum(FEED_KINDS),
    /** a vehicle's or a hire's id; left out for the whole diary */
    about: idSchema.optional(),
    withNames: z.boolean().default(false),
  }),
);
export const calendarFeedMadeSchema = named(
  "CalendarFeedMade",
  z.object({ feed: calendarFeedSchema, url: z.string() }),
);

/** Bytes of a calendar file at most. */
export const MOST_CALENDAR_BYTES = 1_000_000;

export const calendarImportSchema = named(
  "CalendarImport",
  z.strictObject({
    /** the text of the file */
    text: z.string().max(MOST_CALENDAR_BYTES),
    kind: z.enum(BLOCK_KINDS),
    /** left out: nothing is changed, and the answer says what would happen */
    confirm: z
      .strictObject({
        /** as the dry run said: where it comes out otherwise now, nothing is done */
        added: z.int().min(0),
        rejected: z.int().min(0),
      })
      .optional(),
  }),
);
export const calendarImportAnswerSchema = named(
  "CalendarImportAnswer",
  z.object({
    /** false for a dry run */
    done: z.boolean(),
    from: localSchema,
    until: localSchema,
    added: z.array(z.object({ title: z.string(), from: localSchema, to: localSchema, allDay: z.boolean() })),
    /** here already, by the name that each event carries */
    skipped: z.int(),
    past: z.int(),
    cancelled: z.int(),
    floating: z.int(),
    endless: z.array(z.string()),
    rejected: z.array(
      z.object({
        title: z.string(),
        why: z.enum(["unknownZone", "noLength", "noStart", "tooMany", "broken", "taken"]),
        zone: z.string(),
        from: localSchema.nullable(),
        to: localSchema.nullable(),
      }),
    ),
  }),
);
