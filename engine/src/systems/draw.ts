/**
 * Parts on the drawings. `xM`, `yM`, `zM` are the middle of the shape; on the sides `lengthM` runs along
 * the vehicle and `heightM` upwards; on front and rear `lengthM` runs across; on roof, inside and underside,
 * which are seen from above, `lengthM` runs along the vehicle and `heightM` across it.
 */
import type { DrawnPart } from "./contract.ts";
import type { Side } from "./fields.ts";

type Size = readonly [lengthM: number, heightM: number];

/** Half the width of a usual body, m: only to give wall parts a y; drawings use the vehicle's own width. */
const WALL_Y_M = 1.02;

/** Across the vehicle, metres from the centre line, by side. */
export function acrossM(side: Side, fromCentreM = WALL_Y_M): number {
  return side === "nearside" ? fromCentreM : -fromCentreM;
}

/** A part on an outside wall. */
export function onWall(id: string, side: Side, xM: number, zM: number, [lengthM, heightM]: Size): DrawnPart {
  return {
    part: id,
    name: `part.${id}`,
    view: side,
    shape: "box",
    xM,
    yM: acrossM(side),
    zM,
    lengthM,
    heightM,
  };
}

/** A round cap or inlet on an outside wall. */
export function capOnWall(id: string, side: Side, xM: number, zM: number, diameterM = 0.16): DrawnPart {
  return { ...onWall(id, side, xM, zM, [diameterM, diameterM]), shape: "circle" };
}

/** A part seen from above: on the roof, inside, in the cab or under the floor. */
export function fromAbove(
  id: string,
  view: "roof" | "inside" | "cab" | "underside",
  xM: number,
  yM: number,
  [lengthM, heightM]: Size,
): DrawnPart {
  const zM = { roof: 2.6, inside: 0.9, cab: 1, underside: 0.4 }[view];
  return { part: id, name: `part.${id}`, view, shape: "box", xM, yM, zM, lengthM, heightM };
}
