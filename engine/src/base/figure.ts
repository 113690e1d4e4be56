/** How a figure came to be known. */
export type Basis = "measured" | "declared" | "default" | "from memory" | "computed";

/**
 * A figure that may be shown: it carries its unit, the id of the formula that gave it (see the formula
 * book; `-` where it was read or declared) and what went in, so that one tap shows formula and source.
 */
export interface Figure {
  readonly value: number;
  readonly unit: string;
  readonly formula: string;
  readonly inputs: Readonly<Record<string, number | string | boolean | null>>;
  readonly basis: Basis;
  /** id in the register of sources, where the figure itself was read somewhere */
  readonly source?: string;
}

/** Makes a {@link Figure}; throws on a value that is not finite, since such a figure is a bug. */
export function figure(
  value: number,
  unit: string,
  formula: string,
  inputs: Figure["inputs"],
  basis: Basis,
  source?: string,
): Figure {
  if (!Number.isFinite(value)) throw new RangeError(`figure ${formula}: value is not finite`);
  return source === undefined
    ? { value, unit, formula, inputs, basis }
    : { value, unit, formula, inputs, basis, source };
}
