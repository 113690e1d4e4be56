import { BODY_STYLES, VIEWS } from "@setfair/engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawVehicle, partsOf } from "./draw-vehicle.ts";
import { exampleVehicle } from "./example-vehicle.ts";
import { fittedParts } from "./fitted-parts.ts";
import { frameOf, SCALE } from "./frame.ts";
import { type SvgNode, svgText } from "./svg-node.ts";

const anyVehicle = fc
  .record({
    style: fc.constantFrom(...BODY_STYLES),
    lengthM: fc.double({ min: 4.6, max: 9, noNaN: true }),
    widthM: fc.double({ min: 1.8, max: 2.5, noNaN: true }),
    heightM: fc.double({ min: 1.9, max: 3.6, noNaN: true }),
  })
  .map(({ style, lengthM, widthM, heightM }) =>
    exampleVehicle(style, {
      lengthM,
      widthM,
      heightM,
      wheelbaseM: lengthM * 0.6,
      rearOverhangM: lengthM * 0.22,
    }),
  );

function groups(node: SvgNode): SvgNode[] {
  const own = node.attributes["data-part"] === undefined ? [] : [node];
  return [...own, ...node.children.flatMap((child) => (typeof child === "string" ? [] : groups(child)))];
}

const number = (value: string | number | undefined): number => Number(value);

/** Checks tags, nesting and attributes without a parser of a browser. */
function expectWellFormed(text: string): void {
  const open: string[] = [];
  const rest = text.replace(
    /<(\/?)([a-z]+)((?: [a-zA-Z-]+="[^"<]*")*)(\/?)>/g,
    (_all, end, tag, _attributes, empty) => {
      if (end === "/") expect(open.pop()).toBe(tag);
      else if (empty !== "/") open.push(tag);
      return "";
    },
  );
  expect(open).toEqual([]);
  expect(rest).not.toMatch(/[<>]/);
  expect(rest.replace(/&(amp|lt|gt|quot);/g, "")).not.toContain("&");
}

describe("drawing a vehicle", () => {
  it("keeps every fitted part inside the outline in every view and body style", () => {
    fc.assert(
      fc.property(anyVehicle, fc.constantFrom(...VIEWS), (vehicle, view) => {
        const frame = frameOf(vehicle, view);
        const drawing = drawVehicle(vehicle, view);
        const fitted = new Set(fittedParts(vehicle, view).map(({ part }) => part));
        for (const group of groups(drawing).filter((one) =>
          fitted.has(String(one.attributes["data-part"])),
        )) {
          const face = group.children.find(
            (child): child is SvgNode => typeof child !== "string" && child.tag !== "title",
          )!;
          const a = face.attributes;
          const box =
            face.tag === "rect"
              ? [number(a.x), number(a.y), number(a.x) + number(a.width), number(a.y) + number(a.height)]
              : [
                  number(a.cx) - number(a.rx),
                  number(a.cy) - number(a.ry),
                  number(a.cx) + number(a.rx),
                  number(a.cy) + number(a.ry),
                ];
          // coordinates are rounded to a tenth of a unit
          expect(box[0]!).toBeGreaterThanOrEqual(frame.x(0) - 0.3);
          expect(box[1]!).toBeGreaterThanOrEqual(frame.y(0) - 0.3);
          expect(box[2]!).toBeLessThanOrEqual(frame.x(0) + frame.widthM * SCALE + 0.3);
          expect(box[3]!).toBeLessThanOrEqual(frame.y(0) + frame.heightM * SCALE + 0.3);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("draws each part once per view, and offers exactly those to touch", () => {
    for (const style of BODY_STYLES) {
      for (const view of VIEWS) {
        const vehicle = exampleVehicle(style);
        const drawn = groups(drawVehicle(vehicle, view)).map((group) =>
          String(group.attributes["data-part"]),
        );
        expect(new Set(drawn).size).toBe(drawn.length);
        expect([...drawn].sort()).toEqual(
          partsOf(vehicle, view)
            .map(({ part }) => part)
            .sort(),
        );
        expect(drawn.length).toBeGreaterThan(3);
      }
    }
  });

  it("draws the same picture for the same description", () => {
    fc.assert(
      fc.property(anyVehicle, fc.constantFrom(...VIEWS), (vehicle, view) => {
        expect(svgText(drawVehicle(structuredClone(vehicle), view))).toBe(
          svgText(drawVehicle(vehicle, view)),
        );
      }),
      { numRuns: 30 },
    );
  });

  it("writes well-formed XML with finite numbers and no style attributes, whatever the words are", () => {
    fc.assert(
      fc.property(anyVehicle, fc.constantFrom(...VIEWS), fc.string(), (vehicle, view, words) => {
        const marks = [{ id: words, x: 0.4, y: 0.6, label: "1", title: words, isNew: true }];
        const text = svgText(
          drawVehicle(vehicle, view, { title: words, nameOf: () => words, marks, touchable: true }),
        );
        expectWellFormed(text);
        expect(text).not.toMatch(/ style="|[ "]NaN|Infinity/);
      }),
      { numRuns: 60 },
    );
  });

  it("puts the front to the left on the nearside and to the right on the offside", () => {
    const vehicle = exampleVehicle();
    const front = { xM: -0.5, yM: 0, zM: 1 };
    expect(frameOf(vehicle, "nearside").place(front).leftM).toBeLessThan(1);
    expect(frameOf(vehicle, "offside").place(front).leftM).toBeGreaterThan(vehicle.dimensions.lengthM - 1);
  });

  it("leaves the body's own wheels out where the fitted tyres are drawn", () => {
    const names = partsOf(exampleVehicle(), "nearside").map(({ part }) => part);
    expect(names).toContain("tyres.frontNearside");
    expect(names).not.toContain("body.wheelFrontNearside");
    const bare = { ...exampleVehicle(), systems: [] };
    expect(partsOf(bare, "nearside").map(({ part }) => part)).toContain("body.wheelFrontNearside");
  });
});
