import type { Trip } from "../../situation.ts";
import { applyDecisions, isAsked } from "./apply-decisions.ts";
import { type Decision, GROUPS, type Group } from "./decisions.ts";
import type { TripLiver } from "./live-chances.ts";
import { type GroupResult, searchGroup } from "./search-group.ts";

/** The best found may cost this share more than the best there is, as long as the groups do not touch each other. */
export const WITHIN = 0.02;

/** A trip with what was decided for it. */
export interface Candidate {
  readonly chosen: ReadonlySet<Decision>;
  readonly trip: Trip;
}

interface Found extends Candidate {
  readonly total: number;
  readonly proven: boolean;
}

interface GroupSearch {
  readonly group: Group;
  readonly decisions: readonly Decision[];
  readonly steps: Generator<number, GroupResult, number>;
  /** set that it asks for now; the best once it is done; kept while the others go on */
  mask: number;
  best: { mask: number; total: number } | null;
  result: GroupResult | null;
}

/** What fills the waste tank comes from the fresh one: waste is searched once the water is settled. */
const PHASES: readonly (readonly Group[])[] = [["energy", "water", "cassette", "def"], ["waste"]];
/** runs kept for trying single changes on the whole at the end, as a share of all */
const KEPT_FOR_THE_END = 0.3;

/**
 * Searches the groups of a phase side by side: each asks for one set of its decisions at a time, and one run of the
 * engine answers all of them. Stops after the work of `most` whole runs with the best that each has found.
 */
export function searchPlan(
  liver: TripLiver,
  trip: Trip,
  decisions: readonly Decision[],
  most: number,
): Found {
  const searches = GROUPS.flatMap((group) => startSearch(group, trip, decisions));
  const before = liver.runs;
  const until = before + most * (1 - KEPT_FOR_THE_END);
  for (const phase of PHASES) {
    const now = searches.filter(({ group }) => phase.includes(group));
    while (now.some(({ result }) => result === null) && liver.runs < until) {
      const { trouble } = liver.live(applyDecisions(trip, decisions, chosenOf(searches)));
      for (const search of now) step(search, trouble.get(search.group) ?? 0);
    }
    for (const search of now) search.mask = search.result?.best.mask ?? search.best?.mask ?? search.mask;
  }
  const proven = searches.every(({ result }) => result?.proven === true);
  const start = { chosen: chosenOf(searches), proven };
  return improve(liver, trip, decisions, start, before + most);
}

function startSearch(group: Group, trip: Trip, decisions: readonly Decision[]): readonly GroupSearch[] {
  const own = decisions.filter((one) => one.group === group);
  if (own.length === 0) return [];
  const efforts = own.map(({ effort }) => effort);
  const asked = maskOf(own, (one) => isAsked(trip, one));
  const steps = searchGroup(efforts, asked, WITHIN);
  return [{ group, decisions: own, steps, mask: steps.next().value as number, best: null, result: null }];
}

function step(search: GroupSearch, trouble: number): void {
  if (search.result !== null) return;
  const total = trouble + effortOf(chosenBy(search));
  if (search.best === null || total < search.best.total) search.best = { mask: search.mask, total };
  const next = search.steps.next(trouble);
  if (next.done === true) search.result = next.value;
  search.mask = next.done === true ? next.value.best.mask : next.value;
}

/**
 * The groups do touch a little (water that is out fills no waste tank), and a night kept cooler now and then helps
 * where two do not: try each single change once more on the whole, then each thing at another stop for no more effort.
 */
function improve(
  liver: TripLiver,
  trip: Trip,
  decisions: readonly Decision[],
  { chosen: start, proven }: Pick<Found, "chosen" | "proven">,
  until: number,
): Found {
  const lived = (chosen: ReadonlySet<Decision>) => {
    const candidate = { chosen, trip: applyDecisions(trip, decisions, chosen) };
    return { ...candidate, total: totalOf(liver, candidate) };
  };
  let best = lived(start);
  const order = decisions.toReversed();
  for (let k = 0, sinceMoved = 0; sinceMoved < order.length && liver.runs < until; k++, sinceMoved++) {
    const one = order[k % order.length]!;
    // nothing that costs more effort than all the trouble that is left can help
    if (!best.chosen.has(one) && one.effort >= best.total - effortOf(best.chosen)) continue;
    const chosen = new Set(best.chosen);
    if (!chosen.delete(one)) chosen.add(one);
    const tried = lived(chosen);
    if (tried.total >= best.total) continue;
    best = tried;
    sinceMoved = -1;
  }
  for (const moved of elsewhere(decisions, best.chosen)) {
    if (liver.runs >= until) break;
    const tried = lived(moved);
    if (tried.total < best.total) best = tried;
  }
  return { ...best, proven };
}

/** The set with one thing done at another stop instead, where that is no more effort. */
function elsewhere(decisions: readonly Decision[], chosen: ReadonlySet<Decision>): ReadonlySet<Decision>[] {
  const isSame = (one: Decision, other: Decision) =>
    one.kind === other.kind && (one.kind !== "act" || other.kind !== "act" || one.act === other.act);
  return [...chosen].flatMap((out) =>
    decisions
      .filter((one) => !chosen.has(one) && isSame(one, out) && one.effort <= out.effort)
      .map((one) => new Set([...chosen].map((each) => (each === out ? one : each)))),
  );
}

/** Effort of what is decided, pence. */
export function effortOf(decisions: Iterable<Decision>): number {
  return [...decisions].reduce((sum, { effort }) => sum + effort, 0);
}

/** Effort + cost × chance of trouble of a trip with what was decided for it, pence. */
export function totalOf(liver: TripLiver, { trip, chosen }: Candidate): number {
  return effortOf(chosen) + [...liver.live(trip).trouble.values()].reduce((a, b) => a + b, 0);
}

function maskOf(decisions: readonly Decision[], test: (one: Decision) => boolean): number {
  return decisions.reduce((mask, one, k) => (test(one) ? mask + 2 ** k : mask), 0);
}

// bits beyond 31 are kept by dividing
const hasBit = (mask: number, k: number) => Math.floor(mask / 2 ** k) % 2 === 1;
const chosenBy = ({ decisions, mask }: GroupSearch) => decisions.filter((_, k) => hasBit(mask, k));
const chosenOf = (searches: readonly GroupSearch[]) => new Set(searches.flatMap(chosenBy));
