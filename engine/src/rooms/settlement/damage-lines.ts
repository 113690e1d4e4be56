import { figure } from "../../base/figure.ts";
import { roundPence } from "../../base/money.ts";
import { remainingShare } from "../../formulas/worth.ts";
import { needsSecond } from "./late-charge.ts";
import { chargeOfRepair, workingOfRepair } from "./repair-cost.ts";
import {
  aboutOf,
  type InputDifference,
  notCharged,
  priceOfTerms,
  settlementLine,
} from "./settlement-line.ts";
import type { SettlementInput, SettlementLine } from "./types.ts";

type Found = Exclude<InputDifference, { kind: "reading" }>;
type Tariff = SettlementInput["terms"]["tariff"];

/**
 * A mark, a short count or a look that was off. Only what the desk classed as the hirer's is charged: unknown
 * is not, nor what another hire has paid for, nor a mark of whose place no photograph was taken at departure. No
 * betterment: things at what is left of their value.
 */
export function damageLines(found: Found, input: SettlementInput): SettlementLine[] {
  const decided = input.classes[found.id] ?? "unknown";
  if (decided !== "hirer") return [notCharged(found, decided)];
  if (input.foundLate?.includes(found.id) === true) return [notCharged(found, "afterWindow")];
  if (needsSecond(found.id, input)) return [notCharged(found, "needsSecondSignature")];
  if (found.backRecords.some((id) => input.chargedElsewhere.includes(id)))
    return [notCharged(found, "chargedElsewhere")];
  if (found.kind === "mark" && input.departure !== undefined && !input.departure[found.id]?.length)
    return [notCharged(found, "noDeparturePhotograph")];
  if (found.kind === "count") return [kitLine(found, found.short, input) ?? notCharged(found, "noTariff")];
  if (found.charge === "wasteWater") return [fixed(found, "waste", "wasteNotEmptiedPence", input)];
  if (found.charge === "cassette") return [fixed(found, "cassette", "cassetteNotEmptiedPence", input)];
  if (found.kind === "look") return [notCharged(found, "noTariff")];
  const isGone = found.markKind === "missing" && found.charge !== "damage";
  const line =
    markLine(found, input) ?? (isGone ? kitLine(found, 1, input) : null) ?? awaitingLine(found, input);
  return [line ?? notCharged(found, "noTariff")];
}

/** A sum that is charged once; with none in the terms nothing is. */
function fixed(
  from: Found,
  code: "waste" | "cassette",
  price: "wasteNotEmptiedPence" | "cassetteNotEmptiedPence",
  { terms }: SettlementInput,
): SettlementLine {
  const pence = terms.tariff[price];
  if (pence === 0) return notCharged(from, "noTariff");
  const working = [priceOfTerms(terms, pence, "pence", { of: "once" })];
  return settlementLine({ id: from.id, code, about: aboutOf(from), pence, from, working });
}

/** What a difference goes by in the terms, the nearest name first; a mark is damage where nothing nearer is known. */
function namesOf(found: Found): string[] {
  const part = found.kind === "mark" ? found.part : null;
  const last = found.kind === "mark" ? "damage" : null;
  return [part, found.checkId, found.systemKind, found.charge, last].filter((name) => name !== null);
}

function kitLine(found: Found, count: number, input: SettlementInput): SettlementLine | null {
  const { kit } = input.terms.tariff;
  const name = namesOf(found).find((each) => kit[each] !== undefined);
  const thing = name === undefined ? undefined : kit[name];
  if (name === undefined || thing === undefined) return null;
  const share = shareLeft(found.id, name, thing, input);
  const pence = roundPence(thing.newPence * share.value) * count;
  const worth = priceOfTerms(input.terms, thing.newPence, "pence");
  const quantity = figure(count, "count", "-", {}, "measured");
  return settlementLine({
    id: found.id,
    code: "kit",
    about: aboutOf(found),
    pence,
    quantity,
    from: found,
    working: [worth, share],
  });
}

