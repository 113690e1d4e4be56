import {
  type AnsweredCheck,
  type CheckAnswer,
  type Diagnosis,
  diagnoseSymptom,
  type StoreNow,
  type SymptomOnVehicle,
} from "@setfair/engine/diagnosis";
import { useMemo, useState } from "react";

/** What the server gives of this vehicle's faults, as the engine made it. */
export interface Faults {
  readonly symptoms: readonly SymptomOnVehicle[];
  readonly history: readonly { readonly symptom: string; readonly cause: string; readonly count: number }[];
}

/** The faults of an answer of the server; none where a phone kept a guide from before there were any. */
export function faultsIn(value: { readonly faults?: unknown }): Faults {
  const faults = value.faults as Partial<Faults> | undefined;
  return { symptoms: faults?.symptoms ?? [], history: faults?.history ?? [] };
}

export interface Finder {
  readonly diagnosis: Diagnosis;
  answer(check: string, answer: CheckAnswer): void;
  /** takes the last answer back */
  undo(): void;
}

/** One symptom looked into, step by step. What was answered outlives a reload of the page, under `key`. */
export function useFinder(
  on: SymptomOnVehicle,
  faults: Faults,
  stores: readonly StoreNow[],
  key: string,
): Finder {
  const [answers, setAnswers] = useState<readonly AnsweredCheck[]>(() => keptAnswers(key));
  const put = (next: readonly AnsweredCheck[]) => {
    setAnswers(next);
    try {
      sessionStorage.setItem(key, JSON.stringify(next));
    } catch {
      // a full or shut store: the answers then live as long as the page
    }
  };
  const diagnosis = useMemo(() => {
    const history = faults.history.filter(({ symptom }) => symptom === on.symptom.id);
    return diagnoseSymptom(on, { answers, stores, history, hands: "hirer" }).result;
  }, [on, faults, stores, answers]);
  return {
    diagnosis,
    answer: (check, answer) => put([...answers, { check, answer }]),
    undo: () => put(answers.slice(0, -1)),
  };
}

function keptAnswers(key: string): readonly AnsweredCheck[] {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? "[]");
    return Array.isArray(kept) ? (kept as AnsweredCheck[]) : [];
  } catch {
    return [];
  }
}

/** What goes into the record: what was tried, how it ended, and the cause where it is known. */
export function helpContent(diagnosis: Diagnosis, by: "hirer" | "desk", note?: string) {
  const known = diagnosis.outcome === "fixed" || diagnosis.outcome === "found";
  return {
    about: diagnosis.symptom,
    by,
    systemId: diagnosis.systemId,
    // a finder that is left while a check is open ends with a call
    outcome: diagnosis.outcome === "check" ? "call" : diagnosis.outcome,
    answers: diagnosis.tried.map(({ check, answer }) => ({ check, answer })),
    causes: known ? diagnosis.causes.map(({ cause }) => cause) : [],
    ...(note === undefined || note === "" ? {} : { note }),
  };
}
