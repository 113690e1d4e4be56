import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { vatInside } from "../../base/money.ts";
import { ruleAt } from "../../rules/rule-at.ts";
import { quoteHire } from "../quote/quote-hire.ts";
import { testTerms } from "../quote/test-terms.ts";
import { checkMoney, type MoneyInput } from "./check-money.ts";
import { creditWhole, draftInvoice } from "./draft-invoice.ts";
import { lifeOfHolds } from "./holds.ts";
import { chargedLines, disputedLines, sumGross } from "./invoice-lines.ts";
import { vatTable } from "./line-vat.ts";
import { postInvoice } from "./post-entries.ts";
import { type PaymentPlanInput, planPayments } from "./schedule.ts";
import { type InvoiceLine, type LedgerEntry, LINE_KINDS } from "./types.ts";
import { unearned } from "./unearned.ts";

const entry = (change: Partial<LedgerEntry>): LedgerEntry => ({
  id: "e",
  kind: "charge",
  pence: 100,
  on: "2026-07-01",
  at: "2026-07-01T08:00:00.000Z",
  route: null,
  of: null,
  line: "fine",
  note: "Bus lane",
  ...change,
});

describe("VAT by kind of line", () => {
  it("every kind has a line of the table, with its source and what must be confirmed", () => {
    const table = vatTable("2026-07-01");
    expect(table.map(({ line }) => line)).toEqual([...LINE_KINDS]);
    expect(table.find(({ line }) => line === "hire")).toMatchObject({ kind: "standard", ratePercent: 20 });
    for (const line of ["deposit", "damage", "kit", "fine"] as const) {
      const found = table.find((each) => each.line === line);
      expect(found).toMatchObject({ kind: "outsideScope", ratePercent: 0 });
      expect(found?.toConfirm).toMatch(/accountant/);
    }
  });

  it("a line is known at first hand only where its rule was read", () => {
    for (const { line, isRead } of vatTable("2026-07-01"))
      expect(isRead, line).toBe(ruleAt(`vat.gb.line.${line}`, "2026-07-01")?.confidence === "read");
    expect(vatTable("2026-07-01").some(({ isRead }) => !isRead)).toBe(true);
  });
});

const charges = fc.array(
  fc.record({
    key: fc.constantFrom("a", "b", "c", "d"),
    kind: fc.constantFrom("charge" as const, "credit" as const),
    pence: fc.integer({ min: 1, max: 100_000 }),
    line: fc.constantFrom(...LINE_KINDS),
  }),
  { maxLength: 6 },
);
const linesOf = (some: ReturnType<typeof charges.generate>["value"]) =>
  chargedLines(
    {
      quote: null,
      settlement: null,
      entries: [...new Map(some.map((each) => [each.key, each])).values()].map(({ key, ...each }) =>
        entry({ ...each, id: key }),
      ),
    },
    "2026-07-01",
  );

