import type { DrawnPart, VehicleDescription, View } from "@setfair/engine";
import { bodyShapes } from "./body.ts";
import { fittedParts } from "./fitted-parts.ts";
import type { BodyShape } from "./shape.ts";

/** The body's own wheels and door are left out where fitted ones are drawn in their place. */
export function bodyPieces(vehicle: VehicleDescription, view: View): readonly BodyShape[] {
  const shapes = bodyShapes(vehicle, view);
  const fitted = fittedParts(vehicle, view);
  if (view === "cab")
    return shapes.filter(({ part }) => !fitted.some((each) => STANDS_FOR[each.part]?.includes(part)));
  if (view !== "nearside" && view !== "offside") return shapes;
  const wheels = fitted.some(isWheel);
  const door = fitted.some(isDoor);
  return shapes.filter(
    ({ kind, part }) => !(wheels && kind === "wheel") && !(door && /slidingDoor|entranceDoor/.test(part)),
  );
}

/** Pieces of the cab that a fitted part stands for. */
const STANDS_FOR: Readonly<Record<string, readonly string[]>> = {
  "cab.dashboard": ["body.dashboard", "body.steeringWheel"],
  "seatsBelts.front": ["body.cabSeatDriver", "body.cabSeatPassenger"],
};

/** Small parts come last, so that none is hidden behind a larger one. */
export const largestFirst = (parts: readonly DrawnPart[]): readonly DrawnPart[] =>
  [...parts].sort((a, b) => b.lengthM * b.heightM - a.lengthM * a.heightM);

/** A box on a side that is taller than a window is a door. */
export const isDoor = ({ shape, heightM, view }: DrawnPart): boolean =>
  shape === "box" && heightM > 1.2 && (view === "nearside" || view === "offside");

/** A circle too large for a cap is a wheel. */
export const isWheel = ({ shape, lengthM }: DrawnPart): boolean => shape === "circle" && lengthM > 0.5;
