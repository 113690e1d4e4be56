import { createWords } from "@setfair/words";
import { hirerOf } from "../../auth/hirer-links.ts";
import type { AppContext } from "../../context.ts";
import { inputNow, settlementOf } from "../../desk/after-hire.ts";
import { asDocument, type DepotDocument, toJson } from "../../desk/documents.ts";
import { type HireData, partOf, readHireData } from "../../desk/hire-data.ts";
import { checkAnswer, keepAnswer } from "../../desk/hirer-answers.ts";
import { instantOf } from "../../desk/local-time.ts";
import { accountNames } from "../../desk/names.ts";
import { settlementState } from "../../desk/page.ts";
import { requireStage } from "../../desk/require-stage.ts";
import { claimId, entriesOfHire, isNoticeOf, promisedOn } from "../../desk/settlement-entries.ts";
import { keepStanding } from "../../desk/standing.ts";
import { lineEvidence } from "../../desk/statement-evidence.ts";
import { creditNotice } from "../../money/credit-notice.ts";
import type { HireStage, SettlementEntryRow, Store } from "../../store/types.ts";
import type { Handlers, Signed } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";

export const BACK: readonly HireStage[] = ["returned", "settled", "closed"];
const WORDS = createWords("en-GB");

export type NewEntry = Pick<SettlementEntryRow, "kind" | "about"> & { readonly document: object };

export async function stateOf(store: Store, data: HireData) {
  const answer = await settlementOf(store, data);
  return settlementState(data, answer, await entriesOfHire(store, data), await accountNames(store));
}

/** Keeps one entry of the desk, for good, and gives the settlement as it then stands. */
export async function keepEntry(
  context: AppContext,
  { store, account }: Signed,
  id: string,
  entry: NewEntry,
  also: (inner: Store) => Promise<void> = async () => {},
) {
  const data = await readHireData(store, id, context.now());
  requireStage(data, ...BACK);
  await store.within(async (inner) => {
    await inner.settlementEntries.add({
      hireId: id,
      kind: entry.kind,
      about: entry.about,
      document: toJson(entry.document),
      by: account.id,
    });
    await inner.audit.add({
      by: account.id,
      act: `hire.settlement.${entry.kind}`,
      about: id,
      document: { about: entry.about },
    });
    await also(inner);
    await keepStanding(inner, id, context.now(), account.id);
  });
  return stateOf(store, await readHireData(store, id, context.now()));
}

async function requireLine(store: Store, data: HireData, lineId: string): Promise<void> {
  const { result } = await settlementOf(store, data);
  if (!result.lines.some(({ id }) => id === lineId))
    throw badField("lineId", "expected a line of this settlement");
}

export async function requireMark(store: Store, data: HireData, differenceId: string): Promise<void> {
  const { result } = await settlementOf(store, data);
  if (!result.lines.some(({ evidence }) => evidence.differenceId === differenceId))
    throw badField("differenceId", "expected a difference of this hire");
}

/** The hire of a link, once its settlement was shown; before that there is no statement. */
async function statementHire(context: AppContext, token: string) {
  const link = token.includes("\0") ? null : await hirerOf(context.database, token);
  if (link === null) throw new Refusal("linkUnusable");
  const store = context.database.storeFor(link.scope);
  const data = await readHireData(store, link.hireId, context.now());
  const frozenAt = partOf(data, "settlement")?.frozenAt ?? null;
  if (frozenAt === null) throw new Refusal("notFound");
  return { store, data, frozenAt };
}

