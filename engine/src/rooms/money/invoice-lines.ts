import { vatInside } from "../../base/money.ts";
import type { IsoDate } from "../../base/time.ts";
import type { Quote, QuoteLine, VatKind } from "../quote/types.ts";
import type { Settlement, SettlementLine } from "../settlement/types.ts";
import { vatOfLine, vatRate } from "./line-vat.ts";
import { readLedger } from "./read-ledger.ts";
import type { InvoiceLine, LedgerEntry, LineKind } from "./types.ts";

/** What a hire is charged by: the accepted quote, the frozen settlement, and the charges and credits in its ledger. */
export interface ChargedBy {
  readonly quote: Quote | null;
  readonly settlement: Settlement | null;
  /** of a hire that did not take place: what is kept under the scale, instead of the price */
  readonly keptPence?: number | null;
  readonly entries: readonly LedgerEntry[];
  /** charges of the ledger that the hirer disputes, and how much of them is not asked for; whole pence, at most their sum */
  readonly disputed?: { readonly ids: readonly string[]; readonly pence: number };
}

interface Made {
  readonly key: string;
  readonly line: LineKind;
  readonly text: string;
  readonly facts: InvoiceLine["facts"];
  readonly grossPence: number;
  /** where the price says so itself; else the table decides */
  readonly vat?: VatKind;
  readonly ratePercent?: number;
}

function invoiceLine(made: Made, on: IsoDate): InvoiceLine {
  const vat = made.vat ?? vatOfLine(made.line, on);
  const ratePercent = made.ratePercent ?? vatRate(vat, on);
  const vatPence = vatInside(made.grossPence, ratePercent);
  const { key, line, text, facts, grossPence } = made;
  return { key, line, text, facts, vat, ratePercent, vatPence, grossPence, netPence: grossPence - vatPence };
}

const QUOTED: Readonly<Partial<Record<QuoteLine["code"], LineKind>>> = { extra: "extra" };

const SETTLED: Readonly<Record<SettlementLine["code"], LineKind>> = {
  mileage: "mileage",
  fuel: "fuel",
  fuelService: "fuel",
  def: "fuel",
  lpg: "fuel",
  cleaning: "cleaning",
  waste: "cleaning",
  cassette: "cleaning",
  late: "late",
  kit: "kit",
  damage: "damage",
  claim: "damage",
  notCharged: "damage",
};

const quoteLines = (quote: Quote, on: IsoDate): InvoiceLine[] =>
  quote.lines.map((line, k) =>
    invoiceLine(
      {
        // two lines of one code and thing are told apart by their place
        key: `quote.${line.code}.${line.about}.${quote.lines.slice(0, k).filter((each) => each.code === line.code && each.about === line.about).length}`,
        line: QUOTED[line.code] ?? "hire",
        text: `quote.${line.code}`,
        facts: { about: line.about, count: line.count, eachPence: line.each.pence },
        grossPence: line.amount.pence,
        vat: line.vat.kind,
        ratePercent: line.vat.ratePercent,
      },
      on,
    ),
  );

const settledLine = ({ id, code, about, amount }: SettlementLine, on: IsoDate): InvoiceLine =>
  invoiceLine(
    {
      key: `settlement.${id}`,
      line: SETTLED[code],
      text: `settlement.${code}`,
      facts: { about },
      grossPence: amount.pence,
    },
    on,
  );

/** What goes beyond the excess is taken off what is owed for damage, so that the lines come to their sum. */
function downTo(lines: readonly InvoiceLine[], sumPence: number, on: IsoDate): InvoiceLine[] {
  const grossPence = sumPence - sumGross(lines);
  if (grossPence >= 0) return [...lines];
  const over = {
    key: "settlement.overExcess",
    line: "damage",
    text: "settlement.overExcess",
    facts: {},
  } as const;
  return [...lines, invoiceLine({ ...over, grossPence }, on)];
}

function settlementLines(settlement: Settlement, on: IsoDate, disputed: boolean): InvoiceLine[] {
  const lines = settlement.lines
    .filter((line) => line.amount.pence > 0 && line.disputed === disputed)
    .map((line) => settledLine(line, on));
  const sumPence = settlement.disputed.pence;
  return downTo(lines, disputed ? sumPence : settlement.total.pence - sumPence, on);
}

/** How much of each disputed charge is not asked for, in the order of the ledger. */
function heldBack({ entries, disputed }: ChargedBy): ReadonlyMap<string, number> {
  const { undone } = readLedger(entries);
  const held = new Map<string, number>();
  let left = disputed?.pence ?? 0;
  for (const { id, kind, pence } of entries) {
    if (kind !== "charge" || undone[id] !== undefined || disputed?.ids.includes(id) !== true) continue;
    const part = Math.min(left, pence);
    held.set(id, part);
    left -= part;
  }
  return held;
}

const entryLine = ({ id, line, note }: LedgerEntry, grossPence: number, on: IsoDate): InvoiceLine =>
  invoiceLine(
    {
      key: `entry.${id}`,
      line: line ?? "administration",
      text: `lineKind.${line ?? "administration"}`,
      facts: { note: note ?? "" },
      grossPence,
    },
    on,
  );

function entryLines(by: ChargedBy, on: IsoDate): InvoiceLine[] {
  const { undone } = readLedger(by.entries);
  const held = heldBack(by);
  return by.entries
    .filter(({ id, kind }) => (kind === "charge" || kind === "credit") && undone[id] === undefined)
    .map((entry) => ({ entry, pence: entry.pence - (held.get(entry.id) ?? 0) }))
    .filter(({ entry, pence }) => pence > 0 || !held.has(entry.id))
    .map(({ entry, pence }) => entryLine(entry, entry.kind === "charge" ? pence : -pence, on));
}

/**
 * All that is asked for a hire, line by line with its VAT, as it stands on a day; whole pence with VAT inside. What is
 * disputed is not among it: see {@link disputedLines}. Of a disputed charge that is paid in part, that part is.
 */
export function chargedLines(by: ChargedBy, on: IsoDate): readonly InvoiceLine[] {
  const { quote, settlement, keptPence = null } = by;
  const kept = { key: "ending", line: "cancellation", text: "lineKind.cancellation", facts: {} } as const;
  return [
    ...(keptPence === null || keptPence === 0 ? [] : [invoiceLine({ ...kept, grossPence: keptPence }, on)]),
    ...(quote === null || keptPence !== null ? [] : quoteLines(quote, on)),
    ...(settlement === null ? [] : settlementLines(settlement, on, false)),
    ...entryLines(by, on),
  ];
}

/** What the hirer disputes and is not asked for, line by line: settlement and ledger; it comes to what is held back. */
export function disputedLines(by: ChargedBy, on: IsoDate): readonly InvoiceLine[] {
  const held = heldBack(by);
  return [
    ...(by.settlement === null ? [] : settlementLines(by.settlement, on, true)),
    ...by.entries.flatMap((entry) => {
      const pence = held.get(entry.id) ?? 0;
      return pence === 0 ? [] : [entryLine(entry, pence, on)];
    }),
  ];
}

export const sumGross = (lines: readonly Pick<InvoiceLine, "grossPence">[]): number =>
  lines.reduce((sum, { grossPence }) => sum + grossPence, 0);
