import { addDays } from "@setfair/engine";
import type { AppContext } from "../../context.ts";
import { asDocument, type DepotDocument } from "../../desk/documents.ts";
import { listSummaries } from "../../desk/list-summaries.ts";
import { dateOf, instantOf, localOf } from "../../desk/local-time.ts";
import { hoursAnswer } from "../../desk/opening-hours.ts";
import type { HireSummary } from "../../desk/summary.ts";
import { blockersOf, readDay } from "../../desk/the-day.ts";
import type { HireRow } from "../../store/types.ts";
import type { Handlers, Signed } from "../call.ts";
import type { AnswerOf } from "../operation.ts";
import type { Operations } from "../operations.ts";

/** Enquiries and settlements that a day shows; the counts say how many there are. */
const SHOWN = 8;

/** The day of the depot: today, or the one asked for. */
export async function readToday(
  context: AppContext,
  { store }: Signed,
  asked: string | undefined,
): Promise<AnswerOf<Operations["today"]>> {
  const depot = await store.depot.get();
  const now = localOf(context.now().toISOString(), depot.timeZone);
  const today = dateOf(now);
  const date = asked ?? today;
  const start = instantOf(`${date}T00:00`, depot.timeZone, "date");
  const end = instantOf(`${addDays(date, 1)}T00:00`, depot.timeZone, "date");
  const day = await readDay(store, { start, end, isToday: date === today });
  const enquiries = await store.hires.list({ stages: ["enquiry", "quote"], limit: SHOWN });
  const toSettle = await store.hires.list({ stages: ["returned", "settled"], limit: SHOWN });
  const counts = await store.hires.counts(["enquiry", "quote", "returned", "settled"]);
  const rows = [...day.out, ...day.back, ...day.road, ...enquiries.rows, ...toSettle.rows];
  const lines = await listSummaries(store, [...unique(rows)], context.now(), depot);
  const byId = new Map(lines.map((line) => [line.id, line]));
  const of = (some: readonly HireRow[]): HireSummary[] => some.flatMap(({ id }) => byId.get(id) ?? []);
  const out = of(day.out);
  const back = of(day.back);
  const { turnaroundMinutes, hours } = asDocument<DepotDocument>(depot.document);
  return {
    date,
    now,
    out,
    back,
    onTheRoad: of(day.road),
    blockers: [...blockersOf({ out, back, now, turnaroundMinutes, hours: hoursAnswer(hours) })],
    open: {
      enquiries: counts.enquiry ?? 0,
      quotes: counts.quote ?? 0,
      toSettle: (counts.returned ?? 0) + (counts.settled ?? 0),
    },
    enquiries: of(enquiries.rows),
    toSettle: of(toSettle.rows),
  };
}

export const todayHandlers = {
  today: ({ context, signed, query }) => readToday(context, signed, query.date),
} satisfies Partial<Handlers>;

const unique = (rows: readonly HireRow[]) => new Map(rows.map((row) => [row.id, row])).values();
