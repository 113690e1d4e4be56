import { applies, type Symptom } from "../../systems/contract.ts";
import { parseSpec, systemModule } from "../../systems/registry.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import type { SymptomOnVehicle } from "./types.ts";

/**
 * Everything that can go wrong with this vehicle, in the order of its fitted systems. A check that mentions a
 * thing which is not fitted is left out, and nothing waits for it; a symptom that two systems of a kind know
 * stands once.
 * @throws BadInput where a fitted system is not valid
 */
export function symptomsOf(vehicle: Pick<VehicleDescription, "systems">): readonly SymptomOnVehicle[] {
  const fitted = new Set(vehicle.systems.map(({ kind }) => kind));
  const found = new Map<string, SymptomOnVehicle>();
  vehicle.systems.forEach(({ id, kind, spec }, index) => {
    const parsed = parseSpec(kind, spec, `systems.${index}`);
    const { faults } = systemModule(kind);
    if (!applies(faults)) return;
    for (const symptom of faults.symptoms(parsed))
      if (!found.has(symptom.id))
        found.set(symptom.id, { symptom: onlyFitted(symptom, fitted), systemId: id, systemKind: kind });
  });
  return [...found.values()].map((on) => ({ ...on, symptom: onlyLeading(on.symptom, found) }));
}

function onlyFitted(symptom: Symptom, fitted: ReadonlySet<string>): Symptom {
  const checks = symptom.checks.filter(({ mentions }) => mentions.every((mention) => fitted.has(mention)));
  const kept = new Set(checks.map(({ id }) => id));
  return {
    ...symptom,
    checks: checks.map((check) => ({ ...check, after: check.after.filter((id) => kept.has(id)) })),
  };
}

/** A cause leads only to a symptom that this vehicle can have. */
function onlyLeading(symptom: Symptom, found: ReadonlyMap<string, SymptomOnVehicle>): Symptom {
  return {
    ...symptom,
    causes: symptom.causes.map(({ leadsTo, ...cause }) =>
      leadsTo !== undefined && found.has(leadsTo) ? { ...cause, leadsTo } : cause,
    ),
  };
}
