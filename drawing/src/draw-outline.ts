import type { VehicleDescription, View } from "@setfair/engine";
import { bodyShapes } from "./body.ts";
import { pathText } from "./draw-vehicle.ts";
import { frameOf } from "./frame.ts";
import { type SvgNode, svg } from "./svg-node.ts";

/** Views that can be photographed as a whole from one place outside. */
const WHOLE: readonly View[] = ["front", "nearside", "rear", "offside"];

/**
 * The outline of the vehicle in one view, to lay over a camera's picture, so that the same side is taken from the same
 * place out and back. Every line is drawn dark and then bright, to be seen on any vehicle in any light. Null for views
 * that no camera takes whole from one place: roof, inside, cab, underside.
 */
export function drawOutline(vehicle: VehicleDescription, view: View): SvgNode | null {
  if (!WHOLE.includes(view)) return null;
  const frame = frameOf(vehicle, view);
  const paths = bodyShapes(vehicle, view)
    .filter(({ kind }) => kind === "panel" || kind === "wheel")
    .map(({ points }) => pathText(points, frame));
  const lines = (stroke: string, width: number) =>
    paths.map((d) =>
      svg("path", { d, fill: "none", stroke, "stroke-width": width, "stroke-linejoin": "round" }),
    );
  return svg(
    "svg",
    {
      viewBox: `0 0 ${frame.paperWidth} ${frame.paperHeight}`,
      "aria-hidden": "true",
      class: `outline outline-${view}`,
    },
    [...lines("#0a2129", 7), ...lines("#fffdf7", 3)],
  );
}
