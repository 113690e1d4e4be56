import type { VehicleDescription } from "@setfair/engine";
import { CAB_LENGTH_M, frontOverhangM } from "./frame.ts";
import { type BodyShape, circle, type PathStep, piece, rect } from "./shape.ts";

/** The body from above, front to the left: rounded nose, square tail. */
function planOutline(L: number, W: number): readonly PathStep[] {
  return [
    ["M", 0.5, 0.05],
    ["L", L - 0.12, 0],
    ["Q", L, 0, L, 0.14],
    ["L", L, W - 0.14],
    ["Q", L, W, L - 0.12, W],
    ["L", 0.5, W - 0.05],
    ["Q", 0, W - 0.14, 0, W * 0.68],
    ["L", 0, W * 0.32],
    ["Q", 0, 0.14, 0.5, 0.05],
    ["Z"],
  ];
}

const across = (left: number, W: number): readonly PathStep[] => [
  ["M", left, 0.08],
  ["L", left, W - 0.08],
];

export function roofShapes(vehicle: VehicleDescription): readonly BodyShape[] {
  const { lengthM: L, widthM: W } = vehicle.dimensions;
  const screen: PathStep[] = [
    ["M", 0.98, 0.2],
    ["Q", 0.8, W / 2, 0.98, W - 0.2],
    ["L", 1.6, W - 0.3],
    ["Q", 1.48, W / 2, 1.6, 0.3],
    ["Z"],
  ];
  const from = vehicle.bodyStyle === "aClass" ? 0.75 : 1.75;
  const third = (L - from - 0.15) / 3;
  const panel = (index: number): readonly PathStep[] =>
    rect(from + index * (third + 0.02), 0.13, third, W - 0.26, 0.1);
  return [
    piece("panelAbove", "panel", planOutline(L, W)),
    ...aheadOfRoof(vehicle, screen),
    piece(
      "roofFront",
      "panel",
      vehicle.bodyStyle === "overcab" ? overCabPlan(from + third, W) : panel(0),
      vehicle.bodyStyle === "lowProfile" ? [rect(from + 0.1, W / 2 - 0.4, 0.42, 0.8, 0.06)] : [],
    ),
    piece("roofMiddle", "panel", panel(1)),
    piece("roofRear", "panel", panel(2)),
  ];
}

/** The windscreen as it is seen from above: far forward on an A-class, under the bed on an overcab. */
function aheadOfRoof(
  { bodyStyle, dimensions }: VehicleDescription,
  screen: readonly PathStep[],
): readonly BodyShape[] {
  const W = dimensions.widthM;
  if (bodyStyle === "overcab") return [];
  if (bodyStyle !== "aClass") return [piece("windscreenAbove", "glass", screen)];
  return [
    piece("windscreenAbove", "glass", [
      ["M", 0.3, 0.18],
      ["Q", 0.02, W / 2, 0.3, W - 0.18],
      ["L", 0.62, W - 0.22],
      ["Q", 0.4, W / 2, 0.62, 0.22],
      ["Z"],
    ]),
  ];
}

/** The front of an overcab's roof, rounded where the bed reaches over the windscreen. */
function overCabPlan(to: number, W: number): readonly PathStep[] {
  return [
    ["M", 0.95, 0.1],
    ["L", to, 0.1],
    ["L", to, W - 0.1],
    ["L", 0.95, W - 0.1],
    ["Q", 0.55, W - 0.14, 0.55, W * 0.7],
    ["L", 0.55, W * 0.3],
    ["Q", 0.55, 0.14, 0.95, 0.1],
    ["Z"],
  ];
}

