import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, byToken, may } from "./shared.ts";

export const calendarOperations = {
  readCalendar: operation({
    method: "GET",
    url: "/calendar/:token",
    tag: "calendar",
    summary: "The calendar that a secret link opens, as iCalendar",
    access: "link",
    params: byToken,
    perMinute: 60,
  }),
  listCalendarFeeds: operation({
    method: "GET",
    url: "/calendar-feeds",
    tag: "calendar",
    summary: "Secret links to calendars, the ended ones too",
    access: may("link.create"),
    answer: s.calendarFeedsSchema,
  }),
  makeCalendarFeed: operation({
    method: "POST",
    url: "/calendar-feeds",
    tag: "calendar",
    summary: "Make a secret link; it is shown once",
    access: may("link.create"),
    body: s.newCalendarFeedSchema,
    answer: s.calendarFeedMadeSchema,
    perMinute: 30,
  }),
  endCalendarFeed: operation({
    method: "POST",
    url: "/calendar-feeds/:id/end",
    tag: "calendar",
    summary: "End a link: it opens nothing from now on",
    access: may("link.create"),
    params: byId,
    answer: s.doneSchema,
  }),
  importCalendar: operation({
    method: "POST",
    url: "/vehicles/:id/calendar",
    tag: "calendar",
    summary: "Take in a calendar file as periods off the road: first a dry run, then all of it at once",
    access: may("hire.write"),
    params: byId,
    body: s.calendarImportSchema,
    answer: s.calendarImportAnswerSchema,
    bodyLimit: 2_500_000,
    perMinute: 30,
  }),
} as const;
