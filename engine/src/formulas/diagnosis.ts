/** Sums behind the fault finder; free of the formula book, so that the hirer's phone carries only these. */
export interface CauseWeightArgs {
  readonly priorShare: number;
  readonly historyStrength: number;
  readonly found: number;
  readonly foundOfAll: number;
  readonly times: number;
  readonly troubleChance: number;
  readonly missChance: number;
  readonly missed: number;
}

/**
 * Weight of a cause, not normalised: the share of practice and the cases that the depot has seen
 * (Dirichlet prior worth `historyStrength` cases), times what a store in trouble makes of it, times the
 * chance that every check that named it missed it.
 */
export function causeWeight(a: CauseWeightArgs): number {
  const share = (a.priorShare * a.historyStrength + a.found) / (a.historyStrength + a.foundOfAll);
  return share * (1 + (a.times - 1) * a.troubleChance) * a.missChance ** a.missed;
}

/** Share of one weight among all. */
export function causeChance(weight: number, weightOfAll: number): number {
  return weight / weightOfAll;
}

/** Minutes of each check times the chance that it comes to it. */
export function expectedMinutes(minutes: readonly number[], reached: readonly number[]): number {
  return minutes.reduce((sum, each, index) => sum + each * (reached[index] ?? 0), 0);
}
