import {
  type ConditionRecord,
  type ConditionResult,
  chargedBefore,
  compareCondition,
  composeWalkRound,
  isMark,
  type MarkClass,
  type RoomAnswer,
  type Settlement,
  type SettlementInput,
  settleHire,
  type WalkRound,
} from "@setfair/engine";
import { Refusal } from "../api/refusal.ts";
import type { Store } from "../store/types.ts";
import { departureOf } from "./as-it-left.ts";
import { asDocument, NO_SETTLEMENT, type SettlementDocument } from "./documents.ts";
import { type HireData, partOf } from "./hire-data.ts";
import { dateOf, localOf } from "./local-time.ts";
import { mendedMarks } from "./mended-marks.ts";
import { moneyOfHire } from "./money-of-hire.ts";
import { withAnswers } from "./questions.ts";
import { conditionRecords, directionOf, wholeRecords } from "./record-facts.ts";
import { lateOf } from "./second-look.ts";
import { entriesOfHire, withEntries } from "./settlement-entries.ts";

/** What is not as it left. Marks known from earlier hires count as seen on the way out, to the hirer's good. */
export async function conditionOf(store: Store, data: HireData): Promise<RoomAnswer<ConditionResult>> {
  if (data.vehicle === null)
    throw new Refusal("missing", { problems: [{ path: "vehicle", expected: "a vehicle on this hire" }] });
  const earlier = await earlierMarks(store, data);
  const records = withAnswers(data.records);
  return compareCondition(
    [...conditionRecords(records, "out"), ...earlier],
    conditionRecords(records, "back"),
    roundBack(data),
  );
}

function roundBack({ vehicle }: HireData): WalkRound {
  if (vehicle === null) throw new Error("roundBack: no vehicle on this hire");
  return composeWalkRound(vehicle.document.description, "back");
}

/** Marks recorded on this vehicle in other hires before this one went out. */
export async function earlierMarks(store: Store, data: HireData): Promise<readonly ConditionRecord[]> {
  if (data.row.vehicleId === null) return [];
  const kept = await store.records.list({ vehicleId: data.row.vehicleId, kind: "mark" });
  const out = keysOut(data);
  // a clock may be wrong and a tablet may send late: either time that says "before" counts, to the hirer's good
  const others = kept
    .filter(({ record, receipt }) => record.deviceTime < out || receipt.at < out)
    .map(({ record }) => record)
    .filter(({ refs }) => refs.hireId !== data.row.id);
  const mended = others.length === 0 ? null : await mendedMarks(store, data.row.vehicleId);
  return (["out", "back"] as const).flatMap((direction) =>
    // what was repaired before it went out is not there any more
    conditionRecords(others, direction).filter(
      ({ recordId }) => (mended?.get(recordId) ?? "9999") > dateOf(out),
    ),
  );
}

const keysOut = (data: HireData) => partOf(data, "readiness")?.keysOutAt ?? data.now;

/** Record ids that a settled hire of this vehicle was charged for already, and marks of this hire that are those again. */
async function chargedElsewhere(
  store: Store,
  data: HireData,
  { differences }: ConditionResult,
): Promise<string[]> {
  if (data.row.vehicleId === null) return [];
  const rows = await store.hires.all({ vehicleId: data.row.vehicleId, stages: ["settled", "closed"] });
  const others = rows.filter(({ id }) => id !== data.row.id);
  const parts = await store.hires.partsOf(
    others.map(({ id }) => id),
    ["settlement"],
  );
  const charged = new Set(
    [...parts.values()].flatMap(({ settlement }) => {
      if (settlement === undefined) return [];
      const { standing, answer } = asDocument<SettlementDocument>(settlement.document);
      const lines = (standing ?? answer?.result)?.lines ?? [];
      return lines.filter(({ amount }) => amount.pence > 0).flatMap(({ evidence }) => evidence.records);
    }),
  );
  if (charged.size === 0) return [];
  const before = (await earlierMarks(store, data))
    .filter(isMark)
    .filter(({ recordId }) => charged.has(recordId));
  const found = differences.flatMap(({ kind, backRecords }) => (kind === "mark" ? backRecords : []));
  const now = conditionRecords(data.records, "back")
    .filter(isMark)
    .filter(({ recordId }) => found.includes(recordId));
  return [...charged, ...chargedBefore(now, before)];
}

const earlier = (a: string, b: string): string => (a < b ? a : b);

