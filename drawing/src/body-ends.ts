import type { VehicleDescription } from "@setfair/engine";
import { type BodyShape, type PathStep, piece, rect } from "./shape.ts";

const VANS: readonly string[] = ["panelVanConversion", "campervan", "elevatingRoofCampervan"];

/** Outline of the body from the front or the rear: a van draws in towards the roof, a coachbuilt box does not. */
function endOutline(W: number, H: number, drawn: boolean): readonly PathStep[] {
  const inset = drawn ? 0.14 : 0.03;
  const corner = drawn ? 0.26 : 0.12;
  return [
    ["M", 0.06, H - 0.3],
    ["Q", 0, H - 0.34, 0, H - 0.6],
    ["L", 0.01, H - 1.25],
    ["L", inset, corner],
    ["Q", inset + 0.03, 0, inset + corner + 0.1, 0],
    ["L", W - inset - corner - 0.1, 0],
    ["Q", W - inset - 0.03, 0, W - inset, corner],
    ["L", W - 0.01, H - 1.25],
    ["L", W, H - 0.6],
    ["Q", W, H - 0.34, W - 0.06, H - 0.3],
    ["Z"],
  ];
}

interface Face {
  readonly head: number;
  readonly foot: number;
  /** how far the screen stands in from the sides, at its foot and its head */
  readonly in: readonly [foot: number, head: number];
}

/** Windscreen by style, metres from the top and the sides. */
function faceOf({ bodyStyle, dimensions }: VehicleDescription): Face {
  const H = dimensions.heightM;
  if (bodyStyle === "aClass") return { head: 0.5, foot: H - 1.16, in: [0.1, 0.16] };
  if (bodyStyle === "overcab") return { head: H - 1.84, foot: H - 1.3, in: [0.3, 0.44] };
  if (bodyStyle === "lowProfile") return { head: H - 1.95, foot: H - 1.3, in: [0.24, 0.38] };
  return { head: Math.max(0.3, H - 1.3 - (H - 1.3) * 0.68), foot: H - 1.3, in: [0.16, 0.3] };
}

/** What stands above the cab: the box with its bed over it, or the sloped cap with its light. */
function aboveCab({ bodyStyle, dimensions }: VehicleDescription): readonly BodyShape[] {
  const { widthM: W, heightM: H } = dimensions;
  if (bodyStyle === "overcab") {
    const window = rect(W / 2 - 0.42, 0.5, 0.84, 0.36, 0.08);
    return [piece("overCabFront", "panel", rect(0.06, 0.06, W - 0.12, H - 2.02, 0.24), [window])];
  }
  if (bodyStyle !== "lowProfile") return [];
  const foot = H - 2.02;
  return [
    piece(
      "capFront",
      "panel",
      [["M", 0.3, foot], ["L", 0.42, 0.24], ["Q", W / 2, 0.08, W - 0.42, 0.24], ["L", W - 0.3, foot], ["Z"]],
      [rect(W / 2 - 0.4, foot * 0.5, 0.8, foot * 0.3, 0.06)],
    ),
  ];
}

function windscreenOf(vehicle: VehicleDescription): BodyShape {
  const W = vehicle.dimensions.widthM;
  const { head, foot, in: inset } = faceOf(vehicle);
  const screen: PathStep[] = [
    ["M", inset[0], foot],
    ["Q", W / 2, foot + 0.1, W - inset[0], foot],
    ["L", W - inset[1], head],
    ["Q", W / 2, head - 0.05, inset[1], head],
    ["Z"],
  ];
  const long = Math.min(0.5, (foot - head) * 0.45);
  const wipers: readonly (readonly PathStep[])[] = [
    [
      ["M", W / 2 - 0.1, foot + 0.02],
      ["L", W * 0.24, foot - long],
    ],
    [
      ["M", W / 2 + 0.45, foot],
      ["L", W * 0.52, foot - long],
    ],
  ];
  const middle: readonly (readonly PathStep[])[] =
    vehicle.bodyStyle === "aClass"
      ? [
          [
            ["M", W / 2, head - 0.02],
            ["L", W / 2, foot + 0.05],
          ],
        ]
      : [];
  return piece("windscreen", "glass", screen, [...wipers, ...middle]);
}

