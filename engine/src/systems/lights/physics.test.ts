import { describe, expect, it } from "vitest";
import type { StepView } from "../contract.ts";
import { parseSpec } from "../registry.ts";
import { physics } from "./physics.ts";

const of = (value: number) => new Float64Array(1).fill(value);

describe("the lights", () => {
  it("come on one by one as it grows dark", () => {
    const context = {
      n: 1,
      dtH: 1,
      people: 2,
      setting: {},
      vehicle: { floorAreaM2: 7, consumptionLPer100Km: 10 },
    };
    const [lights] = physics.start!(parseSpec("lights", { ledW: 20, otherW: 0 }), context);
    const drawn = (irradianceWm2: number) => {
      const view = {
        driving: false,
        people: 2,
        clockH: 16,
        day: 0,
        irradianceWm2: of(irradianceWm2),
        dayNormal: () => of(0),
        tripNormal: () => of(0),
      } as unknown as StepView;
      lights!.prepare(view, lights!.demand);
      return lights!.modes[0]!.needs[0]![0]!;
    };
    // the panel draws 1 W, half of the lights burn in the dark
    expect(drawn(0)).toBeCloseTo(11, 9);
    expect(drawn(10)).toBeCloseTo(11, 9);
    expect(drawn(20)).toBeCloseTo(6, 9);
    expect(drawn(30)).toBeCloseTo(1, 9);
    expect(drawn(400)).toBeCloseTo(1, 9);
  });
});
