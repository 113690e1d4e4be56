import { type AnyRecord, type DepotRecord, isErased } from "./record.ts";

/** Several readings of one thing that do not say the same: a question to whoever signs. */
export interface ReadingQuestion {
  readonly hireId: string;
  readonly direction: string;
  readonly about: string;
  /** every one is kept; by device time, then id */
  readonly readings: readonly DepotRecord[];
}

export interface MergedReading {
  readonly hireId: string;
  readonly direction: string;
  readonly about: string;
  /** what holds: the only value, the one all agree on, or the one that an answer named; null while it is a question */
  readonly holds: DepotRecord | null;
  readonly readings: readonly DepotRecord[];
}

export interface MergedRecords {
  /** all records once each, by device time, then id: the same whatever the order of arrival */
  readonly records: readonly AnyRecord[];
  readonly readings: readonly MergedReading[];
  readonly questions: readonly ReadingQuestion[];
}

const READ_KINDS = new Set(["reading", "count"]);

function compare(a: AnyRecord, b: AnyRecord): number {
  const left = `${a.deviceTime} ${a.id}`;
  const right = `${b.deviceTime} ${b.id}`;
  return left < right ? -1 : left > right ? 1 : 0;
}

/** Brings together what several devices recorded. Nothing is dropped or preferred; a difference becomes a question. */
export function mergeRecords(records: readonly AnyRecord[]): MergedRecords {
  const once = [...new Map(records.map((record) => [record.id, record])).values()].sort(compare);
  const whole = once.filter((record): record is DepotRecord => !isErased(record));
  const groups = new Map<string, DepotRecord[]>();
  for (const record of whole) {
    if (!READ_KINDS.has(record.kind)) continue;
    const key = JSON.stringify([record.refs.hireId ?? "", directionOf(record), record.content.about]);
    groups.set(key, [...(groups.get(key) ?? []), record]);
  }
  const answers = whole.filter((record) => record.kind === "answer");
  const readings = [...groups.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, group]) => {
      const [hireId, direction, about] = JSON.parse(key) as [string, string, string];
      return { hireId, direction, about, holds: whatHolds(group, answers), readings: group };
    });
  const questions = readings
    .filter(({ holds }) => holds === null)
    .map(({ hireId, direction, about, readings: group }) => ({ hireId, direction, about, readings: group }));
  return { records: once, readings, questions };
}

/** "out", "back" or "" where it was read on the road. */
function directionOf(record: DepotRecord): string {
  return typeof record.content.direction === "string" ? record.content.direction : "";
}

function whatHolds(group: readonly DepotRecord[], answers: readonly DepotRecord[]): DepotRecord | null {
  const last = group.at(-1)!;
  const said = new Set(group.map((record) => JSON.stringify([saidBy(record), record.content.unit ?? null])));
  if (said.size === 1) return last;
  // an answer holds only when it was given in sight of every reading of that thing
  const answer = answers.findLast(({ content }) => {
    const among = new Set(
      (content.among as { id: string; hash: string }[]).map(({ id, hash }) => `${id} ${hash}`),
    );
    return group.every(({ id, hash }) => among.has(`${id} ${hash}`));
  });
  return group.find(({ id }) => id === answer?.content.holds) ?? null;
}

const saidBy = ({ kind, content }: DepotRecord) => (kind === "count" ? content.found : content.value) ?? null;
