/**
 * The inner loops of the whole forecast: one pass over the lives for one mode. One loop for each shape of mode, since
 * a loop for all of them would go through fourteen arrays where most modes have six; longer than most functions, so
 * that each stays one loop. In each: the activity is the least of what is wanted, what the mode allows, what the
 * stores it needs can yield and what the store it gives to has room for; a level goes past its bound by rounding
 * only, and is then set to it.
 */
/** One store as a mode meets it: the amount at activity 1 and where it is booked. */
export interface Port {
  /** index of the store; −1 where the mode has no such port */
  readonly store: number;
  readonly amount: Float64Array;
  readonly level: Float64Array;
  /** floor of what is drawn from, ceiling of what is given to */
  readonly bound: Float64Array;
  readonly booked: Float64Array;
}

/** Which loop serves a mode: what it takes and what it gives. */
type Shape = "take" | "give" | "turn" | "takeTwo";

export interface CompiledMode {
  readonly shape: Shape;
  readonly limit: Float64Array;
  readonly first: Port;
  readonly second: Port;
  readonly gift: Port;
  /** index of the store where it is a supply; −1 where it is none */
  readonly firstSupply: number;
  readonly secondSupply: number;
  readonly givenSupply: number;
}

export function shapeOf(first: Port, second: Port, gift: Port): Shape {
  if (second.store >= 0) return "takeTwo";
  if (gift.store < 0) return "take";
  return first.store < 0 ? "give" : "turn";
}

/**
 * Settles one mode for every life: takes what it can from `left` and books it; adds up by store what was drawn and
 * given over all lives. True where something is left in any life.
 */
export function settleMode(
  left: Float64Array,
  mode: CompiledMode,
  n: number,
  drawSum: Float64Array,
  giveSum: Float64Array,
): boolean {
  switch (mode.shape) {
    case "take":
      return take(left, mode, n, drawSum);
    case "give":
      return give(left, mode, n, giveSum);
    case "turn":
      return turn(left, mode, n, drawSum, giveSum);
    default:
      return takeTwo(left, mode, n, drawSum, giveSum);
  }
}

function take(left: Float64Array, { limit, first }: CompiledMode, n: number, drawSum: Float64Array): boolean {
  const { store, amount, level, bound, booked } = first;
  let sum = 0;
  let rest = 0;
  for (let i = 0; i < n; i++) {
    const wanted = left[i]!;
    if (!(wanted > 0)) continue;
    let a = Math.min(wanted, limit[i]!);
    const before = level[i]!;
    const floor = bound[i]!;
    const need = amount[i]!;
    const has = before - floor;
    if (a * need > has) a = has > 0 ? has / need : 0;
    if (a > 0) {
      const after = Math.max(before - a * need, floor);
      level[i] = after;
      booked[i] = booked[i]! + (before - after);
      sum += before - after;
      left[i] = wanted - a;
      rest += wanted - a;
    } else rest += wanted;
  }
  // a mode that needs nothing and whose give nobody holds
  if (store >= 0) drawSum[store] = drawSum[store]! + sum;
  return rest > 0;
}

function give(left: Float64Array, { limit, gift }: CompiledMode, n: number, giveSum: Float64Array): boolean {
  const { store, amount, level, bound, booked } = gift;
  let sum = 0;
  let rest = 0;
  for (let i = 0; i < n; i++) {
    const wanted = left[i]!;
    if (!(wanted > 0)) continue;
    let a = Math.min(wanted, limit[i]!);
    const before = level[i]!;
    const ceil = bound[i]!;
    const gives = amount[i]!;
    const room = ceil - before;
    if (a * gives > room) a = room > 0 ? room / gives : 0;
    if (a > 0) {
      const after = Math.min(before + a * gives, ceil);
      level[i] = after;
      booked[i] = booked[i]! + (after - before);
      sum += after - before;
      left[i] = wanted - a;
      rest += wanted - a;
    } else rest += wanted;
  }
  giveSum[store] = giveSum[store]! + sum;
  return rest > 0;
}

