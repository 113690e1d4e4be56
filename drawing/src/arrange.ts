import type { DrawnPart, VehicleDescription, View } from "@setfair/engine";
import { bodyShapes } from "./body.ts";
import { fittedParts } from "./fitted-parts.ts";
import { type Frame, frameOf, frontOverhangM } from "./frame.ts";
import { bodyPieces, isDoor, isWheel, largestFirst } from "./pieces.ts";
import { boundsOf, flattened, isWithin, type Point } from "./shape.ts";

/** A rectangle on a view, metres from the left and the top of the body. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A fitted part where it is drawn. */
export interface Arranged {
  readonly part: DrawnPart;
  readonly box: Box;
}

/** Least size of what a gloved finger touches, m on the vehicle: 46 drawing units. */
export const LEAST_TOUCH_M = 0.46;

const area = ({ width, height }: Box): number => width * height;

/** The part with the unseen margin that makes it large enough to touch. */
export function touchBox({ left, top, width, height }: Box): Box {
  const wide = Math.max(width, LEAST_TOUCH_M);
  const tall = Math.max(height, LEAST_TOUCH_M);
  return { left: left + (width - wide) / 2, top: top + (height - tall) / 2, width: wide, height: tall };
}

/** Area that two boxes share, m². */
export function sharedArea(a: Box, b: Box): number {
  const wide = Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left);
  const tall = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
  return wide > 0 && tall > 0 ? wide * tall : 0;
}

/**
 * Where each fitted part of a view is drawn, the largest first: at the place that its spec gives, or as near to it
 * as keeps it inside the outline and clear of what is there already. Coarse descriptions put a window on a door
 * or a cap on a wheel; a drawing that can be touched must not. A small thing may stand on a large one.
 */
export function arrangeParts(vehicle: VehicleDescription, view: View): readonly Arranged[] {
  const frame = frameOf(vehicle, view);
  const outline = outlineOf(vehicle, view);
  const taken: Box[] = obstacles(vehicle, view);
  const placed: Arranged[] = [];
  for (const part of inOrder(fittedParts(vehicle, view))) {
    const wanted = boxOf(part, frame);
    // a second door of a coarse description finds a place of its own
    const stands = isFixed(part) && !(isDoor(part) && placed.some((each) => isDoor(each.part)));
    const box = stands
      ? wanted
      : nearestFree(wanted, taken, {
          frame,
          outline,
          isRigid: isRigid(part, view),
          front: frontLine(vehicle, view),
        });
    taken.push(touchBox(box));
    placed.push({ part, box });
  }
  return placed;
}

/** Wheels and doors stand where they stand. */
const isFixed = (part: DrawnPart): boolean => isWheel(part) || isDoor(part);

/** What belongs to a height or to the middle of the vehicle moves along it only. */
const isRigid = (part: DrawnPart, view: View): boolean =>
  (view === "nearside" || view === "offside") && part.lengthM > 1.2;

const inOrder = (parts: readonly DrawnPart[]): readonly DrawnPart[] => {
  const sorted = largestFirst(parts);
  return [...sorted.filter(isFixed), ...sorted.filter((part) => !isFixed(part))];
};

/** The part as described, kept inside the body. */
function boxOf(part: DrawnPart, frame: Frame): Box {
  const { leftM, topM } = frame.place(part);
  const width = Math.min(part.lengthM, frame.widthM);
  const height = Math.min(part.heightM, frame.heightM);
  return kept({ left: leftM - width / 2, top: topM - height / 2, width, height }, frame);
}

const kept = (box: Box, frame: Frame): Box => ({
  ...box,
  left: Math.min(Math.max(box.left, 0), frame.widthM - box.width),
  top: Math.min(Math.max(box.top, eaves(box, frame)), frame.heightM - box.height),
});

/** How far below the roof a part on a side begins: the wall bends in there; a long cassette sits right under it. */
function eaves({ width, height }: Box, { view, heightM }: Frame): number {
  if (view !== "nearside" && view !== "offside") return 0;
  return Math.min(heightM * (width > 1.2 ? 0.03 : 0.14), heightM - height);
}

