import ical, { ICalCalendarMethod, ICalEventStatus } from "ical-generator";

/** One entry of a calendar. Instants, or civil days for what lasts whole days. */
export interface CalendarEntry {
  /** the same for the same thing for ever, so that a calendar updates it */
  readonly uid: string;
  readonly title: string;
  readonly text: string;
  readonly place: string;
  /** instants with Z, or civil dates where `allDay`; `to` is the first moment or day after it */
  readonly from: string;
  readonly to: string;
  readonly allDay: boolean;
  readonly cancelled: boolean;
  /** the instant of the last change */
  readonly changedAt: string;
}

const dayOf = (date: string) => new Date(`${date}T00:00:00Z`);

/** Minutes after which a calendar program may look again. */
const LOOK_AGAIN_S = 30 * 60;

/** An iCalendar text (RFC 5545). Times are in UTC, so that no zone has to be known to read it. */
export function writeCalendar(name: string, entries: readonly CalendarEntry[]): string {
  const calendar = ical({
    name,
    method: ICalCalendarMethod.PUBLISH,
    prodId: { company: "Setfair", product: "calendar", language: "EN" },
    ttl: LOOK_AGAIN_S,
  });
  for (const entry of entries) {
    const event = calendar.createEvent({
      id: entry.uid,
      start: entry.allDay ? dayOf(entry.from) : new Date(entry.from),
      end: entry.allDay ? dayOf(entry.to) : new Date(entry.to),
      allDay: entry.allDay,
      stamp: new Date(entry.changedAt),
      lastModified: new Date(entry.changedAt),
      summary: entry.title,
    });
    if (entry.text !== "") event.description(entry.text);
    if (entry.place !== "") event.location(entry.place);
    event.status(entry.cancelled ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED);
  }
  return calendar.toString();
}
