import type { VehicleDescription } from "@setfair/engine";
import { frontOverhangM } from "./frame.ts";
import { type BodyShape, circle, mirrored, type PathStep, piece, rect } from "./shape.ts";

const WHEEL_RADIUS_M = 0.34;
const ARCH_RADIUS_M = 0.43;
const SILL_M = 0.34;

interface Side {
  readonly length: number;
  readonly height: number;
  readonly front: number;
  readonly rear: number;
  readonly style: VehicleDescription["bodyStyle"];
}

type Point = readonly [number, number];

/** Nose, windscreen and roof front as outline steps, heights above ground; ends on the roof. */
function nose({ height: H, style }: Side): readonly PathStep[] {
  if (style === "aClass") {
    return [
      ["Q", 0, 0.3, 0, 0.5],
      ["L", 0.02, 1.15],
      ["L", 0.3, H - 0.55],
      ["Q", 0.42, H, 1.15, H],
    ];
  }
  const hood: PathStep[] = [
    ["Q", 0, 0.28, 0, 0.45],
    ["L", 0.01, 0.78],
    ["Q", 0.03, 1.03, 0.3, 1.1],
    ["L", 0.98, 1.3],
  ];
  if (style === "overcab") {
    return [
      ...hood,
      ["L", 1.36, 1.82],
      ["L", 0.95, 1.88],
      ["Q", 0.55, 1.94, 0.62, 2.25],
      ["Q", 0.72, H - 0.04, 1.35, H],
    ];
  }
  if (style === "lowProfile") {
    // the windscreen ends under a cap that slopes up to the box
    return [
      ...hood,
      ["L", 1.42, 1.92],
      ["Q", 1.38, 2.02, 1.5, 2.1],
      ["L", 2.1, H - 0.2],
      ["Q", 2.35, H - 0.02, 2.75, H],
    ];
  }
  const [screenLeft, screenTop] = screenHead(H);
  return [...hood, ["L", screenLeft, screenTop], ["Q", screenLeft + 0.28, H - 0.03, screenLeft + 0.95, H]];
}

/** Top of the windscreen: distance from the front, height. */
function screenHead(H: number): Point {
  return [1.3 + (H - 1.3) * 0.28, 1.3 + (H - 1.3) * 0.7];
}

/** Top of the windscreen, by style: a box over the cab ends it lower. */
function headOf({ height, style }: Pick<Side, "height" | "style">): Point {
  if (style === "overcab") return [1.36, 1.82];
  return style === "lowProfile" ? [1.42, 1.9] : screenHead(height);
}

/** Underside from the rear to the front, cut by the wheel arches. */
function underside(side: Side): readonly PathStep[] {
  const arch = (centre: number): readonly PathStep[] => [
    ["L", centre + ARCH_RADIUS_M, SILL_M],
    ["A", ARCH_RADIUS_M, 0, centre - ARCH_RADIUS_M, SILL_M],
  ];
  return [...arch(side.rear), ...arch(side.front), ["L", 0.12, SILL_M - 0.06]];
}

function outline(side: Side): readonly PathStep[] {
  const { length: L, height: H, style } = side;
  const van = style === "panelVanConversion" || style === "campervan" || style === "elevatingRoofCampervan";
  const tail: PathStep[] = van
    ? [
        ["L", L - 0.42, H],
        ["Q", L - 0.1, H, L - 0.07, H - 0.32],
        ["L", L - 0.01, 0.72],
        ["Q", L, SILL_M, L - 0.12, SILL_M],
      ]
    : [
        ["L", L - 0.2, H],
        ["Q", L, H, L, H - 0.2],
        ["L", L, 0.58],
        ["Q", L, SILL_M + 0.06, L - 0.1, SILL_M + 0.02],
      ];
  return [["M", 0.12, SILL_M - 0.06], ...nose(side), ...tail, ...underside(side), ["Z"]];
}

