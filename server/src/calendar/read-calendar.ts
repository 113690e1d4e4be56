import { Temporal } from "@setfair/engine";
import ICAL from "ical.js";
import { badField } from "../api/refusal.ts";

/** What is taken from a calendar file: a period, with a key that is the same whenever the file is read. */
export interface ReadPeriod {
  readonly key: string;
  readonly title: string;
  readonly from: string;
  readonly to: string;
  readonly allDay: boolean;
}
export type RejectedWhy = "unknownZone" | "noLength" | "noStart" | "tooMany" | "broken";
export interface RejectedEvent {
  readonly uid: string;
  readonly title: string;
  readonly why: RejectedWhy;
  /** the zone's name, where that is why */
  readonly zone: string;
}
export interface ReadCalendar {
  readonly periods: readonly ReadPeriod[];
  readonly rejected: readonly RejectedEvent[];
  readonly past: number;
  readonly cancelled: number;
  /** repeats without an end, cut at the end of the window */
  readonly endless: readonly string[];
  /** beyond the window, so not taken */
  readonly beyond: number;
  /** without a zone: taken in the depot's */
  readonly floating: number;
}
export interface CalendarWindow {
  readonly timeZone: string;
  /** instants: what ends before, or begins after, is not taken */
  readonly from: string;
  readonly until: string;
}

const MOST_EVENTS = 2000;
const MOST_REPEATS = 400;
const MOST_STEPS = 20_000;

type Moment = { readonly instant: string; readonly floating: boolean };
class Unreadable extends Error {
  readonly why: RejectedWhy;
  readonly zone: string;
  constructor(why: RejectedWhy, zone = "") {
    super(why);
    this.why = why;
    this.zone = zone;
  }
}

function isZone(name: string): boolean {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name);
    return /[A-Za-z]/.test(name);
  } catch {
    return false;
  }
}

/** A civil time in a zone as an instant; one that a clock change skips counts from before the change, as RFC 5545 has it. */
const instantIn = (time: ICAL.Time, zone: string): string =>
  Temporal.PlainDateTime.from({
    year: time.year,
    month: time.month,
    day: time.day,
    hour: time.isDate ? 0 : time.hour,
    minute: time.isDate ? 0 : time.minute,
    second: time.isDate ? 0 : time.second,
  })
    .toZonedDateTime(zone, { disambiguation: "compatible" })
    .toInstant()
    .toString({ smallestUnit: "millisecond" });

/** A time as an instant: its named zone, the one that the file itself describes, UTC, or the depot's where it has none. */
function momentOf(time: ICAL.Time, tzid: string | null, event: ICAL.Component, timeZone: string): Moment {
  if (time.isDate) return { instant: instantIn(time, timeZone), floating: false };
  if (time.zone === ICAL.Timezone.utcTimezone) return { instant: instantIn(time, "UTC"), floating: false };
  if (tzid === null) return { instant: instantIn(time, timeZone), floating: true };
  const name = tzid.replace(/^"|"$/g, "");
  if (isZone(name)) return { instant: instantIn(time, name), floating: false };
  const described = event.getTimeZoneByID(tzid) as ICAL.Timezone | null;
  if (described === null) throw new Unreadable("unknownZone", name);
  const seconds = time.toUnixTime() - (time.zone === described ? 0 : described.utcOffset(time));
  return { instant: new Date(seconds * 1000).toISOString(), floating: false };
}

const tzidOf = (component: ICAL.Component, name: string): string | null => {
  const tzid = component.getFirstProperty(name)?.getFirstParameter("tzid");
  return typeof tzid === "string" && tzid !== "" ? tzid : null;
};
const uidOf = (component: ICAL.Component): string => String(component.getFirstPropertyValue("uid") ?? "");
const titleOf = (component: ICAL.Component): string =>
  String(component.getFirstPropertyValue("summary") ?? "").slice(0, 300);
const isCancelled = (component: ICAL.Component): boolean =>
  String(component.getFirstPropertyValue("status") ?? "").toUpperCase() === "CANCELLED";

/** All events of a file; refused by the field's name where it is none. */
function parseFile(text: string): readonly ICAL.Component[] {
  let root: ICAL.Component;
  try {
    root = new ICAL.Component(ICAL.parse(text) as unknown[]);
  } catch (error) {
    const why = error instanceof Error ? error.message.slice(0, 120) : "";
    throw badField("file", `expected a calendar file (iCalendar, RFC 5545): ${why}`);
  }
  if (root.name !== "vcalendar") throw badField("file", "expected one calendar (BEGIN:VCALENDAR)");
  const events = root.getAllSubcomponents("vevent");
  if (events.length > MOST_EVENTS) throw badField("file", `expected at most ${MOST_EVENTS} events`);
  return events;
}

