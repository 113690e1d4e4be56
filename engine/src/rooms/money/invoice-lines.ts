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

function settlementLines(settlement: Settlement, on: IsoDate): InvoiceLine[] {
  const lines = settlement.lines
    .filter(({ amount, disputed }) => amount.pence > 0 && !disputed)
    .map(({ id, code, about, amount }) =>
      invoiceLine(
        {
          key: `settlement.${id}`,
          line: SETTLED[code],
          text: `settlement.${code}`,
          facts: { about },
          grossPence: amount.pence,
        },
        on,
      ),
    );
  const charged = lines.reduce((sum, { grossPence }) => sum + grossPence, 0);
  const over = settlement.total.pence - settlement.disputed.pence - charged;
  // what goes beyond the excess is taken off what is owed for damage
  return over >= 0
    ? lines
    : [
        ...lines,
        invoiceLine(
          {
            key: "settlement.overExcess",
            line: "damage",
            text: "settlement.overExcess",
            facts: {},
            grossPence: over,
          },
          on,
        ),
      ];
}

function entryLines(entries: readonly LedgerEntry[], on: IsoDate): InvoiceLine[] {
  const { undone } = readLedger(entries);
  return entries
    .filter(({ id, kind }) => (kind === "charge" || kind === "credit") && undone[id] === undefined)
    .map(({ id, kind, line, pence, note }) =>
      invoiceLine(
        {
          key: `entry.${id}`,
          line: line ?? "administration",
          text: `lineKind.${line ?? "administration"}`,
          facts: { note: note ?? "" },
          grossPence: kind === "charge" ? pence : -pence,
        },
        on,
      ),
    );
}

/** All that is charged for a hire, line by line with its VAT, as it stands on a day; whole pence with VAT inside. */
export function chargedLines(by: ChargedBy, on: IsoDate): readonly InvoiceLine[] {
  const { quote, settlement, entries, keptPence = null } = by;
  const kept = { key: "ending", line: "cancellation", text: "lineKind.cancellation", facts: {} } as const;
  return [
    ...(keptPence === null || keptPence === 0 ? [] : [invoiceLine({ ...kept, grossPence: keptPence }, on)]),
    ...(quote === null || keptPence !== null ? [] : quoteLines(quote, on)),
    ...(settlement === null ? [] : settlementLines(settlement, on)),
    ...entryLines(entries, on),
  ];
}

export const sumGross = (lines: readonly Pick<InvoiceLine, "grossPence">[]): number =>
  lines.reduce((sum, { grossPence }) => sum + grossPence, 0);
