import { fillAll } from "../../stores/fill-all.ts";
import type { PhysicsContext, Running, SystemPhysics } from "../contract.ts";
import { readTank } from "../read-level.ts";
import { createMode, createRunning, habitFactor } from "../running.ts";
import type { DefSpec } from "./spec.ts";

function startDef(spec: DefSpec, { n }: PhysicsContext): Running {
  const mode = createMode("drive", n, ["def"], []);
  const factor = habitFactor(n, "def", 0.15, 0);
  return createRunning(
    n,
    [mode],
    (view, demand) => {
      if (!view.driving) return false;
      fillAll(demand, 1);
      const habit = factor(view);
      const litres = (view.distanceKm * spec.litresPer1000Km) / 1000;
      for (let i = 0; i < n; i++) mode.needs[0]![i] = litres * habit[i]!;
      return true;
    },
    { only: "driving" },
  );
}

/** Below this share of the tank the warnings begin, and at its end the engine will not start again: from memory. */
const RESERVE_SHARE = 0.15;

/** DEF by distance. */
export const physics: SystemPhysics<DefSpec> = {
  stores: (spec) => [{ store: "def", capacity: spec.tankLitres, initial: 1 }],
  start: (spec, context) => [startDef(spec, context)],
  road: ({ litresPer1000Km }) => ({
    store: "def",
    perKm: litresPer1000Km / 1000,
    reserveShare: RESERVE_SHARE,
  }),
  read: (spec, value, unit, sd) => readTank(spec.tankLitres, "L", value, unit, sd),
};
