import { type Finding, figure, type Money } from "@setfair/engine";
import type { HireData } from "./hire-data.ts";
import { partOf } from "./hire-data.ts";
import { moneyOfHire } from "./money-of-hire.ts";
import { signaturesOf } from "./record-facts.ts";

/** What is signed before the keys go: agreement with the statement of liability, briefing, condition. */
export const NEEDED_SIGNATURES = ["agreement", "briefing", "condition"] as const;

const pence = (money: Money<"GBP">) => figure(money.pence, "pence", "-", {}, "computed");

const open = (
  gate: "money" | "signatures",
  code: string,
  facts: Finding["facts"],
  mend: string,
  about?: string,
): Finding => ({
  code,
  gate,
  severity: "unchecked",
  basis: "policy",
  facts,
  sources: ["practice"],
  mends: [{ code: mend, facts: {} }],
  ...(about === undefined ? {} : { about }),
});

/** Money: a price that the customer accepted, paid in full, and the damage deposit held. */
export function moneyFindings(data: HireData): readonly Finding[] {
  const quote = partOf(data, "quote");
  if (quote === null || quote.acceptedAt === null)
    return [open("money", "money.noAcceptedQuote", {}, "money.acceptQuote")];
  const { owed, depositDue, depositHeld } = moneyOfHire(data);
  const findings: Finding[] = [];
  if (owed.pence > 0) findings.push(open("money", "money.owed", { owed: pence(owed) }, "money.pay"));
  if (depositHeld.pence < depositDue.pence) {
    findings.push(
      open(
        "money",
        "money.depositNotHeld",
        { due: pence(depositDue), held: pence(depositHeld) },
        "money.hold",
      ),
    );
  }
  return findings;
}

export function missingSignatures(data: HireData): readonly string[] {
  const signed = new Set(
    signaturesOf(data.records)
      .filter(({ direction }) => direction !== "back")
      .map(({ purpose }) => purpose),
  );
  return NEEDED_SIGNATURES.filter((purpose) => !signed.has(purpose));
}

export function signatureFindings(data: HireData): readonly Finding[] {
  return missingSignatures(data).map((purpose) =>
    open("signatures", `signatures.${purpose}`, {}, "signatures.sign", purpose),
  );
}
