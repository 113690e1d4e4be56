import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StepView } from "../systems/contract.ts";
import { type Body, CABIN_ZERO_C, startCabin } from "./cabin.ts";

const body: Body = { floorAreaM2: 7, volumeM3: 12, lossWK: 55, capacityWhK: 250, airChangesPerHour: 1 };
const conductance = 55 + 0.333 * 12;

/** Temperature after a step in which `heatWh` came in. */
function step(cabinC: number, outsideC: number, heatWh: number, dtH: number): number {
  const cabin = startCabin(body, 1, dtH, new Float64Array([1]));
  const view = {
    n: 1,
    dtH,
    cabinC: new Float64Array([cabinC]),
    outsideC: new Float64Array([outsideC]),
  } as unknown as StepView; // only what the keeping reads
  const loss = new Float64Array(1);
  cabin.keeping.lose!(view, new Float64Array([heatWh]), loss);
  return cabinC + (heatWh - loss[0]!) / body.capacityWhK;
}

describe("the cabin as one thermal node", () => {
  it("cools along the exponential of its own time constant", () => {
    const dtH = 3;
    const expected = 2 + (20 - 2) * Math.exp((-conductance * dtH) / 250);
    expect(step(20, 2, 0, dtH)).toBeCloseTo(expected, 9);
  });

  it("gains 75 W from each person and the sun on a twentieth of its floor", () => {
    const { running } = startCabin(body, 1, 0.25, new Float64Array([1]));
    const view = { people: 2, irradianceWm2: new Float64Array([400]) } as unknown as StepView;
    running.prepare(view, running.demand);
    expect(running.modes[0]!.gives[0]![0]).toBeCloseTo((2 * 75 + 400 * 0.05 * 7) * 0.25, 9);
  });

  it("settles where the heat that comes in equals the loss", () => {
    expect(step(-5 + 1000 / conductance, -5, 1000 * 0.25, 0.25)).toBeCloseTo(-5 + 1000 / conductance, 9);
  });

  it("comes to the same temperature in one step as in two halves", () => {
    const celsius = fc.double({ min: -20, max: 30, noNaN: true });
    fc.assert(
      fc.property(
        celsius,
        celsius,
        fc.double({ min: 0, max: 4000, noNaN: true }),
        (inside, outside, watts) => {
          const whole = step(inside, outside, watts * 0.25, 0.25);
          const half = step(step(inside, outside, watts * 0.125, 0.125), outside, watts * 0.125, 0.125);
          expect(half).toBeCloseTo(whole, 9);
        },
      ),
    );
  });

  it("knows how warm it is in the middle of a step in which nothing is heated", () => {
    const cabin = startCabin(body, 1, 0.5, new Float64Array([1]));
    const view = { people: 2, irradianceWm2: new Float64Array([400]) } as unknown as StepView;
    cabin.running.prepare(view, cabin.running.demand);
    const gainsW = 2 * 75 + 400 * 0.05 * 7;
    const middle = new Float64Array(1);
    cabin.middle(new Float64Array([-4]), new Float64Array([12]), middle);
    expect(middle[0]).toBeCloseTo(step(12, -4, gainsW * 0.25, 0.25), 9);
  });

  it("asks for just the heat that brings it to the wanted temperature at the end of the step", () => {
    const cabin = startCabin(body, 1, 0.25, new Float64Array([1]));
    const heat = new Float64Array(1);
    cabin.heatToReach(new Float64Array([19]), new Float64Array([1]), new Float64Array([15]), heat);
    expect(step(15, 1, heat[0]!, 0.25)).toBeCloseTo(19, 9);
  });

  it("turns heat into temperature above its zero", () => {
    const cabin = startCabin(body, 1, 0.25, new Float64Array([1]));
    const out = new Float64Array(1);
    cabin.temperature(new Float64Array([250 * 60]), out);
    expect(out[0]).toBe(CABIN_ZERO_C + 60);
  });
});
