import { figuresOf } from "../desk/depot-figures.ts";
import { asDocument, type DepotDocument, type SettlementDocument } from "../desk/documents.ts";
import { readHireData } from "../desk/hire-data.ts";
import type { MessageKind } from "../store/message-types.ts";
import type { HireRow, HireStage, Store } from "../store/types.ts";
import { composeMessage, MESSAGE_STAGES } from "./compose-message.ts";
import {
  type DatedKind,
  endOf,
  type MomentsOfDepot,
  momentOf,
  statementMoment,
  uselessAfter,
} from "./message-moments.ts";
import { type MessageSettings, readSettings } from "./message-settings.ts";

export interface PlannedMessage {
  readonly hire: HireRow;
  readonly kind: MessageKind;
  readonly dueAt: string;
}

/** One of each kind for a hire goes out by itself; what a person sends is counted apart. */
const keyOf = ({ hire, kind }: Pick<PlannedMessage, "hire" | "kind">): string => `auto:${hire.id}:${kind}`;

/** Days back in which a settlement may still be due a statement. */
const SETTLED_WITHIN_DAYS = 120;
const DAY_MS = 86_400_000;

/** When a hire was booked; null where nothing says so, as with one that came in from a file. */
async function bookedAt(store: Store, hire: HireRow): Promise<string | null> {
  const { rows } = await store.audit.list({ about: hire.id, limit: 200 });
  return rows.find(({ act }) => act === "hire.booked")?.at ?? null;
}

async function settledAt(store: Store, hires: readonly HireRow[]): Promise<ReadonlyMap<string, string>> {
  const parts = await store.hires.partsOf(
    hires.map(({ id }) => id),
    ["settlement"],
  );
  const found = new Map<string, string>();
  for (const [id, { settlement }] of parts) {
    const at = settlement === undefined ? null : asDocument<SettlementDocument>(settlement.document).frozenAt;
    if (at !== null && at !== undefined) found.set(id, at);
  }
  return found;
}

const DATED: readonly DatedKind[] = ["preHire", "dayBefore", "returnReminder"];
const OPEN_STAGES: readonly HireStage[] = ["booked", "handedOver", "onHire"];

async function momentsOf(store: Store): Promise<MomentsOfDepot> {
  const { timeZone, document } = await store.depot.get();
  return { timeZone, days: figuresOf(asDocument<DepotDocument>(document)).messageDays };
}

/** Messages that hang on a day: known ahead. */
function datedMessages(
  hires: readonly HireRow[],
  settings: MessageSettings,
  moments: MomentsOfDepot,
): PlannedMessage[] {
  const kinds = DATED.filter((kind) => settings.since[kind] !== undefined);
  return hires.flatMap((hire) =>
    kinds
      // booked ones are reminded of their return as well, once they are out
      .filter((kind) => MESSAGE_STAGES[kind].includes(hire.stage))
      .map((kind) => ({ hire, kind, dueAt: momentOf(kind, hire, moments) })),
  );
}

/** Messages that follow something done: a booking, a settlement. */
async function followingMessages(
  store: Store,
  hires: readonly HireRow[],
  settings: MessageSettings,
  now: string,
  moments: MomentsOfDepot,
) {
  const planned: PlannedMessage[] = [];
  const { booking, statement } = settings.since;
  if (booking !== undefined) {
    // a booking changes the hire: what was not touched since then was not booked since then
    const touched = hires.filter(({ stage, updatedAt }) => stage === "booked" && updatedAt >= booking);
    const known = await store.messages.knownKeys(touched.map((hire) => keyOf({ hire, kind: "booking" })));
    for (const hire of touched) {
      if (known.has(keyOf({ hire, kind: "booking" }))) continue;
      const at = await bookedAt(store, hire);
      if (at !== null) planned.push({ hire, kind: "booking", dueAt: at });
    }
  }
  if (statement !== undefined) {
    const lookBack = SETTLED_WITHIN_DAYS + moments.days.statement;
    const back = new Date(Date.parse(now) - lookBack * DAY_MS).toISOString();
    const ahead = new Date(Date.parse(now) + SETTLED_WITHIN_DAYS * DAY_MS).toISOString();
    const ended = (await store.hires.ending(back, ahead)).filter(
      ({ stage, updatedAt }) => MESSAGE_STAGES.statement.includes(stage) && updatedAt >= statement,
    );
    const at = await settledAt(store, ended);
    for (const hire of ended) {
      const settled = at.get(hire.id);
      if (settled !== undefined)
        planned.push({ hire, kind: "statement", dueAt: statementMoment(settled, moments) });
    }
  }
  return planned;
}

