/** For tests only: each way of ending a server in the middle, and what must be found after. */
import { createHash, randomUUID } from "node:crypto";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { makeJpeg, makeRound } from "../api/lived-hire-for-tests.ts";
import { CUSTOMER, PARTY } from "../api/samples-for-tests.ts";
import { openFiles } from "../files/open-files.ts";
import { ERASURES_FILE } from "../store/open-database.ts";
import type { Erasure } from "../store/types.ts";
import {
  ask,
  askAndKill,
  LEASE_MINUTES,
  type Life,
  mustBe,
  mustVerify,
  putPart,
  until,
} from "./served-life-for-tests.ts";

const hashOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");

/** In the middle of a part, and around the end of the last one: what came stays, and the whole is kept unaltered. */
export async function killUpload(life: Life): Promise<string> {
  const bytes = await makeJpeg(3000, 2200);
  const sha256 = hashOf(bytes);
  const files = openFiles({ dataFolder: life.depot.dataFolder });
  const { scope } = life.depot;
  await life.server.url();
  const sending = putPart(life, { sha256, bytes, from: 0, to: bytes.length }, 8);
  await sleep(life.random() * 8 * (bytes.length / 65_536));
  await life.restart();
  await sending;
  const first = await files.status(scope, sha256);
  mustBe("no more is there than was sent", first.received <= bytes.length, first);
  if (first.state !== "kept") {
    const rest = putPart(life, { sha256, bytes, from: first.received, to: bytes.length }, 0);
    await sleep(life.random() * 60);
    await life.restart();
    await rest;
  }
  const second = await files.status(scope, sha256);
  mustBe("what came is not lost", second.received >= first.received || second.state === "kept", second);
  const from = second.state === "kept" ? 0 : second.received;
  const status = await putPart(life, { sha256, bytes, from, to: bytes.length }, 0);
  mustBe("the rest is taken", status === 200, status);
  const found = await files.open(scope, sha256, "original");
  const chunks: Buffer[] = [];
  if (found !== null) for await (const chunk of found.stream) chunks.push(chunk as Buffer);
  mustBe("the photograph is whole and unaltered", hashOf(Buffer.concat(chunks)) === sha256);
  mustBe("the photograph is known", (await life.depot.store.photographs.get(sha256))?.bytes === bytes.length);
  return `${first.state} at ${first.received} of ${bytes.length} bytes, then ${second.state}`;
}

/** While a signed walk-round arrives: all of its records are there or none, and sent again they are there once. */
export async function killRecords(life: Life): Promise<string> {
  const { records } = await makeRound(life.depot, life.hireId, "out", { on: "2026-07-03" });
  const here = async () => (await life.depot.store.records.list({ hireId: life.hireId })).length;
  const before = await here();
  const answered = await askAndKill(life, ["yard", "POST", "/records", { records }], 250);
  const came = (await here()) - before;
  mustBe("all of a walk-round or nothing of it", came === 0 || came === records.length, came);
  mustBe("what was answered is kept", !answered || came === records.length, came);
  const again = await ask(life, "yard", "POST", "/records", { records });
  mustBe("it is taken again", again.status === 200, again.body);
  mustBe("each record is there once", (await here()) - before === records.length, await here());
  await mustVerify(life);
  return `${came} of ${records.length} records`;
}

/** While the handover is sealed: everything is frozen and the hire is out, or nothing is and it is not. */
export async function killKeys(life: Life): Promise<string> {
  const { store } = life.depot;
  const path = `/hires/${life.hireId}/keys`;
  const state = async () => ({
    stage: (await store.hires.get(life.hireId))?.stage,
    rooms: (await store.frozen.ofHire(life.hireId)).map(({ room }) => room).sort(),
    chained: (await store.records.list({ hireId: life.hireId, kind: "frozen" })).length,
    out: (await store.hires.part(life.hireId, "readiness"))?.document.keysOutAt !== undefined,
  });
  const before = await state();
  const answered = await askAndKill(life, ["desk", "POST", path], 500);
  const found = await state();
  const isOut = found.stage === "onHire";
  mustBe("what was answered is kept", !answered || isOut, found);
  if (!isOut) mustBe("nothing is half sealed", JSON.stringify(found) === JSON.stringify(before), found);
  const again = await ask(life, "desk", "POST", path);
  mustBe("it is done once", again.status === (isOut ? 409 : 200), again.body);
  const sealed = await state();
  mustBe("the hire is out", sealed.stage === "onHire" && sealed.out, sealed);
  mustBe("each room is frozen once", new Set(sealed.rooms).size === sealed.rooms.length, sealed);
  mustBe("what is frozen stands in the chain", sealed.chained === sealed.rooms.length, sealed);
  mustBe(
    "the glass and the briefing are frozen",
    sealed.rooms.includes("glass") && sealed.rooms.includes("briefing"),
    sealed,
  );
  await mustVerify(life);
  return `${isOut ? "sealed" : "not begun"}, then ${sealed.rooms.length} rooms frozen once`;
}

