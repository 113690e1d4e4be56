import { figure } from "../../base/figure.ts";
import { remainingShare } from "../../formulas/worth.ts";
import { chargeOfRepair, workingOfRepair } from "./repair-cost.ts";
import { settlementLine } from "./settlement-line.ts";
import type { LateClaim, SettlementInput, SettlementLine } from "./types.ts";

/**
 * Damage that came to light after the settlement was shown. It is charged by the same measure as any other, once
 * photographs show it and how the place left, and a second person has signed; capped at the excess with its incident.
 */
export function claimLines({ claims, terms }: SettlementInput): SettlementLine[] {
  return (claims ?? []).map((claim) => {
    const because = whyNot(claim);
    const labour = terms.tariff.labour ?? "inFull";
    const { ageYears, lifeYears } = claim;
    const share = figure(
      remainingShare(ageYears, lifeYears, 0),
      "share",
      "worth.remainingShare",
      { ageYears, lifeYears, leastShare: 0 },
      "declared",
      "rental-code-2020",
    );
    return settlementLine({
      id: claim.id,
      code: "claim",
      about: claim.about,
      pence: because === null ? chargeOfRepair(claim.cost, share.value, labour) : 0,
      because,
      photographs: [...claim.departure, ...claim.photographs],
      working: [...workingOfRepair(claim.cost, labour, "estimate"), share],
      capped: true,
      incident: claim.incident,
    });
  });
}

function whyNot({ photographs, departure, secondSigned }: LateClaim): SettlementLine["because"] {
  if (photographs.length === 0) return "noEvidence";
  if (departure.length === 0) return "noDeparturePhotograph";
  return secondSigned ? null : "needsSecondSignature";
}
