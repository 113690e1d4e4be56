interface Timed {
  /** civil time at which the plan begins it; null where no time was found for it, or it is done */
  readonly start: string | null;
}

/** Jobs in the order in which the plan does them; what has no time comes last, in the order of the depot's list. */
export const byStart = <T extends Timed>(jobs: readonly T[]): readonly T[] =>
  jobs.toSorted((a, b) => (a.start ?? "9999").localeCompare(b.start ?? "9999"));
