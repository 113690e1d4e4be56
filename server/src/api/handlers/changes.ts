import { vehiclesFor } from "../../desk/can-take.ts";
import { refuseWith } from "../../desk/changes/as-it-would-be.ts";
import { planChange, possibleChanges } from "../../desk/changes/plan-change.ts";
import { changeDocument, type Effects, type HireChange } from "../../desk/changes/types.ts";
import { asDocument, toJson } from "../../desk/documents.ts";
import { type HireData, partOf, readHireData } from "../../desk/hire-data.ts";
import { instantOf } from "../../desk/local-time.ts";
import { accountNames } from "../../desk/names.ts";
import { pageAfterChange } from "../../desk/page.ts";
import { agreementPaper } from "../../papers/agreement-paper.ts";
import { noticeLetter } from "../../papers/notice-letter.ts";
import { wordsFor } from "../../papers/paper-call.ts";
import { renderPdf } from "../../papers/render-pdf.ts";
import type { ChangeRow, Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";
import { openHire } from "./change-hire.ts";

/** What an audit line may say of a change: nothing about a person. */
const auditFacts = (change: HireChange) => ({
  ...(change.kind === "extension" || change.kind === "early" ? { to: change.to } : {}),
  ...(change.kind === "late" ? { eta: change.eta } : {}),
  ...(change.kind === "vehicle" ? { vehicleId: change.vehicleId } : {}),
});

/** What is to be done becomes promises with their day, so that it comes up again by itself. */
async function promiseTasks(store: Store, data: HireData, hireId: string, effects: Effects, by: string) {
  const words = wordsFor(data);
  const { timeZone } = data.depot;
  for (const { code, facts, by: due } of effects.toDo) {
    const local = due === null || due.length > 10 ? due : `${due}T09:00`;
    await store.notes.add({
      hireId,
      kind: "promise",
      text: words.say(`changes.todo.${code}`, facts as Parameters<typeof words.say>[1]),
      moment: local === null ? null : "day",
      owner: null,
      dueAt: local === null ? null : instantOf(local, timeZone, "by"),
      by,
    });
  }
}

const rowAnswer = (row: ChangeRow, nameOf: (id: string) => string) => {
  const { change, toDo, continuedBy } = changeDocument(row.document);
  return {
    id: row.id,
    kind: row.kind as Effects["kind"], // written from a change only
    at: row.at,
    by: nameOf(row.by),
    change,
    toDo: toDo.map(({ code, facts, by }) => ({ code, facts, by })),
    papers: row.kind === "notice" && change !== null ? (["letter", "agreement"] as const).slice() : [],
    continuedBy: continuedBy ?? null,
  };
};

async function vehicleChoices(store: Store, data: HireData, now: Date) {
  const party = partOf(data, "party");
  if (party === null || !possibleChanges(data.row.stage).includes("vehicle")) return [];
  const isOut = data.row.stage !== "booked";
  const from = isOut || data.from < data.nowLocal ? data.nowLocal : data.from;
  if (from >= data.to) return [];
  const found = await vehiclesFor(store, data.depot, now, { party, from, to: data.to, hireId: data.row.id });
  return found
    .filter(({ id }) => id !== data.row.vehicleId)
    .map(({ id, document: { description }, answer }) => ({
      id,
      name: description.name,
      registration: description.registration,
      free: !answer.findings.some(({ gate, severity }) => gate === "diary" && severity === "refuse"),
      fits: !answer.findings.some(({ gate, severity }) => gate === "seats" && severity === "refuse"),
    }));
}

export const changeHandlers = {
  async readChanges({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const nameOf = await accountNames(signed.store);
    return {
      possible: [...possibleChanges(data.row.stage)],
      vehicles: await vehicleChoices(signed.store, data, context.now()),
      done: data.changes.map((row) => rowAnswer(row, nameOf)).reverse(),
    };
  },

  async lookAtChange({ context, signed, params, body }) {
    return (await planChange(signed.store, params.id, body, context.now())).effects;
  },

  /** Looked at again inside the transaction: what is written is what was seen, or nothing. */
  async confirmChange({ context, signed, params, body }) {
    const { change, seen } = body;
    const now = context.now();
    const by = signed.account.id;
    await signed.store.within(async (store) => {
      const { data, plan, effects } = await planChange(store, params.id, change, now);
      if (!effects.canConfirm) throw refuseWith("refused", effects.findings);
      if (effects.hash !== seen)
        throw new Refusal("stale", {
          problems: [{ path: "seen", expected: "the effects as they are now; look at them again" }],
        });
      const hire = openHire(store, data, by);
      const kept = await plan.write(hire);
      const hireId = plan.about ?? data.row.id;
      const document = toJson({ change, toDo: effects.toDo, ...kept });
      await store.changes.add({ hireId, kind: change.kind, document, by });
      const { continuedBy } = asDocument<{ continuedBy?: { hireId: string } }>(kept);
      await promiseTasks(store, data, continuedBy?.hireId ?? hireId, effects, by);
      await store.audit.add({
        by,
        act: `hire.changed.${change.kind}`,
        about: hireId,
        document: auditFacts(change),
      });
    });
    return pageAfterChange(signed.store, params.id, now, by);
  },

  async readChangePaper({ context, signed, params, reply }) {
    const { store } = signed;
    const data = await readHireData(store, params.id, context.now());
    const row = data.changes.find(({ id }) => id === params.change);
    const change = row === undefined ? null : changeDocument(row.document).change;
    if (change === null || change.kind !== "notice") throw new Refusal("notFound");
    const words = wordsFor(data);
    const { name } = await store.firm.get();
    const call = { data, store, words, firm: name };
    const { telephone } = asDocument<{ telephone?: string }>(data.depot.document);
    const isLetter = params.paper === "letter";
    const pdf = await renderPdf(
      {
        title: words.t(isLetter ? "changes.paper.title" : "papers.title.agreement"),
        from: telephone === undefined ? name : `${name}, ${telephone}`,
        reference: `${data.row.number}, ${words.dateText(data.now, "short")}`,
        content: isLetter ? noticeLetter(call, change) : await agreementPaper(call),
      },
      words,
    );
    const file = `${data.row.number}-${params.paper}`.replaceAll(/[^A-Za-z0-9.-]/g, "-");
    reply
      .header("cache-control", "private, no-store")
      .header("content-disposition", `inline; filename="${file}.pdf"`);
    await reply.type("application/pdf").send(pdf);
    return undefined;
  },
} satisfies Partial<Handlers>;
