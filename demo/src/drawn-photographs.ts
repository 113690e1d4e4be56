import { createHash } from "node:crypto";
import { drawVehicle, frameOf, PALETTE, type SvgNode, svg, svgText } from "@setfair/drawing";
import type { VehicleDescription } from "@setfair/engine";
import { jpegOfDrawing } from "@setfair/server";

/** A mark as the drawn photographs show it: its place as shares of the view, its kind and its size in mm. */
export interface DrawnMark {
  readonly xShare: number;
  readonly yShare: number;
  readonly markKind: string;
  readonly sizeMm: number;
}
/** One drawn photograph, named by its hash. */
export interface DrawnPhotograph {
  readonly sha256: string;
  readonly jpeg: Buffer;
}
export interface DrawnRound {
  readonly sides: readonly (DrawnPhotograph & { readonly view: Side })[];
  /** a close look at each mark, in the order in which they were given */
  readonly marks: readonly DrawnPhotograph[];
}

const SIDES = ["nearside", "offside", "front", "rear"] as const;
type Side = (typeof SIDES)[number];
const WIDTH_PX = 880;
/** What a close look shows, drawing units (100 a metre). */
const CLOSE = { width: 120, height: 90 } as const;
/** Dry ground on the way out, wet ground on the way back, so that the two are told apart. */
const GROUND = { out: PALETTE.chalk, back: PALETTE.sky } as const;

function drawMark({ markKind, sizeMm }: DrawnMark, x: number, y: number): SvgNode {
  const size = sizeMm / 10;
  if (markKind === "dent")
    return svg("ellipse", {
      cx: x,
      cy: y,
      rx: size / 2,
      ry: size / 2.6,
      fill: PALETTE.line,
      stroke: PALETTE.ink,
      "stroke-width": 0.4,
    });
  const step = size / 4;
  const line = [0, 1, 2, 3, 4].map((k) => `${x - size / 2 + k * step} ${y + (k % 2) * 1.2}`).join(" L ");
  return svg("path", { d: `M ${line}`, fill: "none", stroke: PALETTE.ink, "stroke-width": 0.9 });
}

async function photograph(node: SvgNode): Promise<DrawnPhotograph> {
  const jpeg = await jpegOfDrawing(svgText(node), WIDTH_PX);
  return { sha256: createHash("sha256").update(jpeg).digest("hex"), jpeg };
}

/**
 * Photographs of a walk-round, drawn from the vehicle's own drawing: nobody took them and nothing on them exists.
 * The four sides, and a close look at each mark, all of them on the nearside.
 */
export async function drawRound(
  vehicle: VehicleDescription,
  direction: "out" | "back",
  marks: readonly DrawnMark[],
): Promise<DrawnRound> {
  const scene = (view: Side, box?: { readonly x: number; readonly y: number }): SvgNode => {
    const { paperWidth, paperHeight } = frameOf(vehicle, view);
    const { x = 0, y = 0 } = box ?? {};
    const size = box === undefined ? { width: paperWidth, height: paperHeight } : CLOSE;
    return svg("svg", { viewBox: `${x} ${y} ${size.width} ${size.height}`, ...size }, [
      svg("rect", { x, y, ...size, fill: GROUND[direction] }),
      svg("g", {}, drawVehicle(vehicle, view).children),
      ...(view === "nearside"
        ? marks.map((mark) => drawMark(mark, mark.xShare * paperWidth, mark.yShare * paperHeight))
        : []),
    ]);
  };
  const { paperWidth, paperHeight } = frameOf(vehicle, "nearside");
  const within = (middle: number, size: number, of: number) =>
    Math.min(of - size, Math.max(0, middle - size / 2));
  return {
    sides: await Promise.all(SIDES.map(async (view) => ({ view, ...(await photograph(scene(view))) }))),
    marks: await Promise.all(
      marks.map(({ xShare, yShare }) =>
        photograph(
          scene("nearside", {
            x: within(xShare * paperWidth, CLOSE.width, paperWidth),
            y: within(yShare * paperHeight, CLOSE.height, paperHeight),
          }),
        ),
      ),
    ),
  };
}
