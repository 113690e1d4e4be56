import { describe, expect, it } from "vitest";
import { testTerms } from "../quote/test-terms.ts";
import { mark, settle } from "../settlement/test-settlement.ts";
import { checkEntry } from "./check-entry.ts";
import { checkMoney, type MoneyInput } from "./check-money.ts";
import { lifeOfHolds } from "./holds.ts";
import { chargedLines, sumGross } from "./invoice-lines.ts";
import { postEntries } from "./post-entries.ts";
import type { LedgerEntry } from "./types.ts";

const terms = testTerms();
const made = (change: Partial<LedgerEntry> & Pick<LedgerEntry, "id" | "kind" | "pence">): LedgerEntry => ({
  on: "2026-07-01",
  at: "2026-07-01T08:00:00.000Z",
  route: "card",
  of: null,
  line: null,
  note: null,
  ...change,
});

describe("older entries that name nothing", () => {
  it("a release goes back by the way the deposit came, not by that of the price", () => {
    const entries = [
      made({ id: "p", kind: "payment", pence: 50_000, route: "card" }),
      made({ id: "d", kind: "depositHeld", pence: 1000, route: "cash" }),
      made({ id: "r", kind: "depositReleased", pence: 1000, route: "asHeld" }),
    ];
    const of = (id: string) =>
      postEntries(entries)
        .filter((posting) => posting.of === id)
        .map(({ account, pence }) => [account, pence]);
    expect(of("d")).toEqual([
      ["cash", 1000],
      ["deposits", -1000],
    ]);
    expect(of("r")).toEqual([
      ["deposits", 1000],
      ["cash", -1000],
    ]);
  });
});

describe("undoing an entry", () => {
  const paid = made({ id: "p", kind: "payment", pence: 50_000 });

  it("takes the whole of it, and only money that moved can have failed to arrive", () => {
    const failed = made({ id: "f", kind: "failed", pence: 49_999, of: "p" });
    expect(checkEntry([paid], failed)).toEqual([
      { path: "pence", expected: "expected the whole entry, 50000" },
    ]);
    expect(checkEntry([paid], { ...failed, pence: 50_000 })).toEqual([]);
    const fine = made({ id: "c", kind: "charge", pence: 6500, line: "fine" });
    expect(checkEntry([fine], { ...failed, of: "c", pence: 6500 })[0]?.path).toBe("of");
    expect(checkEntry([fine], made({ id: "x", kind: "correction", pence: 6500, of: "c" }))).toEqual([]);
  });
});

describe("what goes beyond the excess", () => {
  it("is taken off as a line of its own, so that the lines come to what is owed; within it there is none", () => {
    const dear = ["m1", "m2"].map((id) => mark(id));
    const invoiced = (invoice: number) => {
      const settlement = settle(dear, {
        classes: { m1: "hirer", m2: "hirer" },
        estimates: { m1: invoice, m2: invoice },
        incidents: {},
        terms: {
          ...terms,
          tariff: {
            ...terms.tariff,
            damage: terms.tariff.damage.map((row) => ({ ...row, pence: 900_000 })),
          },
        },
      });
      const lines = chargedLines({ quote: null, settlement, entries: [] }, "2026-05-16");
      expect(sumGross(lines)).toBe(settlement.total.pence);
      return lines.map(({ key, grossPence }) => [key, grossPence]);
    };
    expect(invoiced(70_000)).toEqual([
      ["settlement.m1", 70_000],
      ["settlement.m2", 70_000],
    ]);
    expect(invoiced(100_000)).toEqual([
      ["settlement.m1", 100_000],
      ["settlement.m2", 100_000],
      ["settlement.overExcess", -50_000],
    ]);
  });
});

describe("the gate of money", () => {
  const input: MoneyInput = {
    owedPence: 70_000,
    depositDuePence: 100_000,
    depositHeldPence: 100_000,
    instalments: [],
    holds: [],
    from: "2026-07-03",
    to: "2026-07-10",
    authorisationDays: 28,
    releaseWorkingDays: 5,
    termsId: "terms-test",
  };
  const part = (overdueDays: number) => ({
    what: "balance" as const,
    dueOn: "2026-06-05",
    pence: 85_000,
    paid: 15_000,
    open: 70_000,
    overdueDays,
  });

  it("says what is owed, and by how many days it is late only where it is late", () => {
    expect(checkMoney({ ...input, instalments: [part(0)] })).toMatchObject([
      { code: "money.owed", severity: "unchecked", facts: { owed: { value: 70_000 } } },
    ]);
    expect(checkMoney({ ...input, instalments: [part(0), part(5)] })).toMatchObject([
      { code: "money.overdue", facts: { late: { value: 70_000 }, on: "2026-06-05", days: 5 } },
    ]);
    expect(checkMoney({ ...input, owedPence: 0 })).toEqual([]);
    expect(checkMoney({ ...input, owedPence: null })).toMatchObject([{ code: "money.noAcceptedQuote" }]);
    expect(checkMoney({ ...input, owedPence: 0, depositHeldPence: 99_999 })).toMatchObject([
      { code: "money.depositNotHeld" },
    ]);
  });
});

describe("the life of a hold", () => {
  it("is told of holds on cards that still hold something", () => {
    const hold = {
      id: "h",
      route: "cardHold" as const,
      on: "2026-07-03",
      isHold: true,
      pence: 100_000,
      charged: 0,
      released: 0,
      remaining: 100_000,
    };
    const of = (change: Partial<typeof hold>, today = "2026-07-10") =>
      lifeOfHolds({
        holdings: [{ ...hold, ...change }],
        to: "2026-07-10",
        today,
        authorisationDays: 28,
        releaseWorkingDays: 5,
      });
    expect(of({})).toMatchObject([
      { standsTo: "2026-07-31", neededTo: "2026-07-17", state: "stands", daysLeft: 21 },
    ]);
    expect(of({ released: 100_000, remaining: 0 })).toEqual([]);
    expect(of({ isHold: false })).toEqual([]);
    // it stands on its last day, and not on the day after
    expect(of({}, "2026-07-31")).toMatchObject([{ state: "stands", daysLeft: 0 }]);
    expect(of({}, "2026-08-01")).toMatchObject([{ state: "lapsed", daysLeft: -1 }]);
  });
});
