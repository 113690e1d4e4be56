import type { Box } from "./arrange.ts";
import { circle, type PathStep, rect } from "./shape.ts";

type Lines = readonly (readonly PathStep[])[];
/** Lines inside a part, given its box: what makes a hob a hob. Metres on the view. */
type Glyph = (box: Box) => Lines;

const line = (...points: readonly (readonly [number, number])[]): readonly PathStep[] =>
  points.map(([left, top], k): PathStep => [k === 0 ? "M" : "L", left, top]);

/** A point of the box, in shares of its width and height. */
const at = ({ left, top, width, height }: Box, x: number, y: number): readonly [number, number] => [
  left + width * x,
  top + height * y,
];
const inner = ({ left, top, width, height }: Box, inset: number): readonly PathStep[] =>
  rect(left + inset, top + inset, width - 2 * inset, height - 2 * inset, 0.03);
const ring = (box: Box, x: number, y: number, radius: number): readonly PathStep[] =>
  circle(...at(box, x, y), radius);
const through = (box: Box, ...points: readonly (readonly [number, number])[]): readonly PathStep[] =>
  line(...points.map(([x, y]) => at(box, x, y)));

const cap: Glyph = (box) => [ring(box, 0.5, 0.5, box.width * 0.26)];
const slats: Glyph = (box) => [0.22, 0.41, 0.6, 0.79].map((y) => through(box, [0.12, y], [0.88, y]));
const lidWithHandle: Glyph = (box) => [inner(box, 0.05), through(box, [0.38, 0.82], [0.62, 0.82])];
const hinged: Glyph = (box) => [inner(box, 0.05), through(box, [0.16, 0.14], [0.84, 0.14])];
const warmth: Glyph = (box) =>
  [0.3, 0.5, 0.7].map((x): readonly PathStep[] => [
    ["M", ...at(box, x, 0.78)],
    ["Q", ...at(box, x - 0.14, 0.62), ...at(box, x, 0.5)],
    ["Q", ...at(box, x + 0.14, 0.36), ...at(box, x, 0.22)],
  ]);
const cells: Glyph = (box) => [
  ...[0.25, 0.5, 0.75].map((x) => through(box, [x, 0], [x, 1])),
  through(box, [0, 0.5], [1, 0.5]),
];
const poles: Glyph = (box) => [
  through(box, [0.2, 0.5], [0.4, 0.5]),
  through(box, [0.6, 0.5], [0.8, 0.5]),
  through(box, [0.7, 0.3], [0.7, 0.7]),
];
const spark: Glyph = (box) => [through(box, [0.56, 0.14], [0.36, 0.54], [0.62, 0.5], [0.44, 0.88])];
const drip: Glyph = (box) => [through(box, [0.3, 0.3], [0.5, 0.72], [0.7, 0.3])];

/** Seats seen from above, the front to the left: a cushion and a back each, with the belt across. */
const seats =
  (count: number): Glyph =>
  (box) => {
    const each = box.height / count;
    return Array.from({ length: count }, (_, k) => {
      const top = box.top + k * each + 0.04;
      const tall = each - 0.08;
      const seat = { left: box.left, top, width: box.width, height: tall };
      return [
        rect(box.left + 0.05, top, box.width * 0.68, tall, 0.07),
        rect(box.left + box.width * 0.76, top + 0.02, box.width * 0.19, tall - 0.04, 0.05),
        through(seat, [0.74, 0.14], [0.16, 0.86]),
      ];
    }).flat();
  };

const bed: Glyph = (box) => {
  const pillow = Math.min(0.34, box.width * 0.28);
  const tall = box.height * 0.38;
  return [
    rect(box.left + box.width - pillow - 0.07, box.top + box.height * 0.08, pillow, tall, 0.08),
    rect(box.left + box.width - pillow - 0.07, box.top + box.height * 0.54, pillow, tall, 0.08),
    through(box, [0.58, 0.02], [0.58, 0.98]),
  ];
};

const dashboard: Glyph = (box) => [
  circle(box.left + box.width + 0.02, box.top + box.height * 0.22, 0.19),
  circle(box.left + box.width + 0.02, box.top + box.height * 0.22, 0.06),
  rect(box.left + box.width * 0.25, box.top + box.height * 0.42, box.width * 0.5, box.height * 0.16, 0.03),
];

