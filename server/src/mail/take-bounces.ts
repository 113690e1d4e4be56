import { mkdir, readdir, readFile, rename, stat } from "node:fs/promises";
import { join } from "node:path";
import type { Database } from "../store/types.ts";
import { readDeliveryReport } from "./read-delivery-report.ts";

/** A report with the whole message behind it; a larger file is nobody's report. */
const LARGEST_BYTES = 5_000_000;
const MESSAGE_ID = /^([0-9a-f]{8}-[0-9a-f-]{27})@/i;

/** Marks the message as come back, in whichever depot it is; false where it is none of ours, or not one that was sent. */
async function mark(database: Database, messageId: string, reason: string): Promise<boolean> {
  const id = MESSAGE_ID.exec(messageId)?.[1];
  if (id === undefined) return false;
  for (const depot of await database.system.depots()) {
    const store = database.storeFor({ firmId: depot.firmId, depotId: depot.id });
    const message = await store.messages.get(id);
    if (message === null) continue;
    const isMarked = await store.messages.move(id, ["sent", "unsure"], { state: "bounced", reason });
    if (isMarked)
      await store.audit.add({
        by: "system",
        act: "hire.messageChanged",
        about: message.hireId,
        document: { state: "bounced" },
      });
    return isMarked;
  }
  return false;
}

/**
 * Reads what a mail server put into a Maildir folder: reports of messages that could not be delivered are taken
 * down at the message. Each file goes from `new` to `cur`, as a mail reader would have it; nothing is deleted.
 * @returns how many messages came back
 */
export async function takeBounces(database: Database, folder: string): Promise<number> {
  const [fresh, seen] = [join(folder, "new"), join(folder, "cur")];
  await mkdir(seen, { recursive: true });
  let taken = 0;
  for (const name of (await readdir(fresh)).sort()) {
    const file = join(fresh, name);
    const { size } = await stat(file);
    const report = size > LARGEST_BYTES ? null : readDeliveryReport(await readFile(file, "latin1"));
    const isOurs = report !== null && (await mark(database, report.messageId, report.reason));
    if (isOurs) taken++;
    await rename(file, join(seen, `${name}:2,${isOurs ? "S" : ""}`));
  }
  return taken;
}
