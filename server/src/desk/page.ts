import { gbp, type Settlement, withRules } from "@setfair/engine";
import type { z } from "zod";
import { Refusal } from "../api/refusal.ts";
import type { hirePageSchema } from "../api/schemas/hires.ts";
import { depositNow } from "../money/deposit-now.ts";
import { readHireMoney } from "../money/hire-money.ts";
import { paymentsAnswer } from "../money/hire-money-answer.ts";
import type { Store } from "../store/types.ts";
import { conditionOf, settlementOf } from "./after-hire.ts";
import { asItLeft } from "./as-it-left.ts";
import {
  asDocument,
  type CustomerDocument,
  NO_SETTLEMENT,
  type QuoteDocument,
  type SettlementDocument,
  versionOfEntry,
} from "./documents.ts";
import { forecastOf } from "./forecast.ts";
import { loadAnswer } from "./gates.ts";
import { glassAnswer, glassOf, isBeforeKeys, keepGlass, plainFinding } from "./glass.ts";
import { driversOf, type HireData, partOf, readHireData } from "./hire-data.ts";
import { dateOf } from "./local-time.ts";
import { moneyOfHire } from "./money-of-hire.ts";
import { accountNames } from "./names.ts";
import { missingSignatures } from "./paper-gates.ts";
import { panelReadings, signaturesOf, walkFacts } from "./record-facts.ts";
import { entriesOfHire, promisedOn } from "./settlement-entries.ts";
import { onTheRoad, summaryOf } from "./summary.ts";
import { waitsOf } from "./waits.ts";

export type HirePage = z.input<typeof hirePageSchema>;
const AFTER: readonly string[] = ["returned", "settled", "closed"];

/** The whole hire as one answer. Everything unsigned is computed now; what was frozen stays as shown. */
export async function hirePage(store: Store, id: string, now: Date): Promise<HirePage> {
  const data = await readHireData(store, id, now);
  const party = partOf(data, "party") ?? partyOfNobody(data);
  if (party === null) throw new Refusal("notFound");
  const forecast = await forecastOf(store, data);
  const glass = glassOf(data, forecast?.answer ?? null);
  const nameOf = await accountNames(store);
  return {
    hire: summaryOf(data, glass),
    version: data.row.version,
    versions: versionsOf(data),
    wishes: partOf(data, "contact")?.wishes ?? null,
    ...enquiryAnswer(data),
    ofTheDay: isOfTheDay(data),
    customer: customerAnswer(data),
    party,
    vehicle: vehicleAnswer(data),
    driverNames: driversOf(data).map(({ id: driverId, name }) => ({ id: driverId, name })),
    drivers: [...driversOf(data)],
    trip: partOf(data, "trip"),
    load: loadState(data),
    forecastHash: forecast?.inputHash ?? null,
    quote: quoteState(data),
    payments: paymentsAnswer(data, nameOf),
    money: moneyOfHire(data),
    glass: glassAnswer(data, glass, nameOf),
    conditions: isBeforeKeys(data.row.stage)
      ? withRules(data.ruleBook, () => glass.conditions.map(plainFinding))
      : await frozenConditions(data),
    records: await recordsAnswer(store, data),
    signatures: signaturesOf(data.records).map(({ purpose, direction: _, ...signed }) => ({
      what: purpose,
      ...signed,
    })),
    signaturesNeeded: isBeforeKeys(data.row.stage) ? [...missingSignatures(data)] : [],
    waits: [...waitsOf(data, glass)],
    onTheRoad: [...onTheRoad(data, glass)],
    ...(await afterAnswer(store, data, nameOf)),
    hirerLink: await linkAnswer(store, data),
    history: await historyAnswer(store, data, nameOf),
  };
}

/** The page after a change; where the glass moved, that is kept for the brass hand. */
export async function pageAfterChange(store: Store, id: string, now: Date, by: string): Promise<HirePage> {
  const data = await readHireData(store, id, now);
  const forecast = await forecastOf(store, data);
  await keepGlass(store, data, glassOf(data, forecast?.answer ?? null), by);
  return hirePage(store, id, now);
}