describe("invoices", () => {
  it("lines sum to the total and their VAT to its VAT, and what was invoiced is not invoiced again", () => {
    fc.assert(
      fc.property(fc.array(charges, { minLength: 1, maxLength: 5 }), (steps) => {
        const invoiced: InvoiceLine[] = [];
        for (const step of steps) {
          const charged = linesOf(step);
          const draft = draftInvoice(charged, invoiced);
          if (draft !== null) {
            const net = draft.lines.reduce((sum, line) => sum + line.netPence, 0);
            const vat = draft.lines.reduce((sum, line) => sum + line.vatPence, 0);
            expect(draft.total.pence).toBe(sumGross(draft.lines));
            expect([draft.net.pence, draft.vat.pence]).toEqual([net, vat]);
            expect(net + vat).toBe(draft.total.pence);
            expect(draft.parts.reduce((sum, part) => sum + part.vat.pence, 0)).toBe(vat);
            expect(draft.kind).toBe(draft.total.pence < 0 ? "creditNote" : "invoice");
            const postings = postInvoice("i", "2026-07-01", draft.lines);
            expect(postings.reduce((sum, { pence }) => sum + pence, 0)).toBe(0);
            invoiced.push(...draft.lines);
          }
          expect(sumGross(invoiced)).toBe(sumGross(charged));
          expect(draftInvoice(charged, invoiced)).toBeNull();
        }
      }),
      { numRuns: 500 },
    );
  });

  it("what is asked and what is disputed come to all that is charged, and nothing disputed is asked for", () => {
    const fines = fc.array(
      fc.record({ pence: fc.integer({ min: 1, max: 50_000 }), isDisputed: fc.boolean() }),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(fines, fc.double({ min: 0, max: 1, noNaN: true }), (some, share) => {
        const entries = some.map(({ pence }, k) => entry({ id: `fine-${k}`, pence }));
        const ids = entries.filter((_, k) => some[k]?.isDisputed === true).map(({ id }) => id);
        const sumPence = entries.reduce((sum, { id, pence }) => sum + (ids.includes(id) ? pence : 0), 0);
        // of what is disputed some may have been paid: that is not given back for the dispute alone
        const pence = Math.round(sumPence * share);
        const by = { quote: null, settlement: null, entries, disputed: { ids, pence } };
        const [asked, disputed] = [chargedLines(by, "2026-07-01"), disputedLines(by, "2026-07-01")];
        expect(sumGross(disputed)).toBe(pence);
        expect(sumGross(asked) + pence).toBe(entries.reduce((sum, each) => sum + each.pence, 0));
        expect(disputed.every(({ key }) => ids.some((id) => key === `entry.${id}`))).toBe(true);
        expect([...asked, ...disputed].every(({ grossPence }) => grossPence > 0)).toBe(true);
        // once it is settled the rest is invoiced, and no penny twice
        const rest = draftInvoice(
          chargedLines({ ...by, disputed: { ids: [], pence: 0 } }, "2026-07-01"),
          asked,
        );
        expect(rest?.total.pence ?? 0).toBe(pence);
      }),
      { numRuns: 300 },
    );
  });

  it("an invoice that is credited whole is to be invoiced again", () => {
    const charged = linesOf([{ key: "a", kind: "charge", pence: 12_000, line: "hire" }]);
    const first = draftInvoice(charged, []);
    expect(first).toMatchObject({ net: { pence: 10_000 }, vat: { pence: 2000 }, total: { pence: 12_000 } });
    const credit = creditWhole(first!.lines);
    expect(credit).toMatchObject({ kind: "creditNote", total: { pence: -12_000 }, vat: { pence: -2000 } });
    expect(draftInvoice(charged, [...first!.lines, ...credit.lines])).toEqual(first);
  });

  it("VAT inside a price goes to the nearer penny, never past half a penny", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e8, max: 1e8 }), fc.constantFrom(0, 5, 17.5, 20), (gross, rate) => {
        const vat = vatInside(gross, rate);
        expect(Number.isSafeInteger(vat)).toBe(true);
        expect(Math.abs(vat - (gross * rate) / (100 + rate))).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
    );
  });
});

describe("what a hire is charged", () => {
  const quote = quoteHire({
    terms: testTerms(),
    vehicleClass: "panelVan",
    from: "2026-05-09T15:00",
    to: "2026-05-16T10:00",
    today: "2026-03-01",
    party: { travellers: [{ id: "a", kind: "adult" }], dogs: 0, experience: "first" },
    drivers: 1,
    extras: [
      { id: "bedding", count: 1 },
      { id: "bikeRack", count: 1 },
    ],
    countries: ["GB"],
  }).result!;
  const fine = entry({ id: "e1", pence: 6500 });

  it("is each line of the accepted quote with the VAT that was quoted, then what was entered since", () => {
    const lines = chargedLines({ quote, settlement: null, entries: [fine] }, "2026-05-16");
    expect(lines.map(({ key, line, grossPence }) => [key, line, grossPence])).toEqual([
      ...quote.lines.map(({ code, about, amount }) => [
        `quote.${code}.${about}.0`,
        code === "extra" ? "extra" : "hire",
        amount.pence,
      ]),
      ["entry.e1", "fine", 6500],
    ]);
    expect(sumGross(lines)).toBe(quote.total.pence + 6500);
    expect(lines.reduce((sum, { vatPence }) => sum + vatPence, 0)).toBe(quote.vat.pence);
  });

  it("that did not take place is what is kept under the scale instead of the price, and nothing where nothing is kept", () => {
    const ended = (keptPence: number) =>
      chargedLines({ quote, settlement: null, keptPence, entries: [fine] }, "2026-05-16").map(
        ({ key, line, grossPence }) => [key, line, grossPence],
      );
    expect(ended(11_149)).toEqual([
      ["ending", "cancellation", 11_149],
      ["entry.e1", "fine", 6500],
    ]);
    expect(ended(0)).toEqual([["entry.e1", "fine", 6500]]);
  });

  it("tells two quoted lines of one code and thing apart by their place", () => {
    const twice = { ...quote, lines: [quote.lines[0]!, quote.lines[0]!] };
    const lines = chargedLines({ quote: twice, settlement: null, entries: [] }, "2026-05-16");
    expect(new Set(lines.map(({ key }) => key)).size).toBe(2);
  });
});