async function statementOf({ store, data, frozenAt }: Awaited<ReturnType<typeof statementHire>>) {
  const { result } = await settlementOf(store, data);
  const entries = await entriesOfHire(store, data);
  const state = settlementState(data, { result, findings: [] }, entries, () => data.depot.name);
  return {
    reference: data.row.number,
    customer: data.row.customerName,
    firm: (await store.firm.get()).name,
    depot: { name: data.depot.name, telephone: asDocument<DepotDocument>(data.depot.document).telephone },
    vehicle: data.vehicle?.document.description.name ?? "",
    frozenAt,
    result,
    releaseBy: result.releaseBy,
    promisedOn: promisedOn(entries),
    total: result.total,
    evidence: lineEvidence(result, await inputNow(store, data), data.records),
    entries: state.entries.filter(({ kind }) => SHOWN.includes(kind)),
  };
}
/** What the hirer sees of the entries: not who signed second, nor what was left behind. */
const SHOWN: readonly SettlementEntryRow["kind"][] = [
  "accept",
  "dispute",
  "reply",
  "withdraw",
  "estimate",
  "invoice",
  "hold",
  "claim",
  "notice",
];

export const settlementHandlers = {
  async addRepairCost({ context, signed, params, body }) {
    const { differenceId, kind, ...document } = body;
    const data = await readHireData(signed.store, params.id, context.now());
    requireStage(data, ...BACK);
    await requireMark(signed.store, data, differenceId);
    return keepEntry(context, signed, params.id, { kind, about: differenceId, document });
  },

  /** By another person than the one who decided. */
  async signSecond({ context, signed, params, body }) {
    const data = await readHireData(signed.store, params.id, context.now());
    requireStage(data, ...BACK);
    const claims = (await entriesOfHire(signed.store, data)).filter(({ kind }) => kind === "claim");
    const decidedBy =
      partOf(data, "settlement")?.classes[body.differenceId]?.by ??
      claims.find(({ id }) => claimId(id) === body.differenceId)?.by;
    if (decidedBy === undefined) throw badField("differenceId", "expected a difference that was decided");
    if (decidedBy === signed.account.id)
      throw badField("differenceId", "expected another person than the one who decided it");
    const document = { reason: body.reason };
    return keepEntry(context, signed, params.id, { kind: "second", about: body.differenceId, document });
  },

  async replyToLine({ context, signed, params, body }) {
    const data = await readHireData(signed.store, params.id, context.now());
    requireStage(data, ...BACK);
    const entry: NewEntry = { kind: body.answer, about: body.lineId, document: { text: body.text } };
    if (!isNoticeOf(await entriesOfHire(signed.store, data), body.lineId)) {
      await requireLine(signed.store, data, body.lineId);
      return keepEntry(context, signed, params.id, entry);
    }
    const open = { data, by: signed.account.id };
    return keepEntry(context, signed, params.id, entry, async (store) => {
      if (body.answer === "withdraw") await creditNotice({ ...open, store }, body.lineId);
    });
  },

  async holdDeposit({ context, signed, params, body }) {
    const data = await readHireData(signed.store, params.id, context.now());
    if (body.promisedOn < data.today) throw badField("promisedOn", "expected a day that is not past");
    // the promise comes back by itself on its day
    const note = {
      hireId: params.id,
      kind: "promise" as const,
      text: WORDS.t("settling.holdNote", { reason: body.reason }),
      moment: "day" as const,
      owner: signed.account.id,
      dueAt: instantOf(`${body.promisedOn}T06:00`, data.depot.timeZone, "promisedOn"),
      by: signed.account.id,
    };
    return keepEntry(
      context,
      signed,
      params.id,
      { kind: "hold", about: "", document: body },
      async (inner) => void (await inner.notes.add(note)),
    );
  },

  addLostProperty: ({ context, signed, params, body }) =>
    keepEntry(context, signed, params.id, { kind: "lost", about: body.what, document: body }),

  readStatement: async ({ context, params }) => statementOf(await statementHire(context, params.token)),

  /** One answer a line and a time; the last holds, all are kept. */
  async answerStatement({ context, params, body }) {
    const found = await statementHire(context, params.token);
    await checkAnswer(found.store, found.data, body, { line: "lineId", text: "text" });
    await keepAnswer(found.store, found.data, body, context.now());
    return statementOf(found);
  },
} satisfies Partial<Handlers>;
