import { withRules } from "@setfair/engine";
import { toGetSoon } from "../../desk/abroad.ts";
import { plainFinding } from "../../desk/glass.ts";
import { readHireData, readRows } from "../../desk/hire-data.ts";
import { hireNotes, isNoteDue, noteAnswer } from "../../desk/hire-notes.ts";
import { askFrom, driversToAsk } from "../../desk/licence-checks.ts";
import { dateOf, instantOf, localOf } from "../../desk/local-time.ts";
import { accountNames } from "../../desk/names.ts";
import type { HireRow, Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { openHire } from "./change-hire.ts";

const OVER: readonly string[] = ["closed", "lost", "cancelled", "noShow"];
/** A code is asked for no longer ahead than this; a check code lives 21 days. */
const ASK_DAYS = 60;

async function rowOf(store: Store, id: string): Promise<HireRow> {
  const row = await store.hires.get(id);
  if (row === null) throw new Refusal("notFound");
  return row;
}

export const noteHandlers = {
  readNotes: async ({ context, signed, params }) =>
    hireNotes(signed.store, await rowOf(signed.store, params.id), context.now()),

  async addNote({ context, signed, params, body }) {
    const { store, account } = signed;
    const row = await rowOf(store, params.id);
    const { kind, text, moment, on, ownerId } = body;
    if ((moment === "day") !== (on !== undefined))
      throw badField("on", moment === "day" ? "expected the day" : "expected no day beside another moment");
    if (ownerId !== undefined && !(await store.accounts.list()).some(({ id }) => id === ownerId))
      throw badField("ownerId", "expected somebody of this depot");
    const { timeZone } = await store.depot.get();
    await store.within(async (inner) => {
      await inner.notes.add({
        hireId: row.id,
        kind,
        text,
        moment: moment ?? null,
        owner: ownerId ?? null,
        dueAt: on === undefined ? null : instantOf(`${on}T00:00`, timeZone, "on"),
        by: account.id,
      });
      await inner.audit.add({ by: account.id, act: "hire.noted", about: row.id, document: { kind } });
    });
    return hireNotes(store, row, context.now());
  },

  async tickNote({ context, signed, params, body }) {
    const { store, account } = signed;
    const note = await store.notes.get(params.noteId);
    if (note === null) throw new Refusal("notFound");
    await store.within(async (inner) => {
      const changed = await (body.done ? inner.notes.done(note.id, account.id) : inner.notes.reopen(note.id));
      if (changed)
        await inner.audit.add({
          by: account.id,
          act: body.done ? "hire.noteDone" : "hire.noteReopened",
          about: note.hireId,
        });
    });
    return hireNotes(store, await rowOf(store, note.hireId), context.now());
  },

  async setPayer({ context, signed, params, query, body }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      const hire = openHire(inner, await readHireData(inner, params.id, context.now()), account.id);
      await hire.refuseOtherBase("payer", query.basedOn, body);
      await hire.putPart("payer", { payer: body.payer });
      await hire.audit(body.payer === null ? "hire.payerIsHirer" : "hire.payerSet");
    });
    return hireNotes(store, await rowOf(store, params.id), context.now());
  },

  async reminders({ context, signed, query }) {
    const { store } = signed;
    const depot = await store.depot.get();
    const { timeZone } = depot;
    const now = context.now();
    const today = dateOf(localOf(now.toISOString(), timeZone));
    const place = { timeZone, today: query.date ?? today };
    const nameOf = await accountNames(store);
    const notes = [];
    for (const note of await store.notes.open()) {
      const row = await store.hires.get(note.hireId);
      if (row === null || OVER.includes(row.stage) || note.text === "" || !isNoteDue(note, row, place))
        continue;
      notes.push({
        note: noteAnswer(note, row, place, nameOf),
        reference: row.number,
        customer: row.customerName,
        registration: row.registration,
      });
    }
    const start = instantOf(`${today}T00:00`, timeZone, "date");
    const rows = await store.hires.all({
      stages: ["booked"],
      startsFrom: start,
      touchesTo: new Date(Date.parse(start) + ASK_DAYS * 86_400_000).toISOString(),
    });
    const booked = await readRows(store, rows, depot, now);
    const askForCode = booked.flatMap((data) =>
      driversToAsk(data).map((driver) => ({
        hireId: data.row.id,
        reference: data.row.number,
        customer: data.row.customerName,
        driver: driver.name,
        driverId: driver.id,
        from: askFrom(data),
        keys: dateOf(data.from),
      })),
    );
    const toGet = booked
      .flatMap((data) =>
        withRules(data.ruleBook, () =>
          toGetSoon(data).map(({ finding, doBy }) => ({
            hireId: data.row.id,
            reference: data.row.number,
            customer: data.row.customerName,
            finding: plainFinding(finding),
            doBy,
          })),
        ),
      )
      .sort((a, b) => (a.doBy < b.doBy ? -1 : 1));
    return { notes, askForCode, toGet };
  },
} satisfies Partial<Handlers>;
