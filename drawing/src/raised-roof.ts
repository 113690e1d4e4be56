import type { VehicleDescription, View } from "@setfair/engine";
import { raisedRoofM } from "./frame.ts";
import { mirrored, type PathStep, rect } from "./shape.ts";

export interface RaisedPiece {
  readonly steps: readonly PathStep[];
  /** the shell; otherwise a fold or a seam of the canvas */
  readonly isShell: boolean;
}

const shell = (steps: readonly PathStep[]): RaisedPiece => ({ steps, isShell: true });
const seam = (steps: readonly PathStep[]): RaisedPiece => ({ steps, isShell: false });

/** The roof of an elevating-roof campervan as it stands on the pitch, hinged at the rear; behind the body, not touchable. */
export function raisedRoof(vehicle: VehicleDescription, view: View): readonly RaisedPiece[] {
  const high = raisedRoofM(vehicle, view);
  if (high === 0) return [];
  const { lengthM: L, widthM: W } = vehicle.dimensions;
  if (view === "front" || view === "rear") return fromEnd(W, high);
  const pieces = fromSide(L, high);
  return view === "nearside"
    ? pieces
    : pieces.map(({ steps, isShell }) => ({ steps: mirrored(steps, L), isShell }));
}

function fromSide(L: number, high: number): readonly RaisedPiece[] {
  const front = 1.62;
  const hinge = L - 0.55;
  return [
    shell([
      ["M", front + 0.06, 0.12],
      ["L", front, 0.1 - high],
      ["L", hinge, -0.02],
      ["L", hinge, 0.12],
      ["Z"],
    ]),
    ...[0.28, 0.55, 0.8].map((share) =>
      seam([
        ["M", front + (hinge - front) * share, 0],
        ["L", front + (hinge - front) * share * 0.94, (0.1 - high) * (1 - share)],
      ]),
    ),
    shell([
      ["M", front - 0.1, -high],
      ["Q", front - 0.06, -high - 0.1, front + 0.16, -high - 0.05],
      ["L", hinge + 0.06, -0.09],
      ["L", hinge + 0.04, 0],
      ["L", front - 0.04, 0.06 - high],
      ["Z"],
    ]),
  ];
}

function fromEnd(W: number, high: number): readonly RaisedPiece[] {
  return [
    shell([
      ["M", 0.34, 0.14],
      ["L", 0.3, 0.04 - high],
      ["L", W - 0.3, 0.04 - high],
      ["L", W - 0.34, 0.14],
      ["Z"],
    ]),
    seam(rect(W / 2 - 0.3, 0.2 - high, 0.6, high * 0.45, 0.05)),
    shell(rect(0.24, -high - 0.06, W - 0.48, 0.13, 0.06)),
  ];
}
