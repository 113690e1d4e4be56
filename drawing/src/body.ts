import type { VehicleDescription, View } from "@setfair/engine";
import { frontShapes, rearShapes } from "./body-ends.ts";
import { cabShapes, insideShapes, roofShapes, undersideShapes } from "./body-plan.ts";
import { sideShapes } from "./body-side.ts";
import type { BodyShape } from "./shape.ts";

/** The pieces of the body in one view, the outline first, nearer pieces later. */
export function bodyShapes(vehicle: VehicleDescription, view: View): readonly BodyShape[] {
  switch (view) {
    case "nearside":
    case "offside":
      return sideShapes(vehicle, view);
    case "front":
      return frontShapes(vehicle);
    case "rear":
      return rearShapes(vehicle);
    case "roof":
      return roofShapes(vehicle);
    case "inside":
      return insideShapes(vehicle);
    case "cab":
      return cabShapes(vehicle);
    case "underside":
      return undersideShapes(vehicle);
  }
}
