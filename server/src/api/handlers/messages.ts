import type { IsoInstant } from "@setfair/engine";
import type { z } from "zod";
import type { AppContext } from "../../context.ts";
import { figuresOf } from "../../desk/depot-figures.ts";
import { type HireData, readHireData } from "../../desk/hire-data.ts";
import { accountNames } from "../../desk/names.ts";
import { composeMessage, GUIDE_MARK } from "../../mail/compose-message.ts";
import { momentOf } from "../../mail/message-moments.ts";
import { changeSettings, readSettings } from "../../mail/message-settings.ts";
import { plannedMessages } from "../../mail/plan-messages.ts";
import { wordsFor } from "../../papers/paper-call.ts";
import type { PaperName } from "../../papers/papers.ts";
import type { MessageKind, MessageRow, MessageState } from "../../store/message-types.ts";
import type { HireRow, Store } from "../../store/types.ts";
import type { Handlers, Signed } from "../call.ts";
import { Refusal } from "../refusal.ts";
import type { messageSchema } from "../schemas/messages.ts";

const SHOWN: Readonly<Record<"all" | "open" | "sent", readonly MessageState[] | undefined>> = {
  all: undefined,
  open: ["waiting", "sending", "failed", "bounced", "unsure"],
  sent: ["sent"],
};
const AHEAD_MS = 14 * 86_400_000;

type MessageAnswer = z.input<typeof messageSchema>;

/** Rows as a page shows them: with the hire's number, and without the mark where the hirer's link will stand. */
async function answersOf(store: Store, rows: readonly MessageRow[]): Promise<MessageAnswer[]> {
  const nameOf = await accountNames(store);
  const words = wordsFor({ depot: await store.depot.get() });
  const hires = new Map<string, HireRow | null>();
  for (const { hireId } of rows) if (!hires.has(hireId)) hires.set(hireId, await store.hires.get(hireId));
  return rows.map(({ by, reason, attachments, body, ...row }) => ({
    ...row,
    body: body.replaceAll(GUIDE_MARK, words.t("message.guideWhenSent")),
    attachments: attachments as PaperName[], // written from PaperNames only
    reference: hires.get(row.hireId)?.number ?? "",
    customer: hires.get(row.hireId)?.customerName ?? "",
    reasonCode: reason?.startsWith("#") === true ? reason.slice(1) : null,
    reason: reason?.startsWith("#") === true ? null : reason,
    by: by === "system" ? null : nameOf(by),
  }));
}

async function answerOf(store: Store, id: string): Promise<MessageAnswer> {
  const row = await store.messages.get(id);
  const [answer] = row === null ? [] : await answersOf(store, [row]);
  if (answer === undefined) throw new Refusal("notFound");
  return answer;
}

const isDated = (kind: MessageKind) =>
  kind === "preHire" || kind === "dayBefore" || kind === "returnReminder";

/** The moment of a kind where it lies ahead. */
function momentAhead(kind: MessageKind, { row, depot, depotDocument, now }: HireData): IsoInstant | null {
  if (!isDated(kind)) return null;
  const days = figuresOf(depotDocument).messageDays;
  const moment = momentOf(kind, row, { timeZone: depot.timeZone, days });
  return moment > now ? moment : null;
}

/** Moves a message on for a person; refused where it is at another state meanwhile. */
async function moveFor(
  { store, account }: Signed,
  id: string,
  from: readonly MessageState[],
  change: { readonly state: MessageState; readonly reason?: string | null },
) {
  const message = await store.messages.get(id);
  if (message === null) throw new Refusal("notFound");
  await store.within(async (inner) => {
    if (!(await inner.messages.move(id, from, change)))
      throw new Refusal("stale", {
        problems: [{ path: "state", expected: `${from.join(" or ")}, but it is ${message.state}` }],
      });
    const document = { message: id, kind: message.kind, state: change.state };
    await inner.audit.add({ by: account.id, act: "hire.messageChanged", about: message.hireId, document });
  });
  return message;
}

const settingsAnswer = async (store: Store) => {
  const { settings, version } = await readSettings(store);
  const { since, ...sender } = settings;
  return { ...sender, automatic: Object.keys(since) as MessageKind[], version };
};
const hasServer = (context: AppContext) => context.mailServer !== undefined && context.mailServer !== null;

