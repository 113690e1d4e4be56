import type { HireData } from "../hire-data.ts";
import { directionOf, signaturesOf, wholeRecords } from "../record-facts.ts";

/** Signatures given before the keys for one of these. */
export const signedBefore = (data: HireData, ...purposes: readonly string[]): readonly string[] =>
  signaturesOf(data.records)
    .filter(({ purpose, direction }) => direction !== "back" && purposes.includes(purpose))
    .map(({ recordId }) => recordId);

/** The walk-round out of the vehicle before, with the signature on it. */
export const walkedOut = (data: HireData): readonly string[] =>
  wholeRecords(data.records)
    .filter((record) => directionOf(record) === "out")
    .map(({ id }) => id);
