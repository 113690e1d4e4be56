import type { RoomAnswer } from "../../base/finding.ts";
import { nearestIds } from "../../formulas/nearest-ids.ts";
import { makeFinding } from "../make-finding.ts";
import { diagnoseSymptom } from "./diagnose-symptom.ts";
import type { DiagnosisInput } from "./input.ts";
import { symptomsOf } from "./symptoms-of.ts";
import type { Diagnosis } from "./types.ts";

/**
 * The fault finder of this vehicle. A symptom that the vehicle cannot have is a finding with the nearest ones
 * that it can.
 * @throws BadInput where a fitted system is not valid
 */
export function diagnose(input: DiagnosisInput): RoomAnswer<Diagnosis | null> {
  const symptoms = symptomsOf(input.vehicle);
  const on = symptoms.find(({ symptom }) => symptom.id === input.symptom);
  if (on !== undefined) return diagnoseSymptom(on, input);
  const near = nearestIds(
    input.symptom,
    symptoms.map(({ symptom }) => symptom.id),
    3,
  ).join(", ");
  return {
    result: null,
    findings: [
      makeFinding("defects", "diagnosis.unknownSymptom", "refuse", "policy", {
        facts: { symptom: input.symptom, near, known: symptoms.length },
        mends: [{ code: "diagnosis.nearSymptoms", facts: { near } }],
        about: input.symptom,
      }),
    ],
  };
}
