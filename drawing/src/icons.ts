import { PALETTE } from "./palette.ts";
import { type SvgNode, svg } from "./svg-node.ts";

/** The five states of the glass, worst first; the shapes are ours and always stand beside the words. */
export const WEATHER_SHAPES = ["stormy", "rain", "change", "fair", "setFair"] as const;
export type WeatherShape = (typeof WEATHER_SHAPES)[number];

const frame = (children: readonly SvgNode[]): SvgNode =>
  svg("svg", { viewBox: "0 0 24 24", width: 24, height: 24, "aria-hidden": "true", class: "icon" }, children);
const line = (d: string, width = 2): SvgNode =>
  svg("path", {
    d,
    fill: "none",
    stroke: "currentColor",
    "stroke-width": width,
    "stroke-linecap": "round",
    "stroke-linejoin": "round",
  });
const solid = (d: string): SvgNode => svg("path", { d, fill: "currentColor" });
const disc = (cx: number, cy: number, r: number, filled: boolean): SvgNode =>
  svg("circle", {
    cx,
    cy,
    r,
    fill: filled ? "currentColor" : "none",
    stroke: "currentColor",
    "stroke-width": 2.4,
  });

const SHAPES: Readonly<Record<WeatherShape, readonly SvgNode[]>> = {
  stormy: [solid("M13.5 2 5 13.5h5.2L8.6 22 19 9.6h-6z")],
  rain: [solid("M12 2.5c4 5.2 6.4 8.3 6.4 11.7a6.4 6.4 0 0 1-12.8 0C5.6 10.8 8 7.7 12 2.5z")],
  change: [disc(12, 12, 8.6, false), solid("M12 3.4a8.6 8.6 0 0 0 0 17.2z")],
  fair: [disc(12, 12, 7.4, false)],
  setFair: [
    disc(12, 12, 4.6, true),
    line(
      "M12 1.8v3M12 19.2v3M1.8 12h3M19.2 12h3M4.8 4.8l2.1 2.1M17.1 17.1l2.1 2.1M4.8 19.2l2.1-2.1M17.1 6.9l2.1-2.1",
      2.2,
    ),
  ],
};

/** The shape of one state of the glass, 24 × 24, in the colour of the text round it. */
export function weatherShape(shape: WeatherShape): SvgNode {
  return frame(SHAPES[shape]);
}

const ICONS = {
  tick: [line("M4 12.5l5.2 5.2L20 6.5", 2.6)],
  cross: [line("M5.5 5.5l13 13M18.5 5.5l-13 13", 2.6)],
  camera: [line("M3 8h4l1.6-2.5h6.8L17 8h4v11H3z"), disc(12, 13.2, 3.4, false)],
  phone: [
    line(
      "M7.5 3.5 10 8 7.8 10c1.2 2.8 3.4 5 6.2 6.2l2-2.2 4.5 2.5c-.3 2.6-2 4-4.3 4C9.5 20.5 3.5 14.5 3.5 7.8c0-2.3 1.4-4 4-4.3z",
    ),
  ],
  warning: [line("M12 3 22 20.5H2z"), line("M12 9.5v5"), disc(12, 17.6, 0.4, true)],
  battery12: [line("M3 8h18v11H3zM6 8V5.5h3V8M15 8V5.5h3V8M6.5 13h3M15 11.5v3M13.5 13h3")],
  lpg: [
    line(
      "M8 8c-1.5.6-2 1.6-2 3v7.5c0 1 .8 2 2 2h8c1.2 0 2-1 2-2V11c0-1.4-.5-2.4-2-3M9 8h6M9 8V4h6v4M12 4V2.5",
    ),
  ],
  freshWater: [
    line("M12 3c3.8 5 6 7.8 6 11a6 6 0 0 1-12 0c0-3.2 2.2-6 6-11z"),
    line("M9.5 14.5a2.6 2.6 0 0 0 2.5 2.5"),
  ],
  wasteWater: [line("M4 4h16l-1.5 8.5h-13zM12 12.5V16"), line("M9 20c1-1.5 2-1.5 3 0s2 1.5 3 0")],
  cassette: [line("M5 6h14v9c0 2.2-1.8 4-4 4H9c-2.2 0-4-1.8-4-4zM8 6V3.5h8V6M9 11h6")],
  cabinHeat: [
    line("M8 20c-2-3 2-4 0-7.5S10 8 8 4.5M13 20c-2-3 2-4 0-7.5S15 8 13 4.5M18 20c-2-3 2-4 0-7.5s2-4.5 0-8"),
  ],
  mains230: [line("M8 3v5M16 3v5M5.5 8h13v3.5a6.5 6.5 0 0 1-13 0zM12 18v3.5")],
  fuel: [
    line(
      "M4.5 20.5V4.5h9v16M3 20.5h12M6.5 7.5h5v4h-5zM13.5 11h2.5c1 0 1.5.6 1.5 1.5v4a1.7 1.7 0 0 0 3.4 0V8.5L18 5.5",
    ),
  ],
  height: [line("M12 3v18M8.5 6.5 12 3l3.5 3.5M8.5 17.5 12 21l3.5-3.5M4 3h16M4 21h16")],
  forward: [line("M4 12h15M13 5.5l6.5 6.5-6.5 6.5", 2.4)],
  lock: [line("M5 11h14v9.5H5zM8 11V7.5a4 4 0 0 1 8 0V11")],
} as const satisfies Record<string, readonly SvgNode[]>;

export type IconName = keyof typeof ICONS;
export const ICON_NAMES = Object.keys(ICONS) as IconName[];

/** One of our own icons, 24 × 24, in the colour of the text round it; hidden from screen readers, since words stand beside it. */
export function icon(name: IconName): SvgNode {
  return frame(ICONS[name]);
}

/** The icon in a fixed colour, for documents, where no text colour is inherited. */
export function inked(node: SvgNode, colour: string = PALETTE.ink): SvgNode {
  const attributes = Object.fromEntries(
    Object.entries(node.attributes).map(([name, value]) => [name, value === "currentColor" ? colour : value]),
  );
  return {
    ...node,
    attributes,
    children: node.children.map((child) => (typeof child === "string" ? child : inked(child, colour))),
  };
}
