/** The loads that have limits, kg: total, front axle, rear axle. */
export type Loads = readonly [total: number, front: number, rear: number];

/** Something that can come off, and what that takes from each load (negative where it adds to the front). */
export interface Removable {
  readonly id: string;
  readonly takes: Loads;
}

/** Something that can be taken off in steps and counts as one thing: amounts from small to large. */
export interface Stepped {
  readonly amounts: readonly number[];
  /** per unit of the amount */
  readonly takes: Loads;
}

export interface Choice {
  readonly ids: readonly string[];
  /** of the stepped one; 0 when left alone */
  readonly amount: number;
  readonly kg: number;
}

export interface Search {
  readonly choice: Choice | null;
  /** every combination that could matter was looked at */
  readonly complete: boolean;
}

/** combinations looked at before the search gives up and says so */
const MOST_NODES = 400_000;
const TOLERANCE = 1e-9;

/**
 * The fewest things to take off so that no excess is left, then the least kg among as many things.
 * Depth-first over how many things, with an upper bound of what the rest could still take.
 */
export function searchLeastChange(
  excess: Loads,
  removables: readonly Removable[],
  stepped: Stepped | null,
): Search {
  const things = [...removables].sort((a, b) => b.takes[0] - a.takes[0]);
  const most = things.length + (stepped === null ? 0 : 1);
  const state: State = { things, bounds: suffixBounds(things), stepped, best: null, nodes: 0 };
  for (let count = 1; count <= most && state.best === null && state.nodes < MOST_NODES; count++) {
    // of equals the one that leaves things aboard and takes less water wins, since it is found first
    if (stepped !== null) walk(state, excess, 0, count - 1, [], 0, true);
    if (count <= things.length) walk(state, excess, 0, count, [], 0, false);
  }
  return { choice: state.best, complete: state.nodes < MOST_NODES };
}

interface State {
  readonly things: readonly Removable[];
  /** per load: what the best of the rest from an index on may take, by how many */
  readonly bounds: readonly (readonly (readonly number[])[])[];
  readonly stepped: Stepped | null;
  best: Choice | null;
  nodes: number;
}

const isClear = (excess: Loads) => excess.every((each) => each <= TOLERANCE);
const less = (a: Loads, b: Loads, times = 1): Loads => [
  a[0] - b[0] * times,
  a[1] - b[1] * times,
  a[2] - b[2] * times,
];

function walk(
  state: State,
  excess: Loads,
  from: number,
  left: number,
  ids: readonly string[],
  kg: number,
  withStepped: boolean,
): void {
  state.nodes += 1;
  if (state.nodes >= MOST_NODES || (state.best !== null && kg >= state.best.kg)) return;
  if (left === 0) {
    finish(state, excess, ids, kg, withStepped);
    return;
  }
  if (!mayClear(state, excess, from, left, withStepped)) return;
  for (let k = from; k + left <= state.things.length; k++) {
    const thing = state.things[k]!;
    walk(
      state,
      less(excess, thing.takes),
      k + 1,
      left - 1,
      [...ids, thing.id],
      kg + thing.takes[0],
      withStepped,
    );
  }
}

function finish(state: State, excess: Loads, ids: readonly string[], kg: number, withStepped: boolean): void {
  const { stepped, best } = state;
  const amount =
    withStepped && stepped !== null
      ? stepped.amounts.find((each) => isClear(less(excess, stepped.takes, each)))
      : isClear(excess)
        ? 0
        : undefined;
  if (amount === undefined) return;
  const total = kg + amount * (stepped?.takes[0] ?? 0);
  if (best === null || total < best.kg - TOLERANCE) state.best = { ids, amount, kg: total };
}

/** Whether the rest could clear the excess if each load could have its own best picks. */
function mayClear(
  { bounds, stepped }: State,
  excess: Loads,
  from: number,
  left: number,
  withStepped: boolean,
): boolean {
  const largest = withStepped ? (stepped?.amounts.at(-1) ?? 0) : 0;
  return excess.every((over, load) => {
    const rest = bounds[load]?.[from]?.[left] ?? 0;
    return over - rest - Math.max(0, (stepped?.takes[load] ?? 0) * largest) <= TOLERANCE;
  });
}

function suffixBounds(things: readonly Removable[]): number[][][] {
  return [0, 1, 2].map((load) =>
    things.map((_, from) => {
      const takes = things.slice(from).map((thing) => Math.max(0, thing.takes[load] ?? 0));
      const sums = [0];
      for (const take of takes.sort((a, b) => b - a)) sums.push(sums.at(-1)! + take);
      return sums;
    }),
  );
}