/** Floor plan in zones; what is really fitted is drawn on top from the systems. Driver on the offside. */
export function insideShapes(vehicle: VehicleDescription): readonly BodyShape[] {
  const { lengthM: L, widthM: W } = vehicle.dimensions;
  const seat = (top: number): readonly PathStep[] => rect(1.3, top, 0.52, 0.52, 0.1);
  const zone = (L - 2.05 - 0.1) / 3;
  const half = (W - 0.24) / 2;
  const shapes: BodyShape[] = [
    piece("panelInside", "panel", planOutline(L, W)),
    piece(
      "dashboardInside",
      "trim",
      [
        ["M", 0.85, 0.2],
        ["Q", 0.7, W / 2, 0.85, W - 0.2],
        ["L", 1.05, W - 0.22],
        ["Q", 0.98, W / 2, 1.05, 0.22],
        ["Z"],
      ],
      [circle(1.16, 0.52, 0.18)],
    ),
    piece("seatDriver", "seat", seat(0.26)),
    piece("seatPassenger", "seat", seat(W - 0.78)),
  ];
  const names = ["Front", "Middle", "Rear"] as const;
  names.forEach((name, index) => {
    const left = 2.05 + index * zone;
    shapes.push(piece(`inside${name}Offside`, "zone", rect(left, 0.1, zone - 0.05, half, 0.05)));
    shapes.push(piece(`inside${name}Nearside`, "zone", rect(left, 0.14 + half, zone - 0.05, half, 0.05)));
  });
  return shapes;
}

export function undersideShapes(vehicle: VehicleDescription): readonly BodyShape[] {
  const { lengthM: L, widthM: W, wheelbaseM } = vehicle.dimensions;
  const front = frontOverhangM(vehicle);
  const rail = (top: number): readonly PathStep[] => rect(0.3, top, L - 0.5, 0.08, 0.02);
  const axle = (centre: number): readonly PathStep[] => rect(centre - 0.06, 0.3, 0.12, W - 0.6, 0.03);
  const tyre = (centre: number, top: number): readonly PathStep[] =>
    rect(centre - 0.34, top, 0.68, 0.22, 0.06);
  const wheels = [front, front + wheelbaseM].flatMap((centre, index): BodyShape[] => {
    const where = index === 0 ? "Front" : "Rear";
    return [
      piece(`axle${where}`, "trim", axle(centre)),
      piece(`tyre${where}OffsideBelow`, "wheel", tyre(centre, 0.1)),
      piece(`tyre${where}NearsideBelow`, "wheel", tyre(centre, W - 0.32)),
    ];
  });
  return [
    piece("panelBelow", "panel", planOutline(L, W), [across(front + wheelbaseM / 2, W)]),
    piece("railOffside", "trim", rail(W * 0.3)),
    piece("railNearside", "trim", rail(W * 0.7 - 0.08)),
    ...wheels,
  ];
}

/** The cab from above, front to the left, driver on the offside. */
export function cabShapes(vehicle: VehicleDescription): readonly BodyShape[] {
  const { widthM: W } = vehicle.dimensions;
  const seat = (top: number): readonly PathStep[] => rect(1.3, top, 0.55, 0.54, 0.1);
  const back = (top: number): readonly PathStep[] => rect(1.72, top + 0.03, 0.15, 0.48, 0.06);
  const nose: readonly PathStep[] = [
    ["M", CAB_LENGTH_M, 0],
    ["L", 0.5, 0.05],
    ["Q", 0, 0.14, 0, W * 0.32],
    ["L", 0, W * 0.68],
    ["Q", 0, W - 0.14, 0.5, W - 0.05],
    ["L", CAB_LENGTH_M, W],
    ["Z"],
  ];
  const screen: readonly PathStep[] = [
    ["M", 0.4, 0.22],
    ["Q", 0.14, W / 2, 0.4, W - 0.22],
    ["L", 0.6, W - 0.24],
    ["Q", 0.4, W / 2, 0.6, 0.24],
    ["Z"],
  ];
  const dashboard: readonly PathStep[] = [
    ["M", 0.86, 0.18],
    ["Q", 0.7, W / 2, 0.86, W - 0.18],
    ["L", 1.08, W - 0.2],
    ["Q", 1.02, W / 2, 1.08, 0.2],
    ["Z"],
  ];
  return [
    piece("cabFloor", "panel", nose),
    piece("windscreenInside", "glass", screen),
    piece("dashboard", "panel", dashboard),
    piece("centreConsole", "trim", rect(0.98, W / 2 - 0.14, 0.5, 0.28, 0.05)),
    piece("cabSeatDriver", "seat", seat(0.28), [back(0.28)]),
    piece("cabSeatPassenger", "seat", seat(W - 0.82), [back(W - 0.82)]),
    piece("steeringWheel", "trim", circle(1.17, 0.55, 0.19), [
      circle(1.17, 0.55, 0.14),
      circle(1.17, 0.55, 0.04),
    ]),
  ];
}
