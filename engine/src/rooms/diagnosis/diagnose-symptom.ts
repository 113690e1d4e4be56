import { type Figure, figure } from "../../base/figure.ts";
import type { Finding, RoomAnswer } from "../../base/finding.ts";
import { causeChance, expectedMinutes } from "../../formulas/diagnosis.ts";
import type { FaultCheck, Symptom } from "../../systems/contract.ts";
import { makeFinding } from "../make-finding.ts";
import { notFoundAfter, type OrderProblem } from "./order-problem.ts";
import { permittedChecks } from "./permitted-checks.ts";
import { planChecks } from "./plan-checks.ts";
import type {
  AnsweredCheck,
  Diagnosis,
  DiagnosisKnown,
  LikelyCause,
  ProposedCheck,
  SymptomOnVehicle,
} from "./types.ts";
import { MISS_CHANCE, type WeighedCause, weighCauses } from "./weigh-causes.ts";

/**
 * What is behind a symptom of this vehicle, and what to do next. Pure, and free of the list of systems, so
 * that a phone with no signal carries no more than it needs.
 * Where it is dangerous the answer is to stop and call; a hirer is never asked for what needs trained hands.
 */
export function diagnoseSymptom(on: SymptomOnVehicle, known: DiagnosisKnown): RoomAnswer<Diagnosis> {
  const { symptom, systemId, systemKind } = on;
  const { answers, ignored } = answersThatCount(symptom, known.answers);
  const weighed = weighCauses(symptom, { ...known, answers });
  const ending = symptom.dangerous ? undefined : endingOf(symptom, answers);
  const causes = likelyCauses(symptom, weighed, ending?.check ?? null);
  const open =
    ending === undefined
      ? usefulChecks(permittedChecks(symptom, answers, known.hands ?? "hirer"), weighed)
      : [];
  const plan = proposedChecks(symptom, open, weighed);
  const outcome = symptom.dangerous
    ? "stop"
    : ending !== undefined
      ? ending.answer
      : plan.length > 0
        ? "check"
        : "call";
  const result: Diagnosis = {
    symptom: symptom.id,
    systemId,
    systemKind,
    dangerous: symptom.dangerous,
    outcome,
    causes,
    next: plan[0] ?? null,
    plan,
    expectedMinutes: plan.length > 0 ? minutesOf(plan) : null,
    goOnWith: outcome === "found" ? (causes[0]?.leadsTo ?? null) : null,
    leftForTrained: symptom.dangerous || outcome === "fixed" ? [] : leftForTrained(symptom, answers, weighed),
    tried: answers,
  };
  return { result, findings: [...ignored.map(ignoredAnswer), ...findingsOf(result)] };
}

/** Answers to checks that this vehicle has, the last one for each. */
function answersThatCount({ checks }: Symptom, given: readonly AnsweredCheck[]) {
  const known = given.filter(({ check }) => checks.some(({ id }) => id === check));
  return {
    answers: known.filter(({ check }, at) => known.findLastIndex((one) => one.check === check) === at),
    ignored: given.filter((one) => !known.includes(one)),
  };
}

function endingOf(symptom: Symptom, answers: readonly AnsweredCheck[]) {
  const end = answers.findLast(({ answer }) => answer === "fixed" || answer === "found");
  const check = symptom.checks.find(({ id }) => id === end?.check);
  return end === undefined || check === undefined
    ? undefined
    : { check, answer: end.answer === "fixed" ? ("fixed" as const) : ("found" as const) };
}

function likelyCauses(
  symptom: Symptom,
  weighed: readonly WeighedCause[],
  ending: FaultCheck | null,
): readonly LikelyCause[] {
  const kept = weighed.filter(({ cause }) => ending === null || ending.causes.includes(cause));
  const weightOfAll = kept.reduce((sum, { weight }) => sum + weight, 0);
  return kept
    .map(({ cause, weight }) => ({
      cause,
      chance: shareOf(weight, weightOfAll),
      leadsTo: symptom.causes.find(({ id }) => id === cause)?.leadsTo ?? null,
    }))
    .sort((a, b) => b.chance.value - a.chance.value || (a.cause < b.cause ? -1 : 1));
}

function shareOf(weight: number, weightOfAll: number): Figure {
  const inputs = { weight, weightOfAll };
  return figure(
    causeChance(weight, weightOfAll),
    "share",
    "diagnosis.causeChance",
    inputs,
    "default",
    "practice",
  );
}

