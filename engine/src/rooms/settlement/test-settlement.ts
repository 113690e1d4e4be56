/** Differences and the whole input of a settlement, for tests. */
import { figure } from "../../base/figure.ts";
import { testTerms } from "../quote/test-terms.ts";
import { settleHire } from "./settle-hire.ts";
import type { InputDifference } from "./settlement-line.ts";
import type { SettlementInput } from "./types.ts";

export const photo = "b".repeat(64);
export const base = {
  checkId: null,
  systemKind: null,
  charge: null,
  outRecords: ["o1"],
  backRecords: ["b1"],
  photographs: [photo],
};
const read = (value: number, unit: string) => ({ ...figure(value, unit, "-", {}, "measured"), inputs: {} });
export const reading = (charge: string, out: number, back: number, unit: string): InputDifference => ({
  ...base,
  id: `reading:${charge}`,
  kind: "reading",
  checkId: charge,
  charge,
  out: read(out, unit),
  back: read(back, unit),
  change: read(back - out, unit),
  tolerance: read(0, unit),
});
export const mark = (
  id: string,
  more: Partial<Extract<InputDifference, { kind: "mark" }>> = {},
): InputDifference => ({
  ...base,
  id,
  kind: "mark",
  charge: "damage",
  part: "cab.bodyNearside",
  view: "nearside",
  markKind: "scratch",
  sizeMm: 80,
  xShare: 0.4,
  yShare: 0.5,
  backRecords: [`r-${id}`],
  ...more,
});
export const kit = (short: number): InputDifference => ({
  ...base,
  id: "count:leads",
  kind: "count",
  checkId: "hookUp.leads",
  systemKind: "hookUp",
  charge: "missingItem",
  expected: 1,
  counted: 1 - short,
  short,
});
/** What comes to light late, with all that it needs to be charged. */
export const lateClaim = {
  id: "claim.1",
  about: "Bent step",
  cost: { partsPence: 40_000, labourPence: 10_000 },
  ageYears: 4,
  lifeYears: 8,
  incident: "kerb",
  photographs: [photo],
  departure: [photo],
  secondSigned: true,
};
export const input = (
  differences: readonly InputDifference[],
  change: Partial<SettlementInput> = {},
): SettlementInput => ({
  terms: testTerms(),
  hire: {
    id: "h1",
    from: "2026-05-09T15:00",
    to: "2026-05-16T10:00",
    returnedAt: "2026-05-16T09:50",
    timeZone: "Europe/London",
    allowanceKm: 1680,
    fuel: "diesel",
    fuelTankLitres: 90,
    defLitresPer1000Km: 1.5,
    ageYears: {},
  },
  differences: [...differences],
  classes: {},
  depositPence: 100000,
  disputed: [],
  chargedElsewhere: [],
  ...change,
});
export const settle = (differences: readonly InputDifference[], change: Partial<SettlementInput> = {}) =>
  settleHire(input(differences, change)).result;
export const amounts = (settlement: ReturnType<typeof settle>) =>
  settlement.lines.map(({ code, amount }) => [code, amount.pence]);