/** Of a hire whose hirer was erased its money and papers are still to be read; who travelled is not known any more. */
const partyOfNobody = ({ customer }: HireData): HirePage["party"] | null =>
  customer !== null && customer.erasedAt !== null
    ? { travellers: [{ id: "t1", kind: "adult" }], dogs: 0, experience: "first" }
    : null;

/** Who gave it stands in the history, by name. */
const discountAnswer = ({ by: _, role: __, ...discount }: NonNullable<QuoteDocument["discount"]>) => discount;

const versionsOf = ({ parts, customer }: HireData): HirePage["versions"] => ({
  party: parts.party?.version ?? 0,
  drivers: parts.drivers?.version ?? 0,
  trip: parts.trip?.version ?? 0,
  load: parts.load?.version ?? 0,
  quote: parts.quote?.version ?? 0,
  customer: customer?.version ?? 0,
  waiting: parts.waiting?.version ?? 0,
});

function enquiryAnswer(data: HireData): Pick<HirePage, "asked" | "waiting" | "ending"> {
  const asked = partOf(data, "asked");
  const waiting = partOf(data, "waiting");
  const ending = partOf(data, "ending");
  return {
    asked: asked === null ? null : { ...asked, countries: [...asked.countries], extras: [...asked.extras] },
    waiting:
      waiting === null || waiting.since === null
        ? null
        : { since: waiting.since, classes: [...waiting.classes], flexDays: waiting.flexDays },
    ending: ending === null ? null : { ...ending },
  };
}

/** The keys go today, or should have gone or went, and nothing is settled yet. */
const isOfTheDay = ({ row: { stage }, from, today }: HireData): boolean =>
  stage === "booked" ? dateOf(from) <= today : ["handedOver", "onHire", "returned"].includes(stage);

function customerAnswer(data: HireData): HirePage["customer"] {
  const document = asDocument<Partial<CustomerDocument>>(data.customer?.document ?? {});
  const { telephone = "", email = "", address } = document;
  return { name: data.row.customerName, telephone, email, ...(address === undefined ? {} : { address }) };
}

function vehicleAnswer(data: HireData): HirePage["vehicle"] {
  if (data.vehicle === null) return null;
  const { version, document } = data.vehicle;
  return { id: version.of, versionId: version.versionId, description: document.description };
}

export function loadState(data: HireData): NonNullable<HirePage["load"]> {
  const plan = partOf(data, "load");
  const answer = loadAnswer(data);
  const findings = withRules(data.ruleBook, () => answer?.findings.map(plainFinding) ?? []);
  return { plan, result: answer?.result ?? null, findings };
}

function quoteState(data: HireData): HirePage["quote"] {
  const quote = partOf(data, "quote");
  if (quote === null) return null;
  return {
    at: quote.at,
    acceptedAt: quote.acceptedAt,
    ...(quote.discount == null ? {} : { discount: discountAnswer(quote.discount) }),
    result: quote.answer.result,
    findings: quote.answer.findings.map(plainFinding),
    total: quote.answer.result?.total ?? null,
  };
}

/** The conditions as they were printed when the keys went. */
async function frozenConditions(data: HireData): Promise<HirePage["conditions"]> {
  const frozen = data.frozen.findLast(({ room }) => room === "glass");
  if (frozen === undefined) return [];
  return asDocument<{ conditions: HirePage["conditions"] }>(frozen.document).conditions;
}

async function recordsAnswer(store: Store, data: HireData): Promise<HirePage["records"]> {
  const head = await store.records.head();
  const side = (direction: "out" | "back") => {
    const { finished: _, ...facts } = walkFacts(data.records, direction);
    return facts;
  };
  return {
    count: data.records.length,
    head: data.records.length === 0 ? null : (head?.hash ?? null),
    out: side("out"),
    back: side("back"),
    panelReadings: panelReadings(data.records, data.depot.timeZone).length,
  };
}

