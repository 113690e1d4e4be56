import { type Finding, type Gate, withRules } from "@setfair/engine";
import { Refusal } from "../../api/refusal.ts";
import type { HireRow, Store } from "../../store/types.ts";
import { type PartDocuments, type PartName, toJson } from "../documents.ts";
import { readGates } from "../gates.ts";
import { type FindingAnswer, plainFinding } from "../glass.ts";
import { type HireData, readRow } from "../hire-data.ts";

/** The hire read again as if its row were this: other vehicle, other days, with all that follows from them. */
export function readAsIf(
  { store, data, now }: { readonly store: Store; readonly data: HireData; readonly now: Date },
  change: Partial<Pick<HireRow, "vehicleId" | "registration" | "from" | "to">>,
): Promise<HireData> {
  return readRow(store, { ...data.row, ...change }, data.depot, now);
}

/** The hire with another document in one of its parts. */
export function withPart<Name extends PartName>(
  data: HireData,
  name: Name,
  document: PartDocuments[Name],
): HireData {
  const before = data.parts[name] ?? { name, version: 0, updatedAt: data.now, updatedBy: "" };
  return { ...data, parts: { ...data.parts, [name]: { ...before, document: toJson(document) } } };
}

/** Gates that a change is held against; forecast, money and signatures are got ready again after it. */
const LOOKED_AT: readonly Gate[] = [
  "seats",
  "licence",
  "insurance",
  "masses",
  "diary",
  "dueDates",
  "defects",
  "countries",
  "crossing",
];
/** A refusal here cannot be mended after the change. */
const FOR_GOOD: readonly Gate[] = ["seats", "licence", "diary", "dueDates", "defects"];

const keyOf = ({ code, severity, about, facts }: Finding): string =>
  JSON.stringify([
    code,
    severity,
    about,
    Object.entries(facts).map(([name, fact]) => [name, typeof fact === "object" ? fact.value : fact]),
  ]);

/** What the gates say of the hire as it would be and do not say of it as it is, the worst first. */
export function newFindings(before: HireData, after: HireData): readonly FindingAnswer[] {
  const said = (data: HireData) =>
    readGates(data, null)
      .filter(({ gate }) => LOOKED_AT.includes(gate))
      .flatMap(({ findings }) => findings);
  const known = new Set(said(before).map(keyOf));
  const order = ["refuse", "refer", "unchecked", "condition", "note"];
  return withRules(after.ruleBook, () =>
    said(after)
      .filter((finding) => !known.has(keyOf(finding)))
      .sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity))
      .map(plainFinding),
  );
}

/** Whether one of them stops the change. */
export const stopsIt = (findings: readonly Pick<FindingAnswer, "severity" | "gate">[]): boolean =>
  findings.some(({ severity, gate }) => severity === "refuse" && FOR_GOOD.includes(gate));

/** Refused with the findings that stop it. */
export function refuseWith(code: "taken" | "refused", findings: readonly FindingAnswer[]): Refusal {
  const stopping = findings.filter(({ severity }) => severity === "refuse");
  // they came from the engine and went through the answer's schema, which only widens an optional source
  return new Refusal(code, { findings: stopping as Finding[] });
}
