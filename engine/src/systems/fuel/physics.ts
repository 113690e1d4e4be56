import { fillAll } from "../../stores/fill-all.ts";
import type { PhysicsContext, Running, SystemPhysics } from "../contract.ts";
import { readTank } from "../read-level.ts";
import { createMode, createRunning, habitFactor } from "../running.ts";
import type { FuelSpec } from "./spec.ts";

/** what the alternator has to spare for the living part, W: common practice, no source */
const ALTERNATOR_SPARE_W = 1000;

function startDriving(_spec: FuelSpec, { n, dtH, vehicle }: PhysicsContext): Running {
  const mode = createMode("drive", n, ["fuel"], ["engine12"]);
  const perKm = (vehicle.consumptionLPer100Km ?? 0) / 100;
  const factor = habitFactor(n, "driving", 0.08, 0.05);
  mode.gives[0]!.fill(ALTERNATOR_SPARE_W * dtH);
  return createRunning(
    n,
    [mode],
    (view, demand) => {
      if (!view.driving) return false;
      fillAll(demand, 1);
      const habit = factor(view);
      const litres = view.distanceKm * perKm;
      for (let i = 0; i < n; i++) mode.needs[0]![i] = litres * habit[i]!;
      return true;
    },
    { only: "driving" },
  );
}

/** What is kept back when a range is told, and what a drive begins with at least besides its own need: practice. */
export const FUEL_RESERVE_SHARE = 0.15;

/** Driving uses fuel by distance; the running engine fills the 12 V supply of the step. Settings of the hire: `fillOnTheWay` (true), see the trip room. */
export const physics: SystemPhysics<FuelSpec> = {
  stores: (spec) => [{ store: "fuel", capacity: spec.tankLitres, initial: 1 }],
  start: (spec, context) => [startDriving(spec, context)],
  road: (_spec, { consumptionLPer100Km }) =>
    consumptionLPer100Km === undefined || consumptionLPer100Km === 0
      ? null
      : { store: "fuel", perKm: consumptionLPer100Km / 100, reserveShare: FUEL_RESERVE_SHARE },
  read: (spec, value, unit, sd) => readTank(spec.tankLitres, "L", value, unit, sd),
};
