import type { DrawnPart, VehicleDescription, View } from "@setfair/engine";

/** Drawing units per metre. */
export const SCALE = 100;
/** Room around the vehicle on every side, m (mirrors, ground, the arrow to the front). */
export const MARGIN_M = 0.45;

/** What a view shows and how a place on the vehicle falls on the paper. */
export interface Frame {
  readonly view: View;
  /** extent of the body on the paper, m */
  readonly widthM: number;
  readonly heightM: number;
  /** paper size with margins, drawing units */
  readonly paperWidth: number;
  readonly paperHeight: number;
  /** metres from the left and the top edge of the body to paper units */
  x(fromLeftM: number): number;
  y(fromTopM: number): number;
  /** where a place on the vehicle falls, m from the left and the top of the body */
  place(part: Pick<DrawnPart, "xM" | "yM" | "zM">): { readonly leftM: number; readonly topM: number };
}

/** Front overhang, m, from the declared dimensions. */
export function frontOverhangM(vehicle: VehicleDescription): number {
  const { lengthM, wheelbaseM, rearOverhangM } = vehicle.dimensions;
  return Math.max(0.4, lengthM - wheelbaseM - rearOverhangM);
}

/** Room above the body for an elevating roof that is up, m; 0 for other bodies and for views from above. */
export function raisedRoofM(vehicle: VehicleDescription, view: View): number {
  const fromOutside = view === "nearside" || view === "offside" || view === "front" || view === "rear";
  return fromOutside && vehicle.bodyStyle === "elevatingRoofCampervan" ? RAISED_M : 0;
}
/** How far the high end of an elevating roof stands above the body, m; practice, only for the drawing. */
const RAISED_M = 0.75;

const round = (value: number): number => Math.round(value * 10) / 10;

/** How much of the vehicle the view of the cab shows, from the nose, m. */
export const CAB_LENGTH_M = 2.1;

/**
 * The frame of a view. Nearside: front to the left; offside: front to the right, as one walks past it;
 * roof, inside, cab (its front part only) and underside: front to the left, seen from above.
 */
export function frameOf(vehicle: VehicleDescription, view: View): Frame {
  const { lengthM, widthM, heightM } = vehicle.dimensions;
  const overhang = frontOverhangM(vehicle);
  const side = view === "nearside" || view === "offside";
  const end = view === "front" || view === "rear";
  const width = end ? widthM : view === "cab" ? CAB_LENGTH_M : lengthM;
  const height = side || end ? heightM : widthM;
  const raised = raisedRoofM(vehicle, view);
  const place: Frame["place"] = ({ xM, yM, zM }) => {
    const along = xM + overhang;
    if (view === "nearside") return { leftM: along, topM: heightM - zM };
    if (view === "offside") return { leftM: lengthM - along, topM: heightM - zM };
    if (view === "front") return { leftM: widthM / 2 + yM, topM: heightM - zM };
    if (view === "rear") return { leftM: widthM / 2 - yM, topM: heightM - zM };
    return { leftM: along, topM: widthM / 2 + yM };
  };
  return {
    view,
    widthM: width,
    heightM: height,
    paperWidth: round((width + 2 * MARGIN_M) * SCALE),
    paperHeight: round((height + raised + 2 * MARGIN_M) * SCALE),
    x: (fromLeftM) => round((fromLeftM + MARGIN_M) * SCALE),
    y: (fromTopM) => round((fromTopM + raised + MARGIN_M) * SCALE),
    place,
  };
}
