import fc from "fast-check";
import ICAL from "ical.js";
import { expect, test } from "vitest";
import { readCalendar } from "./read-calendar.ts";
import { type CalendarEntry, writeCalendar } from "./write-calendar.ts";

const WINDOW = {
  timeZone: "Europe/London",
  from: "2026-01-01T00:00:00.000Z",
  until: "2028-01-01T00:00:00.000Z",
};
const entry = (change: Partial<CalendarEntry>): CalendarEntry => ({
  uid: "e1@setfair",
  title: "Heron SF26 HRN",
  text: "",
  place: "",
  from: "2026-07-03T11:15:00.000Z",
  to: "2026-07-06T09:00:00.000Z",
  allDay: false,
  cancelled: false,
  changedAt: "2026-06-01T08:00:00.000Z",
  ...change,
});
const file = (...lines: string[]) =>
  ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//invented//EN", ...lines, "END:VCALENDAR", ""].join("\r\n");
const event = (uid: string, ...lines: string[]) => [
  "BEGIN:VEVENT",
  `UID:${uid}`,
  "DTSTAMP:20260101T000000Z",
  "SUMMARY:Service",
  ...lines,
  "END:VEVENT",
];
const eventsOf = (text: string) =>
  new ICAL.Component(ICAL.parse(text) as unknown[])
    .getAllSubcomponents("vevent")
    .map((each) => new ICAL.Event(each));

test("what is written comes back through another parser: any text, any minute of the year, both clock changes", () => {
  const minute = fc.integer({ min: 0, max: 525_599 }).map((n) => Date.UTC(2026, 0, 1) + n * 60_000);
  // control characters cannot stand in a calendar; line breaks stand in the description
  const text = fc
    .string({ unit: "grapheme", maxLength: 120 })
    .map((each) => each.replaceAll(/\p{C}/gu, "").trim());
  fc.assert(
    fc.property(minute, fc.integer({ min: 1, max: 20_000 }), text, text, (start, minutes, title, more) => {
      const from = new Date(start).toISOString();
      const to = new Date(start + minutes * 60_000).toISOString();
      const description = `${more}; one, two\\three\nfour: "five"`;
      const [found] = eventsOf(
        writeCalendar("Diary", [entry({ from, to, title: `A${title}`, text: description })]),
      );
      expect(found?.summary).toBe(`A${title}`);
      expect(found?.description).toBe(description);
      expect(found?.startDate.toJSDate().toISOString()).toBe(from);
      expect(found?.endDate.toJSDate().toISOString()).toBe(to);
    }),
    { numRuns: 200 },
  );
  for (const [from, to] of [
    ["2026-03-29T00:30:00.000Z", "2026-03-29T01:30:00.000Z"],
    ["2026-10-25T00:30:00.000Z", "2026-10-25T01:30:00.000Z"],
  ] as const) {
    const [period] = readCalendar(writeCalendar("Diary", [entry({ from, to })]), WINDOW).periods;
    expect([period?.from, period?.to]).toEqual([from, to]);
  }
});

test("whole days stay whole days, over a clock change too, and end before the day after", () => {
  const text = writeCalendar("Diary", [entry({ allDay: true, from: "2026-10-24", to: "2026-10-27" })]);
  expect(text).toContain("DTSTART;VALUE=DATE:20261024");
  const { periods } = readCalendar(text, WINDOW);
  expect(periods).toMatchObject([
    { allDay: true, from: "2026-10-23T23:00:00.000Z", to: "2026-10-27T00:00:00.000Z" },
  ]);
});

test("times in a named zone, in UTC, in a zone that the file describes, and in none", () => {
  const zone = [
    "BEGIN:VTIMEZONE",
    "TZID:Our Own Zone",
    "BEGIN:STANDARD",
    "DTSTART:19700101T000000",
    "TZOFFSETFROM:+0300",
    "TZOFFSETTO:+0300",
    "END:STANDARD",
    "END:VTIMEZONE",
  ];
  const { periods, floating, rejected } = readCalendar(
    file(
      ...zone,
      ...event("a", "DTSTART;TZID=Europe/Berlin:20260703T120000", "DTEND;TZID=Europe/Berlin:20260703T130000"),
      ...event("b", "DTSTART:20260703T120000Z", "DURATION:PT2H"),
      ...event("c", "DTSTART;TZID=Our Own Zone:20260703T120000", "DTEND;TZID=Our Own Zone:20260703T130000"),
      ...event("d", "DTSTART:20260703T120000", "DTEND:20260703T130000"),
      ...event("e", "DTSTART;TZID=Nowhere Standard Time:20260703T120000", "DURATION:PT1H"),
    ),
    WINDOW,
  );
  expect(periods.map(({ key, from }) => [key, from])).toEqual([
    ["a", "2026-07-03T10:00:00.000Z"],
    ["b", "2026-07-03T12:00:00.000Z"],
    ["c", "2026-07-03T09:00:00.000Z"],
    ["d", "2026-07-03T11:00:00.000Z"],
  ]);
  expect(floating).toBe(1);
  expect(rejected).toEqual([
    { uid: "e", title: "Service", why: "unknownZone", zone: "Nowhere Standard Time" },
  ]);
});

test("an endless repeat stops at the end of the window and is named; each repeat keeps its hour over a clock change", () => {
  const weekly = event(
    "w",
    "DTSTART;TZID=Europe/London:20260105T090000",
    "DTEND;TZID=Europe/London:20260105T100000",
    "RRULE:FREQ=WEEKLY",
    "EXDATE;TZID=Europe/London:20260112T090000",
  );
  const moved = event(
    "w",
    "RECURRENCE-ID;TZID=Europe/London:20260119T090000",
    "DTSTART;TZID=Europe/London:20260120T140000",
    "DTEND;TZID=Europe/London:20260120T150000",
  );
  const { periods, endless, rejected } = readCalendar(file(...weekly, ...moved), WINDOW);
  expect(rejected).toEqual([]);
  expect(endless).toEqual(["Service"]);
  expect(periods.length).toBe(103); // 104 Mondays in 2026 and 2027, one left out
  expect(periods.map(({ from }) => from)).toContain("2026-01-20T14:00:00.000Z");
  expect(periods.map(({ from }) => from)).not.toContain("2026-01-19T09:00:00.000Z");
  expect(periods.at(20)?.from).toMatch(/T08:00/);
  expect(new Set(periods.map(({ key }) => key)).size).toBe(periods.length);
});

test("a repeat every second, one without a start, one without length and a text that is none are refused in words", () => {
  const { rejected, periods } = readCalendar(
    file(
      ...event("s", "DTSTART:20260703T120000Z", "DURATION:PT1S", "RRULE:FREQ=SECONDLY"),
      ...event("n"),
      ...event("z", "DTSTART:20260703T120000Z"),
      ...event("back", "DTSTART:20260703T120000Z", "DTEND:20260703T110000Z"),
      ...event("ok", "DTSTART:20260703T120000Z", "DURATION:PT1H"),
    ),
    WINDOW,
  );
  expect(periods.map(({ key }) => key)).toEqual(["ok"]);
  expect(rejected.map(({ uid, why }) => [uid, why])).toEqual([
    ["s", "tooMany"],
    ["n", "noStart"],
    ["z", "noLength"],
    ["back", "noLength"],
  ]);
  for (const text of ["", "name,address", "BEGIN:VCARD\r\nEND:VCARD\r\n", "BEGIN:VCALENDAR"])
    expect(() => readCalendar(text, WINDOW)).toThrow(/badInput/);
});