/** While a mail goes: it is taken at most once, and what is not known is said to be so. */
export async function killMail(life: Life): Promise<string> {
  const { store } = life.depot;
  const arriving = life.mailbox.arriving();
  const written = await ask(life, "desk", "POST", `/hires/${life.hireId}/messages`, {
    id: randomUUID(),
    kind: "booking",
  });
  mustBe("the message is written", written.status === 200, written.body);
  const { id } = written.body;
  await arriving;
  await sleep(life.random() * 350);
  await life.restart(LEASE_MINUTES);
  await until(
    "the message is settled",
    () => store.messages.get(id),
    (message) => message?.state === "sent" || message?.state === "unsure",
  );
  const message = await store.messages.get(id);
  const taken = life.mailbox.taken.filter((one) => one.startsWith(id)).length;
  mustBe("a mail is taken at most once", taken <= 1, taken);
  mustBe("what is said to be sent was taken", message?.state !== "sent" || taken === 1, message?.state);
  return `${message?.state}, taken ${taken} times`;
}

/** While a person is erased: they are there or gone everywhere, the list holds it, and the photograph follows. */
export async function killErasure(life: Life): Promise<string> {
  const { depot } = life;
  const asked = { from: "2026-09-03T12:15", to: "2026-09-06T10:00", vehicleId: "pv2-b" };
  const customer = { ...CUSTOMER, name: "Barnaby Elsewhere" };
  const { hire } = (await depot.call("desk", "POST", "/hires", { customer, party: PARTY, ...asked })).body;
  const bytes = await makeJpeg();
  const sha256 = hashOf(bytes);
  mustBe(
    "the photograph is taken",
    (await putPart({ ...life, hireId: hire.id }, { sha256, bytes, from: 0, to: bytes.length }, 0)) === 200,
  );
  await depot.call("desk", "POST", `/hires/${hire.id}/end`, { as: "lost", reason: "changed their mind" });
  const path = `/hires/${hire.id}/customer/erasure`;
  const answered = await askAndKill(life, ["manager", "POST", path], 150, LEASE_MINUTES);
  const row = await depot.store.hires.get(hire.id);
  const person = await depot.store.customers.get(row?.customerId ?? "");
  const isGone = person?.erasedAt !== null;
  mustBe("what was answered is kept", !answered || isGone);
  mustBe("the name is gone with the person", (row?.customerName === "") === isGone, row);
  if (!isGone) mustBe("it is taken again", (await ask(life, "manager", "POST", path)).status === 200);
  const files = openFiles({ dataFolder: depot.dataFolder });
  await until(
    "the photograph is gone",
    () => files.status(depot.scope, sha256),
    ({ state }) => state === "absent",
  );
  await mustList(life);
  await mustVerify(life);
  return `${isGone ? "erased" : "not begun"}, then erased once`;
}

/** The list beside the database holds every erasure that the database holds, in whole lines. */
async function mustList({ depot }: Life): Promise<void> {
  const text = await readFile(join(depot.dataFolder, ERASURES_FILE), "utf8");
  const listed = text
    .trim()
    .split("\n")
    .map((line) => (JSON.parse(line) as Erasure).targetId);
  for (const { targetId } of await depot.context.database.system.erasures())
    mustBe("the list holds every erasure", listed.includes(targetId), targetId);
}