/** Pieces of the body that can be touched and are no background: lamps, mirrors, glass, wheels, cab doors. */
function obstacles(vehicle: VehicleDescription, view: View): Box[] {
  // in the cab what is fitted stands for the body's own pieces
  if (view === "cab") return [];
  return bodyPieces(vehicle, view)
    .filter(({ kind, part }) => kind !== "zone" && !/^body\.(panel|roof|cabFloor|rail|axle)/.test(part))
    .map(({ points }) => {
      const { left, top, right, bottom } = boundsOf(points);
      return { left, top, width: right - left, height: bottom - top };
    });
}

function outlineOf(vehicle: VehicleDescription, view: View): readonly Point[] {
  const panel = bodyShapes(vehicle, view).find(({ part }) => /^body\.(panel|cabFloor)/.test(part));
  return panel === undefined ? [] : flattened(panel.points);
}

const STEP_M = 0.08;
/** metres that a place is worth for each share of overlap, and for leaving the outline */
const OVERLAP_COST = 4;
const OUTSIDE_COST = 6;

interface Room {
  readonly frame: Frame;
  readonly outline: readonly Point[];
  readonly isRigid: boolean;
  /** whether a box stands over the bonnet, where no cap or hatch of the living part belongs */
  readonly front: (box: Box) => boolean;
}

/** On the sides: ahead of the front wheel. */
function frontLine(vehicle: VehicleDescription, view: View): Room["front"] {
  const overhang = frontOverhangM(vehicle);
  const { lengthM } = vehicle.dimensions;
  if (view === "nearside") return ({ left, width }) => left + width / 2 < overhang;
  if (view === "offside") return ({ left, width }) => lengthM - left - width / 2 < overhang;
  return () => false;
}

function nearestFree(wanted: Box, taken: readonly Box[], room: Room): Box {
  const { frame, outline } = room;
  const far = room.isRigid ? 6 : 22;
  const up = room.isRigid ? 1 : 11;
  const mayLead = room.front(wanted);
  let best = wanted;
  let least = Number.POSITIVE_INFINITY;
  for (let i = -far; i <= far; i++) {
    for (let k = -up; k <= up; k++) {
      const moved = Math.hypot(i * STEP_M, k * STEP_M * 1.5);
      if (moved >= least) continue;
      const box = kept({ ...wanted, left: wanted.left + i * STEP_M, top: wanted.top + k * STEP_M }, frame);
      if (room.front(box) && !mayLead) continue;
      const cost = moved + OVERLAP_COST * crowding(box, taken) + OUTSIDE_COST * outside(box, outline);
      if (cost < least - 1e-9) {
        least = cost;
        best = box;
      }
    }
  }
  return best;
}

/** Share of the covered area, added up over what is there; more than half of one thing is far worse. */
function crowding(box: Box, taken: readonly Box[]): number {
  const touch = touchBox(box);
  return taken.reduce((sum, other) => {
    const shared = sharedArea(touch, other);
    if (shared === 0) return sum;
    const ofSmaller = shared / Math.min(area(touch), area(other));
    const ofLarger = shared / Math.max(area(touch), area(other));
    // inside something much larger is allowed, though a free place nearby is better
    return sum + (ofLarger > 0.25 && ofSmaller > 0.45 ? 10 : 0) + ofSmaller * 0.2 + ofLarger;
  }, 0);
}

/** Share of the four corners that lie outside the outline. */
function outside({ left, top, width, height }: Box, outline: readonly Point[]): number {
  if (outline.length === 0) return 0;
  const inset = 0.02;
  const corners: readonly Point[] = [
    [left + inset, top + inset],
    [left + width - inset, top + inset],
    [left + inset, top + height - inset],
    [left + width - inset, top + height - inset],
  ];
  return corners.filter((corner) => !isWithin(corner, outline)).length / 4;
}
