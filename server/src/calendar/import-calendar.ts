import type { z } from "zod";
import { Refusal } from "../api/refusal.ts";
import type { calendarImportAnswerSchema } from "../api/schemas/calendar.ts";
import { localOf } from "../desk/local-time.ts";
import { runOrUndo } from "../import/dry-run.ts";
import type { BlockRow, Store } from "../store/types.ts";
import { type ReadCalendar, type ReadPeriod, readCalendar } from "./read-calendar.ts";

export type CalendarImportAnswer = z.input<typeof calendarImportAnswerSchema>;

export interface CalendarImport {
  readonly vehicleId: string;
  readonly text: string;
  readonly kind: BlockRow["kind"];
  readonly confirm: { readonly added: number; readonly rejected: number } | null;
  readonly by: string;
  readonly now: Date;
}

/** How far ahead a file is taken: an endless repeat has to end somewhere. */
const AHEAD_MS = 731 * 86_400_000;

type Rejected = CalendarImportAnswer["rejected"][number];

/** Puts in what is free; what something holds, or is here already, is told. */
async function addPeriods(store: Store, asked: CalendarImport, periods: readonly ReadPeriod[], zone: string) {
  const known = new Set(await store.feeds.knownEvents(asked.vehicleId));
  const added: CalendarImportAnswer["added"] = [];
  const rejected: Rejected[] = [];
  let skipped = 0;
  const local = (instant: string) => localOf(instant, zone);
  for (const { key, title, from, to, allDay } of periods) {
    if (known.has(key)) {
      skipped += 1;
      continue;
    }
    known.add(key);
    const { vehicleId, kind, by } = asked;
    const answer = await store.blocks.add({ vehicleId, kind, note: title, from, to, by });
    if (answer.ok) {
      await store.feeds.rememberEvent({ vehicleId, uid: key, blockId: answer.block.id });
      added.push({ title, from: local(from), to: local(to), allDay });
    } else {
      rejected.push({ title, why: "taken", zone: "", from: local(from), to: local(to) });
    }
  }
  return { added, rejected, skipped };
}

/**
 * Takes in a calendar file as periods off the road. Without `confirm` nothing is changed; with it all of it stands
 * or none, and nothing is done where it would come out otherwise than the dry run said.
 */
export async function importCalendar(store: Store, asked: CalendarImport): Promise<CalendarImportAnswer> {
  const { timeZone } = await store.depot.get();
  const from = asked.now.toISOString();
  const until = new Date(asked.now.getTime() + AHEAD_MS).toISOString();
  const read: ReadCalendar = readCalendar(asked.text, { timeZone, from, until });
  const unread = read.rejected.map(({ title, why, zone }) => ({ title, why, zone, from: null, to: null }));
  return runOrUndo(store, asked.confirm === null, async (inner) => {
    const { added, rejected, skipped } = await addPeriods(inner, asked, read.periods, timeZone);
    const all = [...unread, ...rejected];
    const { confirm } = asked;
    if (confirm !== null && (confirm.added !== added.length || confirm.rejected !== all.length))
      throw new Refusal("stale");
    const document = { added: added.length, rejected: all.length };
    await inner.audit.add({ by: asked.by, act: "vehicle.calendarTaken", about: asked.vehicleId, document });
    return {
      done: confirm !== null,
      from: localOf(from, timeZone),
      until: localOf(until, timeZone),
      added,
      skipped,
      past: read.past,
      cancelled: read.cancelled,
      floating: read.floating,
      endless: [...new Set(read.endless)],
      rejected: all,
    };
  });
}
