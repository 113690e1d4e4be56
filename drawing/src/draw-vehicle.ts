import type { VehicleDescription, View } from "@setfair/engine";
import { type Arranged, arrangeParts, touchBox } from "./arrange.ts";
import { fittedParts } from "./fitted-parts.ts";
import { type Frame, frameOf } from "./frame.ts";
import { glyphOf } from "./glyphs.ts";
import { PALETTE } from "./palette.ts";
import { bodyPieces, isDoor, isWheel } from "./pieces.ts";
import { raisedRoof } from "./raised-roof.ts";
import type { BodyShape, PathStep } from "./shape.ts";
import { type SvgNode, svg } from "./svg-node.ts";

/** A mark at its place on the drawing. */
export interface DrawnMark {
  readonly id: string;
  /** share of the paper from the left and from the top, 0 to 1 */
  readonly x: number;
  readonly y: number;
  /** short text inside the ring, usually a number */
  readonly label: string;
  readonly title: string;
  /** seen for the first time on this walk-round */
  readonly isNew: boolean;
}

export interface DrawOptions {
  /** words for a part, by its message id; the part's own id where left out */
  readonly nameOf?: (messageId: string) => string;
  /** title of the whole picture */
  readonly title?: string;
  readonly marks?: readonly DrawnMark[];
  /** part that is looked at now */
  readonly chosen?: string;
  /** parts already looked at */
  readonly done?: readonly string[];
  /** parts can be touched and reached with the keyboard */
  readonly touchable?: boolean;
}

/** A part in one view: fitted or of the body. */
export interface ViewPart {
  readonly part: string;
  /** message id */
  readonly name: string;
  readonly fitted: boolean;
}

/** Every part that can be touched in a view: the fitted ones first, then the body. */
export function partsOf(vehicle: VehicleDescription, view: View): readonly ViewPart[] {
  const fitted = fittedParts(vehicle, view).map(({ part, name }) => ({ part, name, fitted: true }));
  return [...fitted, ...bodyPieces(vehicle, view).map(({ part, name }) => ({ part, name, fitted: false }))];
}

/**
 * The vehicle as seen in one view, drawn from its own dimensions and fitted systems. 100 units are one
 * metre; the same description always gives the same picture.
 */
export function drawVehicle(vehicle: VehicleDescription, view: View, options: DrawOptions = {}): SvgNode {
  const frame = frameOf(vehicle, view);
  const body = bodyPieces(vehicle, view).map((shape) => drawBody(shape, frame, options));
  const fitted = arrangeParts(vehicle, view).map((part) => drawFitted(part, frame, options));
  const title = options.title === undefined ? [] : [svg("title", {}, [options.title])];
  return svg(
    "svg",
    {
      viewBox: `0 0 ${frame.paperWidth} ${frame.paperHeight}`,
      role: options.touchable ? "group" : "img",
      "aria-label": options.title,
      class: `vehicle vehicle-${view}`,
    },
    [
      ...title,
      ...ground(frame),
      ...raisedRoof(vehicle, view).map(({ steps, isShell }) => drawRaised(steps, isShell, frame)),
      ...body,
      ...fitted,
      ...towardsFront(frame),
      ...drawMarks(frame, options.marks ?? []),
    ],
  );
}

const FILLS: Readonly<Record<BodyShape["kind"], string>> = {
  panel: PALETTE.paper,
  glass: PALETTE.sky,
  wheel: PALETTE.chalk,
  lamp: PALETTE.paper,
  trim: PALETTE.chalk,
  seat: PALETTE.sky,
  zone: "none",
};

function drawRaised(steps: readonly PathStep[], isShell: boolean, frame: Frame): SvgNode {
  return svg("path", {
    d: pathText(steps, frame),
    fill: isShell ? PALETTE.paper : "none",
    stroke: PALETTE.ink,
    "stroke-width": isShell ? 2.6 : 1.4,
    "stroke-linejoin": "round",
    "stroke-dasharray": isShell ? undefined : "7 6",
    class: "raised",
  });
}

