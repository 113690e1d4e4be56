import type { FieldSpec } from "../systems/contract.ts";
import { systemModule } from "../systems/registry.ts";
import type { VehicleDescription } from "./description.ts";

type Dimensions = VehicleDescription["dimensions"];
type Value = number | string | boolean;

/** Metres behind the front axle of the panel van conversion for which the registry's places are stated. */
const STATED_FOR_M = 5;

/** Places are told to the nearest 5 cm. */
const toFiveCentimetres = (metres: number) => Math.round(metres * 20) / 20;

function defaultOf(
  field: FieldSpec,
  { wheelbaseM, rearOverhangM }: Dimensions,
  spec: Readonly<Record<string, unknown>>,
): Value | undefined {
  if (field.type !== "number" || field.default === undefined) return field.default;
  const chosen = field.usualBy?.values[String(spec[field.usualBy.field])];
  if (chosen !== undefined) return chosen;
  if (field.follows === "wheelbaseM") return wheelbaseM;
  if (field.alongVehicle !== true) return field.default;
  return toFiveCentimetres((field.default * (wheelbaseM + rearOverhangM)) / STATED_FOR_M);
}

/**
 * Usual values of a fitted system on a vehicle of these dimensions (m): the registry's defaults, places
 * stretched to the vehicle's length, the rear wheels on its wheelbase, and what hangs on a choice already
 * made in `spec`. Common practice, no source; fields
 * without a default are left out. @throws RangeError on a kind that is not registered
 */
export function specDefaults(
  kind: string,
  dimensions: Dimensions,
  spec: Readonly<Record<string, unknown>> = {},
): Readonly<Record<string, Value>> {
  return Object.fromEntries(
    Object.entries(systemModule(kind).spec.fields).flatMap(([name, field]) => {
      const value = defaultOf(field, dimensions, spec);
      return value === undefined ? [] : [[name, value] as const];
    }),
  );
}
