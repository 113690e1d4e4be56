/**
 * How long a search may go on. The engine reads no clock: where `elapsedMs` is left out the search stops after
 * `iterations` alone, and the same input and seed give the same answer on every machine.
 */
export interface Budget {
  /** seconds that may pass by `elapsedMs`; no end by time where left out or where there is no clock */
  readonly seconds?: number;
  /** steps of the search; each planner has its own default where there is no clock, none where there is */
  readonly iterations?: number;
  /** key of the random draws; 1 where left out */
  readonly seed?: number;
  /** milliseconds since the call began, by the caller's clock */
  readonly elapsedMs?: () => number;
  /** told now and then how far it is; `best` and `bound` in the unit of the planner's first aim */
  readonly onProgress?: (best: number, bound: number) => void;
}

/** Counts the steps of a search; true once its budget is spent. */
export function spend(budget: Budget, iterationsWithoutClock: number): () => boolean {
  const { seconds, elapsedMs } = budget;
  const most =
    budget.iterations ?? (elapsedMs === undefined ? iterationsWithoutClock : Number.POSITIVE_INFINITY);
  const end = seconds === undefined ? Number.POSITIVE_INFINITY : seconds * 1000;
  let steps = 0;
  let isOver = false;
  return () => {
    isOver ||= ++steps > most || (elapsedMs !== undefined && elapsedMs() >= end);
    return isOver;
  };
}
