import type { PhysicsContext, Running, SystemPhysics } from "../contract.ts";
import { readTank } from "../read-level.ts";
import { createMode, createRunning, habitFactor } from "../running.ts";
import type { DefSpec } from "./spec.ts";

function startDef(spec: DefSpec, { n }: PhysicsContext): Running {
  const mode = createMode("drive", n, ["def"], []);
  const factor = habitFactor(n, "def", 0.15, 0);
  return createRunning(n, [mode], (view, demand) => {
    demand.fill(view.driving ? 1 : 0);
    if (!view.driving) return;
    const habit = factor(view);
    for (let i = 0; i < n; i++)
      mode.needs[0]![i] = (view.distanceKm * spec.litresPer1000Km * habit[i]!) / 1000;
  });
}

/** DEF by distance. */
export const physics: SystemPhysics<DefSpec> = {
  stores: (spec) => [{ store: "def", capacity: spec.tankLitres, initial: 1 }],
  start: (spec, context) => [startDef(spec, context)],
  read: (spec, value, unit, sd) => readTank(spec.tankLitres, "L", value, unit, sd),
};