/** Cab door and its window between the windscreen and the pillar behind the seats. */
function cabDoor(side: Side): { door: readonly PathStep[]; window: readonly PathStep[]; pillar: number } {
  const { style } = side;
  if (style === "aClass") {
    return {
      door: rect(0.55, 0.5, 0.85, 1.75, 0.06),
      window: rect(0.62, 1.35, 0.72, 0.8, 0.06),
      pillar: 1.4,
    };
  }
  const [headLeft, headTop] = headOf(side);
  const pillar = Math.max(1.95, headLeft + 0.42);
  const top = Math.min(headTop - 0.03, 2.02);
  const lean = (z: number): number => 0.98 + ((z - 1.3) / (headTop - 1.3)) * (headLeft - 0.98) + 0.09;
  const door: PathStep[] = [
    ["M", 1.18, SILL_M + 0.07],
    ["L", 1.06, 1.02],
    ["L", lean(1.3), 1.3],
    ["L", lean(top), top],
    ["L", pillar, top],
    ["L", pillar, SILL_M + 0.07],
    ["Z"],
  ];
  const window: PathStep[] = [
    ["M", lean(1.3) + 0.06, 1.3],
    ["L", lean(top) + 0.03, top - 0.06],
    ["L", pillar - 0.07, top - 0.06],
    ["L", pillar - 0.07, 1.24],
    ["Z"],
  ];
  return { door, window, pillar };
}

function doorBehindCab(
  side: Side,
  pillar: number,
): { readonly steps: readonly PathStep[]; readonly sliding: boolean } {
  const van =
    side.style === "panelVanConversion" ||
    side.style === "campervan" ||
    side.style === "elevatingRoofCampervan";
  const top = Math.min(2.05, side.height - 0.28);
  if (van)
    return { steps: rect(pillar + 0.06, SILL_M + 0.07, 1.18, top - SILL_M - 0.07, 0.07), sliding: true };
  const left = Math.min(pillar + 1.1, side.rear - ARCH_RADIUS_M - 0.75);
  return { steps: rect(left, SILL_M + 0.1, 0.62, top - SILL_M - 0.1, 0.07), sliding: false };
}

/** Turns heights above ground into metres from the top of the view. */
function fromTop(steps: readonly PathStep[], height: number): readonly PathStep[] {
  return steps.map((step): PathStep => {
    if (step[0] === "Z") return step;
    if (step[0] === "Q") return ["Q", step[1], height - step[2], step[3], height - step[4]];
    if (step[0] === "A") return ["A", step[1], step[2], step[3], height - step[4]];
    return [step[0], step[1], height - step[2]];
  });
}

function windscreen({ height: H, style }: Side): readonly PathStep[] {
  if (style === "aClass")
    return [["M", 0.1, 1.3], ["L", 0.3, H - 0.62], ["L", 0.5, H - 0.62], ["L", 0.5, 1.3], ["Z"]];
  const [left, top] = headOf({ height: H, style });
  return [["M", 0.98, 1.3], ["L", left, top], ["L", left + 0.07, top - 0.05], ["L", 1.09, 1.3], ["Z"]];
}

/** Lines that give the body its look: the rubbing strip, the joint of a coachbuilt box, the line of an elevating roof. */
function sideLines(side: Side, pillar: number): readonly (readonly PathStep[])[] {
  const { length: L, height: H } = side;
  const strip = (from: number, to: number): readonly PathStep[] => [
    ["M", from, 0.62],
    ["L", to, 0.62],
  ];
  const lines: (readonly PathStep[])[] = [
    strip(0.03, side.front - ARCH_RADIUS_M - 0.02),
    strip(side.front + ARCH_RADIUS_M + 0.02, side.rear - ARCH_RADIUS_M - 0.02),
    strip(side.rear + ARCH_RADIUS_M + 0.02, L - 0.02),
  ];
  if (side.style === "elevatingRoofCampervan")
    lines.push([
      ["M", pillar - 0.2, H - 0.14],
      ["L", L - 0.3, H - 0.14],
    ]);
  if (side.style === "lowProfile")
    // the joint of the cap with the cab roof, and of the box behind it
    lines.push(
      [
        ["M", 1.5, 2.1],
        ["L", pillar + 0.06, 2.1],
      ],
      [
        ["M", pillar + 0.06, SILL_M],
        ["L", pillar + 0.06, 2.1],
      ],
    );
  if (side.style === "overcab")
    lines.push(rect(0.98, H - 0.72, 0.5, 0.38, 0.08), [
      ["M", 0.98, 1.9],
      ["L", pillar + 0.06, 1.9],
    ]);
  if (side.style === "aClass")
    lines.push([
      ["M", 0.02, 1.16],
      ["L", 0.5, 1.16],
    ]);
  if (side.style === "overcab")
    lines.push([
      ["M", pillar + 0.06, SILL_M],
      ["L", pillar + 0.06, H - 0.04],
    ]);
  return lines;
}

