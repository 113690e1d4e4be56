import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkEntry } from "./check-entry.ts";
import { nameOrigins } from "./name-origins.ts";
import { postEntries } from "./post-entries.ts";
import { readLedger } from "./read-ledger.ts";
import type { LedgerEntry, NewEntry } from "./types.ts";

const made = (change: Partial<LedgerEntry> & Pick<LedgerEntry, "id" | "kind" | "pence">): LedgerEntry => ({
  on: "2026-07-01",
  at: "2026-07-01T08:00:00.000Z",
  route: "card",
  of: null,
  line: null,
  note: null,
  ...change,
});
const add = (entries: LedgerEntry[], entry: NewEntry): boolean => {
  if (checkEntry(entries, entry).length > 0) return false;
  for (const part of nameOrigins(entries, entry)) entries.push({ ...part, at: "2026-07-01T08:00:00.000Z" });
  return true;
};

describe("the ledger of a hire", () => {
  const paid = made({ id: "p1", kind: "payment", pence: 50_000, route: "transfer" });

  it("a refund goes by the way the money came, and never above it", () => {
    const refund = made({ id: "r", kind: "refund", pence: 50_001, route: "transfer", of: "p1" });
    expect(checkEntry([paid], refund)[0]).toEqual({
      path: "pence",
      expected: "expected at most what is left of that payment, 50000",
    });
    expect(checkEntry([paid], { ...refund, pence: 100, route: "cash" })[0]?.path).toBe("method");
    expect(checkEntry([paid], { ...refund, pence: 100, route: "card", of: null })[0]).toEqual({
      path: "pence",
      expected: "expected at most what came by this way, 0",
    });
    expect(checkEntry([paid], { ...refund, pence: 50_000 })).toEqual([]);
  });

  it("a transfer that failed owes again, and its refund must be undone before it is", () => {
    const refund = made({ id: "r", kind: "refund", pence: 100, route: "transfer", of: "p1" });
    const failed = made({ id: "f", kind: "failed", pence: 50_000, of: "p1" });
    expect(checkEntry([paid, refund], failed)[0]?.expected).toMatch(/nothing rests on/);
    expect(readLedger([paid, failed])).toMatchObject({ paid: 0, cashIn: 0, undone: { p1: "f" } });
    expect(checkEntry([paid, failed], { ...failed, id: "f2" })[0]?.expected).toMatch(/still stands/);
    expect(
      checkEntry([paid, failed], made({ id: "c", kind: "correction", pence: 50_000, of: "f" }))[0]?.path,
    ).toBe("of");
  });

  it("a hold on a card is no money until it is charged", () => {
    const hold = made({ id: "h", kind: "depositHeld", pence: 100_000, route: "cardHold" });
    expect(readLedger([hold])).toMatchObject({ cashIn: 0, heldMoney: 0, heldOnCards: 100_000 });
    const charged = made({ id: "c", kind: "depositCharged", pence: 9000, of: "h" });
    const ledger = readLedger([hold, charged]);
    expect(ledger).toMatchObject({ cashIn: 9000, fromDeposit: 9000, heldOnCards: 91_000 });
    expect(ledger.income).toEqual([
      {
        id: "c",
        pence: 9000,
        on: "2026-07-01",
        route: "card",
        refunded: 0,
        refundable: 9000,
        fromDeposit: true,
      },
    ]);
  });

  it("an older release that names no deposit goes to those held, in their order", () => {
    const held = ["a", "b"].map((id) => made({ id, kind: "depositHeld", pence: 1000 }));
    const { holdings } = readLedger([
      ...held,
      made({ id: "x", kind: "depositReleased", pence: 1500, route: "asHeld" }),
    ]);
    expect(holdings.map(({ id, released, remaining }) => ({ id, released, remaining }))).toEqual([
      { id: "a", released: 1000, remaining: 0 },
      { id: "b", released: 500, remaining: 500 },
    ]);
  });

  it("a refund as held of two payments becomes two parts, each with an id, a way and a payment of its own", () => {
    const [first, second] = [
      made({ id: "p1", kind: "payment", pence: 50_000, route: "transfer" }),
      made({ id: "p2", kind: "payment", pence: 20_000, route: "card" }),
    ];
    const refund = made({ id: "r", kind: "refund", pence: 60_000, route: "asHeld" });
    expect(
      nameOrigins([first, second], refund).map(({ id, of, route, pence }) => [id, of, route, pence]),
    ).toEqual([
      ["r", "p1", "transfer", 50_000],
      ["r.2", "p2", "card", 10_000],
    ]);
    const byCard = { ...refund, pence: 5000, route: "card" as const };
    expect(nameOrigins([first, second], byCard).map(({ id, of }) => [id, of])).toEqual([["r", "p2"]]);
    const named = { ...refund, of: "p2", pence: 5000 };
    expect(nameOrigins([first, second], named)).toEqual([named]);
  });

  it("a hold that has lapsed is charged no more, but can be released", () => {
    const holds = ["a", "b"].map((id) =>
      made({ id, kind: "depositHeld", pence: 1000, route: "cardHold" as const }),
    );
    const charge = made({ id: "c", kind: "depositCharged", pence: 500 });
    expect(nameOrigins(holds, charge, ["a"]).map(({ id, of, pence }) => [id, of, pence])).toEqual([
      ["c", "b", 500],
    ]);
    const release = made({ id: "d", kind: "depositReleased", pence: 1500 });
    expect(nameOrigins(holds, release, ["a"]).map(({ id, of, pence }) => [id, of, pence])).toEqual([
      ["d", "a", 1000],
      ["d.2", "b", 500],
    ]);
    expect(checkEntry(holds, { ...charge, pence: 1001 }, ["a"])).toEqual([
      { path: "pence", expected: "expected at most what is held, 1000" },
    ]);
    expect(checkEntry(holds, { ...charge, of: "a" }, ["a"])[0]?.path).toBe("of");
    expect(checkEntry(holds, { ...charge, of: "b" }, ["a"])).toEqual([]);
    expect(checkEntry(holds, { ...release, of: "a", pence: 1000 }, ["a"])).toEqual([]);
  });

  it("over any sequence of entries no money appears or vanishes", () => {
    const act = fc.record({
      kind: fc.constantFrom(
        "payment",
        "refund",
        "depositHeld",
        "depositReleased",
        "depositCharged",
        "charge",
        "credit",
        "failed",
        "correction",
      ),
      pence: fc.integer({ min: -1, max: 3000 }),
      route: fc.constantFrom("card", "transfer", "cash", "cardHold", "asHeld", null),
      pick: fc.nat(20),
      names: fc.boolean(),
      whole: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(act, { maxLength: 30 }), (acts) => {
        const entries: LedgerEntry[] = [];
        acts.forEach(({ kind, pence, route, pick, names, whole }, k) => {
          const target = entries[pick % Math.max(1, entries.length)];
          const undo = kind === "failed" || kind === "correction";
          add(entries, {
            ...made({ id: `e${k}`, kind, pence: undo && whole ? (target?.pence ?? 1) : pence, route }),
            of: (undo || names) && target !== undefined ? target.id : null,
            line: kind === "charge" || kind === "credit" ? "damage" : null,
          });
        });
        const ledger = readLedger(entries);
        const postings = postEntries(entries);
        const sum = (...accounts: string[]) =>
          postings
            .filter(({ account }) => accounts.length === 0 || accounts.includes(account))
            .reduce((total, posting) => total + posting.pence, 0);
        expect(sum()).toBe(0);
        expect(sum("card", "bank", "cash")).toBe(ledger.cashIn - ledger.cashOut);
        expect(0 - sum("deposits")).toBe(ledger.heldMoney);
        expect(0 - sum("hirers")).toBe(ledger.paid - ledger.refunded + ledger.fromDeposit);
        for (const { refundable, refunded, pence } of ledger.income) {
          expect(refunded + refundable).toBe(pence);
          expect(refundable).toBeGreaterThanOrEqual(0);
        }
        for (const { charged, released, remaining, pence } of ledger.holdings) {
          expect(charged + released + remaining).toBe(pence);
          expect(remaining).toBeGreaterThanOrEqual(0);
        }
        for (const account of ["card", "bank", "cash"]) expect(sum(account)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 1000 },
    );
  });
});
