import { addDays, type InsurancePolicy, type IsoDate } from "@setfair/engine";
import type { DatedVersion } from "../store/types.ts";
import { asDocument } from "./documents.ts";

export interface InsuranceOfHire {
  readonly version: DatedVersion;
  readonly document: InsurancePolicy;
  /** renewals that begin where it ends, while the hire lasts */
  readonly following: readonly InsurancePolicy[];
}

/** The criteria in force when the hire begins, the last written of a day; today's where none is dated so early. */
export function insuranceOn(
  versions: readonly DatedVersion[],
  { first, last, today }: { readonly first: IsoDate; readonly last: IsoDate; readonly today: IsoDate },
): InsuranceOfHire | null {
  const inForce = (on: IsoDate) => versions.filter(({ validFrom }) => validFrom <= on).at(-1);
  const version = inForce(first) ?? inForce(today) ?? null;
  if (version === null) return null;
  const document = asDocument<InsurancePolicy>(version.document);
  const following: InsurancePolicy[] = [];
  for (let until = document.validTo; until < last; ) {
    const next = inForce(addDays(until, 1));
    const renewal = next === undefined ? null : asDocument<InsurancePolicy>(next.document);
    if (renewal === null || renewal.validTo <= until) break;
    following.push(renewal);
    until = renewal.validTo;
  }
  return { version, document, following };
}
