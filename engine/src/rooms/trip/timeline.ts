import { BadInput } from "../../base/bad-input.ts";
import { datesFrom } from "../../base/day-parts.ts";
import { hoursBetween, type IsoLocal, Temporal } from "../../base/time.ts";
import type { DayPlace } from "../../climate/trip-weather.ts";
import type { Place, Trip } from "../situation.ts";
import { givenFor } from "./given-weather.ts";

const MOST_DAYS = 120;
/** hours in which part of the party is out of the vehicle, and the part that stays: common practice, no source */
const OUT_FROM_H = 10;
const OUT_TO_H = 16;
const STAYS_IN = 0.4;
/** acts of a longer stay are repeated at this hour of each morning */
const MORNING_H = 10;
/** the night's place gives a day its weather */
const NIGHT_H = 4;

export interface StopSteps {
  readonly arrive: number;
  readonly leave: number;
}

/** A trip cut into steps. Arrays are indexed by step. */
export interface Timeline {
  readonly dtH: number;
  readonly steps: number;
  /** clock at the beginning of the step, 0 to 24 */
  readonly clockH: Float64Array;
  readonly day: Int16Array;
  readonly driving: Uint8Array;
  readonly distanceKm: Float64Array;
  /** km from a step, where a drive begins or goes on after a halt, to its end or its next halt */
  readonly driveKm: ReadonlyMap<number, number>;
  readonly people: Float64Array;
  readonly postAmperes: Float64Array;
  readonly stops: readonly StopSteps[];
  /** steps at whose beginning the acts of a stop are done: index of the stop, by step */
  readonly actsAt: ReadonlyMap<
    number,
    { readonly stop: number; readonly why: "arrive" | "morning" | "leave" }
  >;
  readonly days: readonly DayPlace[];
  /** index of the stop whose place gives the day its weather; −1 for the depot */
  readonly dayStop: readonly number[];
  localAt(hour: number): IsoLocal;
  /** the step boundary nearest to a civil time */
  stepAt(local: IsoLocal): number;
}

/** Cuts the trip into steps of `dtH` hours. Throws BadInput for reversed or overlapping times. */
export function cutTimeline(trip: Trip, people: number, dtH: number): Timeline {
  checkTimes(trip);
  const clock = startClock(trip);
  const steps = Math.max(1, Math.round(clock.hours / dtH));
  const stepAt = (local: IsoLocal) => Math.min(steps, Math.max(0, Math.round(clock.hoursAt(local) / dtH)));
  const stops = trip.stops.map(({ arrive, leave }) => ({ arrive: stepAt(arrive), leave: stepAt(leave) }));
  const clockH = new Float64Array(steps);
  const day = new Int16Array(steps);
  const aboard = new Float64Array(steps);
  const drives = markDrives(trip, stops, steps, dtH);
  for (let k = 0; k < steps; k++) {
    const minutes = clock.civilMinutes(k * dtH);
    const inDay = Math.floor(minutes / 1440);
    const h = (minutes - 1440 * inDay) / 60;
    const middle = h + dtH / 2;
    const areOut = drives.driving[k] === 0 && middle > OUT_FROM_H && middle < OUT_TO_H;
    day[k] = inDay;
    clockH[k] = h;
    aboard[k] = areOut ? people * STAYS_IN : people;
  }
  const { days, dayStop } = placeDays(trip, stops, clock, clockH, day);
  return {
    dtH,
    steps,
    clockH,
    day,
    ...drives,
    people: aboard,
    postAmperes: markPosts(trip, stops, steps),
    stops,
    actsAt: markActs(stops, clockH, dtH),
    days,
    dayStop,
    localAt: clock.localAt,
    stepAt,
  };
}

function checkTimes(trip: Trip): void {
  const problems: { path: string; expected: string }[] = [];
  let before = trip.depart;
  let what = "the departure";
  trip.stops.forEach((stop, index) => {
    if (stop.arrive < before) {
      problems.push({
        path: `trip.stops.${index}.arrive`,
        expected: `expected a time not before ${what} (${before})`,
      });
    }
    if (stop.leave < stop.arrive) {
      problems.push({
        path: `trip.stops.${index}.leave`,
        expected: `expected a time not before arriving (${stop.arrive})`,
      });
    }
    before = stop.leave;
    what = `leaving stop ${index + 1}`;
  });
  if (trip.return < before || trip.return <= trip.depart) {
    problems.push({ path: "trip.return", expected: `expected a time after ${what} (${before})` });
  }
  trip.weather?.days.forEach(({ minC, maxC }, index) => {
    if (maxC < minC)
      problems.push({
        path: `trip.weather.days.${index}.maxC`,
        expected: `expected at least minC (${minC})`,
      });
  });
  if (problems.length > 0) throw new BadInput(problems);
}