function drawBody(shape: BodyShape, frame: Frame, options: DrawOptions): SvgNode {
  const outline =
    shape.part.startsWith("body.panel") || shape.kind === "wheel" || shape.part === "body.cabFloor";
  const lines = (shape.detail ?? []).map((steps) => detailLine(steps, frame));
  const face = svg("path", {
    d: pathText(shape.points, frame),
    fill: fillOf(shape.part, FILLS[shape.kind], options),
    stroke:
      shape.kind === "zone" && shape.part !== options.chosen ? PALETTE.line : strokeOf(shape.part, options),
    "stroke-width": shape.part === options.chosen ? 5 : outline ? 3.4 : 2,
    "stroke-linejoin": "round",
    // an area without a fill is touched as a whole all the same
    "pointer-events": shape.kind === "zone" && options.touchable ? "all" : undefined,
    class: `face face-${shape.kind}`,
  });
  return group(shape.part, shape.name, [face, ...lines], options);
}

/** A fitted part at its arranged place, with the lines that show what it is. */
function drawFitted({ part, box }: Arranged, frame: Frame, options: DrawOptions): SvgNode {
  const wheel = isWheel(part);
  const door = isDoor(part);
  const usual = wheel ? PALETTE.chalk : door ? PALETTE.paper : PALETTE.sky;
  const common = {
    fill: fillOf(part.part, usual, options),
    stroke: strokeOf(part.part, options),
    "stroke-width": part.part === options.chosen ? 5 : wheel ? 3.4 : 2.4,
    class: `face face-${wheel ? "wheel" : door ? "panel" : "fitted"}`,
  };
  const x = frame.x(box.left);
  const y = frame.y(box.top);
  const width = round(box.width * 100);
  const height = round(box.height * 100);
  const face =
    part.shape === "circle"
      ? svg("ellipse", {
          cx: round(x + width / 2),
          cy: round(y + height / 2),
          rx: round(width / 2),
          ry: round(height / 2),
          ...common,
        })
      : svg("rect", { x, y, width, height, rx: round(Math.min(7, width / 3, height / 3)), ...common });
  const hub = wheel ? hubOf(x + width / 2, y + height / 2, width / 2) : [];
  const glyph = glyphOf(part.part, box).map((steps) => detailLine(steps, frame));
  return group(part.part, part.name, [face, ...hub, ...glyph, ...hitArea(box, frame, options)], options);
}

const detailLine = (steps: readonly PathStep[], frame: Frame): SvgNode =>
  svg("path", {
    d: pathText(steps, frame),
    fill: "none",
    stroke: PALETTE.ink,
    "stroke-width": 1.6,
    "stroke-linecap": "round",
    "stroke-linejoin": "round",
    class: "detail",
  });

function hubOf(cx: number, cy: number, radius: number): readonly SvgNode[] {
  return [0.55, 0.15].map((share) =>
    svg("circle", {
      cx: round(cx),
      cy: round(cy),
      r: round(radius * share),
      fill: "none",
      stroke: PALETTE.ink,
      "stroke-width": 1.6,
      class: "detail",
    }),
  );
}

/** Small parts get an unseen larger area, so that a gloved finger finds them. */
function hitArea(box: Arranged["box"], frame: Frame, { touchable }: DrawOptions): readonly SvgNode[] {
  const touch = touchBox(box);
  if (!touchable || (touch.width === box.width && touch.height === box.height)) return [];
  return [
    svg("rect", {
      x: frame.x(touch.left),
      y: frame.y(touch.top),
      width: round(touch.width * 100),
      height: round(touch.height * 100),
      fill: "none",
      "pointer-events": "all",
      class: "hit",
    }),
  ];
}

