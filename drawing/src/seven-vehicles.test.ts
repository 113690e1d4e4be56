import { readdirSync, readFileSync } from "node:fs";
import { BODY_STYLES, parseVehicle, type VehicleDescription, VIEWS, type View } from "@setfair/engine";
import { describe, expect, it } from "vitest";
import { arrangeParts, LEAST_TOUCH_M, sharedArea, touchBox } from "./arrange.ts";
import { bodyShapes } from "./body.ts";
import { drawVehicle } from "./draw-vehicle.ts";
import { exampleVehicle } from "./example-vehicle.ts";
import { fittedParts } from "./fitted-parts.ts";
import { flattened, isWithin } from "./shape.ts";
import { svgText } from "./svg-node.ts";

const FOLDER = new URL("../../examples/vehicles/", import.meta.url);
const fleet = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".json"))
  .map((name) => parseVehicle(JSON.parse(readFileSync(new URL(name, FOLDER), "utf8"))));
/** Every kind of the registry at once, in a body that has room for it. */
const everything = BODY_STYLES.map((style) =>
  exampleVehicle(style, { lengthM: 7.4, widthM: 2.3, heightM: 2.9, wheelbaseM: 4.1, rearOverhangM: 2.2 }),
);
const vehicles: readonly VehicleDescription[] = [...fleet, ...everything];
const cases = vehicles.flatMap((vehicle) => VIEWS.map((view): [VehicleDescription, View] => [vehicle, view]));

const problemsOf = (find: (vehicle: VehicleDescription, view: View) => readonly string[]) =>
  cases.flatMap(([vehicle, view]) =>
    find(vehicle, view).map((problem) => `${vehicle.id} ${view}: ${problem}`),
  );

describe("the drawings of the seven vehicles, and of one with every system fitted", () => {
  it("are of seven vehicles", () => {
    expect(fleet).toHaveLength(7);
  });

  it("show every declared part in its view", () => {
    expect(
      problemsOf((vehicle, view) => {
        const text = svgText(drawVehicle(vehicle, view));
        return fittedParts(vehicle, view)
          .filter(({ part }) => !text.includes(`data-part="${part}"`))
          .map(({ part }) => part);
      }),
    ).toEqual([]);
  });

  it("keep the middle of every part within the outline", () => {
    expect(
      problemsOf((vehicle, view) => {
        const panel = bodyShapes(vehicle, view).find(({ part }) => /^body\.(panel|cabFloor)/.test(part))!;
        const outline = flattened(panel.points);
        return arrangeParts(vehicle, view)
          .filter(({ part }) => part.shape !== "circle" || part.lengthM < 0.5)
          .filter(({ box }) => !isWithin([box.left + box.width / 2, box.top + box.height / 2], outline))
          .map(({ part }) => part.part);
      }),
    ).toEqual([]);
  });

  it("let no touch target cover more than half of another", () => {
    expect(
      problemsOf((vehicle, view) => {
        const parts = arrangeParts(vehicle, view);
        return parts.flatMap((below, k) =>
          parts.slice(k + 1).flatMap((above) => {
            const target = touchBox(below.box);
            const share = sharedArea(target, touchBox(above.box)) / (target.width * target.height);
            return share > 0.5 ? [`${above.part.part} covers ${share.toFixed(2)} of ${below.part.part}`] : [];
          }),
        );
      }),
    ).toEqual([]);
  });

  it("give every part at least 44 units to touch, which is 44 px where a metre is 100", () => {
    expect(LEAST_TOUCH_M * 100).toBeGreaterThanOrEqual(44);
    const small = arrangeParts(fleet[0]!, "nearside").map(({ box }) => touchBox(box));
    for (const { width, height } of small) expect(Math.min(width, height)).toBeGreaterThanOrEqual(0.44);
  });

  it("differ from body style to body style, from the side and from the front", () => {
    for (const view of ["nearside", "front"] as const) {
      const outlines = [
        "panelVanConversion",
        "lowProfile",
        "overcab",
        "aClass",
        "elevatingRoofCampervan",
      ].map((style) => {
        const vehicle = {
          ...everything[0]!,
          bodyStyle: style as VehicleDescription["bodyStyle"],
          systems: [],
        };
        return svgText(drawVehicle(vehicle, view));
      });
      expect(new Set(outlines).size).toBe(outlines.length);
    }
  });
});
