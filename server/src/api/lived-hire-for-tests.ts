/** For tests only: a hire from the enquiry to the return, with photographs that are there. All invented. */
import { createHash, randomBytes, randomUUID } from "node:crypto";
import type { WalkRound } from "@setfair/engine";
import type { DepotRecord } from "@setfair/records";
import sharp from "sharp";
import { localOf } from "../desk/local-time.ts";
import { makeDevice, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, DRIVER, LOAD, PARTY, PERIOD, TRIP } from "./samples-for-tests.ts";

const STROKES = [
  [
    { x: 4, y: 30 },
    { x: 30, y: 4 },
    { x: 60, y: 28 },
  ],
];

export interface LivedHire {
  readonly id: string;
  /** photograph of the side as it left, and of the new mark */
  readonly photographs: { readonly out: string; readonly back: string };
  readonly records: { readonly out: readonly DepotRecord[]; readonly back: readonly DepotRecord[] };
}

/** A small picture of its own. */
export const makeJpeg = (widthPx = 640, heightPx = 480): Promise<Buffer> =>
  sharp(randomBytes(64 * 48 * 3), { raw: { width: 64, height: 48, channels: 3 } })
    .resize(widthPx, heightPx)
    .jpeg()
    .toBuffer();

async function must(depot: TestDepot, ...args: Parameters<TestDepot["call"]>) {
  const answer = await depot.call(...args);
  if (answer.status !== 200) throw new Error(`${args.join(" ")}: ${JSON.stringify(answer.body)}`);
  return answer.body;
}

/** Sends a photograph as a tablet does and gives its hash. */
export async function sendPhotograph(depot: TestDepot, hireId: string, jpeg: Buffer): Promise<string> {
  const sha256 = createHash("sha256").update(jpeg).digest("hex");
  const { statusCode, body } = await depot.app.inject({
    method: "PUT",
    url: `/api/photos/${sha256}?hire=${hireId}`,
    headers: { cookie: depot.cookie("yard"), "content-type": "image/jpeg" },
    payload: jpeg,
  });
  if (statusCode !== 200) throw new Error(body);
  return sha256;
}

const signature = (purpose: string, role: "hirer" | "yard", records: readonly DepotRecord[]) => ({
  purpose,
  records: records.map(({ id, hash }) => ({ id, hash })),
  signer: { name: role === "hirer" ? "Ingrid Example" : "Yo Yard" },
  role,
  shown: { text: `I have seen the vehicle (${purpose}).`, language: "en-GB" },
  strokes: STROKES,
});

type Make = ReturnType<typeof makeDevice>;
export interface Also {
  /** more records of a round, before it is signed */
  readonly also?: (make: Make, direction: "out" | "back", photograph: string) => readonly DepotRecord[];
  /** checks that the usual round leaves out */
  readonly without?: readonly string[];
  /** how much later than due it comes back, minutes */
  readonly lateMinutes?: number;
}

interface Round extends Also {
  readonly hireId: string;
  readonly direction: "out" | "back";
  readonly walkRound: WalkRound;
  readonly photograph: string;
}

/** Every check answered, one photograph of the nearside, and back one new mark there. */
function walk(depot: TestDepot, round: Round): DepotRecord[] {
  const { hireId, direction, walkRound, photograph, also, without = [] } = round;
  const refs = { hireId, vehicleId: "pv2" };
  const make = makeDevice(`tablet-${direction}`, `${hireId}.${direction}`, refs, depot.context.now);
  const records = [make("walkStarted", { direction })];
  for (const check of walkRound.steps.flatMap(({ checks }) => checks)) {
    if (without.includes(check.id)) continue;
    const about = { about: check.id, checkId: check.id, direction };
    if (check.kind === "reading" && check.reading) {
      const value = Math.min(check.reading.max, Math.max(check.reading.min, 12));
      records.push(make("reading", { ...about, value, unit: check.reading.unit }));
    } else if (check.kind === "count")
      records.push(make("count", { ...about, found: check.expected ?? 1, expected: check.expected ?? 1 }));
    else records.push(make("look", { ...about, saw: "same" }));
  }
  const side = { about: "view.nearside", view: "nearside", direction };
  records.push(make("photograph", { ...side, sha256: photograph }));
  if (direction === "back")
    records.push(
      make("mark", {
        about: "body.nearside",
        part: "body.nearside",
        view: "nearside",
        xShare: 0.85,
        yShare: 0.4,
        markKind: "scratch",
        sizeMm: 60,
        direction,
        photographs: [photograph],
      }),
    );
  records.push(...(also?.(make, direction, photograph) ?? []));
  const seen = [...records];
  if (direction === "out") {
    const briefed = make("briefed", { about: "leisureBattery.panel", direction });
    records.push(briefed, make("signature", signature("agreement", "hirer", seen)));
    records.push(make("signature", signature("briefing", "hirer", [briefed])));
  }
  for (const role of ["hirer", "yard"] as const)
    records.push(make("signature", signature("condition", role, seen)));
  records.push(make("walkFinished", { direction }));
  return records;
}

