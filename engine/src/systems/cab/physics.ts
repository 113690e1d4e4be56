import { fillAll } from "../../stores/fill-all.ts";
import type { Keeping, PhysicsContext, Running, SystemPhysics } from "../contract.ts";
import { createMode, createRunning, habitFactor } from "../running.ts";
import type { CabSpec } from "./spec.ts";

const NOMINAL_V = 12;
const CHARGE_V = 14;
const HOURS_OF_DAY = 24;
/** share of the charge under which the engine may not start any more, the cold thought of: practice, no source */
const STARTS_FROM = 0.5;
/** a lead-acid battery loses this share of its charge in a day by itself, about 3 % a month: from memory */
const SELF_DISCHARGE_PER_DAY = 0.001;
/** bulk current as a share of the Ah, charge energy efficiency, share of charge from which the current falls: from memory */
const BULK_PER_AH = 0.25;
const EFFICIENCY = 0.85;
const TAPER_FROM = 0.8;
/** how differently vehicles draw while they stand (alarm, tracker, age), sd of the logarithm: practice */
const SPREAD_TRIP = 0.25;

/** Energy of the starter battery above what still starts the engine, Wh at 12 V. */
export function startingReserveWh({ starterAh }: CabSpec): number {
  return (1 - STARTS_FROM) * starterAh * NOMINAL_V;
}

/** What standing takes in an hour, alarm, clock and its own loss, Wh. */
export function standingWhPerHour({ starterAh, starterStandingMa }: CabSpec): number {
  const ownLossAh = (SELF_DISCHARGE_PER_DAY * starterAh) / HOURS_OF_DAY;
  return (starterStandingMa / 1000 + ownLossAh) * NOMINAL_V;
}

/** The running engine charges it before all else; a vehicle that drives on its battery charges it from that. */
function startCharge(spec: CabSpec, { n, dtH }: PhysicsContext): Running {
  const engine = createMode("engine", n, ["engine12"], ["starterBattery"]);
  const drive = createMode("drive", n, ["tractionBattery"], ["starterBattery"]);
  const capacity = startingReserveWh(spec);
  const bulkW = BULK_PER_AH * spec.starterAh * CHARGE_V;
  // in the taper the current falls with what is missing, so the gap closes exponentially
  const rate = (bulkW * EFFICIENCY) / ((1 - TAPER_FROM) * spec.starterAh * NOMINAL_V);
  const closing = (1 - Math.exp(-rate * dtH)) / EFFICIENCY;
  return createRunning(
    n,
    [engine, drive],
    (view, demand) => {
      if (!view.driving) return false;
      fillAll(demand, 1);
      const level = view.level("starterBattery");
      for (let i = 0; i < n; i++) {
        const taken = Math.min((capacity - level[i]!) * closing, bulkW * dtH);
        for (const mode of [engine, drive]) {
          mode.needs[0]![i] = taken;
          mode.gives[0]![i] = taken;
        }
      }
      return true;
    },
    { only: "driving" },
  );
}

function keepStarter(spec: CabSpec, { n, dtH }: PhysicsContext): Keeping {
  const standingWh = standingWhPerHour(spec) * dtH;
  const factor = habitFactor(n, "standing", SPREAD_TRIP, 0);
  return {
    store: "starterBattery",
    lose: (view, netIn, loss) => {
      const habit = factor(view);
      const standing = view.driving ? 0 : standingWh;
      for (let i = 0; i < n; i++) loss[i] = standing * habit[i]! + netIn[i]! * (1 - EFFICIENCY);
    },
  };
}

/**
 * The starter battery: energy above what still starts the engine (half of its charge), drawn on while the vehicle
 * stands, charged while it drives. Left out: what people run in the cab while parked, the start itself (a few Wh), and
 * a charger at the post that tops it up, which not every vehicle has.
 */
export const physics: SystemPhysics<CabSpec> = {
  stores: (spec) => [{ store: "starterBattery", capacity: startingReserveWh(spec), initial: 1 }],
  start: (spec, context) => [startCharge(spec, context)],
  keep: keepStarter,
};
