import { fillAll } from "../../stores/fill-all.ts";
import type { MainsUse, PhysicsContext, Running, SystemPhysics, Window } from "../contract.ts";
import {
  createMode,
  createRunning,
  habitFactor,
  LPG_NET_KWH_KG,
  numberSetting,
  shareOfDay,
} from "../running.ts";
import type { CookingSpec } from "./spec.ts";

/** burner-hours per day: one part for the meal, one for each person: common practice, no source */
const HOURS_PER_DAY = 0.35;
const HOURS_PER_PERSON_DAY = 0.25;
/** mean flame against full, and the part of the heat that stays in the cabin: from memory */
const MEAN_FLAME = 0.7;
/** what reaches the pot, of a flame and of an induction plate: the same meal takes less electricity than gas; from memory */
const INTO_POT = { gas: 0.4, electric: 0.85 } as const;
const STAYS_INSIDE = 0.5;
const MEALS: readonly Window[] = [
  { fromH: 7.5, toH: 9, share: 0.35 },
  { fromH: 18, toH: 20, share: 0.65 },
];

/** Energy of a burner-hour at the mean flame, Wh; a plate does in it what a flame does. */
function burnerHourWh({ energy, gasKwEach, electricKwEach }: CookingSpec): number {
  const kw = energy === "gas" ? gasKwEach : (electricKwEach * INTO_POT.gas) / INTO_POT.electric;
  return kw * 1000 * MEAN_FLAME;
}

function startCooking(spec: CookingSpec, { n, dtH, people, setting }: PhysicsContext): Running {
  const sources = spec.energy === "gas" ? (["lpg"] as const) : (["mains230", "inverter230"] as const);
  const modes = sources.map((source) => createMode(source, n, [source], ["cabinHeat"]));
  const hours = numberSetting(setting.burnerHoursPerDay, HOURS_PER_DAY + HOURS_PER_PERSON_DAY * people);
  const perDayWh = hours * burnerHourWh(spec);
  const perWh = spec.energy === "gas" ? 1 / (LPG_NET_KWH_KG * 1000) : 1;
  const factor = habitFactor(n, "cooking", 0.25, 0.25);
  const running = createRunning(
    n,
    modes,
    (view, demand) => {
      const share = view.driving ? 0 : shareOfDay(MEALS, view.clockH, dtH);
      if (share === 0) return false;
      fillAll(demand, 1);
      const habit = factor(view);
      for (let i = 0; i < n; i++) {
        const heat = perDayWh * share * habit[i]!;
        for (const mode of modes) {
          mode.needs[0]![i] = heat * perWh;
          mode.gives[0]![i] = heat * STAYS_INSIDE;
        }
      }
      return true;
    },
    { times: MEALS },
  );
  // gas that is out shows as gas; a post or an inverter that is not there shows nowhere else
  return spec.energy === "gas" ? running : { ...running, goesWithout: "meals" };
}

/** One plate or two at full power; what stands in for them is the inverter's to say. */
function mainsOf({ energy, burners, electricKwEach }: CookingSpec): MainsUse {
  if (energy === "gas" || electricKwEach === 0) return { loads: [] };
  const stagesW = Array.from({ length: Math.min(burners, 2) }, (_, k) => (k + 1) * electricKwEach * 1000);
  return { loads: [{ stagesW, lasts: "minutes", instead: "waits", wanted: "always" }] };
}

/** Cooking by habit, never while driving; an induction hob on the post, else on the inverter. Settings of the hire: `burnerHoursPerDay`. */
export const physics: SystemPhysics<CookingSpec> = {
  stores: () => [],
  start: (spec, context) => [startCooking(spec, context)],
  mains: mainsOf,
};
