import { addDays } from "@setfair/engine";
import { readHireMoney } from "../money/hire-money.ts";
import type { ChangeRow, CustomerRow, HireStage, SettlementEntryRow, Store } from "../store/types.ts";
import { asDocument } from "./documents.ts";
import { type HireData, readRows } from "./hire-data.ts";
import { dateOf } from "./local-time.ts";
import { disputesOf, isNoticeOf, promisedOn } from "./settlement-entries.ts";

/** Stages in which a hire is over. */
const OVER: readonly HireStage[] = ["closed", "lost", "cancelled", "noShow"];
const BEFORE_THE_END: readonly HireStage[] = ["enquiry", "quote", "booked", "handedOver", "onHire"];
/** A file with insurer or third party that is at its end. */
const ENDED_FILES: readonly string[] = ["paid", "closed"];
/** Days from the day after it was given in which whoever drove is named (`engine` notices). */
const NOTICE_DAYS = 28;

export const HOLD_CODES = [
  "open",
  "dispute",
  "cost",
  "file",
  "notice",
  "owed",
  "toPayBack",
  "deposit",
  "property",
] as const;

/** What keeps a person from being erased; text under `erasure.hold.<code>`. */
export interface ErasureHold {
  readonly code: (typeof HOLD_CODES)[number];
  readonly hireId: string;
  readonly reference: string;
  /** day on which it ends as far as is known; null where nobody has said one */
  readonly until: string | null;
  readonly facts: Readonly<Record<string, string | number>>;
}

type Hold = Pick<ErasureHold, "code"> & Partial<Pick<ErasureHold, "until" | "facts">>;
type Entries = readonly SettlementEntryRow[];

/**
 * What holds the erasure of a person: a hire that is not over; a dispute, a cost not known yet, a file with an insurer or
 * a third party, a notice whose driver is still to be named; sums owed either way, a deposit held; something of theirs
 * that lies at the depot. While a claim is open the right to erasure does not reach what is needed for it
 * (UK GDPR, Article 17(3)(e); from memory, to be read anew by whoever relies on it).
 */
export async function erasureHolds(
  store: Store,
  customer: CustomerRow,
  now: Date,
): Promise<readonly ErasureHold[]> {
  const rows = await store.hires.all({ customerId: customer.id });
  const ids = rows.map(({ id }) => id);
  const entries = await store.settlementEntries.ofHires(ids);
  const changes = await store.changes.ofHires(ids);
  const data = await readRows(store, rows, await store.depot.get(), now);
  return data.flatMap((each) => {
    const isOf = ({ hireId }: { readonly hireId: string }) => hireId === each.row.id;
    return holdsOf(each, entries.filter(isOf), changes.filter(isOf)).map((hold) => named(each, hold));
  });
}

/** What is paid or claimed of a hire shows when it is back; before that it is not over, and that says it all. */
function holdsOf(data: HireData, entries: Entries, changes: readonly ChangeRow[]): readonly Hold[] {
  if (BEFORE_THE_END.includes(data.row.stage)) return whileOpen(data);
  return [
    ...whileOpen(data),
    ...claims(entries),
    ...notices(data, changes),
    ...sums(data),
    ...property(entries),
  ];
}

const named = ({ row }: HireData, { code, until = null, facts = {} }: Hold): ErasureHold => ({
  code,
  hireId: row.id,
  reference: row.number,
  until,
  facts: { ...facts, reference: row.number },
});

/** A hire that is back ends when it is closed: nobody knows the day. */
const whileOpen = ({ row, to }: HireData): readonly Hold[] =>
  OVER.includes(row.stage)
    ? []
    : [{ code: "open", until: BEFORE_THE_END.includes(row.stage) ? dateOf(to) : null }];

/** The last entry on each thing of a kind. */
const lastOf = (entries: Entries, kind: SettlementEntryRow["kind"]): Entries => [
  ...new Map(entries.filter((entry) => entry.kind === kind).map((entry) => [entry.about, entry])).values(),
];
const aboutsOf = (entries: Entries, ...kinds: SettlementEntryRow["kind"][]): ReadonlySet<string> =>
  new Set(entries.filter(({ kind }) => kinds.includes(kind)).map(({ about }) => about));

function claims(entries: Entries): readonly Hold[] {
  const withdrawn = aboutsOf(entries, "withdraw");
  const disputed = [...disputesOf(entries)].filter(([about, is]) => is && !withdrawn.has(about));
  const known = aboutsOf(entries, "invoice", "withdraw");
  const awaited = lastOf(entries, "awaiting").filter(({ about }) => !known.has(about));
  const files = lastOf(entries, "file").map(({ document }) =>
    asDocument<{ name: string; state: string }>(document),
  );
  const until = promisedOn(entries);
  return [
    ...(disputed.length === 0
      ? []
      : [
          {
            code: "dispute" as const,
            until,
            facts: { n: disputed.length, fines: disputed.filter(([id]) => isNoticeOf(entries, id)).length },
          },
        ]),
    ...(awaited.length === 0 ? [] : [{ code: "cost" as const, until, facts: { n: awaited.length } }]),
    ...files
      .filter(({ state }) => !ENDED_FILES.includes(state))
      .map(({ name }) => ({ code: "file" as const, facts: { name } })),
  ];
}

/** A fine or a charge names a hire: whoever drove is still to be told to whom it came from. */
function notices({ today }: HireData, changes: readonly ChangeRow[]): readonly Hold[] {
  return changes
    .filter(({ kind }) => kind === "notice")
    .flatMap(({ document }) => {
      const { change } = asDocument<{ change?: { givenOn?: string } }>(document);
      const until = change?.givenOn === undefined ? null : addDays(change.givenOn, NOTICE_DAYS);
      return until === null || until < today ? [] : [{ code: "notice" as const, until }];
    });
}

function sums(data: HireData): readonly Hold[] {
  const { owedPence, disputedPence, depositHeldPence, instalments } = readHireMoney(data);
  const open = instalments.filter(({ open: left }) => left > 0).map(({ dueOn }) => dueOn);
  return [
    ...(owedPence > 0 || disputedPence > 0
      ? [
          {
            code: "owed" as const,
            until: open.toSorted().at(-1) ?? null,
            facts: { pence: owedPence + disputedPence },
          },
        ]
      : []),
    ...(owedPence < 0 ? [{ code: "toPayBack" as const, facts: { pence: -owedPence } }] : []),
    ...(depositHeldPence > 0 ? [{ code: "deposit" as const, facts: { pence: depositHeldPence } }] : []),
  ];
}

const property = (entries: Entries): readonly Hold[] =>
  lastOf(entries, "lost")
    .filter(({ document }) => document.now === "kept")
    .map(({ about }) => ({ code: "property" as const, facts: { what: about } }));