/** Share of its value that a thing has left; without a known age the least, to the hirer's good. */
function shareLeft(
  id: string,
  name: string,
  { lifeYears, leastShare }: { lifeYears: number; leastShare: number },
  { hire, partAges }: SettlementInput,
) {
  const age = partAges?.[id] ?? hire.ageYears[name];
  const ageYears = age ?? lifeYears;
  return figure(
    remainingShare(ageYears, lifeYears, leastShare),
    "share",
    "worth.remainingShare",
    { ageYears, lifeYears, leastShare },
    age === undefined ? "default" : "computed",
    "rental-code-2020",
  );
}

function markLine(found: Extract<Found, { kind: "mark" }>, input: SettlementInput): SettlementLine | null {
  const row = matrixRow(found, input.terms.tariff);
  const estimate = input.estimates?.[found.id];
  const invoice = input.invoices?.[found.id];
  const costs = [
    ...(estimate === undefined ? [] : [{ cost: estimate, from: "estimate" as const }]),
    ...(invoice === undefined ? [] : [{ cost: invoice, from: "invoice" as const }]),
  ];
  if (row === undefined && costs.length === 0) return null;
  const share = shareOfMark(found, row, input);
  const labour = input.terms.tariff.labour ?? "inFull";
  const byMatrix = row === undefined ? Infinity : roundPence(row.pence * (share?.value ?? 1));
  const byCost = costs.map(({ cost }) => chargeOfRepair(cost, share?.value ?? 1, labour));
  const stated = [
    ...(row === undefined
      ? []
      : [priceOfTerms(input.terms, row.pence, "pence", { of: row.of, kind: row.kind })]),
    ...costs.flatMap(({ cost, from }) => workingOfRepair(cost, labour, from)),
    ...(share === null ? [] : [share]),
  ];
  return settlementLine({
    id: found.id,
    code: "damage",
    about: found.part,
    pence: Math.min(byMatrix, input.awaiting?.[found.id] ?? Infinity, ...byCost),
    from: found,
    working: stated,
    capped: true,
    incident: input.incidents?.[found.id] ?? null,
  });
}

/** A repair whose cost nobody knows yet: nothing is charged, and no more than the stated sum is held for it. */
function awaitingLine(
  found: Extract<Found, { kind: "mark" }>,
  input: SettlementInput,
): SettlementLine | null {
  const most = input.awaiting?.[found.id];
  if (most === undefined) return null;
  return settlementLine({
    id: found.id,
    code: "damage",
    about: found.part,
    pence: 0,
    awaitingPence: most,
    because: "awaitsCost",
    from: found,
    capped: true,
    incident: input.incidents?.[found.id] ?? null,
  });
}

/** What is left of the part's value: by its line of the matrix, else by its life among the things of the terms; null for a repair that replaces nothing. */
function shareOfMark(
  found: Extract<Found, { kind: "mark" }>,
  row: Tariff["damage"][number] | undefined,
  input: SettlementInput,
) {
  if (row !== undefined) return row.part === "replace" ? shareLeft(found.id, row.of, row, input) : null;
  const { kit } = input.terms.tariff;
  const name = namesOf(found).find((each) => kit[each] !== undefined);
  const thing = name === undefined ? undefined : kit[name];
  return name === undefined || thing === undefined ? null : shareLeft(found.id, name, thing, input);
}

/** The line of the matrix for a mark: nearest name, kind, then the smallest size that holds it; of unknown size the cheapest. */
function matrixRow(
  found: Extract<Found, { kind: "mark" }>,
  { damage }: Tariff,
): Tariff["damage"][number] | undefined {
  for (const name of namesOf(found)) {
    const rows = damage.filter(({ of, kind }) => of === name && kind === found.markKind);
    if (rows.length === 0) continue;
    if (found.sizeMm === null) return [...rows].sort((a, b) => a.pence - b.pence)[0];
    const size = found.sizeMm;
    const holding = rows.filter(({ upToMm }) => upToMm === undefined || size <= upToMm);
    return holding.sort((a, b) => (a.upToMm ?? Infinity) - (b.upToMm ?? Infinity))[0];
  }
  return undefined;
}
