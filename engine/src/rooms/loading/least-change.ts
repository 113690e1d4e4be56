/** One way of treating a thing: what it takes from each limited load (negative where it adds), and what it costs the party. */
export interface ChangeOption<Act> {
  readonly trouble: number;
  /** kg taken off the vehicle */
  readonly kg: number;
  /** by load, in the order of the excesses, kg */
  readonly takes: readonly number[];
  readonly acts: readonly Act[];
}

/** Things that are decided together: at most one of its options is taken. */
export type ChangeGroup<Act> = readonly ChangeOption<Act>[];

export interface Search<Act> {
  /** null where nothing clears every excess */
  readonly choice: { readonly acts: readonly Act[]; readonly trouble: number; readonly kg: number } | null;
  /** every combination that could matter was looked at */
  readonly complete: boolean;
}

/** steps of the search before it gives up and says so */
const MOST_NODES = 300_000;
const TOLERANCE = 1e-9;
/** weighs kg below trouble, so that of equals the one that takes least off wins */
const PER_KG = 1e-6;

const costOf = <Act>({ trouble, kg }: ChangeOption<Act>): number => trouble + kg * PER_KG;

/**
 * The cheapest choice of one option, or none, from each group so that no excess is left (kg, over the limit where
 * positive). Branch and bound: depth first over the groups, cut where the rest cannot clear an excess, or not
 * for less than the best found. The bound lets each group give what it can at its best price, load by load.
 */
export function searchLeastChange<Act>(
  excess: readonly number[],
  groups: readonly ChangeGroup<Act>[],
): Search<Act> {
  const ordered = groups
    .filter((group) => group.length > 0)
    .map((group) => [...group].sort((a, b) => costOf(a) - costOf(b)))
    .sort((a, b) => mostOf(b, excess) - mostOf(a, excess));
  const state: State<Act> = {
    groups: ordered,
    offers: excess.map((_, load) => ordered.map((group) => offerOf(group, load))),
    best: null,
    nodes: 0,
  };
  walk(state, excess, 0, [], 0);
  const { best } = state;
  const complete = state.nodes < MOST_NODES;
  if (best === null) return { choice: null, complete };
  const sum = (of: (option: ChangeOption<Act>) => number) =>
    best.options.reduce((total, option) => total + of(option), 0);
  const acts = best.options.flatMap((option) => option.acts);
  return { choice: { acts, trouble: sum((each) => each.trouble), kg: sum((each) => each.kg) }, complete };
}

/** The most that a group can take from one load, and the least cost for each kg of it. */
interface Offer {
  readonly most: number;
  readonly perKg: number;
}

interface State<Act> {
  readonly groups: readonly ChangeGroup<Act>[];
  /** by load, then by group */
  readonly offers: readonly (readonly Offer[])[];
  best: { readonly options: readonly ChangeOption<Act>[]; readonly cost: number } | null;
  nodes: number;
}

const mostOf = <Act>(group: ChangeGroup<Act>, excess: readonly number[]): number =>
  Math.max(...group.flatMap(({ takes }) => takes.filter((_, load) => (excess[load] ?? 0) > 0)), 0);

function offerOf<Act>(group: ChangeGroup<Act>, load: number): Offer {
  const giving = group.filter(({ takes }) => (takes[load] ?? 0) > 0);
  return {
    most: Math.max(0, ...giving.map(({ takes }) => takes[load] ?? 0)),
    perKg: Math.min(Infinity, ...giving.map((option) => costOf(option) / (option.takes[load] ?? 1))),
  };
}

function walk<Act>(
  state: State<Act>,
  excess: readonly number[],
  from: number,
  chosen: readonly ChangeOption<Act>[],
  cost: number,
): void {
  state.nodes += 1;
  const limit = state.best?.cost ?? Infinity;
  if (state.nodes >= MOST_NODES || cost >= limit - TOLERANCE) return;
  if (excess.every((over) => over <= TOLERANCE)) {
    state.best = { options: chosen, cost };
    // going on may only cost more
    return;
  }
  if (from >= state.groups.length || cost + leastCost(state, excess, from) >= limit - TOLERANCE) return;
  for (const option of state.groups[from]!) {
    const left = excess.map((over, load) => over - (option.takes[load] ?? 0));
    walk(state, left, from + 1, [...chosen, option], cost + costOf(option));
  }
  walk(state, excess, from + 1, chosen, cost);
}

/** What clearing must still cost, at least; infinite where the rest cannot. */
function leastCost<Act>({ offers, groups }: State<Act>, excess: readonly number[], from: number): number {
  let least = 0;
  for (let load = 0; load < excess.length; load++) {
    let over = excess[load]!;
    if (over <= TOLERANCE) continue;
    const rest = offers[load]!.slice(from, groups.length).filter(({ most }) => most > 0);
    let cost = 0;
    for (const { most, perKg } of rest.sort((a, b) => a.perKg - b.perKg)) {
      const taken = Math.min(most, over);
      cost += taken * perKg;
      over -= taken;
      if (over <= TOLERANCE) break;
    }
    if (over > TOLERANCE) return Infinity;
    least = Math.max(least, cost);
  }
  return least;
}
