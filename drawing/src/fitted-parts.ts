import { type DrawnPart, parseSpec, systemModule, type VehicleDescription, type View } from "@setfair/engine";

/** Where the fitted systems show in one view, in the order in which they are fitted. A spec that its system refuses throws. */
export function fittedParts(vehicle: VehicleDescription, view: View): readonly DrawnPart[] {
  return vehicle.systems.flatMap(({ kind, spec }) =>
    systemModule(kind)
      .spec.parts(parseSpec(kind, spec))
      .filter((part) => part.view === view),
  );
}
