import { conditionOf, settlementOf } from "../../desk/after-hire.ts";
import { custodyOf } from "../../desk/custody.ts";
import { type HireData, partOf, readHireData } from "../../desk/hire-data.ts";
import { instantOf, localOf } from "../../desk/local-time.ts";
import { questionsAnswer, questionsOut } from "../../desk/questions.ts";
import { directionOf, wholeRecords } from "../../desk/record-facts.ts";
import { requireStage } from "../../desk/require-stage.ts";
import { addEntry, isThere } from "../../money/change-money.ts";
import { entriesOf } from "../../money/hire-money.ts";
import type { Store } from "../../store/types.ts";
import type { Call, Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { BACK, keepEntry, type NewEntry, requireMark, stateOf } from "./settlement.ts";

type Body = Call<"noteOnSettlement">["body"];
type Of<Kind extends Body["kind"]> = Extract<Body, { kind: Kind }>;
type Also = (inner: Store) => Promise<void>;
interface Kept {
  readonly entry: NewEntry;
  readonly also?: Also;
}

async function requirePhotographs(store: Store, hashes: readonly string[], field: string): Promise<void> {
  for (const [k, hash] of hashes.entries())
    if ((await store.photographs.get(hash))?.removed !== null)
      throw badField(`${field}.${k}`, "expected a photograph that has arrived and was not removed");
}

/** Before the settlement is shown; what was shown is not made dearer. */
function requireUnshown(data: HireData): void {
  if ((partOf(data, "settlement")?.frozenAt ?? null) !== null) throw new Refusal("frozen");
}

async function onDifference(store: Store, data: HireData, body: Of<"age" | "awaiting">): Promise<Kept> {
  requireUnshown(data);
  await requireMark(store, data, body.differenceId);
  const { kind, differenceId, ...document } = body;
  return { entry: { kind, about: differenceId, document } };
}

async function cleaning(store: Store, data: HireData, body: Of<"cleaning">): Promise<Kept> {
  requireUnshown(data);
  await requirePhotographs(store, body.photographs, "photographs");
  const { kind, ...document } = body;
  return { entry: { kind, about: "cleaning", document } };
}

/** What a late return really cost, before the settlement is shown; there is nothing to lose by a return in time. */
async function loss(store: Store, data: HireData, body: Of<"loss">): Promise<Kept> {
  requireUnshown(data);
  const { result } = await settlementOf(store, data);
  if (!result.lines.some(({ code }) => code === "late"))
    throw badField("kind", "expected a hire that came back later than the grace of its terms");
  await requirePhotographs(store, body.photographs, "photographs");
  const { kind, ...document } = body;
  return { entry: { kind, about: "late", document } };
}

/** A late claim rests on photographs of both sides: as it was found, and as the place left on this hire. */
async function claim(store: Store, data: HireData, body: Of<"claim">): Promise<Kept> {
  if (data.row.stage === "returned")
    throw badField("kind", "expected a settlement that was shown: before that it is a mark");
  await requirePhotographs(store, body.photographs, "photographs");
  const out = new Set(
    wholeRecords(data.records)
      .filter((record) => record.kind === "photograph" && directionOf(record) === "out")
      .map(({ content }) => String(content.sha256)),
  );
  body.departure.forEach((hash, k) => {
    if (!out.has(hash))
      throw badField(`departure.${k}`, "expected a photograph of this hire's walk-round out");
  });
  const { kind, partsPence, labourPence, ...document } = body;
  return { entry: { kind, about: body.about, document: { ...document, cost: { partsPence, labourPence } } } };
}

/** A repair of a mark: from then on the place is as new, and a mark there is another one. */
async function mended(store: Store, data: HireData, body: Of<"mended">): Promise<Kept> {
  await requireMark(store, data, body.differenceId);
  if (body.on > data.today) throw badField("on", `expected a day up to ${data.today}`);
  return { entry: { kind: "mended", about: body.differenceId, document: { on: body.on, who: body.who } } };
}

/** A fine or a toll is passed on only for a time in which this hirer had the keys, with its notice and the stated fee. */
async function notice(call: Call<"noteOnSettlement">, data: HireData, body: Of<"notice">): Promise<Kept> {
  const { keysOutAt = null, keysBackAt = null } = partOf(data, "readiness") ?? {};
  const { timeZone } = data.depot;
  const at = Date.parse(instantOf(body.at, timeZone, "at"));
  const isWithin =
    keysOutAt !== null && keysBackAt !== null && at >= Date.parse(keysOutAt) && at < Date.parse(keysBackAt);
  if (!isWithin) {
    const said = (instant: string | null) =>
      instant === null ? "–" : localOf(instant, timeZone).replace("T", " ");
    throw badField("at", `expected a time with this hirer, ${said(keysOutAt)} to ${said(keysBackAt)}`);
  }
  const most = data.terms?.document.tariff.noticeFeePence ?? 0;
  if (body.feePence > most)
    throw badField("feePence", `expected at most ${most} pence, as the terms of this hire state`);
  await requirePhotographs(call.signed.store, body.photographs, "photographs");
  const { kind, ...document } = body;
  const base = { on: data.today, route: null, of: null, note: `${body.issuer} ${body.reference}` };
  return {
    entry: { kind, about: body.reference, document },
    also: async (store) => {
      await store.payments.lock(data.row.id);
      const open = { store, data, by: call.signed.account.id };
      const charge = { ...base, kind: "charge" as const };
      await addEntry(open, { ...charge, id: body.id, line: body.what, pence: body.pence });
      if (body.feePence > 0)
        await addEntry(open, {
          ...charge,
          id: `${body.id}-fee`,
          line: "administration",
          pence: body.feePence,
        });
    },
  };
}

function keptOf(call: Call<"noteOnSettlement">, data: HireData): Promise<Kept> | Kept {
  const { body, signed } = call;
  switch (body.kind) {
    case "cleaning":
      return cleaning(signed.store, data, body);
    case "loss":
      return loss(signed.store, data, body);
    case "age":
    case "awaiting":
      return onDifference(signed.store, data, body);
    case "claim":
      return claim(signed.store, data, body);
    case "mended":
      return mended(signed.store, data, body);
    case "notice":
      return notice(call, data, body);
    case "file": {
      const { kind, ...document } = body;
      return { entry: { kind, about: body.reference, document } };
    }
  }
}

export const settlementNoteHandlers = {
  async noteOnSettlement(call) {
    const { context, signed, params, body } = call;
    const data = await readHireData(signed.store, params.id, context.now());
    requireStage(data, ...BACK);
    // a notice that is sent twice is charged once
    if (body.kind === "notice" && isThere(entriesOf(data.payments), { ...body, kind: "charge" }))
      return stateOf(signed.store, data);
    const { entry, also } = await keptOf(call, data);
    return keepEntry(context, signed, params.id, entry, also);
  },

  /** Of every stage: before the keys for the round out, after the return for both. */
  async readQuestions({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const isBack = BACK.includes(data.row.stage);
    const asked = isBack ? (await conditionOf(signed.store, data)).result.questions : questionsOut(data);
    return { questions: questionsAnswer(data.records, asked) };
  },

  async readCustody({ signed, params }) {
    if ((await signed.store.vehicles.versions(params.id)).length === 0) throw new Refusal("notFound");
    return { lines: [...(await custodyOf(signed.store, params.id))] };
  },
} satisfies Partial<Handlers>;
