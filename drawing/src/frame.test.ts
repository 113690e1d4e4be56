import { describe, expect, it } from "vitest";
import { exampleVehicle } from "./example-vehicle.ts";
import { frameOf, frontOverhangM, MARGIN_M, SCALE } from "./frame.ts";

const vehicle = exampleVehicle();
const { lengthM, widthM, heightM } = vehicle.dimensions;
/** towards the nose, left of the middle (the nearside of a right-hand-drive vehicle), a metre up */
const part = { xM: 0.2, yM: 0.3, zM: 1 };
const at = (view: Parameters<typeof frameOf>[1]) => {
  const { leftM, topM } = frameOf(vehicle, view).place(part);
  return [leftM, topM].map((metres) => Math.round(metres * 1e6) / 1e6);
};
const rounded = (...metres: readonly number[]) => metres.map((each) => Math.round(each * 1e6) / 1e6);

describe("where a place on the vehicle falls on the paper", () => {
  it("is as one stands before that side: from the front its left is on the right, from behind on the left", () => {
    const along = part.xM + frontOverhangM(vehicle);
    expect(at("nearside")).toEqual(rounded(along, heightM - 1));
    expect(at("offside")).toEqual(rounded(lengthM - along, heightM - 1));
    expect(at("front")).toEqual(rounded(widthM / 2 + 0.3, heightM - 1));
    expect(at("rear")).toEqual(rounded(widthM / 2 - 0.3, heightM - 1));
    for (const view of ["roof", "inside", "underside"] as const)
      expect(at(view), view).toEqual(rounded(along, widthM / 2 + 0.3));
  });

  it("lies on paper with a margin round the body, higher only where a roof may stand up", () => {
    const frame = frameOf(vehicle, "nearside");
    expect([frame.x(0), frame.y(0)]).toEqual([MARGIN_M * SCALE, MARGIN_M * SCALE]);
    expect(frame.paperWidth).toBeCloseTo((lengthM + 2 * MARGIN_M) * SCALE, 1);
    expect(frame.paperHeight).toBeCloseTo((heightM + 2 * MARGIN_M) * SCALE, 1);
    const raised = exampleVehicle("elevatingRoofCampervan");
    const higher = (view: Parameters<typeof frameOf>[1]) => frameOf(raised, view).y(0) - MARGIN_M * SCALE;
    expect([higher("nearside"), higher("front"), higher("roof")]).toEqual([75, 75, 0]);
  });
});