function group(part: string, name: string, children: readonly SvgNode[], options: DrawOptions): SvgNode {
  const words = options.nameOf?.(name) ?? part;
  const touch = options.touchable
    ? {
        role: "button",
        tabindex: 0,
        "aria-label": words,
        "aria-pressed": part === options.chosen ? "true" : "false",
      }
    : {};
  return svg("g", { "data-part": part, class: stateClass(part, options), ...touch }, [
    svg("title", {}, [words]),
    ...children,
  ]);
}

function stateClass(part: string, { chosen, done }: DrawOptions): string {
  return `part${part === chosen ? " part-chosen" : ""}${done?.includes(part) ? " part-done" : ""}`;
}

const fillOf = (part: string, usual: string, { chosen }: DrawOptions): string =>
  part === chosen ? PALETTE.brassSoft : usual;
const strokeOf = (part: string, { chosen }: DrawOptions): string =>
  part === chosen ? PALETTE.brass : PALETTE.ink;
const round = (value: number): number => Math.round(value * 10) / 10;

/** An outline as the `d` of a path, in drawing units. */
export function pathText(steps: readonly PathStep[], frame: Frame): string {
  return steps
    .map((step) => {
      if (step[0] === "Z") return "Z";
      if (step[0] === "Q")
        return `Q${frame.x(step[1])} ${frame.y(step[2])} ${frame.x(step[3])} ${frame.y(step[4])}`;
      if (step[0] === "A")
        return `A${round(step[1] * 100)} ${round(step[1] * 100)} 0 0 ${step[2]} ${frame.x(step[3])} ${frame.y(step[4])}`;
      return `${step[0]}${frame.x(step[1])} ${frame.y(step[2])}`;
    })
    .join("");
}

function ground(frame: Frame): readonly SvgNode[] {
  if (!["nearside", "offside", "front", "rear"].includes(frame.view)) return [];
  const y = frame.y(frame.heightM);
  return [
    svg("path", {
      d: `M${frame.x(-0.3)} ${y}H${frame.x(frame.widthM + 0.3)}`,
      stroke: PALETTE.line,
      "stroke-width": 2,
      fill: "none",
      class: "ground",
    }),
  ];
}

/** An arrow towards the front, below the picture, for the views in which it can be mistaken. */
function towardsFront(frame: Frame): readonly SvgNode[] {
  if (frame.view === "front" || frame.view === "rear") return [];
  const y = frame.y(frame.heightM + 0.28);
  const right = frame.view === "offside";
  const tip = frame.x(right ? frame.widthM : 0);
  const way = right ? -1 : 1;
  const d = `M${tip + way * 46} ${y}H${tip}M${tip + way * 13} ${y - 9}L${tip} ${y}L${tip + way * 13} ${y + 9}`;
  return [
    svg("path", {
      d,
      stroke: PALETTE.ink,
      "stroke-width": 2.4,
      "stroke-linecap": "round",
      "stroke-linejoin": "round",
      fill: "none",
      class: "towards-front",
    }),
  ];
}

function drawMarks(frame: Frame, marks: readonly DrawnMark[]): readonly SvgNode[] {
  return marks.map((mark) => {
    const cx = round(mark.x * frame.paperWidth);
    const cy = round(mark.y * frame.paperHeight);
    const colour = mark.isNew ? PALETTE.red : PALETTE.ink;
    return svg(
      "g",
      { "data-mark": mark.id, class: mark.isNew ? "mark mark-new" : "mark", "pointer-events": "none" },
      [
        svg("title", {}, [mark.title]),
        svg("circle", {
          cx,
          cy,
          r: 17,
          fill: PALETTE.paper,
          stroke: colour,
          "stroke-width": mark.isNew ? 4 : 2.6,
        }),
        svg(
          "text",
          { x: cx, y: cy + 6.5, "text-anchor": "middle", "font-size": 19, "font-weight": 700, fill: colour },
          [mark.label],
        ),
      ],
    );
  });
}
