import { describe, expect, it } from "vitest";
import { drawLoad, type LoadAxle, type LoadBox, type LoadPicture } from "./draw-load.ts";
import { exampleVehicle } from "./example-vehicle.ts";
import { frameOf } from "./frame.ts";
import { PALETTE } from "./palette.ts";
import { type SvgNode, svgText } from "./svg-node.ts";

const vehicle = exampleVehicle("panelVanConversion");
const axle = (label: string, loadKg: number, limitKg: number, tyresKg: number | null = null): LoadAxle => ({
  title: `${label} axle`,
  label,
  figures: `${loadKg} of ${limitKg} kg`,
  loadKg,
  limitKg,
  tyresKg,
});
const box = (place: string, change: Partial<LoadBox> = {}): LoadBox => ({
  place,
  title: `Stowed: ${place}`,
  label: place,
  behindFrontAxleM: 2,
  massKg: 10,
  isOver: false,
  isOpen: false,
  ...change,
});
const picture = (change: Partial<LoadPicture> = {}): LoadPicture => ({
  title: "Load",
  dots: [],
  boxes: [],
  front: axle("Front", 1500, 1850),
  rear: axle("Rear", 1800, 2000, 2500),
  total: axle("Whole", 3300, 3500),
  ...change,
});

const nodes = (node: SvgNode): SvgNode[] => [
  node,
  ...node.children.flatMap((child) => (typeof child === "string" ? [] : nodes(child))),
];
/** Left and right end of a path, in drawing units. */
function across(node: SvgNode): readonly [left: number, right: number] {
  const steps = [...String(node.attributes.d).matchAll(/[MLQ]([^MLQAZ]*)/g)];
  const xs = steps.flatMap(([, numbers = ""]) => {
    const all = numbers
      .trim()
      .split(/[\s,]+/)
      .map(Number);
    return all.filter((_, k) => k % 2 === 0);
  });
  return [Math.min(...xs), Math.max(...xs)];
}
const barOf = (drawn: SvgNode, label: string) => {
  const bar = nodes(drawn).find(({ attributes }) => attributes["aria-label"] === `${label} axle`)!;
  const paths = bar.children.filter(
    (child): child is SvgNode => typeof child !== "string" && child.tag === "path",
  );
  const [paper, load, limit, tyres] = paths;
  const [left, right] = across(paper!);
  const share = (x: number) => (x - left) / (right - left);
  return {
    bar,
    left,
    right,
    load: share(across(load!)[1]),
    limit: share(across(limit!)[0]),
    tyres: tyres === undefined ? null : share(across(tyres)[0]),
  };
};