interface Taken {
  readonly periods: ReadPeriod[];
  past: number;
  cancelled: number;
  beyond: number;
  floating: number;
  readonly endless: string[];
}

function takePeriod(taken: Taken, window: CalendarWindow, period: ReadPeriod, isFloating: boolean): void {
  if (period.to <= window.from) taken.past += 1;
  else if (period.from >= window.until) taken.beyond += 1;
  else {
    taken.periods.push(period);
    if (isFloating) taken.floating += 1;
  }
}

function readOnce(taken: Taken, window: CalendarWindow, event: ICAL.Event, key: string): void {
  const { component } = event;
  const zone = tzidOf(component, "dtstart");
  const from = momentOf(event.startDate, zone, component, window.timeZone);
  const to = momentOf(event.endDate, tzidOf(component, "dtend") ?? zone, component, window.timeZone);
  if (to.instant <= from.instant) throw new Unreadable("noLength");
  const { isDate } = event.startDate;
  const period = { key, title: titleOf(component), from: from.instant, to: to.instant, allDay: isDate };
  takePeriod(taken, window, period, from.floating);
}

/** Whether any rule of the event has neither a count nor a last day. */
function isEndless(component: ICAL.Component): boolean {
  return component.getAllProperties("rrule").some((rule) => {
    const recur = rule.getFirstValue() as unknown as ICAL.Recur; // an RRULE's value is always one
    return !recur.isByCount() && recur.until === null;
  });
}

function readRepeated(taken: Taken, window: CalendarWindow, event: ICAL.Event): void {
  const { component } = event;
  const zone = tzidOf(component, "dtstart");
  const steps = event.iterator();
  let kept = 0;
  for (let n = 0; n < MOST_STEPS; n++) {
    const next = steps.next();
    if (next === null || next === undefined) return;
    const found = event.getOccurrenceDetails(next);
    const moved = found.item.component;
    const startZone = moved === component ? zone : tzidOf(moved, "dtstart");
    const from = momentOf(found.startDate, startZone, moved, window.timeZone);
    const to = momentOf(found.endDate, tzidOf(moved, "dtend") ?? startZone, moved, window.timeZone);
    // later repeats only begin later; one that was moved says nothing of the others
    if (moved === component && from.instant >= window.until) {
      taken.beyond += 1;
      return;
    }
    if (to.instant <= from.instant) throw new Unreadable("noLength");
    if (isCancelled(moved)) {
      taken.cancelled += 1;
      continue;
    }
    if (to.instant > window.from) kept += 1;
    if (kept > MOST_REPEATS) throw new Unreadable("tooMany");
    const key = `${uidOf(component)}#${next.toString()}`;
    const { isDate } = found.startDate;
    const period = { key, title: titleOf(moved), from: from.instant, to: to.instant, allDay: isDate };
    takePeriod(taken, window, period, from.floating);
  }
  throw new Unreadable("tooMany");
}

function readEvent(
  taken: Taken,
  window: CalendarWindow,
  component: ICAL.Component,
  all: readonly ICAL.Component[],
) {
  if (component.getFirstPropertyValue("dtstart") === null) throw new Unreadable("noStart");
  if (isCancelled(component)) {
    taken.cancelled += 1;
    return;
  }
  const uid = uidOf(component);
  const exceptions = all.filter((each) => each !== component && uidOf(each) === uid && uid !== "");
  const event = new ICAL.Event(component, { exceptions: [...exceptions], strictExceptions: false });
  if (event.isRecurring()) {
    readRepeated(taken, window, event);
    if (isEndless(component)) taken.endless.push(titleOf(component));
    return;
  }
  const start = event.startDate.toString();
  // an event without a name of its own is known by what it says
  readOnce(taken, window, event, uid === "" ? `${start} ${titleOf(component)}` : uid);
}

/** Reads a calendar file. What cannot be taken is named, each event by itself. */
export function readCalendar(text: string, window: CalendarWindow): ReadCalendar {
  const all = parseFile(text);
  const taken: Taken = { periods: [], past: 0, cancelled: 0, beyond: 0, floating: 0, endless: [] };
  const rejected: RejectedEvent[] = [];
  const isException = (each: ICAL.Component) =>
    each.getFirstProperty("recurrence-id") !== null &&
    all.some(
      (other) => other !== each && uidOf(other) === uidOf(each) && !other.hasProperty("recurrence-id"),
    );
  for (const component of all.filter((each) => !isException(each))) {
    const before = taken.periods.length;
    try {
      readEvent(
        taken,
        window,
        component,
        all.filter((each) => each.hasProperty("recurrence-id")),
      );
    } catch (error) {
      // an event is taken whole or not at all
      taken.periods.length = before;
      const { why, zone } = error instanceof Unreadable ? error : new Unreadable("broken");
      rejected.push({ uid: uidOf(component), title: titleOf(component), why, zone });
    }
  }
  return { ...taken, rejected };
}