/** The body as seen from the nearside (front to the left) or, mirrored, from the offside. */
export function sideShapes(vehicle: VehicleDescription, view: "nearside" | "offside"): readonly BodyShape[] {
  const { lengthM, heightM, wheelbaseM } = vehicle.dimensions;
  const front = frontOverhangM(vehicle);
  const side: Side = {
    length: lengthM,
    height: heightM,
    front,
    rear: front + wheelbaseM,
    style: vehicle.bodyStyle,
  };
  const { door, window, pillar } = cabDoor(side);
  const end = view === "nearside" ? "Nearside" : "Offside";
  const wheel = (where: "Front" | "Rear", centre: number): BodyShape =>
    piece(`wheel${where}${end}`, "wheel", circle(centre, WHEEL_RADIUS_M, WHEEL_RADIUS_M), [
      circle(centre, WHEEL_RADIUS_M, 0.19),
      circle(centre, WHEEL_RADIUS_M, 0.05),
    ]);
  const entrance = doorBehindCab(side, pillar);
  const handle = rect(pillar - 0.24, 1.0, 0.15, 0.05, 0.02);
  const shapes: BodyShape[] = [
    piece(`panel${end}`, "panel", outline(side), sideLines(side, pillar)),
    piece(`screenEdge${end}`, "glass", windscreen(side)),
    piece(
      `lamp${end}`,
      "lamp",
      side.style === "aClass"
        ? rect(0.03, 0.75, 0.16, 0.24, 0.05)
        : [["M", 0.06, 0.82], ["L", 0.2, 1.03], ["L", 0.42, 1.08], ["L", 0.36, 0.88], ["Z"]],
    ),
    piece(`rearLamp${end}`, "lamp", rect(lengthM - 0.13, 0.95, 0.09, 0.42, 0.03)),
    piece(`cabDoor${end}`, "panel", door, [handle]),
    piece(`cabWindow${end}`, "glass", window),
  ];
  if (view === "nearside") {
    shapes.push(
      piece(
        `${entrance.sliding ? "slidingDoor" : "entranceDoor"}${end}`,
        "panel",
        entrance.steps,
        entrance.sliding
          ? [
              [
                ["M", pillar + 1.24, 1.12],
                ["L", lengthM - 0.6, 1.12],
              ],
            ]
          : [],
      ),
    );
  }
  shapes.push(wheel("Front", side.front), wheel("Rear", side.rear));
  shapes.push(
    piece(
      `mirror${end}`,
      "trim",
      side.style === "aClass" ? rect(0.12, 1.5, 0.18, 0.46, 0.06) : rect(1.02, 1.26, 0.17, 0.32, 0.06),
    ),
  );
  const down = shapes.map((shape) => ({
    ...shape,
    points: fromTop(shape.points, heightM),
    ...(shape.detail === undefined ? {} : { detail: shape.detail.map((one) => fromTop(one, heightM)) }),
  }));
  if (view === "nearside") return down;
  return down.map((shape) => ({
    ...shape,
    points: mirrored(shape.points, lengthM),
    ...(shape.detail === undefined ? {} : { detail: shape.detail.map((one) => mirrored(one, lengthM)) }),
  }));
}
