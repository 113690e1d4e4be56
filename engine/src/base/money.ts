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

/**
 * VAT inside an amount with VAT, whole pence, to the nearer penny, half a penny and over up (HMRC VATREC12030;
 * VATREC12020: a price set with VAT inside is not rounded down). Of a negative amount it is the negative.
 */
export function vatInside(grossPence: number, ratePercent: number): number {
  if (!(ratePercent >= 0) || !Number.isFinite(ratePercent))
    throw new RangeError("vatInside: a rate of 0 % or more");
  return roundPence((grossPence * ratePercent) / (100 + ratePercent));
}

/** Digits after the point of a currency's main unit (ISO 4217). @throws RangeError on a currency that is not in the table */
export function minorUnits(currency: string): number {
  const digits = MINOR_UNITS[currency];
  if (digits === undefined) throw new RangeError(`minorUnits: no currency ${currency} in the table`);
  return digits;
}
export const MINOR_UNITS: Readonly<Record<string, number>> = {
  GBP: 2,
  EUR: 2,
  CHF: 2,
  NOK: 2,
  SEK: 2,
  DKK: 2,
  ISK: 0,
  JPY: 0,
  KWD: 3,
};

/** An amount as a plain decimal for a file, without thousands or a sign of the currency: -1250 pence is "-12.50". */
export function decimalText(minor: number, currency: string): string {
  if (!Number.isSafeInteger(minor)) throw new RangeError("decimalText: not a whole number of minor units");
  const digits = minorUnits(currency);
  const text = String(Math.abs(minor)).padStart(digits + 1, "0");
  const sign = minor < 0 ? "-" : "";
  return digits === 0 ? `${sign}${text}` : `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}
