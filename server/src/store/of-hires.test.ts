import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type TwoDepots, testedStores, twoDepots } from "./stores-for-tests.ts";
import type { Store } from "./types.ts";

interface Kept {
  readonly id: string;
  readonly hireId: string;
}

interface List {
  readonly what: string;
  add(store: Store, hireId: string, n: number): Promise<Kept>;
  ofHires(store: Store, hireIds: readonly string[]): Promise<readonly Kept[]>;
}

const by = "desk";
const ON = "2026-07-01";
/** Ids that a device makes, later ones before earlier ones. */
const clientId = (n: number) => `0198c000-0000-7000-8000-${String(1000 - n).padStart(12, "0")}`;

const LISTS: readonly List[] = [
  {
    what: "entries of the ledger",
    add: (store, hireId, n) =>
      store.payments.add({
        id: clientId(n),
        hireId,
        kind: "payment",
        currency: "GBP",
        pence: n,
        document: { on: ON },
        by,
      }),
    ofHires: (store, ids) => store.payments.ofHires(ids),
  },
  {
    what: "invoices",
    add: (store, hireId) => store.invoices.issue({ hireId, series: "invoice", on: ON, document: {}, by }),
    ofHires: (store, ids) => store.invoices.ofHires(ids),
  },
  {
    what: "what is said about a settlement",
    add: (store, hireId) =>
      store.settlementEntries.add({ hireId, kind: "accept", about: "", document: {}, by }),
    ofHires: (store, ids) => store.settlementEntries.ofHires(ids),
  },
  {
    what: "frozen results",
    add: (store, hireId, n) => store.frozen.add({ hireId, room: "quote", document: { n }, by }),
    ofHires: (store, ids) => store.frozen.ofHires(ids),
  },
  {
    what: "overrides",
    add: (store, hireId) =>
      store.overrides.add({
        hireId,
        findingCode: "diary.closed",
        about: "",
        basis: "policy",
        reason: "",
        by,
      }),
    ofHires: (store, ids) => store.overrides.ofHires(ids),
  },
  {
    what: "changes of the day",
    add: (store, hireId) => store.changes.add({ hireId, kind: "late", document: {}, by }),
    ofHires: (store, ids) => store.changes.ofHires(ids),
  },
  {
    what: "defects told of",
    add: (store, hireId) => store.defects.disclose({ defectId: "d", hireId, signer: "hirer", by }),
    ofHires: (store, ids) => store.defects.disclosures(ids),
  },
  {
    what: "things that travel",
    add: async (store, hireId, n) => {
      const period = { from: "2026-07-01T10:00:00Z", to: "2026-07-08T10:00:00Z" };
      const before = (await store.stock.holdsOf([hireId])).map(({ itemId, count }) => ({ itemId, count }));
      await store.stock.replaceHolds(hireId, period, [...before, { itemId: `item-${n}`, count: 1 }]);
      return (await store.stock.holdsOf([hireId])).find(({ itemId }) => itemId === `item-${n}`)!;
    },
    ofHires: (store, ids) => store.stock.holdsOf(ids),
  },
];

describe.each(testedStores())("what is kept of several hires on $kind", ({ kind }) => {
  let depots: TwoDepots;
  let second = 0;

  beforeAll(async () => {
    const now = () => new Date(Date.UTC(2026, 6, 1, 8, 0, ++second));
    depots = await twoDepots(kind, { now });
  });
  afterAll(() => depots.place.remove());

  test.each(LISTS)(
    "$what: those of the hires asked for, in the order of writing",
    async ({ add, ofHires }) => {
      const { here, there } = depots;
      const newHire = async () =>
        (await here.hires.create({ from: "2026-07-01T10:00:00Z", to: "2026-07-08T10:00:00Z" })).id;
      const [a, b, c] = [await newHire(), await newHire(), await newHire()];
      const kept: Kept[] = [];
      for (const [n, hireId] of [a, b, a, c].entries()) kept.push(await add(here, hireId, n));
      const idsOf = async (store: Store, hires: readonly string[]) =>
        (await ofHires(store, hires)).map(({ id, hireId }) => ({ id, hireId }));
      const named = kept.map(({ id, hireId }) => ({ id, hireId }));
      expect(await idsOf(here, [a])).toEqual([named[0], named[2]]);
      expect(await idsOf(here, [a, b])).toEqual([named[0], named[1], named[2]]);
      expect(await idsOf(here, [])).toEqual([]);
      expect(await idsOf(there, [a, b, c])).toEqual([]);
    },
  );
});