/** What the settlement room is asked for this hire. */
export async function settlementInput(
  store: Store,
  data: HireData,
  condition: ConditionResult,
): Promise<SettlementInput> {
  const quote = partOf(data, "quote");
  const returnedAt = partOf(data, "readiness")?.keysBackAt ?? null;
  if (
    data.terms === null ||
    quote?.answer.result === null ||
    quote === null ||
    returnedAt === null ||
    data.vehicle === null
  ) {
    throw new Refusal("missing", {
      problems: [
        { path: "hire", expected: "a vehicle, an accepted quote, the terms and the time of return" },
      ],
    });
  }
  const { description } = data.vehicle.document;
  const classes = Object.entries((partOf(data, "settlement") ?? NO_SETTLEMENT).classes);
  return {
    terms: data.terms.document,
    hire: {
      id: data.row.id,
      // keys may go, and come back, before the hour that was booked
      from: earlier(data.from, localOf(returnedAt, data.depot.timeZone)),
      to: data.to,
      returnedAt: localOf(returnedAt, data.depot.timeZone),
      timeZone: data.depot.timeZone,
      returnRecords: returnRecords(data),
      allowanceKm: quote.answer.result.allowanceKm.value,
      fuel: description.fuel,
      ...specNumber(data, "fuel", "tankLitres", "fuelTankLitres"),
      ...specNumber(data, "def", "litresPer1000Km", "defLitresPer1000Km"),
      ageYears: agesOf(data),
    },
    differences: structuredClone([...condition.differences]) as SettlementInput["differences"],
    classes: Object.fromEntries(classes.map(([id, decided]): [string, MarkClass] => [id, decided.class])),
    depositPence: Math.max(0, moneyOfHire(data).depositHeld.pence),
    disputed: [],
    departure: departureOf(condition.differences, data.records),
    incidents: Object.fromEntries(
      classes.flatMap(([id, { incident }]) => (incident == null ? [] : [[id, incident]])),
    ),
    decidedOn: Object.fromEntries(
      classes.map(([id, { at }]) => [id, dateOf(localOf(at, data.depot.timeZone))]),
    ),
    chargedElsewhere: await chargedElsewhere(store, data, condition),
    foundLate: [...lateOf(data, condition, roundBack(data))],
  };
}

/** What shows when it came back: the beginning of the walk-round back. */
const returnRecords = ({ records }: HireData): string[] =>
  wholeRecords(records)
    .filter((record) => record.kind === "walkStarted" && directionOf(record) === "back")
    .map(({ id }) => id);

/** A number of the spec of a fitted system, under the settlement's own name. */
function specNumber<As extends "fuelTankLitres" | "defLitresPer1000Km">(
  data: HireData,
  kind: string,
  field: string,
  as: As,
) {
  const value = data.vehicle?.document.description.systems.find((system) => system.kind === kind)?.spec[
    field
  ];
  return (typeof value === "number" && value > 0 ? { [as]: value } : {}) as { readonly [K in As]?: number };
}

/** Every part is taken as old as the vehicle, which nobody disputes; a younger part is the firm's to show. */
function agesOf(data: HireData): Record<string, number> {
  const { terms, vehicle } = data;
  if (terms === null || vehicle === null) return {};
  const years =
    (Date.parse(data.to.slice(0, 10)) - Date.parse(vehicle.document.description.firstRegistered)) /
    (365.25 * 86_400_000);
  const age = Math.min(60, Math.max(0, years));
  const charges = [
    ...Object.keys(terms.document.tariff.kit),
    ...terms.document.tariff.damage.map(({ of }) => of),
  ];
  return Object.fromEntries(charges.map((charge) => [charge, age]));
}

/** What the settlement stands on now: as it was frozen, else as it would be, with all that was said and paid since. */
export async function inputNow(store: Store, data: HireData): Promise<SettlementInput | null> {
  const entries = await entriesOfHire(store, data);
  const kept = partOf(data, "settlement");
  if (kept?.answer) {
    const frozen = data.frozen.find(({ id }) => id === kept.frozenId);
    const input = frozen === undefined ? undefined : asDocument<FrozenSettlement>(frozen.document).input;
    if (input === undefined) return null;
    // one that was shown before losses had to be told has none, and its hourly charge stays as it was shown
    const lateAtRate = input.lateLosses === undefined;
    return { ...withEntries(input, entries), lateAtRate, atMost: shownPence(kept.answer.result) };
  }
  const condition = await conditionOf(store, data);
  return withEntries(await settlementInput(store, data, condition.result), entries);
}
/** Lines as they were shown, in pence; one that waited for its cost or for a second signature is not bound yet. */
const shownPence = ({ lines }: Settlement): Record<string, number> =>
  Object.fromEntries(
    lines
      .filter(({ because }) => because !== "awaitsCost" && because !== "needsSecondSignature")
      .map(({ id, amount }) => [id, amount.pence]),
  );

interface FrozenSettlement {
  readonly input?: SettlementInput;
}

/** The settlement as it stands: what was frozen as shown, changed only by what was disputed, paid or taken back since. */
export async function settlementOf(store: Store, data: HireData): Promise<RoomAnswer<Settlement>> {
  const kept = partOf(data, "settlement");
  const input = await inputNow(store, data);
  if (input !== null) return settleHire(input);
  if (kept?.answer) return kept.answer;
  throw new Error("settlementOf: neither an input nor a frozen answer");
}
