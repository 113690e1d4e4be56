import type { VehicleDescription } from "@setfair/engine";
import { bodyShapes } from "./body.ts";
import { pathText } from "./draw-vehicle.ts";
import { type Frame, frameOf } from "./frame.ts";
import { PALETTE } from "./palette.ts";
import { circle, type PathStep, rect } from "./shape.ts";
import { type SvgNode, svg } from "./svg-node.ts";

/** A mass that stays where it is: a person, water, gas. */
export interface LoadDot {
  readonly id: string;
  readonly title: string;
  readonly behindFrontAxleM: number;
  /** height of its middle above ground, m: a person sits higher than a tank */
  readonly heightM: number;
  readonly massKg: number;
}

/** A place that things are stowed in, with what is there now. */
export interface LoadBox {
  readonly place: string;
  /** what a screen reader says, and what is written in it */
  readonly title: string;
  readonly label: string;
  readonly behindFrontAxleM: number;
  readonly massKg: number;
  /** more than its label allows */
  readonly isOver: boolean;
  /** the thing that is being moved may go here */
  readonly isOpen: boolean;
}

/** An axle with its load, kg: bar against the plate's limit and what its tyres carry. */
export interface LoadAxle {
  readonly title: string;
  /** name of the axle, and its figures, as written above the bar */
  readonly label: string;
  readonly figures: string;
  readonly loadKg: number;
  readonly limitKg: number;
  readonly tyresKg: number | null;
}

export interface LoadPicture {
  readonly title: string;
  readonly dots: readonly LoadDot[];
  readonly boxes: readonly LoadBox[];
  readonly front: LoadAxle;
  readonly rear: LoadAxle;
  readonly total: LoadAxle;
}

/** Room below the ground for the bars, m. */
const BARS_M = 1.95;
const INK = PALETTE.ink;

/**
 * The vehicle from the nearside with its masses along it, and below it both axles and the whole against their
 * limits (kg). Places can be touched: `data-place`. 100 units are one metre; no DOM, the same for web and paper.
 */
export function drawLoad(vehicle: VehicleDescription, picture: LoadPicture): SvgNode {
  const frame = frameOf({ ...vehicle, bodyStyle: shut(vehicle.bodyStyle) }, "nearside");
  const tall = frame.paperHeight + BARS_M * 100;
  const wide = frame.paperWidth + 60;
  const boxes = picture.boxes.map((box) => drawBox(box, vehicle, frame));
  const dots = picture.dots.filter(({ massKg }) => massKg > 0).map((dot) => drawDot(dot, frame));
  return svg(
    "svg",
    { viewBox: `0 0 ${wide} ${tall}`, role: "group", "aria-label": picture.title, class: "load-picture" },
    [
      svg("title", {}, [picture.title]),
      ...ghost(vehicle, frame),
      ...boxes,
      ...dots,
      ...axles(vehicle, picture, frame),
    ],
  );
}

/** On the road an elevating roof is down. */
const shut = (style: VehicleDescription["bodyStyle"]): VehicleDescription["bodyStyle"] =>
  style === "elevatingRoofCampervan" ? "campervan" : style;

/** The body in thin lines, behind everything. */
function ghost(vehicle: VehicleDescription, frame: Frame): readonly SvgNode[] {
  const shapes = bodyShapes(vehicle, "nearside").filter(
    ({ part }) => !/slidingDoor|entranceDoor|mirror/.test(part),
  );
  return shapes.map((shape) =>
    svg("path", {
      d: pathText(shape.points, frame),
      fill: shape.kind === "wheel" ? PALETTE.chalk : shape.kind === "glass" ? PALETTE.sky : PALETTE.paper,
      stroke: INK,
      "stroke-width": shape.kind === "wheel" || shape.part.startsWith("body.panel") ? 3 : 1.4,
      "stroke-linejoin": "round",
      class: `ghost ghost-${shape.kind}`,
    }),
  );
}

interface Spot {
  /** height of its middle above ground and its size, m */
  readonly heightM: number;
  readonly size: readonly [width: number, height: number];
}

/** Where a place is seen from the side. */
function spotOf(place: string, H: number): Spot {
  const low = H < 2.2;
  const spots: Readonly<Record<string, Spot>> = {
    cab: { heightM: 0.78, size: [0.62, 0.5] },
    overCab: { heightM: H - 0.55, size: [0.9, 0.5] },
    floor: { heightM: 0.72, size: [0.92, 0.5] },
    lockers: { heightM: low ? 1.42 : H - 0.62, size: [0.92, 0.5] },
    underBed: { heightM: low ? 0.78 : 1.36, size: [0.86, 0.5] },
    garage: { heightM: 0.74, size: [0.86, 0.56] },
    roof: { heightM: H + 0.2, size: [0.9, 0.3] },
    rack: { heightM: 1.5, size: [0.5, 0.9] },
  };
  return spots[place] ?? { heightM: 1.4, size: [0.6, 0.5] };
}

