import fc from "fast-check";
import type { BriefingSituation, FieldSpec } from "../src/systems/contract.ts";
import { COUNT } from "../src/systems/define-fields.ts";
import {
  type ParsedSpec,
  parseSpec,
  SYSTEM_KINDS,
  type SystemKind,
  systemModule,
} from "../src/systems/registry.ts";
import type { FittedSystem } from "../src/vehicle/description.ts";

/** A valid value of a field; ends of the range come often, since texts change there. */
function fieldValue(field: FieldSpec): fc.Arbitrary<string | number | boolean> {
  switch (field.type) {
    case "number": {
      const within =
        field.unit === COUNT
          ? fc.integer({ min: field.min, max: field.max })
          : fc.double({ min: field.min, max: field.max, noNaN: true });
      return fc.oneof(within, fc.constantFrom(field.min, field.max, field.default ?? field.max));
    }
    case "choice":
      return fc.constantFrom(...field.options);
    case "flag":
      return fc.boolean();
    case "date":
      return fc.constantFrom("2021-05-03", "2026-01-15");
  }
}

/** Any valid spec of a kind, parsed. */
export function anySpec(kind: SystemKind): fc.Arbitrary<ParsedSpec> {
  const fields = Object.entries(systemModule(kind).spec.fields);
  return fc
    .record(Object.fromEntries(fields.map(([name, field]) => [name, fieldValue(field)])))
    .map((spec) => parseSpec(kind, spec));
}

export function anyFitted(kind: SystemKind): fc.Arbitrary<FittedSystem> {
  return anySpec(kind).map((spec) => ({ id: kind, kind, spec: { ...spec } }));
}

/** A vehicle's systems: any of the kinds, each at most once. */
export const anySystems: fc.Arbitrary<readonly FittedSystem[]> = fc
  .subarray([...SYSTEM_KINDS])
  .chain((kinds) => fc.tuple(...kinds.map(anyFitted)));

export const anySituation: fc.Arbitrary<BriefingSituation> = fc.record({
  country: fc.constantFrom("GB", "FR", "ES", "NO", "AT"),
  nightsOffHookUp: fc.integer({ min: 0, max: 14 }),
  coldestNightC: fc.integer({ min: -20, max: 25 }),
  firstTime: fc.boolean(),
  people: fc.integer({ min: 1, max: 6 }),
  children: fc.integer({ min: 0, max: 4 }),
});

/** The same specs on every run, enough to meet every branch of a system. */
export function sampleSpecs(kind: SystemKind, count = 300): readonly ParsedSpec[] {
  return fc.sample(anySpec(kind), { numRuns: count, seed: 7 });
}

export const SAMPLE_SITUATIONS: readonly BriefingSituation[] = fc.sample(anySituation, {
  numRuns: 40,
  seed: 11,
});
