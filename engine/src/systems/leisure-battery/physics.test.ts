import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StepView } from "../contract.ts";
import { parseSpec } from "../registry.ts";
import { physics, usableWh } from "./physics.ts";

const DT_H = 0.25;
const context = {
  n: 1,
  dtH: DT_H,
  people: 2,
  setting: {},
  vehicle: { floorAreaM2: 7, consumptionLPer100Km: 10 },
};
const of = (value: number) => new Float64Array(1).fill(value);

interface At {
  readonly levelWh: number;
  readonly startWh?: number;
  readonly cabinC?: number;
  /** in the middle of the step */
  readonly middleC?: number;
}

/** What a battery allows and loses in a quarter of an hour at a level and a temperature. */
function battery(
  given: Record<string, unknown>,
  { levelWh, startWh = levelWh, cabinC = 20, middleC = cabinC }: At,
) {
  const spec = parseSpec("leisureBattery", given);
  const keep = physics.keep!(spec, context);
  const view = {
    n: 1,
    dtH: DT_H,
    cabinC: of(cabinC),
    cabinMiddleC: (out: Float64Array) => out.fill(middleC),
    level: () => of(levelWh),
    startLevel: () => of(startWh),
    capacity: () => of(usableWh(spec)),
  } as unknown as StepView;
  const filled = (fill: (out: Float64Array) => void) => {
    const out = new Float64Array(1);
    fill(out);
    return out[0]!;
  };
  return {
    usable: usableWh(spec),
    mostOut: filled((out) => keep.limitOut!(view, out)),
    mostIn: filled((out) => keep.limitIn!(view, out)),
    lostIn: (netWh: number) => filled((out) => keep.lose!(view, of(netWh), out)),
    shareDown: (needWh: number, floor: number) =>
      filled((out) => keep.shareDown!(view, of(needWh), floor, out)),
  };
}

const lead = fc.record({
  chemistry: fc.constantFrom("agm", "gel", "flooded"),
  ratedAh: fc.integer({ min: 60, max: 400 }),
});
const cabinC = fc.integer({ min: -15, max: 35 });

describe("what a battery of the living part gives and takes", () => {
  it("gives of the last of its charge what is left of it after the loss by current and cold, down to nothing", () => {
    fc.assert(
      fc.property(
        lead,
        fc.double({ min: 0.001, max: 0.249, noNaN: true }),
        cabinC,
        (spec, share, celsius) => {
          const levelWh = share * battery(spec, { levelWh: 0 }).usable;
          const { mostOut, lostIn } = battery(spec, { levelWh, cabinC: celsius });
          expect(mostOut).toBeLessThanOrEqual(levelWh + 1e-9);
          expect(mostOut + lostIn(-mostOut)).toBeCloseTo(levelWh, 6);
        },
      ),
    );
  });

  it("gives an inverter what takes it to the cut-out and no further, with the loss", () => {
    fc.assert(
      fc.property(
        lead,
        fc.double({ min: 0.21, max: 1, noNaN: true }),
        fc.integer({ min: 1, max: 900 }),
        cabinC,
        (spec, share, needWh, celsius) => {
          const { usable } = battery(spec, { levelWh: 0 });
          const levelWh = share * usable;
          const { shareDown, lostIn } = battery(spec, { levelWh, cabinC: celsius });
          const part = shareDown(needWh, 0.2);
          const drawn = part * needWh;
          const left = levelWh - drawn - lostIn(-drawn);
          if (part < 1) expect(left).toBeCloseTo(0.2 * usable, 6);
          else expect(left).toBeGreaterThanOrEqual(0.2 * usable - 1e-6);
        },
      ),
    );
  });

  it("gives an inverter nothing below the cut-out, but what is charged above it", () => {
    const spec = { chemistry: "agm", ratedAh: 100 };
    expect(battery(spec, { levelWh: 100 }).shareDown(50, 0.2)).toBe(0);
    // at the cut-out, 30 Wh charged in this step
    const { usable } = battery(spec, { levelWh: 0 });
    const charged = battery(spec, { levelWh: 0.2 * usable + 30, startWh: 0.2 * usable });
    expect(charged.shareDown(50, 0.2)).toBeCloseTo(30 / 50, 9);
  });

  it("leaves what others draw after the cut-out to them: the level falls by it for the rest of the step", () => {
    const spec = { chemistry: "lfp", ratedAh: 100, usableShare: 0.9, peukert: 1 };
    const { usable } = battery(spec, { levelWh: 0 });
    const startWh = 0.2 * usable + 50;
    // others have drawn 10 Wh; with 190 Wh for the inverter it would be a quarter of the step to the cut-out
    const { shareDown } = battery(spec, { levelWh: startWh - 10, startWh, cabinC: 25 });
    expect(shareDown(190, 0.2) * 190).toBeCloseTo(50 + 10 * 0.75 - 10, 6);
  });

  it("of lithium takes no charge at freezing point, half of it at 2.5 °C and all from 5 °C on", () => {
    const at = (celsius: number, chemistry = "lfp") =>
      battery({ chemistry, ratedAh: 100, usableShare: 0.9 }, { levelWh: 300, cabinC: celsius }).mostIn;
    const all = at(20);
    expect(all).toBeCloseTo(0.5 * 100 * 14 * DT_H, 9);
    expect(at(5)).toBe(all);
    expect(at(2.5)).toBeCloseTo(all / 2, 9);
    expect(at(0)).toBe(0);
    expect(at(-3)).toBe(0);
    expect(at(-3, "agm")).toBe(at(20, "agm"));
    // it grows warmer: what counts is the middle of the step
    const spec = { chemistry: "lfp", ratedAh: 100, usableShare: 0.9 };
    expect(battery(spec, { levelWh: 300, cabinC: 1.5, middleC: 2.5 }).mostIn).toBeCloseTo(all / 2, 9);
  });
});