function drawBox(box: LoadBox, vehicle: VehicleDescription, frame: Frame): SvgNode {
  const { heightM: H, lengthM } = vehicle.dimensions;
  const spot = spotOf(box.place, H);
  const [width, height] = spot.size;
  const { leftM, topM } = frame.place({ xM: box.behindFrontAxleM, yM: 0, zM: spot.heightM });
  const isRack = box.place === "rack";
  const left = isRack ? lengthM + 0.08 : Math.min(Math.max(leftM - width / 2, 0.1), lengthM - width - 0.08);
  const top = topM - height / 2;
  const stroke = box.isOver ? PALETTE.red : box.isOpen ? PALETTE.brass : INK;
  const touch = box.isOpen ? { role: "button", tabindex: 0 } : { role: "img" };
  return svg(
    "g",
    {
      "data-place": box.place,
      "aria-label": box.title,
      class: `load-place${box.isOpen ? " load-place-open" : ""}${box.isOver ? " load-place-over" : ""}`,
      ...touch,
    },
    [
      svg("title", {}, [box.title]),
      svg("path", {
        d: pathText(rect(left, top, width, height, 0.08), frame),
        fill: box.isOpen ? PALETTE.brassSoft : box.massKg > 0 ? PALETTE.sky : PALETTE.paper,
        stroke,
        "stroke-width": box.isOpen || box.isOver ? 4 : 2,
        "stroke-dasharray": box.massKg > 0 || box.isOpen ? undefined : "6 6",
      }),
      words(
        frame.x(left + width / 2),
        frame.y(top + height / 2) + 9,
        box.label,
        width < 0.6 ? 17 : 26,
        stroke,
      ),
    ],
  );
}

/** A mass that stays: a disc whose area goes with its kg. */
function drawDot(dot: LoadDot, frame: Frame): SvgNode {
  const { leftM, topM } = frame.place({ xM: dot.behindFrontAxleM, yM: 0, zM: dot.heightM });
  const radius = Math.min(0.3, Math.max(0.1, 0.026 * Math.sqrt(dot.massKg)));
  return svg("g", { "data-dot": dot.id, role: "img", "aria-label": dot.title }, [
    svg("title", {}, [dot.title]),
    svg("path", {
      d: pathText(circle(leftM, topM, radius), frame),
      fill: PALETTE.chalk,
      stroke: INK,
      "stroke-width": 2,
      "fill-opacity": 0.9,
    }),
    ...(radius > 0.16
      ? [words(frame.x(leftM), frame.y(topM) + 7, String(Math.round(dot.massKg)), 20, INK)]
      : []),
  ]);
}

function axles(
  vehicle: VehicleDescription,
  { front, rear, total }: LoadPicture,
  frame: Frame,
): readonly SvgNode[] {
  const { lengthM: L, heightM: H, wheelbaseM } = vehicle.dimensions;
  const at = (xM: number) => frame.place({ xM, yM: 0, zM: 0 }).leftM;
  const half = L / 2 - 0.12;
  const left = 0;
  const right = L - half;
  return [
    ...pointer(at(0), Math.min(at(0), left + half), H, frame),
    ...pointer(at(wheelbaseM), Math.max(at(wheelbaseM), right), H, frame),
    bar(front, [left, H + 0.76, half], frame),
    bar(rear, [right, H + 0.76, half], frame),
    bar(total, [left, H + 1.66, right + half - left], frame),
  ];
}

/** A line from the wheel to its bar. */
function pointer(fromM: number, toM: number, H: number, frame: Frame): readonly SvgNode[] {
  const steps: readonly PathStep[] = [
    ["M", fromM, H + 0.03],
    ["L", toM, H + 0.2],
  ];
  return [svg("path", { d: pathText(steps, frame), stroke: INK, "stroke-width": 2.4, fill: "none" })];
}

/** A load as a bar, with the limit as an upright line and the tyres as a dashed one. */
function bar(axle: LoadAxle, [left, top, width]: readonly [number, number, number], frame: Frame): SvgNode {
  const most = Math.max(axle.loadKg, axle.limitKg, axle.tyresKg ?? 0) * 1.04;
  const share = (kg: number) => (Math.max(0, kg) / most) * width;
  const isOver = axle.loadKg > Math.min(axle.limitKg, axle.tyresKg ?? Infinity) + 1e-9;
  const colour = isOver ? PALETTE.red : INK;
  const upright = (kg: number, dashed: boolean): SvgNode =>
    svg("path", {
      d: pathText(
        [
          ["M", left + share(kg), top - 0.05],
          ["L", left + share(kg), top + 0.27],
        ],
        frame,
      ),
      stroke: dashed ? PALETTE.brass : INK,
      "stroke-width": 4,
      "stroke-dasharray": dashed ? "6 5" : undefined,
    });
  const face = (wide: number, fill: string): SvgNode =>
    svg("path", {
      d: pathText(rect(left, top, wide, 0.22, 0.04), frame),
      fill,
      stroke: colour,
      "stroke-width": 2,
    });
  return svg("g", { role: "img", "aria-label": axle.title, class: isOver ? "axle axle-over" : "axle" }, [
    svg("title", {}, [axle.title]),
    face(width, PALETTE.paper),
    face(Math.max(0.02, share(axle.loadKg)), isOver ? PALETTE.red : PALETTE.sky),
    upright(axle.limitKg, false),
    ...(axle.tyresKg === null ? [] : [upright(axle.tyresKg, true)]),
    caption(frame.x(left), frame.y(top - 0.34), axle.label, colour),
    caption(frame.x(left), frame.y(top - 0.11), axle.figures, colour),
  ]);
}

const words = (x: number, y: number, text: string, size: number, fill: string): SvgNode =>
  svg(
    "text",
    { x, y, "text-anchor": "middle", "font-size": size, "font-weight": 700, fill, "pointer-events": "none" },
    [text],
  );

const caption = (x: number, y: number, text: string, fill: string): SvgNode =>
  svg("text", { x, y, "font-size": 23, "font-weight": 700, fill, class: "axle-words" }, [text]);