/** Differences and settlement, from the return on. */
async function afterAnswer(
  store: Store,
  data: HireData,
  nameOf: (id: string) => string,
): Promise<Pick<HirePage, "differences" | "settlement">> {
  if (!AFTER.includes(data.row.stage)) return { differences: [], settlement: null };
  const condition = await conditionOf(store, data);
  return {
    differences: differencesAnswer(data, condition.result.differences, nameOf),
    settlement: settlementState(
      data,
      await settlementOf(store, data),
      await entriesOfHire(store, data),
      nameOf,
    ),
  };
}

export function differencesAnswer(
  data: HireData,
  differences: Awaited<ReturnType<typeof conditionOf>>["result"]["differences"],
  nameOf: (id: string) => string,
): HirePage["differences"] {
  const { classes } = partOf(data, "settlement") ?? NO_SETTLEMENT;
  return differences.map((difference) => {
    const decided = classes[difference.id];
    return {
      id: difference.id,
      kind: difference.kind,
      difference,
      class: decided?.class ?? null,
      classReason: decided?.reason ?? null,
      classBy: decided === undefined ? null : nameOf(decided.by),
      incident: decided?.incident ?? null,
      todo: decided?.todo ?? null,
      version: versionOfEntry(decided),
      asItLeft: shownAsItLeft(difference, data),
    };
  });
}

function shownAsItLeft(difference: Parameters<typeof asItLeft>[0], data: HireData) {
  const { of, photographs } = asItLeft(difference, data.records);
  return { of, photographs: [...photographs] };
}

export function settlementState(
  data: HireData,
  answer: Awaited<ReturnType<typeof settlementOf>>,
  entries: Awaited<ReturnType<typeof entriesOfHire>>,
  nameOf: (id: string) => string,
): NonNullable<HirePage["settlement"]> {
  const kept = partOf(data, "settlement") ?? NO_SETTLEMENT;
  return {
    frozenAt: kept.frozenAt,
    frozenBy: kept.frozenBy === null ? null : nameOf(kept.frozenBy),
    result: answer.result,
    findings: answer.findings.map(plainFinding),
    total: answer.result.total,
    depositReturned: answer.result.depositReturned,
    releaseBy: answer.result.releaseBy,
    releasedAt: kept.releasedAt,
    promisedOn: promisedOn(entries),
    ...moneyNow(data, kept, answer.result),
    entries: entries.map(({ id, kind, about, document, by, at }) => ({
      id,
      kind,
      about,
      document,
      by: by === HIRER ? null : nameOf(by),
      at,
    })),
  };
}

/** What is to be kept, given back and paid back now, by the ledger. */
function moneyNow(data: HireData, kept: SettlementDocument, result: Settlement) {
  const { owedPence } = readHireMoney(data);
  const { keepPence, backPence } = depositNow(data, result);
  return {
    lowered: gbp(Math.max(0, (kept.answer?.result.total.pence ?? 0) - result.total.pence)),
    refundDue: gbp(kept.frozenAt === null ? 0 : Math.max(0, -owedPence)),
    toKeep: gbp(keepPence),
    toGiveBack: gbp(backPence),
  };
}

/** In the place of an account, where it came by the hirer's link. */
const HIRER = "hirer";

async function linkAnswer(store: Store, data: HireData): Promise<HirePage["hirerLink"]> {
  const links = await store.links.ofHire(data.row.id);
  const open = links.findLast(({ revokedAt, expiresAt }) => revokedAt === null && expiresAt > data.now);
  return open === undefined ? null : { expires: open.expiresAt };
}

async function historyAnswer(
  store: Store,
  data: HireData,
  nameOf: (id: string) => string,
): Promise<HirePage["history"]> {
  const { rows } = await store.audit.list({ about: data.row.id, limit: 100 });
  return rows.map(({ at, by, act, document }) => ({ at, by: nameOf(by), what: act, facts: { ...document } }));
}
