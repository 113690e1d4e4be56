import {
  addDays,
  type Finding,
  type Money,
  type Quote,
  quoteHire,
  type RoomAnswer,
  type RuleBook,
  type StockResult,
  type Terms,
  withRules,
} from "@setfair/engine";
import type { DepotRow, Store } from "../store/types.ts";
import { fleetFor, judgeFleet, type TakeQuestion, type VehicleThatMay } from "./can-take.ts";
import { counterOffers } from "./counter-offers.ts";
import { type AskedDocument, asDocument, type DepotDocument } from "./documents.ts";
import { plainFinding } from "./glass.ts";
import { termsOf } from "./hire-data.ts";
import { dateOf, instantOf, localOf } from "./local-time.ts";
import { readRuleBook } from "./rule-book.ts";
import { askStock, joinAsks, shortAnswer } from "./stock.ts";

export interface Enquiry extends TakeQuestion {
  readonly asked?: AskedDocument;
}
type Price = RoomAnswer<Quote | null>;
interface Answering {
  readonly enquiry: Enquiry;
  readonly terms: Terms | null;
  readonly rules: RuleBook;
  readonly today: string;
  /** civil time now: nothing is offered that should have begun */
  readonly now: string;
  readonly home: string;
  readonly stock: RoomAnswer<StockResult>;
}

/**
 * Every vehicle for what is asked: possible with its price, or why not with the nearest changes. What is short on
 * the shelf refuses them all, since none of them can take what is not there.
 */
export async function answerEnquiry(store: Store, depot: DepotRow, now: Date, enquiry: Enquiry) {
  const nowLocal = localOf(now.toISOString(), depot.timeZone);
  const today = dateOf(nowLocal);
  const terms = (await termsOf(store, null, today))?.document ?? null;
  const fleet = await fleetFor(store, depot, now, enquiry);
  const found = judgeFleet(fleet);
  const stock = await askStock(store, depot, terms, {
    asks: joinAsks(enquiry.asked?.extras ?? [], []),
    from: instantOf(enquiry.from, depot.timeZone, "from"),
    to: instantOf(enquiry.to, depot.timeZone, "to"),
    ...(enquiry.hireId === undefined ? {} : { hireId: enquiry.hireId }),
  });
  const home = asDocument<DepotDocument>(depot.document).country;
  const answering = { enquiry, terms, rules: await readRuleBook(store), today, now: nowLocal, home, stock };
  const prices = new Map<string, Price | null>();
  for (const { document } of found)
    if (!prices.has(document.vehicleClass))
      prices.set(document.vehicleClass, priceFor(answering, document.vehicleClass));
  const lines = found.map((vehicle) =>
    lineOf(answering, vehicle, prices.get(vehicle.document.vehicleClass) ?? null),
  );
  const vehicles = lines
    .map((line) => ({ ...line, nearestChanges: [...line.nearestChanges, ...otherVehicle(line, lines)] }))
    .sort((a, b) => Number(b.possible) - Number(a.possible));
  const short = await shortAnswer(store, stock.result.short);
  const isPossible = found.some(({ answer }) => answer.possible);
  const offers = isPossible ? [] : await counterOffers(store, depot, now, fleet);
  return {
    vehicles,
    ...(short.length === 0 ? {} : { short }),
    ...(offers.length === 0 ? {} : { offers: [...offers] }),
  };
}

function priceFor({ enquiry, terms, rules, today, home }: Answering, vehicleClass: string): Price | null {
  if (terms === null) return null;
  const known = new Set(terms.extras.map(({ id }) => id));
  const extras = (enquiry.asked?.extras ?? []).filter(({ id }) => known.has(id));
  const priced = terms.seasons.every(({ nightPence }) => nightPence[vehicleClass] !== undefined);
  if (!priced) return null;
  const input = {
    terms,
    vehicleClass,
    from: enquiry.from,
    to: enquiry.to,
    today,
    party: enquiry.party,
    drivers: enquiry.asked?.drivers ?? 1,
    // the shelf is asked in time by itself
    extras: extras.map(({ id, count }) => ({ id, count, free: count })),
    countries: [home, ...(enquiry.asked?.countries ?? [])],
  };
  return withRules(rules, () => quoteHire(input));
}

interface Change {
  readonly kind:
    | "shift"
    | "smallerParty"
    | "renewDue"
    | "waivePets"
    | "otherLength"
    | "fewerExtras"
    | "otherVehicle";
  readonly from?: string;
  readonly to?: string;
  readonly shiftHours?: number;
  readonly people?: number;
  readonly extra?: string;
  readonly count?: number;
  readonly vehicleId?: string;
  readonly vehicleName?: string;
}

function lineOf(answering: Answering, { id, document, answer }: VehicleThatMay, price: Price | null) {
  const { enquiry, rules, stock } = answering;
  const refused = price?.findings.filter(({ severity }) => severity === "refuse") ?? [];
  const findings = [...answer.findings, ...refused, ...stock.findings];
  const only = [...answer.findings, ...refused].every(({ severity }) => severity !== "refuse");
  const changes: Change[] = [
    ...answer.nearestChanges.filter(({ from }) => from === undefined || from >= answering.now),
    ...refused.flatMap((finding) => otherLength(enquiry, finding)),
    // taking fewer helps only where nothing else stands in the way of this vehicle
    ...(only ? fewerExtras(stock.result) : []),
  ];
  return {
    id,
    name: document.description.name,
    registration: document.description.registration,
    vehicleClass: document.vehicleClass,
    possible: findings.every(({ severity }) => severity !== "refuse"),
    findings: withRules(rules, () => findings.map(plainFinding)),
    nearestChanges: changes,
    price: price?.result?.total ?? null,
  };
}

const fewerExtras = ({ short }: StockResult): Change[] =>
  short.map(({ kind, free }) => ({ kind: "fewerExtras", extra: kind, count: free }));

/** As many nights as the season asks for at least, or the terms allow at most. */
function otherLength({ from, to }: Enquiry, { code, facts }: Finding): Change[] {
  const nights =
    code === "quote.tooShort" ? facts.minimum : code === "quote.tooLong" ? facts.maximum : undefined;
  if (typeof nights !== "number") return [];
  return [
    { kind: "otherLength", from, to: `${addDays(dateOf(from), nights)}${to.slice(10)}`, count: nights },
  ];
}

interface Line {
  readonly id: string;
  readonly name: string;
  readonly vehicleClass: string;
  readonly possible: boolean;
  readonly price: Money<"GBP"> | null;
}

/** The one that can do it as asked: of the same class, else the nearest in price. */
function otherVehicle(line: Line, lines: readonly Line[]): Change[] {
  if (line.possible) return [];
  const away = (other: Line) =>
    other.vehicleClass === line.vehicleClass
      ? -1
      : Math.abs((other.price?.pence ?? 0) - (line.price?.pence ?? 0));
  const [nearest] = lines.filter(({ possible }) => possible).sort((a, b) => away(a) - away(b));
  return nearest === undefined
    ? []
    : [{ kind: "otherVehicle", vehicleId: nearest.id, vehicleName: nearest.name }];
}
