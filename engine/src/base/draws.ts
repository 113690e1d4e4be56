import { keyedUniform, purposeKey } from "./random.ts";

/** Draws one after another for a search, each keyed by (seed, purpose, its number): uniform in (0, 1). */
export function drawsFor(seed: number, purpose: string): () => number {
  const key = purposeKey(purpose);
  let count = 0;
  return () => keyedUniform(seed, count++, 0, key);
}
