/** One measured thing: a line of the table and of `out/latest.json`. */
export interface Line {
  readonly part: string;
  readonly what: string;
  /** null where it could not be measured; `note` says why */
  readonly value: number | null;
  readonly unit: string;
  readonly note?: string;
}

/** Measures one part of the product. */
export type Part = () => Promise<readonly Line[]>;

/** Lines of one part, without writing its name each time. */
export const lineOf =
  (part: string) =>
  (what: string, value: number | null, unit: string, note?: string): Line => ({
    part,
    what,
    value,
    unit,
    ...(note === undefined ? {} : { note }),
  });

/** Middle value; of an even count the mean of the two in the middle. Throws on an empty list. */
export function median(values: readonly number[]): number {
  if (values.length === 0) throw new Error("median: expected at least one value");
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] as number) + upper) / 2;
}