interface Clock {
  readonly hours: number;
  readonly dates: readonly string[];
  civilMinutes(hour: number): number;
  localAt(hour: number): IsoLocal;
  /** hours from the departure to a civil time; one that comes twice is its first, one that is skipped is as much later */
  hoursAt(local: IsoLocal): number;
  offsetAt(hour: number): number;
}

/** Civil clock of the trip: minutes since midnight of the day of departure, with the change of the clock where one falls into the trip. */
const CIVIL = "YYYY-MM-DDTHH:MM";
const two = (value: number) => (value < 10 ? `0${value}` : `${value}`);
const HOURS = Array.from({ length: 24 }, (_, hour) => `T${two(hour)}:`);
const MINUTES = Array.from({ length: 60 }, (_, minute) => two(minute));

function startClock(trip: Trip): Clock {
  const start = zoned(trip, trip.depart, "trip.depart");
  const end = zoned(trip, trip.return, "trip.return");
  const hours = (end.epochMilliseconds - start.epochMilliseconds) / 3_600_000;
  if (!(hours > 0) || hours > MOST_DAYS * 24) {
    throw new BadInput([
      { path: "trip.return", expected: `expected at most ${MOST_DAYS} days after the departure` },
    ]);
  }
  const next = start.getTimeZoneTransition("next");
  const changeAt =
    next === null ? Number.POSITIVE_INFINITY : (next.epochMilliseconds - start.epochMilliseconds) / 3_600_000;
  const firstOffset = start.offsetNanoseconds / 3.6e12;
  const laterOffset = next === null ? firstOffset : next.offsetNanoseconds / 3.6e12;
  const startMinutes = start.hour * 60 + start.minute;
  const offsetAt = (hour: number) => (hour >= changeAt ? laterOffset : firstOffset);
  const civilMinutes = (hour: number) => startMinutes + hour * 60 + (offsetAt(hour) - firstOffset) * 60;
  const dates = datesFrom(start.toPlainDate().toString(), Math.floor(civilMinutes(hours) / 1440) + 2);
  const localAt = (hour: number) => {
    const minutes = Math.round(civilMinutes(hour));
    const day = Math.floor(minutes / 1440);
    const inDay = minutes - 1440 * day;
    const hourInDay = Math.floor(inDay / 60);
    return dates[day]! + HOURS[hourInDay]! + MINUTES[inDay - 60 * hourInDay]!;
  };
  const dayOf = new Map(dates.map((date, day) => [date, day]));
  const hoursAt = (local: IsoLocal) => {
    const day = local.length === CIVIL.length ? dayOf.get(local.slice(0, 10)) : undefined;
    if (day === undefined) return hoursBetween(trip.depart, local, trip.timeZone);
    const minutes = 1440 * day + 60 * Number(local.slice(11, 13)) + Number(local.slice(14));
    const byFirst = (minutes - startMinutes) / 60;
    const byLater = byFirst - (laterOffset - firstOffset);
    return byLater >= changeAt && byFirst >= changeAt ? byLater : byFirst;
  };
  return { hours, dates, civilMinutes, localAt, hoursAt, offsetAt };
}

function zoned(trip: Trip, local: IsoLocal, path: string): Temporal.ZonedDateTime {
  let plain: Temporal.PlainDateTime;
  try {
    // by its parts where it is written as usual: reading a text of any form takes several times as long
    const part = (from: number, to: number) => Number(local.slice(from, to));
    plain =
      local.length === CIVIL.length
        ? new Temporal.PlainDateTime(part(0, 4), part(5, 7), part(8, 10), part(11, 13), part(14, 16))
        : Temporal.PlainDateTime.from(local);
  } catch {
    throw new BadInput([{ path, expected: "expected a date that exists, YYYY-MM-DDTHH:MM" }]);
  }
  try {
    return plain.toZonedDateTime(trip.timeZone);
  } catch {
    throw new BadInput([
      { path: "trip.timeZone", expected: "expected a time zone of the tz database, e.g. Europe/London" },
    ]);
  }
}

/** Nobody drives on for longer without a halt where fuel can be had: common practice, no source. */
const HALT_AFTER_H = 4;

