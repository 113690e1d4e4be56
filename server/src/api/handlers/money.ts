import { type LedgerEntry, type NewEntry, type Route, readLedger } from "@setfair/engine";
import { createWords } from "@setfair/words";
import { settlementOf } from "../../desk/after-hire.ts";
import { toJson } from "../../desk/documents.ts";
import { partOf } from "../../desk/hire-data.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import { entriesOfHire, promisedOn } from "../../desk/settlement-entries.ts";
import { addEntry, changeMoney, isThere, refuseEntry } from "../../money/change-money.ts";
import { depositNow } from "../../money/deposit-now.ts";
import { exportPostings } from "../../money/export-postings.ts";
import { entriesOf, readHireMoney } from "../../money/hire-money.ts";
import { hireMoneyAnswer } from "../../money/hire-money-answer.ts";
import { creditInvoice, FIRM_TERMS, issueInvoice } from "../../money/invoices.ts";
import { moneyPage } from "../../money/money-page.ts";
import { recordedByHand } from "../../money/payment-provider.ts";
import { sendInvoice } from "../../papers/invoice-paper.ts";
import type { HireStage } from "../../store/types.ts";
import { NO_VERSION, refuseOtherBase } from "../based-on.ts";
import type { Call, Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { requireSecondLook } from "./after-return.ts";
import { changeHire, openHire } from "./change-hire.ts";

const PAYING: readonly HireStage[] = [
  "quote",
  "booked",
  "handedOver",
  "onHire",
  "returned",
  "settled",
  "closed",
  "cancelled",
  "noShow",
];

const plain = (entry: Pick<NewEntry, "id" | "kind" | "pence" | "on"> & Partial<NewEntry>): NewEntry => ({
  route: null,
  of: null,
  line: null,
  note: null,
  ...entry,
});
const answerOf = (call: Pick<Call<"refund">, "context" | "signed" | "params">) =>
  hireMoneyAnswer(call.signed.store, call.params.id, call.context.now());

/** The way by which a payment came, hence goes back. Refused where no such payment stands. */
function routeOf(entries: readonly LedgerEntry[], of: string): Route {
  const came = readLedger(entries).income.find(({ id }) => id === of);
  if (came === undefined) throw badField("of", "expected a payment of this hire that stands");
  return came.route;
}

/** Carries a refund out by whoever moves money, before it is written. */
async function moveBack(call: Call<"refund">, route: Route) {
  const { id, of, pence } = call.body;
  const provider = call.context.payments ?? recordedByHand;
  const origin = (await call.signed.store.payments.ofHire(call.params.id)).find((row) => row.id === of);
  const ofReference = typeof origin?.document.reference === "string" ? origin.document.reference : null;
  const what = { id, hireId: call.params.id, what: "refund", pence, currency: "GBP" } as const;
  const moved = await provider.move({ ...what, route, of, ofReference });
  if (!moved.ok) throw badField("of", `expected a payment that can be paid back: ${moved.why}`);
  return { movedBy: provider.name, ...(moved.reference === null ? {} : { reference: moved.reference }) };
}

export const moneyHandlers = {
  /** Recorded by hand; the same id again records nothing twice. */
  pay: (call) =>
    changeHire(call, PAYING, async (hire) => {
      await hire.store.payments.lock(hire.data.row.id);
      const { id, kind, pence, on, method, note, of } = call.body;
      const entry = plain({ id, kind, pence, on, route: method, note: note ?? null, of: of ?? null });
      if (isThere(entriesOf(await hire.store.payments.ofHire(hire.data.row.id)), entry)) return;
      await addEntry(hire, entry);
      await hire.audit("hire.paid", { kind, pence });
    }),

  releaseDeposit: (call) =>
    changeHire(call, ["settled"], async (hire) => {
      await hire.store.payments.lock(hire.data.row.id);
      const settlement = partOf(hire.data, "settlement");
      if (settlement === null || settlement.answer === null) {
        throw new Refusal("missing", { problems: [{ path: "settlement", expected: "a settlement" }] });
      }
      await requireSecondLook(hire.store, hire.data);
      const { result } = await settlementOf(hire.store, hire.data);
      const { keepPence, backPence } = depositNow(hire.data, result);
      if (settlement.releasedAt !== null && keepPence + backPence === 0) throw new Refusal("frozen");
      if (result.depositWithheld.pence > 0 && promisedOn(await entriesOfHire(hire.store, hire.data)) === null)
        throw new Refusal("missing", {
          problems: [
            { path: "promisedOn", expected: "a day by which the hirer has an answer on what is held back" },
          ],
        });
      // each step has entries of its own: what is clear later is kept or given back later
      const step = hire.data.payments.filter(({ kind }) => kind.startsWith("deposit")).length;
      const add = async (kind: "depositCharged" | "depositReleased", pence: number) => {
        const id = `${kind}-${hire.data.row.id}-${step}`;
        if (pence > 0) await addEntry(hire, plain({ id, kind, pence, on: hire.data.today, route: "asHeld" }));
      };
      await add("depositCharged", keepPence);
      await add("depositReleased", backPence);
      await hire.putPart("settlement", { ...settlement, releasedAt: settlement.releasedAt ?? hire.data.now });
      await hire.audit("hire.depositReleased", { kept: keepPence, returned: backPence });
    }),

  readHireMoney: (call) => answerOf(call),

  async agreeParts(call) {
    await changeMoney(call, ["quote", "booked", "onHire", "handedOver"], async (open) => {
      const { agreed } = call.body;
      const hire = openHire(open.store, open.data, open.by);
      await hire.refuseOtherBase("money", call.query.basedOn, { agreed });
      const { pricePence } = readHireMoney(open.data);
      const sum = agreed.reduce((total, { pence }) => total + pence, 0);
      if (agreed.length > 0 && sum !== pricePence)
        throw badField("agreed", `expected parts that sum to the price, ${pricePence}, not ${sum}`);
      await hire.putPart("money", { agreed });
      await hire.audit("hire.partsAgreed", { agreed });
    });
    return answerOf(call);
  },

  async addCharge(call) {
    await changeMoney(call, PAYING, async (open) => {
      const { id, kind, line, pence, on, note } = call.body;
      const entry = plain({ id, kind, line, pence, on, note });
      if (isThere(entriesOf(open.data.payments), entry)) return;
      await addEntry(open, entry);
      const document = { line, pence };
      await open.store.audit.add({
        by: open.by,
        act: kind === "charge" ? "hire.charged" : "hire.creditGiven",
        about: open.data.row.id,
        document,
      });
    });
    return answerOf(call);
  },

  async refund(call) {
    const { id, of, pence, on, reason } = call.body;
    const entry = plain({ id, kind: "refund", of, pence, on, note: reason });
    // refused before anybody moves money; null: recorded already
    const route = await changeMoney(call, PAYING, async (open) => {
      const entries = entriesOf(open.data.payments);
      if (isThere(entries, entry)) return null;
      const way = routeOf(entries, of);
      refuseEntry(open, entries, { ...entry, route: way });
      return way;
    });
    if (route === null) return answerOf(call);
    const moved = await moveBack(call, route);
    await changeMoney(call, PAYING, async (open) => {
      if (isThere(entriesOf(open.data.payments), entry)) return;
      await addEntry(open, { ...entry, route }, moved);
      const document = { pence, of };
      await open.store.audit.add({ by: open.by, act: "hire.refunded", about: open.data.row.id, document });
    });
    return answerOf(call);
  },

  async undoEntry(call) {
    await changeMoney(call, PAYING, async (open) => {
      const { id, entryId, kind, on, reason } = call.body;
      const target = open.data.payments.find((row) => row.id === entryId);
      if (target === undefined) throw badField("entryId", "expected an entry of this hire");
      const entry = plain({ id, kind, pence: target.pence, on, of: entryId, note: reason });
      if (isThere(entriesOf(open.data.payments), entry)) return;
      await addEntry(open, entry);
      await open.store.audit.add({
        by: open.by,
        act: kind === "failed" ? "hire.paymentFailed" : "hire.entryCorrected",
        about: open.data.row.id,
        document: { pence: target.pence, of: entryId },
      });
    });
    return answerOf(call);
  },

  async issueInvoice(call) {
    await changeMoney(call, PAYING, issueInvoice);
    return answerOf(call);
  },

  async creditInvoice(call) {
    await changeMoney(call, PAYING, (open) => creditInvoice(open, call.params.invoiceId, call.body.reason));
    return answerOf(call);
  },

  readInvoice: ({ context, signed, params, reply }) => sendInvoice(context, signed.store, params, reply),

  readMoney: ({ context, signed }) => moneyPage(signed.store, context.now()),

  async setFirmOnInvoices({ context, signed, query, body }) {
    const { store, account } = signed;
    const { timeZone } = await store.depot.get();
    const today = dateOf(localOf(context.now().toISOString(), timeZone));
    await store.within(async (inner) => {
      await inner.terms.hold(FIRM_TERMS);
      const newest = await inner.terms.newest(FIRM_TERMS);
      const now = { path: "firm", version: newest?.versionId ?? NO_VERSION, value: newest?.document ?? {} };
      refuseOtherBase(query.basedOn, now, body);
      await inner.terms.put({ of: FIRM_TERMS, validFrom: today, document: toJson(body) });
      await inner.audit.add({ by: account.id, act: "firm.onInvoices", about: FIRM_TERMS });
    });
    return moneyPage(store, context.now());
  },

  async exportPostings({ signed, query, reply }) {
    const { from, to } = query;
    if (to < from) throw badField("to", `expected ${from} or a later day`);
    const { timeZone } = await signed.store.depot.get();
    const csv = await exportPostings(
      signed.store,
      from,
      to,
      createWords("en-GB", undefined, () => timeZone),
    );
    await signed.store.audit.add({
      by: signed.account.id,
      act: "money.exported",
      about: "postings",
      document: { from, to },
    });
    reply
      .header("cache-control", "private, no-store")
      .header("content-disposition", `attachment; filename="postings-${from}-${to}.csv"`);
    await reply.type("text/csv; charset=utf-8").send(csv);
    return undefined;
  },
} satisfies Partial<Handlers>;
