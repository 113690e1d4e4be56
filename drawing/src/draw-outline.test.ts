import { BODY_STYLES, VIEWS } from "@setfair/engine";
import { describe, expect, it } from "vitest";
import { drawOutline } from "./draw-outline.ts";
import { exampleVehicle } from "./example-vehicle.ts";
import { frameOf } from "./frame.ts";

describe("the outline over a camera's picture", () => {
  it("is there for the four sides of every body style, on the paper of the drawing itself", () => {
    for (const style of BODY_STYLES)
      for (const view of VIEWS) {
        const vehicle = exampleVehicle(style);
        const outline = drawOutline(vehicle, view);
        const isSide = ["front", "nearside", "rear", "offside"].includes(view);
        expect(outline !== null, `${style} ${view}`).toBe(isSide);
        if (outline === null) continue;
        const { paperWidth, paperHeight } = frameOf(vehicle, view);
        expect(outline.attributes.viewBox).toBe(`0 0 ${paperWidth} ${paperHeight}`);
        // each line twice, dark under bright
        expect(outline.children.length).toBeGreaterThan(1);
        expect(outline.children.length % 2).toBe(0);
      }
  });
});