/** The drive to a stop ends on arriving; what is left of the time before is a halt on the way. */
function markDrives(trip: Trip, stops: readonly StopSteps[], steps: number, dtH: number) {
  const driving = new Uint8Array(steps);
  const distanceKm = new Float64Array(steps);
  const driveKm = new Map<number, number>();
  const mark = (from: number, to: number, drive: { distanceKm: number; minutes: number }) => {
    if (drive.distanceKm === 0 && drive.minutes === 0) return;
    const length = Math.max(1, Math.round(drive.minutes / 60 / dtH));
    // a drive squeezed into no time still covers its distance, in the step before arriving
    const first = Math.max(0, Math.min(Math.max(from, to - length), to - 1));
    const last = Math.min(steps, Math.max(to, first + 1));
    const perStep = drive.distanceKm / (last - first);
    const halt = Math.round(HALT_AFTER_H / dtH);
    for (let k = first; k < last; k += halt)
      driveKm.set(k, (driveKm.get(k) ?? 0) + perStep * Math.min(halt, last - k));
    for (let k = first; k < last; k++) {
      driving[k] = 1;
      distanceKm[k] = distanceKm[k]! + perStep;
    }
  };
  let from = 0;
  trip.stops.forEach((stop, index) => {
    mark(from, stops[index]!.arrive, stop.drive);
    from = stops[index]!.leave;
  });
  mark(from, steps, trip.returnDrive);
  return { driving, distanceKm, driveKm };
}

/** What the post gives in each step, A. */
export function markPosts(
  trip: Pick<Trip, "stops">,
  stops: readonly StopSteps[],
  steps: number,
): Float64Array {
  const posts = new Float64Array(steps);
  trip.stops.forEach((stop, index) => {
    if (stop.acts.includes("plugIn"))
      posts.fill(stop.pitch.postAmperes, stops[index]!.arrive, stops[index]!.leave);
  });
  return posts;
}

function markActs(stops: readonly StopSteps[], clockH: Float64Array, dtH: number): Timeline["actsAt"] {
  const acts = new Map<number, { stop: number; why: "arrive" | "morning" | "leave" }>();
  stops.forEach(({ arrive, leave }, stop) => {
    for (let k = arrive + 1; k < leave && k < clockH.length; k++) {
      const h = clockH[k]!;
      if (h >= MORNING_H && h < MORNING_H + dtH) acts.set(k, { stop, why: "morning" });
    }
    acts.set(leave, { stop, why: "leave" });
    if (arrive < leave) acts.set(arrive, { stop, why: "arrive" });
  });
  return acts;
}

/** Each day has the weather of the place of its night; the first day that of its evening. */
function placeDays(
  trip: Trip,
  stops: readonly StopSteps[],
  clock: Clock,
  clockH: Float64Array,
  day: Int16Array,
): { days: DayPlace[]; dayStop: number[] } {
  const last = day[day.length - 1]!;
  let step = 0;
  const dayStop = Array.from({ length: last + 1 }, (_, d) => {
    step = nightStep(d, step, clockH, day);
    const at = stops.findIndex(({ arrive, leave }) => step >= arrive && step < leave);
    if (at >= 0) return at;
    // between stops: where the vehicle will be next
    const next = stops.findIndex(({ arrive }) => arrive > step);
    return next >= 0 ? next : -1;
  });
  const days = dayStop.map((stop, d) => {
    const place: Place = stop < 0 ? trip.depot : trip.stops[stop]!.place;
    const noon = d * 24 + 12 - clockH[0]!;
    const given = givenFor(trip.weather, place, clock.dates[d]!);
    return {
      ...(given === null ? {} : { given }),
      latitudeDeg: place.latitudeDeg,
      longitudeDeg: place.longitudeDeg,
      elevationM: place.elevationM ?? 0,
      date: clock.dates[d]!,
      utcOffsetH: clock.offsetAt(noon),
    };
  });
  return { days, dayStop };
}

/** The step of a day's night; `from` is that of the day before, so that all days are found in one walk. */
function nightStep(d: number, from: number, clockH: Float64Array, day: Int16Array): number {
  let found = from;
  while (day[found]! < d) found += 1;
  for (let k = found; k < day.length && day[k] === d; k++) {
    found = k;
    if (d > 0 && clockH[k]! >= NIGHT_H) break;
    if (d === 0 && clockH[k]! >= 22) break;
  }
  return found;
}
