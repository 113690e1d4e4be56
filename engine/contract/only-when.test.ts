import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applies, type PhysicsContext, type Running, type StepView } from "../src/systems/contract.ts";
import { parseSpec, SYSTEM_KINDS, type SystemKind, systemModule } from "../src/systems/registry.ts";
import { anyFitted } from "./arbitrary.ts";

const context: PhysicsContext = {
  n: 1,
  dtH: 0.25,
  people: 2,
  setting: {},
  vehicle: { floorAreaM2: 8, consumptionLPer100Km: 11 },
};

/** A step at some hour, on the road or standing, with a post or without. */
function stepAt(clockH: number, driving: boolean, postAmperes: number): StepView {
  const of = (value: number) => new Float64Array(1).fill(value);
  return {
    n: 1,
    dtH: 0.25,
    hour: clockH,
    clockH,
    day: 0,
    driving,
    distanceKm: driving ? 20 : 0,
    people: 2,
    postAmperes,
    outsideC: of(4),
    irradianceWm2: of(200),
    cabinC: of(12),
    level: () => of(1),
    startLevel: () => of(1),
    capacity: () => of(2),
    shareDown: (_store, _need, _floor, share) => share.fill(1),
    cabinMiddleC: (out) => out.fill(12),
    heatToReach: (_set, out) => out.fill(500),
    heatToHold: (_set, out) => out.fill(200),
    dayNormal: () => of(0),
    tripNormal: () => of(0),
  };
}

const startOf = (kind: SystemKind) => {
  const { physics } = systemModule(kind);
  return applies(physics) ? physics.start : undefined;
};

describe.each(SYSTEM_KINDS.filter((kind) => startOf(kind) !== undefined))("%s", (kind) => {
  const runnings = (spec: unknown): readonly Running[] =>
    startOf(kind)?.(parseSpec(kind, spec), context) ?? [];

  it("what it says runs only on the road, or only at a post, is wanted in no other step", () => {
    fc.assert(
      fc.property(
        anyFitted(kind),
        fc.double({ min: 0, max: 24, noNaN: true }),
        fc.boolean(),
        ({ spec }, clockH, is) => {
          for (const one of runnings(spec)) {
            const view = one.only === "driving" ? stepAt(clockH, false, is ? 10 : 0) : stepAt(clockH, is, 0);
            if (one.only !== undefined) expect(one.prepare(view, one.demand)).toBe(false);
          }
        },
      ),
      { numRuns: 30 },
    );
  });
});
