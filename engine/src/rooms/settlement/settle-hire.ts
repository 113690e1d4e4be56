import { BadInput, type InputProblem } from "../../base/bad-input.ts";
import { figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import { gbp, roundPence } from "../../base/money.ts";
import { type IsoDate, Temporal } from "../../base/time.ts";
import { makeFinding } from "../make-finding.ts";
import { claimLines } from "./claim-lines.ts";
import { damageLines } from "./damage-lines.ts";
import { secondSignatureDays } from "./late-charge.ts";
import { lateLines } from "./late-lines.ts";
import { meteredLines } from "./metered-lines.ts";
import { priceOfTerms, settlementLine } from "./settlement-line.ts";
import type { SettleHire, Settlement, SettlementInput, SettlementLine } from "./types.ts";

/**
 * Differences and the terms at booking become lines in whole pence, each with its evidence: only the hirer's
 * are charged, damage at most the excess, no betterment, disputed lines held back apart. What is undisputed is
 * kept from the deposit, the rest goes back by a stated day. Nothing is ever paid twice.
 * @throws BadInput on reversed times, or on a class or dispute of something that is not there
 */
export const settleHire: SettleHire = (input) => {
  const problems = misfits(input);
  if (problems.length > 0) throw new BadInput(problems);
  const found = input.differences.flatMap((each) =>
    each.kind === "reading" ? meteredLines(each, input) : damageLines(each, input),
  );
  const plain = [...found, ...cleaningLines(input), ...lateLines(input), ...claimLines(input)];
  const unknown = input.disputed.filter((id) => plain.every((line) => line.id !== id));
  if (unknown.length > 0)
    throw new BadInput(
      unknown.map((id) => ({
        path: `disputed.${input.disputed.indexOf(id)}`,
        expected: `expected the id of a line, not "${id}"`,
      })),
    );
  const lines = plain.map((line) =>
    takenBack(asShown({ ...line, disputed: input.disputed.includes(line.id) }, input), input),
  );
  const result = sumUp(input, lines);
  return { result, findings: findingsOf(input, result) };
};

/** A line that the depot has taken back stays in sight, at nothing. */
function takenBack(line: SettlementLine, { withdrawn }: SettlementInput): SettlementLine {
  if (withdrawn?.includes(line.id) !== true) return line;
  return { ...line, amount: gbp(0), awaiting: gbp(0), because: "withdrawn", disputed: false };
}

/** A line never costs more than it was shown to the hirer with, whatever an estimate or an invoice says later. */
function asShown(line: SettlementLine, { atMost }: SettlementInput): SettlementLine {
  const most = atMost?.[line.id];
  return most === undefined || line.amount.pence <= most ? line : { ...line, amount: gbp(most) };
}

function misfits({ hire, differences, classes }: SettlementInput): InputProblem[] {
  const found: InputProblem[] = [];
  if (hire.to <= hire.from) found.push({ path: "hire.to", expected: `expected a time after ${hire.from}` });
  if (hire.returnedAt < hire.from)
    found.push({ path: "hire.returnedAt", expected: `expected a time from ${hire.from} on` });
  const ids = differences.map(({ id }) => id);
  ids.forEach((id, k) => {
    if (ids.indexOf(id) !== k)
      found.push({ path: `differences.${k}.id`, expected: "expected an id of its own" });
  });
  for (const id of Object.keys(classes).filter((each) => !ids.includes(each))) {
    found.push({ path: `classes.${id}`, expected: "expected the id of a difference" });
  }
  return found;
}

function cleaningLines({ cleaning, terms }: SettlementInput): SettlementLine[] {
  if (cleaning === undefined || cleaning.hours === 0) return [];
  const quantity = figure(cleaning.hours, "h", "-", {}, "measured");
  const { cleaningPencePerHour } = terms.tariff;
  const isShown = cleaning.records.length + cleaning.photographs.length > 0;
  return [
    settlementLine({
      id: "cleaning",
      code: "cleaning",
      about: "cleaning",
      pence: isShown ? roundPence(cleaning.hours * cleaningPencePerHour) : 0,
      because: !isShown ? "noEvidence" : cleaningPencePerHour === 0 ? "noTariff" : null,
      quantity,
      working: [priceOfTerms(terms, cleaningPencePerHour, "pence/h")],
      records: cleaning.records,
      photographs: cleaning.photographs,
    }),
  ];
}

const most = ({ amount, awaiting }: SettlementLine): number => amount.pence + awaiting.pence;
const sum = (lines: readonly SettlementLine[]) =>
  lines.reduce((total, { amount }) => total + amount.pence, 0);

/** Capped lines, an incident a group; those of no named incident are one. */
function incidentsOf(lines: readonly SettlementLine[]): readonly (readonly SettlementLine[])[] {
  const groups = new Map<string | null, SettlementLine[]>();
  for (const line of lines.filter(({ capped }) => capped))
    groups.set(line.incident, [...(groups.get(line.incident) ?? []), line]);
  return [...groups.values()];
}

function sumUp(input: SettlementInput, lines: readonly SettlementLine[]): Settlement {
  const { terms, hire, depositPence } = input;
  const excess = terms.security.excessPence;
  const due = (some: readonly SettlementLine[]) =>
    sum(some.filter(({ capped }) => !capped)) +
    incidentsOf(some).reduce((total, lines) => total + Math.min(excess, sum(lines)), 0);
  const total = due(lines);
  const undisputed = due(lines.filter(({ disputed }) => !disputed));
  // a cost not known yet counts with the most that it may be
  const atWorst = due(lines.map((line) => ({ ...line, amount: gbp(most(line)) })));
  const kept = Math.min(depositPence, undisputed);
  const withheld = Math.min(depositPence - kept, atWorst - undisputed);
  return {
    hireId: hire.id,
    termsId: terms.id,
    lines,
    overExcess: gbp(Math.min(0, total - sum(lines))),
    total: gbp(total),
    disputed: gbp(total - undisputed),
    awaiting: gbp(atWorst - total),
    depositHeld: gbp(depositPence),
    depositKept: gbp(kept),
    depositWithheld: gbp(withheld),
    depositReturned: gbp(depositPence - kept - withheld),
    stillOwed: gbp(undisputed - kept),
    releaseBy: addWorkingDays(hire.returnedAt.slice(0, 10), terms.security.releaseWorkingDays),
  };
}

/** The day so many days from Monday to Friday later; public holidays are not known and so count as working days, to the hirer's good. */
export function addWorkingDays(from: IsoDate, days: number): IsoDate {
  let day = Temporal.PlainDate.from(from);
  for (let left = days; left > 0; ) {
    day = day.add({ days: 1 });
    if (day.dayOfWeek <= 5) left -= 1;
  }
  return day.toString();
}

function findingsOf(input: SettlementInput, result: Settlement): Finding[] {
  const undecided = input.differences.filter(
    ({ kind, id }) => kind !== "reading" && input.classes[id] === undefined,
  ).length;
  const note = (code: string, facts: Finding["facts"], sources: string[] = []) =>
    makeFinding("money", code, "note", "policy", { facts, sources });
  const pence = (value: number) => figure(value, "pence", "-", {}, "computed");
  const because = (why: SettlementLine["because"]) =>
    result.lines.filter((line) => line.because === why).length;
  const seconds = because("needsSecondSignature");
  const unseen = because("noDeparturePhotograph");
  const awaiting = because("awaitsCost");
  const tooLate = because("afterWindow");
  const untold = result.lines.filter(
    ({ code, because }) => code === "notCharged" && because === "noTariff",
  ).length;
  return [
    ...(undecided === 0
      ? []
      : [
          makeFinding("money", "settlement.undecided", "unchecked", "policy", {
            facts: { count: undecided },
            mends: ["settlement.decide"],
          }),
        ]),
    ...(seconds === 0
      ? []
      : [
          makeFinding("money", "settlement.second", "unchecked", "policy", {
            facts: {
              count: seconds,
              days: figure(secondSignatureDays(input.terms), "d", "-", {}, "declared"),
            },
            sources: ["practice"],
            mends: ["settlement.secondSign"],
          }),
        ]),
    ...(awaiting === 0
      ? []
      : [note("settlement.awaiting", { count: awaiting, most: pence(result.awaiting.pence) })]),
    ...(tooLate === 0 ? [] : [note("settlement.afterWindow", { count: tooLate })]),
    ...(unseen === 0 ? [] : [note("settlement.noDeparture", { count: unseen })]),
    ...(untold === 0 ? [] : [note("settlement.noTariff", { count: untold })]),
    ...(result.overExcess.pence === 0
      ? []
      : [
          note("settlement.capped", {
            over: pence(-result.overExcess.pence),
            excess: pence(input.terms.security.excessPence),
          }),
        ]),
    ...(result.disputed.pence === 0
      ? []
      : [note("settlement.disputed", { disputed: pence(result.disputed.pence) })]),
    ...(result.stillOwed.pence === 0
      ? []
      : [note("settlement.stillOwed", { owed: pence(result.stillOwed.pence) })]),
    ...(result.total.pence === 0 ? [] : [note("settlement.tellHirer", {}, ["settlement.tellWithinDays"])]),
  ];
}