/** One need and one give: a flame, a charger. */
function turn(
  left: Float64Array,
  { limit, first, gift }: CompiledMode,
  n: number,
  drawSum: Float64Array,
  giveSum: Float64Array,
): boolean {
  const { amount: need1, level: level1, bound: floor1, booked: out1 } = first;
  const { amount: give3, level: level3, bound: ceil3, booked: in3 } = gift;
  let sum1 = 0;
  let sum3 = 0;
  let rest = 0;
  for (let i = 0; i < n; i++) {
    const wanted = left[i]!;
    if (!(wanted > 0)) continue;
    let a = Math.min(wanted, limit[i]!);
    const has = level1[i]! - floor1[i]!;
    if (a * need1[i]! > has) a = has > 0 ? has / need1[i]! : 0;
    const room = ceil3[i]! - level3[i]!;
    if (a * give3[i]! > room) a = room > 0 ? room / give3[i]! : 0;
    if (a > 0) {
      const before1 = level1[i]!;
      const after1 = Math.max(before1 - a * need1[i]!, floor1[i]!);
      level1[i] = after1;
      out1[i] = out1[i]! + (before1 - after1);
      sum1 += before1 - after1;
      const before3 = level3[i]!;
      const after3 = Math.min(before3 + a * give3[i]!, ceil3[i]!);
      level3[i] = after3;
      in3[i] = in3[i]! + (after3 - before3);
      sum3 += after3 - before3;
      left[i] = wanted - a;
      rest += wanted - a;
    } else rest += wanted;
  }
  drawSum[first.store] = drawSum[first.store]! + sum1;
  giveSum[gift.store] = giveSum[gift.store]! + sum3;
  return rest > 0;
}

/** Two needs, and a give where there is one: a heater with its fan, a tap with its pump. */
function takeTwo(
  left: Float64Array,
  { limit, first, second, gift }: CompiledMode,
  n: number,
  drawSum: Float64Array,
  giveSum: Float64Array,
): boolean {
  const { amount: need1, level: level1, bound: floor1, booked: out1 } = first;
  const { amount: need2, level: level2, bound: floor2, booked: out2 } = second;
  const { amount: give3, level: level3, bound: ceil3, booked: in3 } = gift;
  let sum1 = 0;
  let sum2 = 0;
  let sum3 = 0;
  let rest = 0;
  for (let i = 0; i < n; i++) {
    const wanted = left[i]!;
    if (!(wanted > 0)) continue;
    let a = Math.min(wanted, limit[i]!);
    const has1 = level1[i]! - floor1[i]!;
    if (a * need1[i]! > has1) a = has1 > 0 ? has1 / need1[i]! : 0;
    const has2 = level2[i]! - floor2[i]!;
    if (a * need2[i]! > has2) a = has2 > 0 ? has2 / need2[i]! : 0;
    const room = ceil3[i]! - level3[i]!;
    if (a * give3[i]! > room) a = room > 0 ? room / give3[i]! : 0;
    if (!(a > 0)) {
      rest += wanted;
      continue;
    }
    const before1 = level1[i]!;
    const after1 = Math.max(before1 - a * need1[i]!, floor1[i]!);
    level1[i] = after1;
    out1[i] = out1[i]! + (before1 - after1);
    sum1 += before1 - after1;
    const before2 = level2[i]!;
    const after2 = Math.max(before2 - a * need2[i]!, floor2[i]!);
    level2[i] = after2;
    out2[i] = out2[i]! + (before2 - after2);
    sum2 += before2 - after2;
    const before3 = level3[i]!;
    const after3 = Math.min(before3 + a * give3[i]!, ceil3[i]!);
    level3[i] = after3;
    in3[i] = in3[i]! + (after3 - before3);
    sum3 += after3 - before3;
    left[i] = wanted - a;
    rest += wanted - a;
  }
  drawSum[first.store] = drawSum[first.store]! + sum1;
  drawSum[second.store] = drawSum[second.store]! + sum2;
  if (gift.store >= 0) giveSum[gift.store] = giveSum[gift.store]! + sum3;
  return rest > 0;
}
