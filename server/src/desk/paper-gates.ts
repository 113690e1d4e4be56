import type { Finding } from "@setfair/engine";
import type { HireData } from "./hire-data.ts";
import { questionsOut } from "./questions.ts";
import { signaturesOf } from "./record-facts.ts";

/** What is signed before the keys go: agreement with the statement of liability, briefing, condition. */
export const NEEDED_SIGNATURES = ["agreement", "briefing", "condition"] as const;

const open = (purpose: string): Finding => ({
  code: `signatures.${purpose}`,
  gate: "signatures",
  severity: "unchecked",
  basis: "policy",
  facts: {},
  sources: ["practice"],
  mends: [{ code: "signatures.sign", facts: {} }],
  about: purpose,
});

export { moneyGate as moneyFindings } from "../money/hire-money.ts";

export function missingSignatures(data: HireData): readonly string[] {
  const signed = new Set(
    signaturesOf(data.records)
      .filter(({ direction }) => direction !== "back")
      .map(({ purpose }) => purpose),
  );
  return NEEDED_SIGNATURES.filter((purpose) => !signed.has(purpose));
}

export function signatureFindings(data: HireData): readonly Finding[] {
  const asked = questionsOut(data).length;
  return [
    ...missingSignatures(data).map(open),
    ...(asked === 0
      ? []
      : [
          {
            ...open("twoReadings"),
            facts: { count: asked },
            mends: [{ code: "condition.decide", facts: {} }],
          },
        ]),
  ];
}
