/** Quantiles over the lives, with a weight for each life where readings have been taken into account. */
export class SpreadOf {
  private readonly sorted: Float64Array;
  private readonly order: Uint16Array;

  /** `weights` add up to 1; null where every life counts the same */
  constructor(
    readonly n: number,
    readonly weights: Float64Array | null,
  ) {
    this.sorted = new Float64Array(n);
    this.order = new Uint16Array(n);
  }

  /** Quantiles of the values at the given shares, rising. Equal weights: type 7 (Hyndman & Fan 1996). */
  quantiles(values: Float64Array, shares: readonly number[]): number[] {
    return this.weights === null ? this.plain(values, shares) : this.weighted(values, shares, this.weights);
  }

  /** Share of the lives for which a test holds. */
  chance(test: (life: number) => boolean): number {
    let share = 0;
    for (let i = 0; i < this.n; i++) if (test(i)) share += this.weights === null ? 1 : this.weights[i]!;
    if (this.weights === null) return share / this.n;
    // weights add up to 1 but for rounding
    return share > 1 - 1e-9 ? 1 : share;
  }

  mean(values: Float64Array): number {
    let sum = 0;
    for (let i = 0; i < this.n; i++)
      sum += values[i]! * (this.weights === null ? 1 / this.n : this.weights[i]!);
    return sum;
  }

  private plain(values: Float64Array, shares: readonly number[]): number[] {
    this.sorted.set(values);
    this.sorted.sort();
    return shares.map((share) => {
      const at = share * (this.n - 1);
      const k = Math.floor(at);
      const low = this.sorted[k]!;
      const high = this.sorted[Math.min(k + 1, this.n - 1)]!;
      // infinite where that share of the lives never gets there
      return low === high || at === k ? low : low + (at - k) * (high - low);
    });
  }

  /** The smallest value at or under which the asked share of the weight lies. */
  private weighted(values: Float64Array, shares: readonly number[], weights: Float64Array): number[] {
    for (let i = 0; i < this.n; i++) this.order[i] = i;
    this.order.sort((a, b) => {
      const first = values[a]!;
      const second = values[b]!;
      return first < second ? -1 : first > second ? 1 : 0;
    });
    const found = shares.map(() => values[this.order[this.n - 1]!]!);
    let below = 0;
    let next = 0;
    for (let k = 0; k < this.n && next < shares.length; k++) {
      below += weights[this.order[k]!]!;
      while (next < shares.length && below >= shares[next]! - 1e-12) {
        found[next] = values[this.order[k]!]!;
        next += 1;
      }
    }
    return found;
  }
}