/** What goes out by itself up to an instant and has not been written yet, soonest first. */
export async function plannedMessages(
  store: Store,
  now: string,
  until: string,
): Promise<readonly PlannedMessage[]> {
  const { settings } = await readSettings(store);
  if (Object.keys(settings.since).length === 0) return [];
  const moments = await momentsOf(store);
  const hires = await store.hires.all({ stages: OPEN_STAGES });
  const planned = [
    ...datedMessages(hires, settings, moments),
    ...(await followingMessages(store, hires, settings, now, moments)),
  ].filter(({ hire, kind, dueAt }) => {
    const last = uselessAfter(kind, hire);
    return dueAt <= until && dueAt >= (settings.since[kind] ?? "9") && (last === null || last > now);
  });
  const known = await store.messages.knownKeys(planned.map(keyOf));
  return planned.filter((each) => !known.has(keyOf(each))).sort((a, b) => (a.dueAt < b.dueAt ? -1 : 1));
}

/** Of messages that go by themselves on a day: the days of the keys or the return of hires that have not had theirs. */
export async function unsentMessages(
  store: Store,
  now: string,
): Promise<
  readonly { readonly kind: DatedKind; readonly since: string; readonly days: readonly string[] }[]
> {
  const { settings } = await readSettings(store);
  const moments = await momentsOf(store);
  const hires = await store.hires.all({ stages: OPEN_STAGES });
  const dated = datedMessages(hires, settings, moments).filter(
    ({ hire, kind }) => (uselessAfter(kind, hire) ?? now) > now,
  );
  const known = await store.messages.knownKeys(dated.map(keyOf));
  return DATED.flatMap((kind) => {
    const since = settings.since[kind];
    const open = dated.filter((each) => each.kind === kind && !known.has(keyOf(each)));
    return since === undefined
      ? []
      : [{ kind, since, days: open.map(({ hire }) => endOf(kind, hire, moments.timeZone)) }];
  });
}

/** Writes one message and gives it its job, together; one that cannot be sent is there for a person to see. */
async function writeMessage(
  store: Store,
  planned: PlannedMessage,
  now: Date,
  hasServer: boolean,
): Promise<boolean> {
  const data = await readHireData(store, planned.hire.id, now);
  const { kind, dueAt } = planned;
  const composed = await composeMessage(store, data, { kind, language: "en", goesAt: now.toISOString() });
  return store.within(async (inner) => {
    const message = await inner.messages.add({
      hireId: planned.hire.id,
      kind,
      language: "en",
      to: composed.to,
      subject: composed.subject,
      body: composed.body,
      attachments: composed.attachments,
      dueAt,
      dedupeKey: keyOf(planned),
      by: "system",
    });
    if (message === null) return false;
    const [problem] = composed.problems;
    if (problem !== undefined) {
      const reason = problem.path === "stage" ? "#stage" : "#noAddress";
      await inner.messages.move(message.id, ["waiting"], { state: "failed", reason });
    } else if (hasServer) await inner.messages.addJob(message.id, now.toISOString());
    return true;
  });
}

/**
 * Writes what is due by itself, and gives a job to whatever waits without one. May run in several processes at
 * once and be stopped anywhere: a key of its own keeps each message to one.
 */
export async function planMessages(store: Store, now: Date, hasServer: boolean): Promise<number> {
  const at = now.toISOString();
  let written = 0;
  const failures: unknown[] = [];
  for (const planned of await plannedMessages(store, at, at)) {
    try {
      if (await writeMessage(store, planned, now, hasServer)) written += 1;
    } catch (error) {
      // one hire that cannot be read must not hold up the others
      failures.push(error);
    }
  }
  if (hasServer)
    for (const { id, dueAt } of await store.messages.withoutJob(200)) await store.messages.addJob(id, dueAt);
  if (failures.length > 0) throw failures[0];
  return written;
}