describe("the picture of a load", () => {
  it("shows each axle to scale: load, limit and tyres on one line, the bar as long as the greatest of them", () => {
    const drawn = drawLoad(vehicle, picture());
    const rear = barOf(drawn, "Rear");
    expect(rear.load).toBeCloseTo(1800 / 2500 / 1.04, 2);
    expect(rear.limit).toBeCloseTo(2000 / 2500 / 1.04, 2);
    expect(rear.tyres).toBeCloseTo(1 / 1.04, 2);
    const front = barOf(drawn, "Front");
    expect(front.load / front.limit).toBeCloseTo(1500 / 1850, 2);
    expect(front.tyres).toBeNull();
    expect(front.right).toBeLessThan(rear.left);
    const whole = barOf(drawn, "Whole");
    expect([whole.left, whole.right]).toEqual([front.left, rear.right]);
  });

  it("says over only where plate or tyres carry less than the load, by class and colour", () => {
    const classOf = (one: LoadAxle) =>
      barOf(drawLoad(vehicle, picture({ rear: { ...one, title: "Rear axle" } })), "Rear").bar;
    expect(classOf(axle("Rear", 2000, 2000)).attributes.class).toBe("axle");
    expect(classOf(axle("Rear", 2001, 2000)).attributes.class).toBe("axle axle-over");
    expect(classOf(axle("Rear", 1950, 2000, 1900)).attributes.class).toBe("axle axle-over");
    expect(classOf(axle("Rear", 1850, 2000, 1900)).attributes.class).toBe("axle");
    expect(svgText(classOf(axle("Rear", 2001, 2000)))).toContain(PALETTE.red);
    expect(svgText(classOf(axle("Rear", 1999, 2000)))).not.toContain(PALETTE.red);
  });

  it("an axle that is lifted shows no load, and the line stays within the bar", () => {
    const { load, limit } = barOf(drawLoad(vehicle, picture({ front: axle("Front", -40, 1850) })), "Front");
    expect(load).toBeLessThan(0.02);
    expect(limit).toBeLessThan(1);
  });

  it("offers to touch only the places that the thing in hand may go to", () => {
    const drawn = drawLoad(
      vehicle,
      picture({ boxes: [box("garage", { isOpen: true }), box("floor"), box("rack")] }),
    );
    const places = nodes(drawn).filter(({ attributes }) => attributes["data-place"] !== undefined);
    expect(
      places.map(({ attributes }) => [attributes["data-place"], attributes.role, attributes.tabindex]),
    ).toEqual([
      ["garage", "button", 0],
      ["floor", "img", undefined],
      ["rack", "img", undefined],
    ]);
    expect(places.map(({ attributes }) => attributes["aria-label"])).toContain("Stowed: floor");
  });

  it("keeps what is stowed inside the body, and a rack behind it", () => {
    const boxes = [-3, 2, 9].map((behindFrontAxleM) => box("floor", { behindFrontAxleM }));
    const drawn = drawLoad(vehicle, picture({ boxes: [...boxes, box("rack", { behindFrontAxleM: 1 })] }));
    const frame = frameOf(vehicle, "nearside");
    const ends = nodes(drawn)
      .filter(({ attributes }) => attributes["data-place"] !== undefined)
      .map(({ children }) => across(children[1] as SvgNode));
    const [nose, tail] = [frame.x(0), frame.x(vehicle.dimensions.lengthM)];
    for (const [left, right] of ends.slice(0, 3)) {
      expect(left).toBeGreaterThanOrEqual(nose);
      expect(right).toBeLessThanOrEqual(tail);
    }
    expect(ends[3]![0]).toBeGreaterThanOrEqual(tail);
    const { viewBox } = drawn.attributes;
    expect(ends[3]![1]).toBeLessThanOrEqual(Number(String(viewBox).split(" ")[2]));
  });

  it("marks a place over its label and one that is empty, and leaves out a mass of nothing", () => {
    const dot = { id: "water", title: "Water", behindFrontAxleM: 3, heightM: 0.5, massKg: 0 };
    const boxes = [box("garage", { isOver: true }), box("floor", { massKg: 0 })];
    const drawn = drawLoad(vehicle, picture({ boxes, dots: [dot, { ...dot, id: "driver", massKg: 75 }] }));
    expect(nodes(drawn).flatMap(({ attributes }) => attributes["data-dot"] ?? [])).toEqual(["driver"]);
    const [over, empty] = nodes(drawn).filter(({ attributes }) => attributes["data-place"] !== undefined);
    expect(over!.attributes.class).toBe("load-place load-place-over");
    expect((over!.children[1] as SvgNode).attributes).toMatchObject({ stroke: PALETTE.red });
    expect((empty!.children[1] as SvgNode).attributes["stroke-dasharray"]).toBe("6 6");
    expect((over!.children[1] as SvgNode).attributes["stroke-dasharray"]).toBeUndefined();
  });

  it("is drawn with the roof down, as the vehicle drives", () => {
    const up = exampleVehicle("elevatingRoofCampervan");
    const box = (style: typeof up) => String(drawLoad(style, picture()).attributes.viewBox);
    expect(box(up)).toBe(box({ ...up, bodyStyle: "campervan" }));
  });
});
