import { BadInput } from "../base/bad-input.ts";
import type { FieldSpec } from "../systems/contract.ts";
import { isSystemKind, parseSpec, systemModule } from "../systems/registry.ts";
import { STARTING_POINTS } from "./body-styles.ts";
import { deriveVehicle, type VehicleFigures } from "./derive.ts";
import { BODY_STYLES, type FittedSystem, type VehicleDescription } from "./description.ts";
import { specDefaults } from "./spec-defaults.ts";

/** A description that is still being written: anything may be missing. */
export interface DraftDescription {
  readonly [field: string]: unknown;
  readonly systems?: readonly { readonly id: string; readonly kind: string; readonly spec: object }[];
}

type Corner = "low" | "high";

function guess(field: FieldSpec, corner: Corner): number | string | boolean {
  switch (field.type) {
    case "number":
      return corner === "low" ? field.min : field.max;
    case "choice":
      return (corner === "low" ? field.options[0] : field.options.at(-1)) ?? "";
    case "flag":
      return corner === "high";
    case "date":
      return corner === "low" ? "2000-01-01" : "2050-01-01";
  }
}

/** A fitted system with every gap filled; null where what was typed cannot be drawn. */
function sketchSystem(
  { id, kind, spec }: NonNullable<DraftDescription["systems"]>[number],
  dimensions: VehicleDescription["dimensions"],
  corner: Corner,
): FittedSystem | null {
  if (!isSystemKind(kind)) return null;
  const guesses = Object.fromEntries(
    Object.entries(systemModule(kind).spec.fields).map(([name, field]) => [name, guess(field, corner)]),
  );
  try {
    const filled = { ...guesses, ...specDefaults(kind, dimensions, { ...spec }), ...spec };
    const parsed = parseSpec(kind as string, filled);
    return { id, kind, spec: { ...parsed } };
  } catch (error) {
    if (error instanceof BadInput) return null;
    throw error;
  }
}

const object = (value: unknown): Record<string, unknown> =>
  typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
const positive = (value: unknown, otherwise: number) =>
  typeof value === "number" && Number.isFinite(value) && value > 0 ? value : otherwise;

function numbers<Shape extends Record<string, number>>(given: unknown, otherwise: Shape): Shape {
  const of = object(given);
  return Object.fromEntries(
    Object.entries(otherwise).map(([name, value]) => [name, positive(of[name], value)]),
  ) as Shape; // the same keys as `otherwise`, each a number
}

/**
 * A whole description for drawing and deriving from one that is not whole yet: gaps are filled with what is
 * usual for the body style, and with one end of the range where nothing is. Never to be kept.
 */
export function sketchVehicle(draft: DraftDescription, corner: Corner = "low"): VehicleDescription {
  const bodyStyle = BODY_STYLES.find((style) => style === draft.bodyStyle) ?? "panelVanConversion";
  const start = STARTING_POINTS[bodyStyle];
  const dimensions = numbers(draft.dimensions, start.dimensions);
  const far = corner === "low" ? 1 : 2;
  const masses = object(draft.masses);
  const options = Array.isArray(masses.options) ? masses.options : [];
  return {
    id: typeof draft.id === "string" ? draft.id : "sketch",
    name: typeof draft.name === "string" && draft.name !== "" ? draft.name : "–",
    registration: typeof draft.registration === "string" ? draft.registration : "",
    bodyStyle,
    validFrom: "2000-01-01",
    firstRegistered: "2000-01-01",
    fuel: start.fuel,
    category: start.category,
    emissionClass: "",
    dimensions,
    masses: {
      ...numbers(masses, { mamKg: 3500 * far, technicalMaxKg: 3500 * far, miroKg: far, miroFrontKg: far }),
      miroBasis: { fuelShare: 0.9, driverKg: 75, waterShare: 0, lpgCylinders: 1, weighed: false },
      axleMaxKg: numbers(masses.axleMaxKg, { front: 1800 * far, rear: 2000 * far }),
      options: options.map((option) => ({
        name: "",
        ...numbers(option, { massKg: far, behindFrontAxleM: 2 * far }),
      })),
    },
    body: numbers(draft.body, start.body),
    consumption: { litresPer100Km: start.litresPer100Km },
    systems: (draft.systems ?? []).flatMap((system) => sketchSystem(system, dimensions, corner) ?? []),
  };
}

/**
 * What follows from a description so far: a figure that hangs on something not yet given is null. (It is
 * worked out with the gaps filled low and filled high; where the two differ it is not known.)
 */
export function deriveDraft(draft: DraftDescription): {
  readonly [Name in keyof VehicleFigures]: VehicleFigures[Name] | null;
} {
  const low = deriveVehicle(sketchVehicle(draft, "low"));
  const high = deriveVehicle(sketchVehicle(draft, "high"));
  return Object.fromEntries(
    Object.entries(low).map(([name, value]) => {
      const isKnown = JSON.stringify(value) === JSON.stringify(high[name as keyof VehicleFigures]);
      return [name, isKnown ? value : null];
    }),
  ) as { [Name in keyof VehicleFigures]: VehicleFigures[Name] | null }; // the same keys as `low`
}