export const messageHandlers = {
  async listMessages({ context, signed, query }) {
    const { store } = signed;
    const { show, hireId, after, limit } = query;
    const states = SHOWN[show];
    const found = await store.messages.list({
      limit,
      ...(states === undefined ? {} : { states }),
      ...(hireId === undefined ? {} : { hireId }),
      ...(after === undefined ? {} : { after }),
    });
    const now = context.now();
    const until = new Date(now.getTime() + AHEAD_MS).toISOString();
    const planned =
      after === undefined && show !== "sent" ? await plannedMessages(store, now.toISOString(), until) : [];
    return {
      mailServer: context.mailServer?.name ?? null,
      readsBounces: context.readsBounces ?? false,
      hasFrom: (await readSettings(store)).settings.fromAddress !== "",
      messages: await answersOf(store, found.rows),
      next: found.next,
      planned: planned
        .filter(({ hire }) => hireId === undefined || hire.id === hireId)
        .map(({ hire, kind, dueAt }) => ({
          hireId: hire.id,
          reference: hire.number,
          customer: hire.customerName,
          kind,
          dueAt,
        })),
    };
  },

  readMessageSettings: ({ signed }) => settingsAnswer(signed.store),

  async putMessageSettings({ context, signed, body }) {
    const { store, account } = signed;
    const { settings } = await readSettings(store);
    const { version, ...asked } = body;
    const { since, ...sender } = changeSettings(settings, asked, context.now().toISOString());
    await store.within(async (inner) => {
      if (!(await inner.messages.putSettings({ ...sender, since }, version))) throw new Refusal("stale");
      const document = { automatic: Object.keys(since) };
      await inner.audit.add({ by: account.id, act: "messages.settings", about: "messages", document });
    });
    return settingsAnswer(store);
  },

  async previewMessage({ context, signed, params, query }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const composed = await composeMessage(signed.store, data, { ...query, goesAt: data.now });
    return {
      ...query,
      ...composed,
      isDraft: query.language !== "en",
      body: composed.body.replaceAll(GUIDE_MARK, wordsFor(data).t("message.guideWhenSent")),
      attachments: [...composed.attachments],
      lacking: composed.lacking.map(({ paper, problems }) => ({ paper, problems: [...problems] })),
      problems: [...composed.problems],
      moment: momentAhead(query.kind, data),
    };
  },

  async sendMessage({ context, signed, params, body }) {
    const { store, account } = signed;
    const data = await readHireData(store, params.id, context.now());
    const { kind, language } = body;
    if (language !== "en" && !body.draftRead)
      throw new Refusal("missing", {
        problems: [{ path: "draftRead", expected: "a person's word that they read the draft translation" }],
      });
    const moment = momentAhead(kind, data);
    const goesAt = body.when === "moment" && moment !== null ? moment : data.now;
    const composed = await composeMessage(store, data, { kind, language, goesAt });
    if (composed.problems.length > 0) throw new Refusal("missing", { problems: composed.problems });
    const { to, subject, attachments } = composed;
    const id = await store.within(async (inner) => {
      const message = await inner.messages.add({
        hireId: params.id,
        kind,
        language,
        to,
        subject,
        body: composed.body,
        attachments,
        dueAt: goesAt,
        dedupeKey: `by-hand:${body.id}`,
        by: account.id,
      });
      // pressed twice: the first one stands
      if (message === null) return (await inner.messages.byKey(`by-hand:${body.id}`))?.id ?? "";
      if (hasServer(context)) await inner.messages.addJob(message.id, goesAt);
      const document = { message: message.id, kind };
      await inner.audit.add({ by: account.id, act: "hire.messageWritten", about: params.id, document });
      return message.id;
    });
    return answerOf(store, id);
  },

  async retryMessage({ context, signed, params }) {
    const { store } = signed;
    await store.within(async (inner) => {
      const change = { state: "waiting", reason: null } as const;
      await moveFor({ ...signed, store: inner }, params.id, ["failed", "bounced", "unsure"], change);
      await inner.messages.dropJob(params.id);
      if (hasServer(context)) await inner.messages.addJob(params.id, context.now().toISOString());
    });
    return answerOf(store, params.id);
  },

  async withdrawMessage({ signed, params }) {
    await moveFor(signed, params.id, ["waiting", "failed"], { state: "withdrawn" });
    return answerOf(signed.store, params.id);
  },

  async bounceMessage({ signed, params, body }) {
    await moveFor(signed, params.id, ["sent", "unsure"], { state: "bounced", reason: body.why });
    return answerOf(signed.store, params.id);
  },
} satisfies Partial<Handlers>;
