const MOST_SHARES = 8;

/** Quantiles over the lives, with a weight for each life where readings have been taken into account. */
export class SpreadOf {
  private readonly sorted: Float64Array;
  private readonly found = new Float64Array(MOST_SHARES);
  private readonly order: Uint16Array;

  /** `weights` add up to 1; null where every life counts the same */
  constructor(
    readonly n: number,
    readonly weights: Float64Array | null,
  ) {
    this.sorted = new Float64Array(n);
    this.order = new Uint16Array(n);
  }

  /** Quantiles of the values at the given shares (at most eight), rising. Equal weights: type 7 (Hyndman & Fan 1996). */
  quantiles(values: Float64Array, shares: readonly number[]): number[] {
    const found = this.read(values, shares);
    return shares.map((_, k) => found[k]!);
  }

  /** The same without a new list: what is handed back is overwritten by the next call. */
  read(values: Float64Array, shares: readonly number[]): Float64Array {
    if (isAllOne(values)) for (let s = 0; s < shares.length; s++) this.found[s] = values[0]!;
    else if (this.weights === null) this.plain(values, shares);
    else this.weighted(values, shares, this.weights);
    return this.found;
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
    const { n, weights } = this;
    let sum = 0;
    if (weights === null) {
      for (let i = 0; i < n; i++) sum += values[i]!;
      return sum / n;
    }
    for (let i = 0; i < n; i++) sum += values[i]! * weights[i]!;
    return sum;
  }

  private plain(values: Float64Array, shares: readonly number[]): void {
    const { n, sorted, found } = this;
    sorted.set(values);
    let from = 0;
    for (let s = 0; s < shares.length; s++) {
      const at = shares[s]! * (n - 1);
      const k = Math.floor(at);
      // only as far in order as the shares ask, each from where the one before ended
      bringInPlace(sorted, from, n - 1, k);
      const next = Math.min(k + 1, n - 1);
      const low = sorted[k]!;
      let high = sorted[next]!;
      for (let i = next + 1; i < n; i++) if (sorted[i]! < high) high = sorted[i]!;
      from = k;
      // infinite where that share of the lives never gets there
      found[s] = low === high || at === k ? low : low + (at - k) * (high - low);
    }
  }

  /** The smallest value at or under which the asked share of the weight lies. */
  private weighted(values: Float64Array, shares: readonly number[], weights: Float64Array): void {
    for (let i = 0; i < this.n; i++) this.order[i] = i;
    this.order.sort((a, b) => {
      const first = values[a]!;
      const second = values[b]!;
      return first < second ? -1 : first > second ? 1 : 0;
    });
    const { found } = this;
    found.fill(values[this.order[this.n - 1]!]!, 0, shares.length);
    let below = 0;
    let next = 0;
    for (let k = 0; k < this.n && next < shares.length; k++) {
      below += weights[this.order[k]!]!;
      while (next < shares.length && below >= shares[next]! - 1e-12) {
        found[next] = values[this.order[k]!]!;
        next += 1;
      }
    }
  }
}

function isAllOne(values: Float64Array): boolean {
  const first = values[0]!;
  for (let i = 1; i < values.length; i++) if (values[i]! !== first) return false;
  return true;
}

/** Puts the k-th smallest value between two places into place k, smaller ones before it, larger ones after (Hoare 1961). */
function bringInPlace(values: Float64Array, first: number, last: number, k: number): void {
  let low = first;
  let high = last;
  while (low < high) {
    const pivot = values[(low + high) >> 1]!;
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      const swapped = values[i]!;
      values[i] = values[j]!;
      values[j] = swapped;
      i++;
      j--;
    }
    if (k <= j) high = j;
    else if (k >= i) low = i;
    else return;
  }
}
