import * as z from "zod/mini";
import type { FieldSpec } from "./contract.ts";

/** The value that a field holds in a description once it is parsed. */
export type FieldValue<F extends FieldSpec> = F extends {
  readonly type: "choice";
  readonly options: readonly (infer Option)[];
}
  ? Option
  : F extends { readonly type: "number" }
    ? number
    : F extends { readonly type: "flag" }
      ? boolean
      : string;

/** The type of a spec, from its fields. */
export type SpecFrom<Fields extends Readonly<Record<string, FieldSpec>>> = {
  readonly [Name in keyof Fields]: FieldValue<Fields[Name]>;
};

/** Unit of a number field that takes whole numbers only. */
export const COUNT = "count";

/**
 * States the fields of a system once and derives the strict schema from them: ranges, choices, defaults;
 * unknown keys, NaN and infinity are refused. A field without a default must be given.
 */
export function defineFields<const Fields extends Readonly<Record<string, FieldSpec>>>(
  fields: Fields,
): { readonly fields: Fields; readonly schema: z.ZodMiniType<SpecFrom<Fields>> } {
  const shape = Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, withDefault(field)]));
  // the shape is built from `fields` in a loop, which the compiler cannot follow key by key
  const schema = z.strictObject(shape) as unknown as z.ZodMiniType<SpecFrom<Fields>>;
  return { fields, schema };
}

function withDefault(field: FieldSpec): z.ZodMiniType {
  const base = fieldSchema(field);
  return field.default === undefined ? base : z._default(base, field.default);
}

function fieldSchema(field: FieldSpec): z.ZodMiniType {
  switch (field.type) {
    case "number": {
      const number = field.unit === COUNT ? z.int() : z.number();
      return number.check(z.minimum(field.min), z.maximum(field.max));
    }
    case "choice":
      return z.enum([...field.options]);
    case "flag":
      return z.boolean();
    case "date":
      return z.iso.date();
  }
}
