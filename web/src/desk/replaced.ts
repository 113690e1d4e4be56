/** The list with one entry put in the place of another, or taken out. */
export function replaced<T>(list: readonly T[], place: number, next: T | null): T[] {
  return list.flatMap((each, k) => (k !== place ? [each] : next === null ? [] : [next]));
}
