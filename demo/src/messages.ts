import { addDays, toInstant } from "@setfair/engine";
import { composeFor, type Store, toJson } from "@setfair/server";

interface Writing {
  readonly store: Store;
  readonly by: string;
  readonly now: Date;
  readonly today: string;
  readonly timeZone: string;
}
type Kind = Parameters<typeof composeFor>[1]["kind"];
type Change = Parameters<Store["messages"]["move"]>[2];

const SENDER = {
  fromName: "Marlow Tarn Motorhome Hire (invented)",
  fromAddress: "hires@example.org",
  replyTo: "",
  since: {},
};
const NO_MAILBOX = "5.1.1 550 5.1.1 no such mailbox here (invented)";

/** Writes what a hire's moment asks for, and says what became of it. */
async function write(
  { store, by, now }: Writing,
  asked: { readonly hireId: string; readonly kind: Kind; readonly dueAt: string },
  became: Change | null,
): Promise<void> {
  const { hireId, kind, dueAt } = asked;
  const composed = await composeFor(store, { hireId, kind, now });
  const { to, subject, body, attachments } = composed;
  const message = await store.messages.add({
    hireId,
    kind,
    language: "en",
    to,
    subject,
    body,
    attachments,
    dueAt,
    // as what goes out by itself has it, so that it is not written again when that is turned on
    dedupeKey: `auto:${hireId}:${kind}`,
    by,
  });
  if (message !== null && became !== null) await store.messages.move(message.id, ["waiting"], became);
}

/** An outbox with something at every state: nothing of it ever left, since the demo has no mail server. */
export async function putMessages(writing: Writing): Promise<void> {
  const { store, today, timeZone, now } = writing;
  await store.messages.putSettings(toJson(SENDER), 0);
  const at = (days: number) => toInstant(`${addDays(today, days)}T09:00`, timeZone);
  const sent = (days: number): Change => ({
    state: "sent",
    sentAt: at(days),
    response: "250 taken (invented)",
  });
  const from = { startsFrom: now.toISOString(), limit: 4 };
  const [first, second, third, fourth] = (await store.hires.list({ stages: ["booked"], ...from })).rows;
  if (first !== undefined) {
    await write(writing, { hireId: first.id, kind: "booking", dueAt: at(-9) }, sent(-9));
    await write(writing, { hireId: first.id, kind: "preHire", dueAt: at(-2) }, sent(-2));
  }
  if (second !== undefined) {
    const asked = { hireId: second.id, kind: "booking", dueAt: at(-6) } as const;
    await write(writing, asked, { state: "bounced", reason: NO_MAILBOX, sentAt: at(-6) });
  }
  if (third !== undefined) {
    const asked = { hireId: third.id, kind: "preHire", dueAt: at(-1) } as const;
    await write(writing, asked, { state: "failed", reason: "550 5.7.1 refused (invented)" });
  }
  if (fourth !== undefined) await write(writing, { hireId: fourth.id, kind: "booking", dueAt: at(0) }, null);
  const [away] = (await store.hires.list({ stages: ["onHire"], limit: 1 })).rows;
  if (away !== undefined)
    await write(writing, { hireId: away.id, kind: "returnReminder", dueAt: at(0) }, null);
}