/** Checks that may find something, and those that must come before them. */
function usefulChecks(open: readonly FaultCheck[], weighed: readonly WeighedCause[]): readonly FaultCheck[] {
  const possible = new Set(weighed.filter(({ weight }) => weight > 0).map(({ cause }) => cause));
  const useful = new Set(
    open.filter(({ causes }) => causes.some((id) => possible.has(id))).map(({ id }) => id),
  );
  for (let before = -1; before !== useful.size; ) {
    before = useful.size;
    for (const { id, after } of open) if (useful.has(id)) for (const first of after) useful.add(first);
  }
  return open.filter(({ id }) => useful.has(id));
}

/** The checks that are open, as something to put in order. */
export function problemOf(
  symptom: Symptom,
  open: readonly FaultCheck[],
  weighed: readonly WeighedCause[],
): OrderProblem {
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  const causeAt = new Map(symptom.causes.map(({ id }, index) => [id, index]));
  const checkAt = new Map(open.map(({ id }, index) => [id, index]));
  const places = (at: ReadonlyMap<string, number>, ids: readonly string[]) =>
    ids.flatMap((id) => (at.has(id) ? [at.get(id)!] : []));
  return {
    chances: weighed.map(({ weight }) => weight / total),
    checks: open.map(({ minutes, causes, after }) => ({
      minutes,
      causes: places(causeAt, causes),
      after: places(checkAt, after),
    })),
    missChance: MISS_CHANCE,
  };
}

function proposedChecks(
  symptom: Symptom,
  open: readonly FaultCheck[],
  weighed: readonly WeighedCause[],
): readonly ProposedCheck[] {
  if (open.length === 0) return [];
  const problem = problemOf(symptom, open, weighed);
  const { order } = planChecks(problem);
  return order.map((index, place) => {
    const { id, minutes, causes, danger } = open[index]!;
    const reached = notFoundAfter(problem, order.slice(0, place));
    const after = notFoundAfter(problem, order.slice(0, place + 1));
    return {
      check: id,
      minutes: figure(minutes, "min", "-", {}, "default", "practice"),
      finds: shareOf(reached - after, reached),
      reached: shareOf(reached, 1),
      causes,
      danger,
    };
  });
}

function minutesOf(plan: readonly ProposedCheck[]): Figure {
  const value = expectedMinutes(
    plan.map(({ minutes }) => minutes.value),
    plan.map(({ reached }) => reached.value),
  );
  return figure(value, "min", "diagnosis.expectedMinutes", { checks: plan.length }, "default", "practice");
}

/** What is left when a hirer can do no more: for the depot, a workshop or roadside help. */
function leftForTrained(
  symptom: Symptom,
  answers: readonly AnsweredCheck[],
  weighed: readonly WeighedCause[],
): readonly string[] {
  const weightOf = new Map(weighed.map(({ cause, weight }) => [cause, weight]));
  const worth = ({ causes, minutes }: FaultCheck) =>
    causes.reduce((sum, id) => sum + (weightOf.get(id) ?? 0), 0) / minutes;
  return symptom.checks
    .filter(({ id, danger }) => danger === 2 && !answers.some(({ check }) => check === id))
    .toSorted((a, b) => worth(b) - worth(a))
    .map(({ id }) => id);
}

function ignoredAnswer({ check }: AnsweredCheck): Finding {
  return makeFinding("defects", "diagnosis.answerIgnored", "note", "policy", {
    facts: { check },
    about: check,
  });
}

function findingsOf({ outcome, symptom, causes }: Diagnosis): readonly Finding[] {
  switch (outcome) {
    case "stop":
      return [
        makeFinding("defects", "diagnosis.stopAndCall", "refuse", "safety", {
          sources: ["practice"],
          mends: ["diagnosis.call"],
          about: symptom,
        }),
      ];
    case "call":
      return [
        makeFinding("defects", "diagnosis.nothingLeft", "refer", "safety", {
          sources: ["practice"],
          mends: ["diagnosis.call"],
          about: symptom,
        }),
      ];
    case "found":
      return [
        makeFinding("defects", "diagnosis.notMendedYet", "refer", "policy", {
          sources: ["practice"],
          mends: ["diagnosis.call"],
          about: causes[0]?.cause ?? symptom,
        }),
      ];
    default:
      return [];
  }
}
