import { describe, expect, it } from "vitest";
import { applies, type StepView } from "../contract.ts";
import { parseSpec } from "../registry.ts";
import { physics } from "./physics.ts";

const CAPACITY_WH_K = 250;

/** A cabin that keeps what it has, with 30 W h of sun on it in the step. */
function view(cabin: number, more: Partial<StepView> = {}): StepView {
  const heatToReach = (setC: Float64Array, out: Float64Array) => {
    for (let i = 0; i < out.length; i++) out[i] = Math.max(CAPACITY_WH_K * (setC[i]! - cabin) - 30, 0);
  };
  return { n: 1, dtH: 0.25, driving: false, postAmperes: 10, heatToReach, ...more } as StepView;
}

function start(setting: Readonly<Record<string, number | string>> = {}) {
  const spec = parseSpec("airConditioning", { coolingW: 2000, mainsW: 800 });
  if (!applies(physics)) throw new Error("air conditioning is modelled");
  const context = { n: 1, dtH: 0.25, people: 2, setting, vehicle: { floorAreaM2: 8 } };
  return physics.start!(spec, context)[0]!;
}

const demandAt = (seen: StepView, setting = {}) => {
  const running = start(setting);
  running.prepare(seen, running.demand);
  return running.demand[0]!;
};

describe("the air conditioner", () => {
  it("takes out just the heat that brings the cabin to its setting", () => {
    const running = start();
    running.prepare(view(27), running.demand);
    // one kelvin too warm and the sun of the step: 250 + 30 W h of the 500 that it can take out
    expect(running.demand[0]! * running.modes[0]!.needs[1]![0]!).toBeCloseTo(280, 9);
    expect(running.demand[0]! * running.modes[0]!.needs[0]![0]!).toBeCloseTo((280 * 800) / 2000, 9);
  });

  it("runs flat out in a hot cabin and rests in a cool one", () => {
    expect(demandAt(view(40))).toBe(1);
    expect(demandAt(view(20))).toBe(0);
    expect(demandAt(view(20), { coolC: 18 })).toBe(1);
  });

  it("rests on the road, without a post and when it is switched off", () => {
    expect(demandAt(view(40, { driving: true }))).toBe(0);
    expect(demandAt(view(40, { postAmperes: 0 }))).toBe(0);
    expect(demandAt(view(40), { source: "off" })).toBe(0);
  });
});
