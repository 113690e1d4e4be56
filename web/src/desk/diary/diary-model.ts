import { closedAs, hoursOn } from "@setfair/engine";
import type { Schemas } from "../../api/client.ts";

export type Diary = Schemas["Diary"];
export type DiaryHire = Diary["hires"][number];
export type DiaryBlock = Diary["blocks"][number];
export type DiaryVehicle = Diary["vehicles"][number];

const DAY_MS = 86_400_000;

/** Whole days from one civil date to another. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);

export const plusDays = (date: string, days: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);

/** The same day of another month, or its last where it has none such. */
export function plusMonths(date: string, months: number): string {
  const [year = 0, month = 1, day = 1] = date.split("-").map(Number);
  const last = new Date(Date.UTC(year, month - 1 + months + 1, 0)).getUTCDate();
  return new Date(Date.UTC(year, month - 1 + months, Math.min(day, last))).toISOString().slice(0, 10);
}

export const firstOfMonth = (date: string): string => `${date.slice(0, 7)}-01`;

/** Saturday and Sunday. */
export const isWeekend = (date: string): boolean =>
  [0, 6].includes(new Date(`${date}T00:00:00Z`).getUTCDay());

/** A civil time in days from the first day of the diary, with its fraction. */
const offsetOf = (start: string, local: string): number =>
  (Date.parse(`${local}:00Z`) - Date.parse(`${start}T00:00:00Z`)) / DAY_MS;

/** Something that is drawn over the days of one vehicle; offsets in days from the diary's first. */
export interface Bar {
  readonly key: string;
  readonly start: number;
  readonly end: number;
  /** until when it is cleaned and filled; `end` where it holds nothing after */
  readonly ready: number;
  readonly hire: DiaryHire | null;
  readonly block: DiaryBlock | null;
}

export interface DiaryRow {
  readonly vehicle: DiaryVehicle;
  readonly bars: readonly Bar[];
  /** days on which something must be renewed at the latest */
  readonly due: ReadonlyMap<number, readonly string[]>;
}

export interface DiaryModel {
  readonly start: string;
  readonly days: number;
  readonly rows: readonly DiaryRow[];
  /** school holidays as days from the first, both included */
  readonly holidays: readonly { readonly from: number; readonly to: number }[];
  /** days on which the depot is closed, with what for; empty where it is so each week */
  readonly closed: ReadonlyMap<number, string>;
}

const HOLDS: readonly string[] = ["booked", "handedOver", "onHire", "returned", "settled", "closed"];
/** An enquiry or a quote holds no vehicle. */
export const holds = (hire: DiaryHire): boolean => HOLDS.includes(hire.stage);
/** What may still go on another vehicle. */
export const canMove = (hire: DiaryHire): boolean => ["enquiry", "quote", "booked"].includes(hire.stage);

export function makeModel(diary: Diary): DiaryModel {
  const { from: start } = diary;
  const bars = new Map<string, Bar[]>(diary.vehicles.map(({ id }) => [id, []]));
  for (const hire of diary.hires) {
    const end = offsetOf(start, hire.to);
    const ready = holds(hire) ? end + diary.turnaroundMinutes / 1440 : end;
    bars
      .get(hire.vehicleId)
      ?.push({ key: hire.id, start: offsetOf(start, hire.from), end, ready, hire, block: null });
  }
  for (const block of diary.blocks) {
    const end = offsetOf(start, block.to);
    bars
      .get(block.vehicleId)
      ?.push({ key: block.id, start: offsetOf(start, block.from), end, ready: end, hire: null, block });
  }
  const days = daysBetween(start, diary.to) + 1;
  return {
    start,
    days,
    closed: closedDays(start, days, diary.hours),
    rows: diary.vehicles.map((vehicle) => ({
      vehicle,
      bars: (bars.get(vehicle.id) ?? []).sort((a, b) => a.start - b.start),
      due: dueDays(start, vehicle),
    })),
    holidays: diary.schoolHolidays.map(({ from, to }) => ({
      from: daysBetween(start, from),
      to: daysBetween(start, to),
    })),
  };
}

function closedDays(start: string, days: number, hours: Diary["hours"]): ReadonlyMap<number, string> {
  const dates = Array.from({ length: days }, (_, day) => [day, plusDays(start, day)] as const);
  return new Map(
    dates.flatMap(([day, date]) =>
      hoursOn(hours, date) === null ? [[day, closedAs(hours, date) ?? ""] as const] : [],
    ),
  );
}

function dueDays(start: string, vehicle: DiaryVehicle): ReadonlyMap<number, readonly string[]> {
  const days = new Map<number, string[]>();
  for (const { kind, dueOn } of vehicle.due) {
    const day = daysBetween(start, dueOn);
    days.set(day, [...(days.get(day) ?? []), kind]);
  }
  return days;
}

/** What touches a day of a vehicle, in the order in which it begins. */
export const barsOn = (row: DiaryRow, day: number): readonly Bar[] =>
  row.bars.filter(({ start, end }) => start < day + 1 && end > day);

/** Whether nothing holds the vehicle on these days; a morning or an afternoon may still be taken. */
export const isFree = (row: DiaryRow, from: number, to: number): boolean =>
  row.bars.every(({ start, end, hire }) => (hire !== null && !holds(hire)) || start >= to + 1 || end <= from);

/** The row whose registration has these letters, looking on from the row after `from`. */
export function findPlate(rows: readonly DiaryRow[], typed: string, from: number): number {
  const wanted = typed.toUpperCase().replaceAll(/[^A-Z0-9]/g, "");
  if (wanted === "") return -1;
  const plain = ({ vehicle }: DiaryRow) => vehicle.registration.toUpperCase().replaceAll(/[^A-Z0-9]/g, "");
  const inOrder = rows.map((_, k) => (from + k) % rows.length);
  return (
    inOrder.find((k) => rows[k] !== undefined && plain(rows[k]).startsWith(wanted)) ??
    inOrder.find((k) => rows[k] !== undefined && plain(rows[k]).includes(wanted)) ??
    -1
  );
}
