import { applies, type Symptom } from "../../systems/contract.ts";
import { keepFitted } from "../../systems/fault-finding.ts";
import { parseSpec, systemModule } from "../../systems/registry.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import type { SymptomOnVehicle } from "./types.ts";

/**
 * Everything that can go wrong with this vehicle, in the order of its fitted systems. A cause or check that
 * mentions a thing which is not fitted is left out, and nothing waits for it; a symptom that two systems of a kind know
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
    for (const symptom of keepFitted(faults.symptoms(parsed), fitted))
      if (!found.has(symptom.id)) found.set(symptom.id, { symptom, systemId: id, systemKind: kind });
  });
  return [...found.values()].map((on) => ({ ...on, symptom: onlyLeading(on.symptom, found) }));
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
