import {
  type ConditionRecord,
  type ConditionResult,
  compareCondition,
  composeWalkRound,
  conditionContentSchema,
  settleHire,
  type VehicleDescription,
} from "@setfair/engine";
import type { DepotRecord } from "@setfair/records";
import { isErased } from "@setfair/records";
import { NO_SETTLEMENT, type QuoteDocument, toJson } from "@setfair/server";
import type { DemoDepot, PutPart } from "./demo-depot.ts";
import type { DemoHire } from "./demo-hire.ts";

interface ToSettle {
  readonly depot: DemoDepot;
  readonly hire: DemoHire;
  readonly hireId: string;
  readonly vehicle: VehicleDescription;
  readonly quote: QuoteDocument;
  readonly put: PutPart;
}

type Classes = Record<string, { class: "fairWear"; reason: string; by: string; at: string }>;

/**
 * Settles a hire of the demo by the settlement room: from its records where it has any, else as a return with
 * nothing otherwise than it left. Marks are put down to fair wear; the deposit is given back.
 */
export async function settleDemoHire({ depot, hire, hireId, vehicle, quote, put }: ToSettle): Promise<void> {
  const { store, by, terms } = depot;
  const at = depot.now.toISOString();
  const result = quote.answer.result;
  if (result === null) return;
  const { differences } = await conditionOf(depot, hireId, vehicle);
  const marks = differences.filter(({ kind }) => kind !== "reading");
  const classes: Classes = Object.fromEntries(
    marks.map(({ id }) => [id, { class: "fairWear", reason: "Small and of everyday use.", by, at }]),
  );
  const input = {
    terms,
    hire: {
      id: hireId,
      from: hire.from,
      to: hire.to,
      returnedAt: hire.to,
      timeZone: depot.timeZone,
      allowanceKm: result.allowanceKm.value,
      fuel: vehicle.fuel,
      ageYears: {},
    },
    differences: structuredClone([...differences]) as Parameters<typeof settleHire>[0]["differences"],
    classes: Object.fromEntries(marks.map(({ id }) => [id, "fairWear" as const])),
    depositPence: result.securityDeposit.pence,
    disputed: [],
    chargedElsewhere: [],
  };
  const answer = settleHire(input);
  const frozen = await store.frozen.add({
    hireId,
    room: "settlement",
    by,
    document: toJson({ input, answer }),
  });
  const isClosed = hire.stage === "closed";
  await put("settlement", {
    ...NO_SETTLEMENT,
    classes,
    answer,
    frozenId: frozen.id,
    frozenAt: at,
    frozenBy: by,
    releasedAt: isClosed ? at : null,
  });
  if (isClosed) await giveBack(depot, hireId, result.securityDeposit.pence, answer.result.total.pence);
}

async function giveBack({ store, by, today }: DemoDepot, hireId: string, held: number, charged: number) {
  const document = toJson({ on: today, method: "card" });
  const add = (kind: "depositCharged" | "depositReleased", pence: number) =>
    store.payments.add({ hireId, kind, currency: "GBP", pence, document, by });
  if (charged > 0) await add("depositCharged", Math.min(held, charged));
  if (held > charged) await add("depositReleased", held - charged);
}

async function conditionOf(
  depot: DemoDepot,
  hireId: string,
  vehicle: VehicleDescription,
): Promise<ConditionResult> {
  const kept = await depot.store.records.list({ hireId, limit: 1000 });
  const records = kept
    .map(({ record }) => record)
    .filter((record): record is DepotRecord => !isErased(record));
  const of = (direction: "out" | "back") =>
    records.filter(({ content }) => content.direction === direction).flatMap(conditionRecord);
  return compareCondition(of("out"), of("back"), composeWalkRound(vehicle, "back")).result;
}

/** The envelope's own words in those of the condition room. */
function conditionRecord({ id, kind, content }: DepotRecord): ConditionRecord[] {
  const { checkId, value, unit, saw, found, expected, part, view, xShare, yShare, markKind, sizeMm } =
    content;
  const said = {
    reading: { kind, checkId, value, unit },
    look: { kind, checkId, outcome: saw },
    count: { kind, checkId, counted: found, expected },
    mark: { kind, part, view, xShare, yShare, markKind, sizeMm, photographs: [] },
  }[kind as string];
  const parsed = conditionContentSchema.safeParse(said);
  return parsed.success ? [{ recordId: id, content: parsed.data }] : [];
}
