/** Vehicle identification number. */
import * as z from "zod/mini";
import { entry } from "./entry.ts";

const VALUE: Readonly<Record<string, number>> = {
  A: 1,
  B: 2,
  C: 3,
  D: 4,
  E: 5,
  F: 6,
  G: 7,
  H: 8,
  J: 1,
  K: 2,
  L: 3,
  M: 4,
  N: 5,
  P: 7,
  R: 9,
  S: 2,
  T: 3,
  U: 4,
  V: 5,
  W: 6,
  X: 7,
  Y: 8,
  Z: 9,
};
const WEIGHT = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/** Weighted sum of the 17 characters; the ninth has no weight. */
export function vinSum(vin: string): number {
  return [...vin].reduce((sum, letter, at) => sum + (VALUE[letter] ?? Number(letter)) * WEIGHT[at]!, 0);
}

/** Check digit, 0 to 9 or X. European numbers need not carry it in the ninth place. */
export function vinCheckDigit(vin: string): string {
  const rest = vinSum(vin) % 11;
  return rest === 10 ? "X" : String(rest);
}

const vin = z
  .string()
  .check(z.regex(/^[A-HJ-NPR-Z0-9]{17}$/, "expected 17 characters, capitals and digits without I, O and Q"));

export const VIN_FORMULAS = [
  entry("vin.checkDigit", "–", "vin-check", "check digit", { vin }, (a) => vinCheckDigit(a.vin)),
  entry("vin.weightedSum", "–", "vin-check", "weighted sum", { vin }, (a) => vinSum(a.vin)),
];