function bonnetOf(vehicle: VehicleDescription): BodyShape {
  const { widthM: W, heightM: H } = vehicle.dimensions;
  const { foot, in: inset } = faceOf(vehicle);
  if (vehicle.bodyStyle === "aClass")
    return piece("bonnet", "panel", rect(0.5, foot + 0.1, W - 1, 0.18, 0.04));
  return piece("bonnet", "panel", [
    ["M", inset[0] + 0.02, foot + 0.08],
    ["Q", W / 2, foot + 0.18, W - inset[0] - 0.02, foot + 0.08],
    ["L", W - 0.44, H - 0.86],
    ["L", 0.44, H - 0.86],
    ["Z"],
  ]);
}

/** The body from the front; the nearside is on the right of the picture. */
export function frontShapes(vehicle: VehicleDescription): readonly BodyShape[] {
  const { widthM: W, heightM: H } = vehicle.dimensions;
  const aClass = vehicle.bodyStyle === "aClass";
  const mirrorTop = aClass ? H - 2.05 : H - 1.58;
  const lamp = (left: number): readonly PathStep[] => rect(left, H - 1.08, 0.34, 0.24, 0.08);
  return [
    piece("wheelFrontOffsideEnd", "wheel", rect(0.1, H - 0.55, 0.22, 0.55, 0.05)),
    piece("wheelFrontNearsideEnd", "wheel", rect(W - 0.32, H - 0.55, 0.22, 0.55, 0.05)),
    piece("panelFront", "panel", endOutline(W, H, VANS.includes(vehicle.bodyStyle))),
    ...aboveCab(vehicle),
    windscreenOf(vehicle),
    bonnetOf(vehicle),
    piece("grille", "trim", rect(0.5, H - 0.84, W - 1, 0.17, 0.05), [
      [
        ["M", 0.56, H - 0.755],
        ["L", W - 0.56, H - 0.755],
      ],
    ]),
    piece("headlampOffside", "lamp", lamp(0.1)),
    piece("headlampNearside", "lamp", lamp(W - 0.44)),
    piece("bumperFront", "panel", rect(0.04, H - 0.63, W - 0.08, 0.32, 0.1)),
    piece("plateFront", "trim", rect(W / 2 - 0.26, H - 0.52, 0.52, 0.11, 0.02)),
    piece("mirrorOffsideEnd", "trim", rect(-0.2, mirrorTop, 0.2, aClass ? 0.5 : 0.34, 0.06)),
    piece("mirrorNearsideEnd", "trim", rect(W, mirrorTop, 0.2, aClass ? 0.5 : 0.34, 0.06)),
  ];
}

/** The body from behind; the nearside is on the left of the picture. */
export function rearShapes(vehicle: VehicleDescription): readonly BodyShape[] {
  const { widthM: W, heightM: H } = vehicle.dimensions;
  const van = VANS.includes(vehicle.bodyStyle);
  const shapes: BodyShape[] = [
    piece("wheelRearNearsideEnd", "wheel", rect(0.1, H - 0.55, 0.22, 0.55, 0.05)),
    piece("wheelRearOffsideEnd", "wheel", rect(W - 0.32, H - 0.55, 0.22, 0.55, 0.05)),
    piece("panelRear", "panel", endOutline(W, H, van)),
  ];
  if (van) {
    const top = 0.24;
    const tall = H - 0.66 - top;
    const half = (W - 0.44) / 2;
    shapes.push(
      piece("rearDoorNearside", "panel", rect(0.21, top, half, tall, 0.06), [
        rect(0.21 + half - 0.14, H - 1.22, 0.06, 0.2, 0.02),
      ]),
      piece("rearDoorOffside", "panel", rect(0.23 + half, top, half, tall, 0.06)),
      piece("rearGlassNearside", "glass", rect(0.33, top + 0.22, half - 0.24, 0.62, 0.06)),
      piece("rearGlassOffside", "glass", rect(0.35 + half, top + 0.22, half - 0.24, 0.62, 0.06)),
    );
  }
  if (!van)
    shapes.push(
      piece("rearGlass", "glass", rect(W / 2 - 0.5, 0.62, 1, 0.5, 0.08), [
        rect(W / 2 - 0.44, 0.68, 0.88, 0.38, 0.06),
      ]),
    );
  shapes.push(
    piece("rearLampNearsideEnd", "lamp", rect(0.05, H - 1.37, 0.12, 0.46, 0.04)),
    piece("rearLampOffsideEnd", "lamp", rect(W - 0.17, H - 1.37, 0.12, 0.46, 0.04)),
    piece("bumperRear", "panel", rect(0.04, H - 0.6, W - 0.08, 0.27, 0.08)),
    piece("plateRear", "trim", rect(van ? 0.42 : W / 2 - 0.26, H - 0.82, 0.52, 0.11, 0.02)),
  );
  return shapes;
}
