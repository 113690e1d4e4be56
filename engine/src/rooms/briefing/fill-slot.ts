export interface Worth {
  readonly minutes: number;
  /** pence of risk that showing it takes away */
  readonly pence: number;
}

/** Time is counted in half minutes, as the cards state it. */
const STEPS_PER_MINUTE = 2;

/**
 * Which cards to show in the time: the set that takes away the most risk, found exactly over half minutes, so that
 * a longer slot never leaves more risk. Where two sets are equal, earlier cards come first.
 * @returns indices of `cards`, rising
 */
export function fillSlot(cards: readonly Worth[], slotMinutes: number): readonly number[] {
  const room = Math.max(0, Math.floor(slotMinutes * STEPS_PER_MINUTE + 1e-9));
  const lengths = cards.map(({ minutes }) => Math.ceil(minutes * STEPS_PER_MINUTE - 1e-9));
  // best[k][t]: most pence with the cards from k on in t half minutes
  const best = Array.from({ length: cards.length + 1 }, () => new Float64Array(room + 1));
  for (let k = cards.length - 1; k >= 0; k--) {
    const next = best[k + 1]!;
    for (let t = 0; t <= room; t++) {
      const shown = lengths[k]! <= t ? cards[k]!.pence + next[t - lengths[k]!]! : -1;
      best[k]![t] = Math.max(next[t]!, shown);
    }
  }
  return pickOut(cards, lengths, best, room);
}

function pickOut(
  cards: readonly Worth[],
  lengths: readonly number[],
  best: readonly Float64Array[],
  room: number,
): readonly number[] {
  const picked: number[] = [];
  let left = room;
  cards.forEach((card, k) => {
    const length = lengths[k]!;
    if (card.pence <= 0 || length > left) return;
    if (card.pence + best[k + 1]![left - length]! < best[k]![left]!) return;
    picked.push(k);
    left -= length;
  });
  return picked;
}
