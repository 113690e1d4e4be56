import type { DepotRecord } from "@setfair/records";
import type { DeviceDatabase, KeptPhotograph, KeptRecord } from "./database.ts";
import { viaText } from "./keep-record.ts";

/**
 * taken: the server has it, now or from before · refused: it never will, with the reason · signIn: nobody is
 * signed in, or not this person's to send · later: no signal, or the server is busy
 */
export type SendAnswer =
  | { readonly outcome: "taken" }
  | { readonly outcome: "refused"; readonly problem: string }
  | { readonly outcome: "signIn" }
  | { readonly outcome: "later" };

/** What carries the outbox to the server. */
export interface Sender {
  putPhotograph(photograph: KeptPhotograph, via: string): Promise<SendAnswer>;
  addRecords(records: readonly DepotRecord[], via: string): Promise<SendAnswer>;
}

export type FlushAnswer = "empty" | "later" | "signIn";

const BATCH = 25;

/**
 * Sends what waits: chain by chain, each in its own order, photographs before the record that names them.
 * Sending twice does no harm, since the server knows a record by its id and a photograph by its hash. What
 * the server refuses stays here with the reason and does not hold up the rest.
 */
export async function flushOutbox(db: DeviceDatabase, sender: Sender): Promise<FlushAnswer> {
  const waiting = await db.records.where("state").equals("waiting").toArray();
  const chains = new Map<string, KeptRecord[]>();
  for (const record of waiting) chains.set(record.chain, [...(chains.get(record.chain) ?? []), record]);
  const inOrder = [...chains.values()].sort((a, b) => (a[0]!.id < b[0]!.id ? -1 : 1));
  let worst: FlushAnswer = "empty";
  for (const chain of inOrder) {
    const answer = await flushChain(
      db,
      sender,
      chain.sort((a, b) => a.seq - b.seq),
    );
    if (answer === "later") return "later";
    // another chain may go by another door (the hirer's link)
    if (answer === "signIn") worst = "signIn";
  }
  return worst;
}

/**
 * How a chain leaves: as the signed-in person, or by a hirer's link. A link lapses, and a hirer is given another; what
 * was said by an older one then goes by the newest that this phone has for the same hire.
 */
async function doorOf(db: DeviceDatabase, { via, record }: KeptRecord): Promise<string> {
  if (via === "staff") return via;
  const links = (await db.guides.toArray()).filter(({ guide }) => guide.hireId === record.refs.hireId);
  const newest = links.sort((a, b) => (a.fetchedAt < b.fetchedAt ? 1 : -1))[0];
  return newest === undefined ? via : viaText({ token: newest.token });
}

async function flushChain(
  db: DeviceDatabase,
  sender: Sender,
  chain: readonly KeptRecord[],
): Promise<FlushAnswer> {
  const via = await doorOf(db, chain.at(-1)!);
  for (let start = 0; start < chain.length; start += BATCH) {
    const batch = chain.slice(start, start + BATCH);
    for (const record of batch) {
      const answer = await sendPhotographs(db, sender, record, via);
      if (answer !== "empty") return answer;
    }
    const answer = await sendBatch(db, sender, batch, via);
    if (answer !== "empty") return answer;
  }
  return "empty";
}

async function sendPhotographs(
  db: DeviceDatabase,
  sender: Sender,
  record: KeptRecord,
  via: string,
): Promise<FlushAnswer> {
  for (const sha256 of record.photographs) {
    const photograph = await db.photographs.get(sha256);
    if (photograph?.state !== "waiting") continue;
    const answer = await sender.putPhotograph(photograph, via);
    if (answer.outcome === "later" || answer.outcome === "signIn") return answer.outcome;
    await db.photographs.update(
      sha256,
      answer.outcome === "taken" ? { state: "sent" } : { state: "refused", problem: answer.problem },
    );
  }
  return "empty";
}

/** All at once; where the server refuses, one by one, so that a bad record is found and the good ones arrive. */
async function sendBatch(
  db: DeviceDatabase,
  sender: Sender,
  batch: readonly KeptRecord[],
  via: string,
): Promise<FlushAnswer> {
  const answer = await sender.addRecords(
    batch.map(({ record }) => record),
    via,
  );
  if (answer.outcome === "later" || answer.outcome === "signIn") return answer.outcome;
  if (answer.outcome === "taken") {
    await db.records
      .where("id")
      .anyOf(batch.map(({ id }) => id))
      .modify({ state: "sent" });
    return "empty";
  }
  if (batch.length === 1) {
    await db.records.update(batch[0]!.id, { state: "refused", problem: answer.problem });
    return "empty";
  }
  for (const record of batch) {
    const one = await sendBatch(db, sender, [record], via);
    if (one !== "empty") return one;
  }
  return "empty";
}

/** Puts what was refused back in the outbox, for when the reason is mended. */
export async function tryRefusedAgain(db: DeviceDatabase): Promise<void> {
  await db.transaction("rw", db.records, db.photographs, async () => {
    await db.records.where("state").equals("refused").modify({ state: "waiting" });
    await db.photographs.where("state").equals("refused").modify({ state: "waiting" });
  });
}