const bicycles: Glyph = (box) => [
  through(box, [0.08, 0.86], [0.92, 0.86]),
  through(box, [0.12, 0.94], [0.88, 0.94]),
  ring(box, 0.26, 0.56, box.height * 0.26),
  ring(box, 0.74, 0.56, box.height * 0.26),
  through(box, [0.26, 0.56], [0.42, 0.24], [0.66, 0.24], [0.74, 0.56], [0.5, 0.56], [0.42, 0.24]),
];

const GLYPHS: Readonly<Record<string, Glyph>> = {
  "beds.bed": bed,
  "bikeRack.rack": bicycles,
  "cab.dashboard": dashboard,
  "cassetteToilet.door": lidWithHandle,
  "cassetteToilet.bowl": (box) => [
    circle(...at(box, 0.56, 0.5), Math.min(box.width, box.height) * 0.3),
    through(box, [0.14, 0.12], [0.14, 0.88]),
  ],
  "charging.charger": spark,
  "cooking.hob": (box) => [ring(box, 0.28, 0.5, box.height * 0.26), ring(box, 0.72, 0.5, box.height * 0.26)],
  "def.filler": cap,
  "door.door": (box) => doorGlyph(box),
  "elevatingRoof.roof": (box) => [inner(box, 0.07), through(box, [0.12, 0.5], [0.88, 0.5])],
  "freshWater.drain": drip,
  "freshWater.filler": cap,
  "fridge.fridge": (box) => [inner(box, 0.05), through(box, [0.68, 0.12], [0.68, 0.42])],
  "fridge.vents": slats,
  "fuel.filler": cap,
  "garage.floor": (box) => [inner(box, 0.06), through(box, [0.06, 0.06], [0.94, 0.94])],
  "heating.flue": cap,
  "heating.heater": warmth,
  "hookUp.inlet": (box) => [
    ring(box, 0.34, 0.4, 0.015),
    ring(box, 0.66, 0.4, 0.015),
    ring(box, 0.5, 0.66, 0.015),
  ],
  "hookUp.consumerUnit": (box) => [
    through(box, [0.3, 0.2], [0.3, 0.8]),
    through(box, [0.6, 0.2], [0.6, 0.8]),
  ],
  "hotWater.heater": warmth,
  "inverter.box": spark,
  "leisureBattery.battery": poles,
  "lpg.filler": cap,
  "lpg.locker": (box) => [
    inner(box, 0.05),
    through(box, [0.3, 0.2], [0.7, 0.2]),
    through(box, [0.3, 0.84], [0.7, 0.84]),
  ],
  "seatsBelts.front": seats(2),
  "seatsBelts.rear": seats(2),
  "solar.panel": cells,
  "step.door": (box) => doorGlyph(box),
  "step.step": (box) => [through(box, [0.08, 0.5], [0.92, 0.5])],
  "television.aerial": (box) => [
    ring(box, 0.5, 0.5, box.width * 0.3),
    through(box, [0.5, 0.5], [0.82, 0.18]),
  ],
  "tractionBattery.inlet": cap,
  "wasteWater.drain": drip,
  "windows.nearside": hinged,
  "windows.offside": hinged,
  "windows.rooflight": (box) => [inner(box, 0.06), through(box, [0.3, 0.3], [0.7, 0.7])],
  "airConditioning.roofUnit": slats,
  "airConditioning.outlet": slats,
  "awning.cassette": (box) => [through(box, [0.01, 0.62], [0.99, 0.62])],
  "alarms.extinguisher": cap,
};

function doorGlyph(box: Box): Lines {
  const { left, top, width, height } = box;
  return [
    rect(left + width * 0.2, top + height * 0.12, width * 0.6, height * 0.3, 0.05),
    rect(left + width * 0.78, top + height * 0.54, width * 0.1, height * 0.09, 0.02),
  ];
}

/** The lines inside a fitted part; none for one that nobody has drawn yet: it is then a plain box. */
export function glyphOf(part: string, box: Box): Lines {
  return GLYPHS[part]?.(box) ?? [];
}
