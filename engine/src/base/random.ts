/**
 * Keyed random numbers: every draw is a pure function of (seed, trip, day, purpose), never taken in
 * sequence, so that adding a system or changing a plan leaves every other draw as it was.
 * The mixing is the 32-bit finaliser of MurmurHash3 (A. Appleby, public domain, 2011), applied in a chain.
 */
function mix(h: number): number {
  h ^= h >>> 16;
  h = Math.imul(h, 0x85ebca6b);
  h ^= h >>> 13;
  h = Math.imul(h, 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** Turns a purpose ("weather.anomaly") into a 32-bit key (FNV-1a); compute it once, outside the loop. */
export function purposeKey(purpose: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < purpose.length; i++) h = Math.imul(h ^ purpose.charCodeAt(i), 0x01000193);
  return h >>> 0;
}

/** Uniform in (0, 1), never 0 or 1. All arguments are integers; `day` may be any slot number. */
export function keyedUniform(seed: number, trip: number, day: number, purpose: number): number {
  let h = mix((seed | 0) + 0x9e3779b9);
  h = mix(h ^ Math.imul(trip + 1, 0x9e3779b1));
  h = mix(h ^ Math.imul(day + 1, 0x85ebca77));
  h = mix(h ^ purpose);
  return (h + 0.5) / 4294967296;
}

/** Standard normal by inverting the distribution function of {@link keyedUniform}. */
export function keyedNormal(seed: number, trip: number, day: number, purpose: number): number {
  return normalQuantile(keyedUniform(seed, trip, day, purpose));
}

/**
 * Quantile of the standard normal, p in (0, 1): Acklam's rational approximation (P. J. Acklam, 2003),
 * relative error below 1.15e-9.
 */
export function normalQuantile(p: number): number {
  const low = 0.02425;
  if (p < low) return tail(Math.sqrt(-2 * Math.log(p)));
  if (p > 1 - low) return -tail(Math.sqrt(-2 * Math.log(1 - p)));
  const q = p - 0.5;
  const r = q * q;
  return (
    ((((((-3.969683028665376e1 * r + 2.209460984245205e2) * r - 2.759285104469687e2) * r +
      1.38357751867269e2) *
      r -
      3.066479806614716e1) *
      r +
      2.506628277459239) *
      q) /
    (((((-5.447609879822406e1 * r + 1.615858368580409e2) * r - 1.556989798598866e2) * r +
      6.680131188771972e1) *
      r -
      1.328068155288572e1) *
      r +
      1)
  );
}

function tail(q: number): number {
  return (
    (((((-7.784894002430293e-3 * q - 3.223964580411365e-1) * q - 2.400758277161838) * q - 2.549732539343734) *
      q +
      4.374664141464968) *
      q +
      2.938163982698783) /
    ((((7.784695709041462e-3 * q + 3.224671290700398e-1) * q + 2.445134137142996) * q + 3.754408661907416) *
      q +
      1)
  );
}
