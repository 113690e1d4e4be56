import * as z from "zod/mini";
import { parseWith } from "../base/bad-input.ts";
import type { SourceId } from "../sources/register.ts";

export type FormulaValue =
  | number
  | string
  | { readonly [part: string]: number | string | null | readonly number[] };

/** One registered formula. The unit of every argument stands in its name; the schema holds its valid range. */
export interface FormulaEntry {
  readonly id: string;
  readonly unit: string;
  readonly source: SourceId;
  /** where in the source: equation, table, page */
  readonly clause: string;
  readonly schema: z.ZodMiniType;
  /** parses and computes; throws BadInput that names the field */
  readonly compute: (args: unknown) => FormulaValue;
}

/** Keeps the argument types of schema and function together. */
export function entry<Shape extends z.core.$ZodShape>(
  id: string,
  unit: string,
  source: SourceId,
  clause: string,
  shape: Shape,
  compute: (args: z.output<z.ZodMiniObject<Shape, z.core.$strict>>) => FormulaValue,
): FormulaEntry {
  const schema = z.strictObject(shape);
  return { id, unit, source, clause, schema, compute: (args) => compute(parseWith(schema, args)) };
}