/** A round of today as a tablet would send it; its photograph is there already, its records are not. */
export async function makeRound(
  depot: TestDepot,
  id: string,
  direction: "out" | "back",
  { on, ...more }: Also & { readonly on: string },
) {
  const photograph = await sendPhotograph(depot, id, await makeJpeg());
  const { jobs } = await must(depot, "yard", "GET", `/yard/jobs?date=${on}`);
  const job = jobs.find((each: { id: string }) => each.id === `${id}.${direction}`);
  const records = walk(depot, { hireId: id, direction, walkRound: job.walkRound, photograph, ...more });
  return { photograph, records };
}

async function walkRound(...round: Parameters<typeof makeRound>) {
  const made = await makeRound(...round);
  await must(round[0], "yard", "POST", "/records", { records: made.records });
  return made;
}

/** Books a hire of the vehicle pv2, paid, with drivers, trip and load: nothing is missing but the round and its signatures. */
export async function bookHire(depot: TestDepot): Promise<string> {
  const call = (...args: Parameters<TestDepot["call"]>) => must(depot, ...args);
  const asked = { customer: CUSTOMER, party: PARTY, ...PERIOD, vehicleId: "pv2" };
  const { id } = (await call("desk", "POST", "/hires", asked)).hire;
  await call("desk", "POST", `/hires/${id}/quote`, { extras: [], accept: true });
  const { quote, money } = await call("desk", "POST", `/hires/${id}/book`);
  await call("desk", "PUT", `/hires/${id}/drivers`, { drivers: [DRIVER] });
  await call("desk", "PUT", `/hires/${id}/trip`, TRIP);
  await call("desk", "PUT", `/hires/${id}/load`, LOAD);
  for (const [kind, pence] of [
    ["payment", quote.total.pence],
    ["depositHeld", money.depositDue.pence],
  ])
    await call("desk", "POST", `/hires/${id}/payments`, {
      id: `pay-${kind}`,
      kind,
      pence,
      on: "2026-07-01",
      method: "card",
    });
  return id;
}

/** Lives one hire of the vehicle pv2 until it is back and walked round; nothing is decided yet. */
export async function liveHire(depot: TestDepot, more: Also = {}): Promise<LivedHire> {
  const call = (...args: Parameters<TestDepot["call"]>) => must(depot, ...args);
  const id = await bookHire(depot);
  depot.at("2026-07-03T10:30:00.000Z");
  const out = await walkRound(depot, id, "out", { on: "2026-07-03", ...more });
  depot.at("2026-07-03T11:20:00.000Z");
  await call("desk", "POST", `/hires/${id}/keys`);
  const dueUtc = Date.parse("2026-07-06T09:00:00.000Z") + (more.lateMinutes ?? 0) * 60_000;
  depot.at(new Date(dueUtc + 5 * 60_000).toISOString());
  const at = localOf(new Date(dueUtc).toISOString(), "Europe/London");
  await call("desk", "POST", `/hires/${id}/return`, { at });
  const back = await walkRound(depot, id, "back", { on: "2026-07-06", ...more });
  return {
    id,
    photographs: { out: out.photograph, back: back.photograph },
    records: { out: out.records, back: back.records },
  };
}

/** Gives the deposit of a settled hire back and has the hirer pay what is left to pay: nothing of it is open then. */
export async function settleSums(depot: TestDepot, id: string): Promise<void> {
  const { depositHeld } = await must(depot, "desk", "GET", `/hires/${id}/money`);
  if (depositHeld.pence > 0) await must(depot, "desk", "POST", `/hires/${id}/deposit-release`);
  const { owed } = await must(depot, "desk", "GET", `/hires/${id}/money`);
  const on = depot.context.now().toISOString().slice(0, 10);
  const paid = { id: randomUUID(), kind: "payment", pence: owed.pence, on, method: "cash" };
  if (owed.pence > 0) await must(depot, "desk", "POST", `/hires/${id}/payments`, paid);
}
