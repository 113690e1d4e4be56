import { makeHirerLink } from "../auth/hirer-links.ts";
import { figuresOf } from "../desk/depot-figures.ts";
import { type HireData, readHireData } from "../desk/hire-data.ts";
import type { PhotographFiles } from "../files/types.ts";
import { MOST_ATTEMPTS } from "../jobs/backoff.ts";
import type { JobHandler } from "../jobs/handlers.ts";
import { type Pictures, picturesOf } from "../papers/evidence/pictures.ts";
import { makePaper } from "../papers/make-paper.ts";
import { wordsFor } from "../papers/paper-call.ts";
import type { PaperName } from "../papers/papers.ts";
import type { MessageRow } from "../store/message-types.ts";
import type { JobRow, Store } from "../store/types.ts";
import { GUIDE_MARK, MESSAGE_STAGES } from "./compose-message.ts";
import type { Mail, MailServer, SendAnswer } from "./mail-server.ts";
import { uselessAfter } from "./message-moments.ts";
import { readSettings } from "./message-settings.ts";

export interface SendContext {
  readonly mailServer: MailServer | null;
  readonly now: () => Date;
  readonly publicUrl: () => string;
  /** photographs for the papers that go along; they are named by their hash only where left out */
  readonly files?: PhotographFiles;
}

const DAY_MS = 86_400_000;
/** A job is tried for about two hours; then the next begins after this, until the message is given up. */
const NEXT_ROUND_MS = 4 * 3_600_000;
const GIVEN_UP_AFTER_MS = 3 * DAY_MS;

/** Why it must not be sent any more, by the code of a text `message.reason.<code>`; null where it may. */
function whyNot(message: MessageRow, data: HireData | null, now: string): string | null {
  if (data === null || message.to === "") return "#noHire";
  const last = uselessAfter(message.kind, data.row);
  if (last !== null && last <= now) return "#tooLate";
  return MESSAGE_STAGES[message.kind].includes(data.row.stage) ? null : "#stage";
}

/** The hirer's own link, where the message speaks of one: made now, since only its hash is kept. */
async function withGuide(store: Store, message: MessageRow, data: HireData, context: SendContext) {
  if (!message.body.includes(GUIDE_MARK)) return { text: message.body, linkId: null };
  const now = context.now();
  const { linkDays } = figuresOf(data.depotDocument);
  const expires = new Date(Math.max(Date.parse(data.row.to), now.getTime()) + linkDays * DAY_MS);
  const made = await makeHirerLink(store, data.row.id, expires, now);
  if (made === null) throw new Error("the hire was there a moment ago");
  const url = `${context.publicUrl()}/g/${made.token}`;
  return { text: message.body.replaceAll(GUIDE_MARK, url), linkId: made.link.id };
}

async function makeAttachments(store: Store, message: MessageRow, data: HireData, pictures?: Pictures) {
  const files: { filename: string; content: Buffer }[] = [];
  for (const paper of message.attachments as readonly PaperName[]) {
    const content = await makePaper(store, data, paper, wordsFor(data), pictures);
    files.push({ filename: `${data.row.number}-${paper}.pdf`.replaceAll(/[^A-Za-z0-9.-]/g, "-"), content });
  }
  return files;
}

/** What the answer of the mail server makes of the message. Throws where the same job is to try again. */
async function settle(store: Store, job: JobRow, message: MessageRow, answer: SendAnswer, now: Date) {
  const at = now.toISOString();
  const move = (change: Parameters<Store["messages"]["move"]>[2]) =>
    store.messages.move(message.id, ["sending"], change);
  if (answer.outcome === "taken") {
    await store.within(async (inner) => {
      const sent = { state: "sent", sentAt: at, response: answer.response, reason: null } as const;
      await inner.messages.move(message.id, ["sending"], sent);
      const document = { message: message.id, kind: message.kind };
      await inner.audit.add({ by: message.by, act: "hire.messageSent", about: message.hireId, document });
    });
    return;
  }
  const { reason } = answer;
  if (answer.outcome !== "later") {
    await move({ state: answer.outcome === "refused" ? "failed" : "unsure", reason });
    return;
  }
  if (now.getTime() - Date.parse(message.dueAt) > GIVEN_UP_AFTER_MS) {
    await move({ state: "failed", reason: "#givenUp" });
    return;
  }
  await move({ state: "waiting", reason });
  // the queue keeps its errors for ever: no address in them
  // the last attempt of a job is kept for finding out that the one before was stopped in the middle
  if (job.attempts < MOST_ATTEMPTS - 1)
    throw new Error("the mail server did not take it: why stands at the message");
  await store.messages.dropJob(message.id);
  await store.messages.addJob(message.id, new Date(now.getTime() + NEXT_ROUND_MS).toISOString());
}

async function mailOf(
  store: Store,
  message: MessageRow,
  data: HireData,
  context: SendContext,
  pictures?: Pictures,
) {
  const { settings } = await readSettings(store);
  if (settings.fromAddress === "") return null;
  const attachments = await makeAttachments(store, message, data, pictures);
  const { text, linkId } = await withGuide(store, message, data, context);
  const mail: Mail = {
    messageId: `${message.id}@${settings.fromAddress.split("@").at(-1)}`,
    from: {
      name: settings.fromName === "" ? (await store.firm.get()).name : settings.fromName,
      address: settings.fromAddress,
    },
    replyTo: settings.replyTo === "" ? null : settings.replyTo,
    to: message.to,
    subject: message.subject,
    text,
    language: message.language,
    isAutomatic: message.by === "system",
    attachments,
  };
  return { mail, linkId };
}

async function readHireOf(store: Store, message: MessageRow, now: Date): Promise<HireData | null> {
  return (await store.hires.get(message.hireId)) === null ? null : readHireData(store, message.hireId, now);
}

/**
 * Sends one message. The state moves to `sending` before the first byte: a process that is stopped in the middle
 * leaves it there, and the next one calls it `unsure` and lets a person decide, rather than sending it twice.
 */
export function messageSender(context: SendContext): JobHandler {
  return async (job, store) => {
    const { mailServer, now } = context;
    const message = await store.messages.get(String(job.payload.id));
    if (message === null) return;
    if (message.state === "sending") {
      await store.messages.move(message.id, ["sending"], { state: "unsure", reason: null });
      return;
    }
    if (message.state !== "waiting") return;
    // without a mail server it waits: a job is added once there is one
    if (mailServer === null) return store.messages.dropJob(message.id);
    const data = await readHireOf(store, message, now());
    const reason = whyNot(message, data, now().toISOString());
    if (reason !== null || data === null) {
      await store.messages.move(message.id, ["waiting"], { state: "failed", reason });
      return;
    }
    const pictures = context.files === undefined ? undefined : picturesOf(context.files, store);
    const made = await mailOf(store, message, data, context, pictures).catch(async (error: Error) => {
      const state = job.attempts < MOST_ATTEMPTS - 1 ? "waiting" : "failed";
      await store.messages.move(message.id, ["waiting"], { state, reason: error.message });
      throw error;
    });
    if (made === null) {
      await store.messages.move(message.id, ["waiting"], { state: "failed", reason: "#noFrom" });
      return;
    }
    const attempts = message.attempts + 1;
    if (!(await store.messages.move(message.id, ["waiting"], { state: "sending", attempts }))) return;
    const answer = await mailServer.send(made.mail);
    if (answer.outcome !== "taken" && answer.outcome !== "unsure" && made.linkId !== null)
      await store.links.revoke(made.linkId);
    await settle(store, job, { ...message, attempts }, answer, now());
  };
}
