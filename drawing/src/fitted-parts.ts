import type { DrawnPart, VehicleDescription, View } from "@setfair/engine";
// by the light door: the hirer's phone draws a vehicle too, and brings no room of the desk for it
import { parseSpec, systemModule } from "@setfair/engine/systems";

/** Where the fitted systems show in one view, in the order in which they are fitted. A spec that its system refuses throws. */
export function fittedParts(vehicle: VehicleDescription, view: View): readonly DrawnPart[] {
  return vehicle.systems.flatMap(({ kind, spec }) =>
    systemModule(kind)
      .spec.parts(parseSpec(kind, spec))
      .filter((part) => part.view === view),
  );
}