const plan = (change: Partial<PaymentPlanInput> = {}): PaymentPlanInput => ({
  duePence: 100_000,
  pricePence: 100_000,
  bookingDepositPence: 15_000,
  acceptedOn: "2026-05-01",
  from: "2026-07-03",
  today: "2026-06-10",
  balanceDaysBefore: 28,
  agreed: [],
  paidPence: 15_000,
  ...change,
});

describe("when a hire is to be paid", () => {
  it("the booking deposit at once and the balance four weeks before; what is late says by how many days", () => {
    expect(planPayments(plan())).toEqual([
      { what: "bookingDeposit", dueOn: "2026-05-01", pence: 15_000, paid: 15_000, open: 0, overdueDays: 0 },
      { what: "balance", dueOn: "2026-06-05", pence: 85_000, paid: 0, open: 85_000, overdueDays: 5 },
    ]);
  });

  it("agreed parts take up a price that changed; charges beyond the price are due at once", () => {
    const agreed = [
      { dueOn: "2026-06-20", pence: 50_000 },
      { dueOn: "2026-05-20", pence: 25_000 },
    ];
    const parts = planPayments(plan({ agreed, duePence: 130_000, pricePence: 120_000, paidPence: 30_000 }));
    expect(parts.map(({ what, dueOn, pence, open }) => [what, dueOn, pence, open])).toEqual([
      ["part", "2026-05-20", 25_000, 0],
      ["part", "2026-06-20", 95_000, 90_000],
      ["charges", "2026-06-10", 10_000, 10_000],
    ]);
  });

  it("the parts always sum to what is due, and what is open to what is owed", () => {
    const pence = fc.integer({ min: 0, max: 500_000 });
    const day = fc.integer({ min: 1, max: 28 }).map((n) => `2026-06-${String(n).padStart(2, "0")}`);
    fc.assert(
      fc.property(
        fc.record({
          duePence: pence,
          pricePence: pence,
          paidPence: pence,
          bookingDepositPence: pence,
          agreed: fc.array(fc.record({ dueOn: day, pence }), { maxLength: 4 }),
        }),
        (change) => {
          const parts = planPayments(plan(change));
          const sum = (what: "pence" | "open") => parts.reduce((total, part) => total + part[what], 0);
          expect(sum("pence")).toBe(change.duePence);
          expect(sum("open")).toBe(Math.max(0, change.duePence - change.paidPence));
        },
      ),
    );
  });
});

const holding = (on: string) => ({
  id: "h",
  route: "cardHold" as const,
  on,
  isHold: true,
  pence: 100_000,
  charged: 0,
  released: 0,
  remaining: 100_000,
});
const gate = (holdOn: string, to: string): MoneyInput => {
  const times = { to, today: "2026-07-03", authorisationDays: 28, releaseWorkingDays: 5 };
  const holds = lifeOfHolds({ holdings: [holding(holdOn)], ...times });
  const held = holds.filter(({ state }) => state !== "lapsed").reduce((sum, hold) => sum + hold.pence, 0);
  return {
    ...times,
    from: "2026-07-03",
    owedPence: 0,
    depositDuePence: 100_000,
    depositHeldPence: held,
    instalments: [],
    holds,
    termsId: "terms-test",
  };
};

describe("holds on cards", () => {
  const codes = (input: MoneyInput) => checkMoney(input).map(({ code, severity }) => [code, severity]);

  it("a hold that outlives the hire and the days of release is enough", () => {
    expect(codes(gate("2026-07-03", "2026-07-10"))).toEqual([]);
  });

  it("an old hold is to be taken anew at the keys; on a hire longer than any hold it goes as a condition", () => {
    expect(codes(gate("2026-06-15", "2026-07-10"))).toEqual([["money.holdLapses", "unchecked"]]);
    expect(codes(gate("2026-07-03", "2026-07-31"))).toEqual([["money.holdLapses", "condition"]]);
  });

  it("a hold that has lapsed holds nothing", () => {
    expect(codes(gate("2026-06-01", "2026-07-10"))).toEqual([["money.depositNotHeld", "unchecked"]]);
  });
});

describe("hirers' money", () => {
  const hire = { duePence: 70_000, paidPence: 80_000, from: "2026-07-03", to: "2026-07-10" };

  it("is all theirs before the keys, then less each night, and what was paid too much stays theirs", () => {
    expect(unearned({ ...hire, stage: "before", today: "2026-07-01" })).toBe(80_000);
    expect(unearned({ ...hire, stage: "out", today: "2026-07-04" })).toBe(70_000);
    expect(unearned({ ...hire, stage: "over", today: "2026-07-10" })).toBe(10_000);
    expect(unearned({ ...hire, paidPence: 0, stage: "over", today: "2026-07-10" })).toBe(0);
  });
});
