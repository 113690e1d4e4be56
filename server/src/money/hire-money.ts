import {
  BALANCE_DAYS_BEFORE,
  type ChargedBy,
  checkMoney,
  type Finding,
  type HoldLife,
  type Instalment,
  type Ledger,
  type LedgerEntry,
  LINE_KINDS,
  lifeOfHolds,
  planPayments,
  ROUTES,
  readLedger,
  type Terms,
} from "@setfair/engine";
import { asDocument } from "../desk/documents.ts";
import { type HireData, partOf } from "../desk/hire-data.ts";
import { dateOf, localOf } from "../desk/local-time.ts";
import type { HireStage, PaymentRow } from "../store/types.ts";

interface EntryDocument {
  readonly method?: string;
  readonly note?: string;
  readonly line?: string;
}

const among = <T extends string>(list: readonly T[], value: string | undefined): T | null =>
  list.find((each) => each === value) ?? null;

/** The rows of the ledger as the money room takes them. */
export const entriesOf = (rows: readonly PaymentRow[]): readonly LedgerEntry[] =>
  rows.map(({ id, kind, pence, on, at, of, document }) => {
    const { method, note, line } = asDocument<EntryDocument>(document);
    return {
      id,
      kind,
      pence,
      on,
      at,
      of,
      route: among(ROUTES, method),
      line: among(LINE_KINDS, line),
      note: note ?? null,
    };
  });

const DID_NOT_TAKE_PLACE: readonly HireStage[] = ["lost", "cancelled", "noShow"];

/** Of a hire that did not take place: what is kept under the scale that was accepted, nothing where none was applied. Null of any other. */
function keptOf(data: HireData): number | null {
  if (!DID_NOT_TAKE_PLACE.includes(data.row.stage)) return null;
  return partOf(data, "ending")?.charge?.keep.pence ?? 0;
}

/** What a hire is charged by, as accepted and as settled. */
function chargedBy(data: HireData): ChargedBy {
  const quote = partOf(data, "quote");
  const keptPence = keptOf(data);
  const settled = partOf(data, "settlement");
  return {
    quote: quote?.acceptedAt == null ? null : quote.answer.result,
    keptPence,
    // what was disputed, invoiced lower or taken back since counts at once
    settlement: settled?.frozenAt == null ? null : (settled.standing ?? settled.answer?.result ?? null),
    entries: entriesOf(data.payments),
  };
}

/** The same, with what of its charges is disputed and not asked for. */
export function askedBy(data: HireData): ChargedBy {
  const ids = partOf(data, "settlement")?.disputedCharges ?? [];
  return { ...chargedBy(data), disputed: { ids, pence: readHireMoney(data).disputedPence } };
}

/** Everything about the money of a hire, computed from its ledger, quote, settlement and terms; whole pence. */
export interface HireMoney {
  readonly ledger: Ledger;
  readonly pricePence: number;
  /** price, undisputed settlement, charges less credits, without {@link disputedPence} */
  readonly duePence: number;
  /** of fines and tolls that the hirer disputes: what is not asked for until that is settled; never what was paid already */
  readonly disputedPence: number;
  /** came in less what went back, with what was kept from the deposit */
  readonly settledPence: number;
  /** negative where too much was paid */
  readonly owedPence: number;
  readonly depositDuePence: number;
  /** as money, or by holds that have not lapsed */
  readonly depositHeldPence: number;
  readonly holds: readonly HoldLife[];
  readonly instalments: readonly Instalment[];
}

const HOLD_TERMS = { authorisationDays: 28, releaseWorkingDays: 5 };
const securityOf = (terms: Terms | undefined) => terms?.security ?? HOLD_TERMS;

function holdsOf(data: HireData, ledger: Ledger): readonly HoldLife[] {
  const { authorisationDays, releaseWorkingDays } = securityOf(data.terms?.document);
  const { holdings } = ledger;
  return lifeOfHolds({
    holdings,
    to: dateOf(data.to),
    today: data.today,
    authorisationDays,
    releaseWorkingDays,
  });
}

/** Holds on cards whose days are over: they hold nothing and cannot be charged. */
export const lapsedHolds = (data: HireData): readonly string[] =>
  holdsOf(data, readLedger(entriesOf(data.payments)))
    .filter(({ state }) => state === "lapsed")
    .map(({ id }) => id);

function instalmentsOf(data: HireData, pence: Pick<HireMoney, "pricePence" | "duePence" | "settledPence">) {
  const quote = partOf(data, "quote");
  const result = quote?.answer.result;
  if (quote?.acceptedAt == null || result == null) return [];
  return planPayments({
    duePence: pence.duePence,
    pricePence: pence.pricePence,
    bookingDepositPence: result.bookingDeposit.pence,
    acceptedOn: dateOf(localOf(quote.acceptedAt, data.depot.timeZone)),
    from: dateOf(data.from),
    today: data.today,
    balanceDaysBefore: data.terms?.document.balanceDaysBefore ?? BALANCE_DAYS_BEFORE,
    agreed: partOf(data, "money")?.agreed ?? [],
    paidPence: pence.settledPence,
  });
}

/** Charges that are disputed, as far as they are neither credited nor paid. */
function disputedOf(data: HireData, { charged, undone }: Ledger, unpaidPence: number): number {
  const ids = new Set(partOf(data, "settlement")?.disputedCharges ?? []);
  const disputed = entriesOf(data.payments)
    .filter(({ id, kind }) => kind === "charge" && ids.has(id) && undone[id] === undefined)
    .reduce((sum, { pence }) => sum + pence, 0);
  return Math.max(0, Math.min(disputed, charged, unpaidPence));
}

export function readHireMoney(data: HireData): HireMoney {
  const ledger = readLedger(entriesOf(data.payments));
  const quote = partOf(data, "quote")?.answer.result ?? null;
  const { settlement } = chargedBy(data);
  const pricePence = keptOf(data) ?? quote?.total.pence ?? 0;
  const settled = settlement === null ? 0 : settlement.total.pence - settlement.disputed.pence;
  const settledPence = ledger.paid - ledger.refunded + ledger.fromDeposit;
  const charged = pricePence + settled + ledger.charged;
  const disputedPence = disputedOf(data, ledger, charged - settledPence);
  const duePence = charged - disputedPence;
  const holds = holdsOf(data, ledger);
  const standing = holds.filter(({ state }) => state !== "lapsed");
  return {
    ledger,
    pricePence,
    duePence,
    disputedPence,
    settledPence,
    owedPence: duePence - settledPence,
    depositDuePence: quote?.securityDeposit.pence ?? 0,
    depositHeldPence: ledger.heldMoney + standing.reduce((sum, { pence }) => sum + pence, 0),
    holds,
    instalments: instalmentsOf(data, { pricePence, duePence, settledPence }),
  };
}

/** The gate of money. */
export function moneyGate(data: HireData): readonly Finding[] {
  const money = readHireMoney(data);
  const { authorisationDays, releaseWorkingDays } = securityOf(data.terms?.document);
  return checkMoney({
    owedPence: partOf(data, "quote")?.acceptedAt == null ? null : money.owedPence,
    depositDuePence: money.depositDuePence,
    depositHeldPence: money.depositHeldPence,
    instalments: money.instalments,
    holds: money.holds,
    from: dateOf(data.from),
    to: dateOf(data.to),
    authorisationDays,
    releaseWorkingDays,
    termsId: data.terms?.document.id ?? "practice",
  });
}
