import type { Finding } from "@setfair/engine";
import { WORDS } from "./words.ts";

/** Findings with what would mend them, worst first as the room gives them. */
export function writeFindings(findings: readonly Finding[]): string {
  if (findings.length === 0) return WORDS.t("cli.noFindings");
  const lines = findings.flatMap((finding) => [
    `• ${WORDS.say(`severity.${finding.severity}`)}: ${WORDS.findingText(finding)}`,
    ...finding.mends.map((mend) => `    ${WORDS.t("cli.mend", { text: WORDS.mendText(mend) })}`),
  ]);
  return [WORDS.t("cli.findings"), ...lines].join("\n");
}
