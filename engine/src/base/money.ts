/** Money is whole minor units (pence) of one currency; mixing currencies does not compile. */
export type Currency = "GBP" | "EUR" | "CHF" | "NOK";

export interface Money<C extends Currency = Currency> {
  readonly currency: C;
  /** whole pence; negative is owed back */
  readonly pence: number;
}

/** Makes money; throws unless `pence` is a safe whole number. */
export function money<C extends Currency>(currency: C, pence: number): Money<C> {
  if (!Number.isSafeInteger(pence)) throw new RangeError(`money: ${pence} is not a whole number of pence`);
  return { currency, pence };
}

export const gbp = (pence: number): Money<"GBP"> => money("GBP", pence);

export function addMoney<C extends Currency>(a: Money<C>, b: Money<NoInfer<C>>): Money<C> {
  return money(a.currency, a.pence + b.pence);
}

/** Total of the amounts; zero of the currency when there is none. */
export function sumMoney<C extends Currency>(currency: C, amounts: readonly Money<NoInfer<C>>[]): Money<C> {
  return money(
    currency,
    amounts.reduce((total, amount) => total + amount.pence, 0),
  );
}

/** Rounds to the nearest whole penny, half away from zero (HMRC VATREC12030: 0.5p and over rounds up). */
export function roundPence(exactPence: number): number {
  const rounded =
    Math.sign(exactPence) * Math.round(Math.abs(exactPence) + Number.EPSILON * Math.abs(exactPence));
  return rounded === 0 ? 0 : rounded;
}

/**
 * Splits an amount by weights without losing a penny: floor shares, then one penny each to the largest
 * remainders, earlier shares first on a tie. Weights are finite, not negative, not all zero.
 */
export function allocateMoney<C extends Currency>(amount: Money<C>, weights: readonly number[]): Money<C>[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (weights.some((weight) => !(weight >= 0) || !Number.isFinite(weight)) || !(total > 0)) {
    throw new RangeError("allocateMoney: weights must be finite, not negative and not all zero");
  }
  const sign = amount.pence < 0 ? -1 : 1;
  const pence = Math.abs(amount.pence);
  const exact = weights.map((weight) => (pence * weight) / total);
  const shares = exact.map((share) => Math.floor(share));
  let left = pence - shares.reduce((sum, share) => sum + share, 0);
  const order = exact
    .map((share, index) => ({ index, remainder: share - Math.floor(share) }))
    .sort((a, b) => b.remainder - a.remainder || a.index - b.index);
  for (let k = 0; left > 0; k = (k + 1) % order.length) {
    const index = order[k]!.index;
    shares[index] = shares[index]! + 1;
    left -= 1;
  }
  return shares.map((share) => money(amount.currency, sign * share));
}
