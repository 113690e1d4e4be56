import type { Finding, FindingBasis, Gate, Mend, Severity } from "../base/finding.ts";

interface More {
  readonly facts?: Finding["facts"];
  readonly sources?: readonly string[];
  readonly mends?: readonly (Mend | string)[];
  readonly about?: string;
}

/** Makes a finding; a mend without facts may be given by its code alone. */
export function makeFinding(
  gate: Gate,
  code: string,
  severity: Severity,
  basis: FindingBasis,
  { facts = {}, sources = [], mends = [], about }: More = {},
): Finding {
  const mended = mends.map((mend) => (typeof mend === "string" ? { code: mend, facts: {} } : mend));
  const made: Finding = { code, gate, severity, basis, facts, sources, mends: mended };
  return about === undefined ? made : { ...made, about };
}
