import type { PhysicsContext, Running, SystemPhysics } from "../contract.ts";
import {
  createMode,
  createRunning,
  habitFactor,
  LPG_NET_KWH_KG,
  numberSetting,
  shareOfDay,
  type Window,
} from "../running.ts";
import type { CookingSpec } from "./spec.ts";

/** burner-hours per day: one part for the meal, one for each person: common practice, no source */
const HOURS_PER_DAY = 0.35;
const HOURS_PER_PERSON_DAY = 0.25;
/** mean flame against full, and the part of the heat that stays in the cabin: from memory */
const MEAN_FLAME = 0.7;
const STAYS_INSIDE = 0.5;
const MEALS: readonly Window[] = [
  { fromH: 7.5, toH: 9, share: 0.35 },
  { fromH: 18, toH: 20, share: 0.65 },
];

function startCooking(spec: CookingSpec, { n, dtH, people, setting }: PhysicsContext): Running {
  const energy = spec.energy === "gas" ? "lpg" : "mains230";
  const mode = createMode(energy, n, [energy], ["cabinHeat"]);
  const hours = numberSetting(setting.burnerHoursPerDay, HOURS_PER_DAY + HOURS_PER_PERSON_DAY * people);
  const perDayWh = hours * spec.gasKwEach * 1000 * MEAN_FLAME;
  const perWh = spec.energy === "gas" ? 1 / (LPG_NET_KWH_KG * 1000) : 1;
  const factor = habitFactor(n, "cooking", 0.25, 0.25);
  return createRunning(n, [mode], (view, demand) => {
    const share = view.driving ? 0 : shareOfDay(MEALS, view.clockH, dtH);
    demand.fill(share > 0 ? 1 : 0);
    if (share === 0) return;
    const habit = factor(view);
    for (let i = 0; i < n; i++) {
      const heat = perDayWh * share * habit[i]!;
      mode.needs[0]![i] = heat * perWh;
      mode.gives[0]![i] = heat * STAYS_INSIDE;
    }
  });
}

/** Cooking by habit, never while driving. Settings of the hire: `burnerHoursPerDay`. */
export const physics: SystemPhysics<CookingSpec> = {
  stores: () => [],
  start: (spec, context) => [startCooking(spec, context)],
};
