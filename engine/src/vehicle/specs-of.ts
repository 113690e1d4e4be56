import { parseSpec, type SpecOf, type SystemKind } from "../systems/registry.ts";
import type { VehicleDescription } from "./description.ts";

/** The parsed specs of every fitted system of a kind, in the order of the description; empty where none is fitted. */
export function specsOf<Kind extends SystemKind>(
  vehicle: Pick<VehicleDescription, "systems">,
  kind: Kind,
): readonly SpecOf<Kind>[] {
  return vehicle.systems.flatMap((fitted, index) =>
    fitted.kind === kind ? [parseSpec(kind, fitted.spec, `systems.${index}`)] : [],
  );
}
