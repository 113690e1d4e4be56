/** The kinds of field that recur in the specs; see {@link FieldSpec}. */
import { COUNT } from "./define-fields.ts";

/** A number in a unit with its range; `source` says where the range and the default come from. */
export function quantity(unit: string, min: number, max: number, source: string, fallback?: number) {
  return {
    type: "number",
    unit,
    min,
    max,
    source,
    ...(fallback === undefined ? {} : { default: fallback }),
  } as const;
}

/** A quantity whose usual value hangs on a choice made in another field. */
export function usualBy<Field extends object>(
  base: Field,
  field: string,
  values: Readonly<Record<string, number>>,
) {
  return { ...base, usualBy: { field, values } } as const;
}

/** A whole number of things. */
export function count(min: number, max: number, source: string, fallback?: number) {
  return quantity(COUNT, min, max, source, fallback);
}

/** Where a thing sits, metres behind the front axle. */
export function behindFrontAxle(fallback: number) {
  return { ...quantity("m", -1.5, 9, "practice", fallback), alongVehicle: true } as const;
}

/** Yes or no. */
export function flag(source: string, fallback?: boolean) {
  return { type: "flag", source, ...(fallback === undefined ? {} : { default: fallback }) } as const;
}

/** The side of the vehicle, as its driver sits: nearside is left in Britain, the passenger's side. */
export function side(fallback: Side) {
  return { type: "choice", options: SIDES, default: fallback, source: "practice" } as const;
}

export const SIDES = ["nearside", "offside"] as const;
export type Side = (typeof SIDES)[number];
