import type { VehicleDescription } from "./description.ts";

type Value = string | number | boolean;

/** One thing that differs between two descriptions of a vehicle. */
export type DescriptionChange =
  | { readonly what: "system"; readonly kind: string; readonly change: "fitted" | "removed" }
  | {
      readonly what: "field";
      /** path without array positions: `masses.miroKg`, or the field's name in a fitted system */
      readonly field: string;
      /** the kind of the fitted system that it belongs to; null for the vehicle itself */
      readonly kind: string | null;
      readonly from: Value | null;
      readonly to: Value | null;
    };

/** What the version itself says, not the vehicle. */
const OWN = ["id", "validFrom", "systems"];

function leaves(value: unknown, path = ""): readonly (readonly [string, Value])[] {
  if (typeof value === "object" && value !== null) {
    return Object.entries(value).flatMap(([name, inner]) =>
      leaves(inner, path === "" ? name : `${path}.${name}`),
    );
  }
  return value === undefined || value === null ? [] : [[path, value as Value]];
}

function fieldChanges(before: object, after: object, kind: string | null): DescriptionChange[] {
  const was = new Map(leaves(before));
  const is = new Map(leaves(after));
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((field): DescriptionChange[] => {
    const [from, to] = [was.get(field) ?? null, is.get(field) ?? null];
    return from === to ? [] : [{ what: "field", field, kind, from, to }];
  });
}

const without = (description: VehicleDescription): object =>
  Object.fromEntries(Object.entries(description).filter(([name]) => !OWN.includes(name)));

/** What differs from one version of a description to the next: the vehicle's own fields, then its systems by their id. */
export function diffDescriptions(
  before: VehicleDescription,
  after: VehicleDescription,
): readonly DescriptionChange[] {
  const was = new Map(before.systems.map((system) => [`${system.id} ${system.kind}`, system]));
  const is = new Map(after.systems.map((system) => [`${system.id} ${system.kind}`, system]));
  const removed = [...was].filter(([key]) => !is.has(key)).map(([, { kind }]) => kind);
  const systems = [...is].flatMap(([key, system]): readonly DescriptionChange[] => {
    const old = was.get(key);
    return old === undefined
      ? [{ what: "system", kind: system.kind, change: "fitted" }]
      : fieldChanges(old.spec, system.spec, system.kind);
  });
  return [
    ...fieldChanges(without(before), without(after), null),
    ...removed.map((kind) => ({ what: "system", kind, change: "removed" }) as const),
    ...systems,
  ];
}
