import { DIAGNOSIS_OUTCOMES, type DiagnosisOutcome, symptomsOf } from "@setfair/engine";
import type { z } from "zod";
import type { faultsSchema, helpEntrySchema } from "../api/schemas/help.ts";
import type { Store, StoredRecord } from "../store/types.ts";
import type { HireData } from "./hire-data.ts";
import { wholeRecords } from "./record-facts.ts";

export type HelpEntry = z.input<typeof helpEntrySchema>;
type Faults = z.input<typeof faultsSchema>;
type Outcome = HelpEntry["outcome"];

const OUTCOMES: readonly Outcome[] = [
  ...DIAGNOSIS_OUTCOMES.filter(
    (outcome): outcome is Exclude<DiagnosisOutcome, "check"> => outcome !== "check",
  ),
  "left",
];
const texts = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((one): one is string => typeof one === "string") : [];

/** What was tried on this hire when something failed, oldest first. */
export function helpEntries(records: readonly StoredRecord[]): readonly HelpEntry[] {
  return wholeRecords(records).flatMap(({ id, kind, content, deviceTime }) => {
    const outcome = OUTCOMES.find((one) => one === content.outcome);
    if (kind !== "help" || outcome === undefined) return [];
    const answers = (content.answers as readonly { check: string; answer: string }[]).map((one) => ({
      check: one.check,
      answer: one.answer,
    }));
    return [
      {
        recordId: id,
        at: deviceTime,
        symptom: String(content.about),
        outcome,
        answers,
        causes: [...texts(content.causes)],
        by: content.by === "desk" ? "desk" : "hirer",
        note: typeof content.note === "string" ? content.note : null,
      },
    ];
  });
}

/** Symptoms for which a hirer was told to ring and that nobody at the desk has answered since. */
export function openHelp(records: readonly StoredRecord[]): readonly HelpEntry[] {
  const last = new Map(helpEntries(records).map((entry) => [entry.symptom, entry]));
  return [...last.values()].filter(
    ({ by, outcome }) => by === "hirer" && (outcome === "stop" || outcome === "call" || outcome === "found"),
  );
}

/**
 * What the fault finder needs of this vehicle and this depot: its symptoms, and how often each cause was
 * found. A case counts where its cause was named; one with several possible causes counts for none.
 */
export async function faultsOf(store: Store, data: HireData): Promise<Faults> {
  if (data.vehicle === null) return { symptoms: [], history: [] };
  const symptoms = symptomsOf(data.vehicle.document.description);
  const seen = await store.records.list({ kind: "help" });
  const counts = new Map<string, Faults["history"][number]>();
  for (const { outcome, symptom, causes } of helpEntries(seen.map(({ record }) => record))) {
    const [cause, ...others] = causes;
    if (cause === undefined || others.length > 0 || (outcome !== "fixed" && outcome !== "found")) continue;
    const key = `${symptom} ${cause}`;
    counts.set(key, { symptom, cause, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return { symptoms: [...symptoms], history: [...counts.values()] };
}
