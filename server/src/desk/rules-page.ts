import {
  isRuleOn,
  listRulesToCheck,
  RULES,
  type Rule,
  type RuleBook,
  type RuleToCheck,
  valuesOf,
  withRules,
} from "@setfair/engine";
import type { z } from "zod";
import type { ruleLineSchema, rulesAnswerSchema } from "../api/schemas/rules.ts";
import type { HireRow, RuleChangeRow, Store } from "../store/types.ts";
import { asDocument, type PartDocuments } from "./documents.ts";
import { dateOf, localOf } from "./local-time.ts";
import { bookOf, changeOf } from "./rule-book.ts";

export type RuleLine = z.input<typeof ruleLineSchema>;

/** All that the page of rules is made from, read once. */
interface RulesData {
  readonly rows: readonly RuleChangeRow[];
  readonly book: RuleBook;
  readonly today: string;
  readonly due: ReadonlyMap<string, RuleToCheck>;
  readonly nameOf: (id: string) => string;
}

const IN_HAND = ["booked"] as const;

/** Countries to which booked hires go, with the first day there; the depot's own is one of them. */
async function bookedCountries(store: Store, today: string, timeZone: string, home: string) {
  const rows: readonly HireRow[] = await store.hires.all({ stages: IN_HAND });
  const parts = await store.hires.partsOf(
    rows.map(({ id }) => id),
    ["trip", "abroad"],
  );
  return rows.flatMap((row) => {
    const from = dateOf(localOf(row.from, timeZone));
    if (from < today) return [];
    const own = parts.get(row.id);
    const trip = own?.trip === undefined ? null : asDocument<PartDocuments["trip"]>(own.trip.document);
    const abroad =
      own?.abroad === undefined ? null : asDocument<PartDocuments["abroad"]>(own.abroad.document);
    const stops = (trip?.stops ?? []).map(({ place }) => place.country);
    return [...new Set([home, ...stops, ...(abroad?.through ?? [])])].map((country) => ({ country, from }));
  });
}

export async function readRulesData(store: Store, now: Date, olderThanMonths: number): Promise<RulesData> {
  const depot = await store.depot.get();
  const today = dateOf(localOf(now.toISOString(), depot.timeZone));
  const { country } = asDocument<{ country: string }>(depot.document);
  const rows = await store.rules.all();
  const book = bookOf(rows);
  const hires = await bookedCountries(store, today, depot.timeZone, country);
  const due = withRules(book, () => listRulesToCheck({ today, olderThanMonths, hires }));
  const names = new Map((await store.accounts.list()).map(({ id, name }) => [id, name]));
  return {
    rows,
    book,
    today,
    due: new Map(due.map((each) => [each.ruleId, each])),
    nameOf: (id) => names.get(id) ?? id,
  };
}

const topicOf = (id: string): string => id.split(".")[0] ?? id;

/** One rule with its dated versions, the depot's own ones that stand, and when it was read again. */
export function ruleLine(id: string, data: RulesData): RuleLine | null {
  const shipped = RULES.filter((rule) => rule.id === id);
  const [first] = shipped;
  if (first === undefined) return null;
  const mine = data.rows.filter((row) => row.ruleId === id);
  const due = data.due.get(id);
  const held = data.book.rules.filter((rule) => rule.id === id && isRuleOn(rule, data.today));
  return {
    id,
    country: first.country,
    topic: topicOf(id),
    now: held.at(-1) ?? null,
    shipped: [...shipped],
    own: ownVersions(mine).map(({ rule, row }) => ({ rule, by: data.nameOf(row.by), at: row.at })),
    readAgain: mine
      .filter(({ kind }) => kind === "confirm")
      .map((row) => ({
        ...asDocument<{ readOn: string; source: string }>(row.document),
        by: data.nameOf(row.by),
        at: row.at,
      }))
      .reverse(),
    values: ((values) => (values === null ? null : [...values]))(valuesOf(first)),
    off: first.off ?? null,
    due:
      due === undefined
        ? null
        : {
            reasons: [...due.reasons],
            dueOn: due.dueOn,
            firstHire: due.firstHire,
            hires: due.hires,
          },
  };
}

/** The depot's own versions by their first day, without those taken back or written over. */
function ownVersions(rows: readonly RuleChangeRow[]) {
  const own = new Map<string, { readonly rule: Rule; readonly row: RuleChangeRow }>();
  for (const row of rows) {
    const change = changeOf(row);
    if (change.kind === "correct") own.set(change.rule.validFrom, { rule: change.rule, row });
    else if (change.kind === "withdraw") own.delete(change.validFrom);
  }
  return [...own.values()];
}

interface RulesAsked {
  readonly q?: string | undefined;
  readonly country?: string | undefined;
  readonly topic?: string | undefined;
  readonly due: "true" | "false";
}

/** The rules asked for; those that fall due come soonest first, else in the order in which they ship. */
export function rulesAnswer(data: RulesData, asked: RulesAsked): z.input<typeof rulesAnswerSchema> {
  const ids = [...new Set(RULES.map(({ id }) => id))];
  const lines = ids.flatMap((id) => ruleLine(id, data) ?? []);
  const words = (asked.q ?? "").toLowerCase().split(/\s+/).filter(Boolean);
  const shown = lines.filter(
    (line) =>
      (asked.country === undefined || line.country === asked.country) &&
      (asked.topic === undefined || line.topic === asked.topic) &&
      (asked.due === "false" || line.due !== null) &&
      words.every((word) => textOf(line).includes(word)),
  );
  if (asked.due === "true") shown.sort((a, b) => ((a.due?.dueOn ?? "") < (b.due?.dueOn ?? "") ? -1 : 1));
  return {
    bookId: data.book.id,
    rules: shown,
    countries: [...new Set(lines.map(({ country }) => country))].sort(),
    topics: [...new Set(lines.map(({ topic }) => topic))].sort(),
    counts: {
      all: lines.length,
      due: lines.filter(({ due }) => due !== null).length,
      overdue: lines.filter(({ due }) => due !== null && due.dueOn <= data.today).length,
      own: lines.filter(({ own }) => own.length > 0).length,
    },
  };
}

const textOf = ({ id, now, shipped, country }: RuleLine): string =>
  [
    id.replaceAll(".", " "),
    id,
    country,
    ...[now, ...shipped].flatMap((rule) => [rule?.source, rule?.note, rule?.value]),
  ]
    .join(" ")
    .toLowerCase();
