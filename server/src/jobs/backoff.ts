/** After so many beginnings a job is given up and left for a person to see. */
export const MOST_ATTEMPTS = 10;

const FIRST_WAIT_S = 15;
const LONGEST_WAIT_S = 6 * 3600;

/** Seconds until the next attempt, after so many (1 or more): doubling from 15 s, at most 6 hours. */
export function waitSeconds(attempts: number): number {
  if (!Number.isInteger(attempts) || attempts < 1) throw new RangeError(`waitSeconds: ${attempts} attempts`);
  return Math.min(LONGEST_WAIT_S, FIRST_WAIT_S * 2 ** Math.min(attempts - 1, 20));
}
