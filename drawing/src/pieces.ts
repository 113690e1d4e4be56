import type { DrawnPart, VehicleDescription, View } from "@setfair/engine";
import { bodyShapes } from "./body.ts";
import { fittedParts } from "./fitted-parts.ts";
import { type Frame, frameOf } from "./frame.ts";
import { type BodyShape, boundsOf } from "./shape.ts";

/** The body's own wheels and door are left out where fitted ones are drawn in their place. */
export function bodyPieces(vehicle: VehicleDescription, view: View): readonly BodyShape[] {
  const shapes = bodyShapes(vehicle, view);
  const fitted = fittedParts(vehicle, view);
  if (view === "cab") return shapes.filter((shape) => !isCovered(shape, fitted, frameOf(vehicle, view)));
  if (view !== "nearside" && view !== "offside") return shapes;
  const wheels = fitted.some(isWheel);
  const door = fitted.some(isDoor);
  return shapes.filter(
    ({ kind, part }) => !(wheels && kind === "wheel") && !(door && /slidingDoor|entranceDoor/.test(part)),
  );
}

/** A seat or a dashboard of the body that a fitted part stands for. */
function isCovered(shape: BodyShape, fitted: readonly DrawnPart[], frame: Frame): boolean {
  if (shape.kind === "panel" && shape.part === "body.cabFloor") return false;
  const { left, right, top, bottom } = boundsOf(shape.points);
  return fitted.some((part) => {
    const { leftM, topM } = frame.place(part);
    return (
      Math.abs((left + right) / 2 - leftM) < part.lengthM / 2 &&
      Math.abs((top + bottom) / 2 - topM) < part.heightM / 2
    );
  });
}

/** Small parts come last, so that none is hidden behind a larger one. */
export const largestFirst = (parts: readonly DrawnPart[]): readonly DrawnPart[] =>
  [...parts].sort((a, b) => b.lengthM * b.heightM - a.lengthM * a.heightM);

/** A box on a side that is taller than a window is a door. */
export const isDoor = ({ shape, heightM, view }: DrawnPart): boolean =>
  shape === "box" && heightM > 1.2 && (view === "nearside" || view === "offside");

/** A circle too large for a cap is a wheel. */
export const isWheel = ({ shape, lengthM }: DrawnPart): boolean => shape === "circle" && lengthM > 0.5;
