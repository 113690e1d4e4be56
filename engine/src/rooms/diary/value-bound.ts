import type { AllocationModel } from "./allocation-model.ts";

/**
 * A value that no plan can pass. Each hire gets a price; what a vehicle can earn above the prices of what it takes is
 * found exactly, hire by hire in time, and prices plus earnings bound every plan (Lagrangian relaxation of "one
 * vehicle for each hire"). The prices are moved towards each hire being wanted once.
 * @param reached - value of a plan that is at hand; the bound stops where it meets it
 */
export function boundValue(model: AllocationModel, reached: number, isOver: () => boolean): number {
  const price = new Float64Array(model.hires);
  const wanted = new Int32Array(model.hires);
  let bound = model.value.reduce(
    (sum, value, hire) => sum + (model.allowed[hire]!.length > 0 ? value : 0),
    0,
  );
  const lists = hiresByVehicle(model);
  let pace = 1;
  let sinceBetter = 0;
  for (let round = 0; round < 400 && !isOver(); round++) {
    wanted.fill(0);
    let sum = price.reduce((total, each) => total + each, 0);
    for (const list of lists) sum += earn(model, list, price, wanted);
    if (sum < bound - 1e-9) {
      bound = sum;
      sinceBetter = 0;
    } else if (++sinceBetter % 12 === 0) pace /= 2;
    if (bound <= reached + 1e-6 * Math.max(1, reached)) return reached;
    movePrices(price, wanted, pace * (sum - reached));
  }
  const isWhole = model.value.every(Number.isInteger);
  return Math.max(reached, isWhole ? Math.floor(bound + 1e-6) : bound);
}

function movePrices(price: Float64Array, wanted: Int32Array, distance: number): void {
  let squares = 0;
  for (let hire = 0; hire < price.length; hire++) {
    const slope = wanted[hire]! - 1;
    if (slope > 0 || price[hire]! > 0) squares += slope * slope;
  }
  if (squares === 0) return;
  for (let hire = 0; hire < price.length; hire++)
    price[hire] = Math.max(0, price[hire]! + (distance / squares) * (wanted[hire]! - 1));
}

/** For each vehicle the hires that it may serve, by end. */
function hiresByVehicle(model: AllocationModel): Int32Array[] {
  const lists: number[][] = Array.from({ length: model.vehicles }, () => []);
  const byEnd = [...model.allowed.keys()].sort((a, b) => model.endRank[a]! - model.endRank[b]!);
  for (const hire of byEnd) for (const vehicle of model.allowed[hire]!) lists[vehicle]!.push(hire);
  return lists.map((list) => Int32Array.from(list));
}

/** The most a vehicle can earn above prices; counts in `wanted` what it would take for that. */
function earn(model: AllocationModel, list: Int32Array, price: Float64Array, wanted: Int32Array): number {
  const most = new Float64Array(list.length + 1);
  const from = new Int32Array(list.length + 1);
  for (let k = 0; k < list.length; k++) {
    const hire = list[k]!;
    most[k + 1] = most[k]!;
    from[k + 1] = -1;
    const gain = model.value[hire]! - price[hire]!;
    if (gain <= 0) continue;
    const before = countEnded(model, list, k, model.startRank[hire]!);
    if (most[before]! + gain > most[k]!) {
      most[k + 1] = most[before]! + gain;
      from[k + 1] = before;
    }
  }
  for (let k = list.length; k > 0; k = from[k]! < 0 ? k - 1 : from[k]!)
    if (from[k]! >= 0) wanted[list[k - 1]!]!++;
  return most[list.length]!;
}

/** How many of the first `count` hires are over by a moment. */
function countEnded(model: AllocationModel, list: Int32Array, count: number, rank: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (model.endRank[list[middle]!]! <= rank) low = middle + 1;
    else high = middle;
  }
  return low;
}
