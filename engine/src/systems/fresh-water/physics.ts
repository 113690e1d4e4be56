import { fillAll } from "../../stores/fill-all.ts";
import type { PhysicsContext, Running, SystemPhysics, Window } from "../contract.ts";
import { readTank } from "../read-level.ts";
import { createMode, createRunning, habitFactor, numberSetting, shareOfDay } from "../running.ts";
import type { FreshWaterSpec } from "./spec.ts";

/** Water from the tank per person and day, L, without the toilet: common practice, no source (WHO: 7.5 L is basic need). */
export const LITRES_PER_PERSON_DAY = 10;
/** what reaches the waste tank of what is used: common practice, no source */
const TO_WASTE = 0.9;
const USE: readonly Window[] = [
  { fromH: 7, toH: 9.5, share: 0.4 },
  { fromH: 12, toH: 13.5, share: 0.15 },
  { fromH: 18, toH: 21.5, share: 0.45 },
];

function startWater(spec: FreshWaterSpec, { n, dtH, people, setting }: PhysicsContext): Running {
  const mode = createMode("tap", n, ["freshWater", "battery12"], ["wasteWater"]);
  const pumpWhPerL = spec.pumpW / (spec.pumpLitresPerMin * 60);
  const perDayL = people * numberSetting(setting.litresPerPersonDay, LITRES_PER_PERSON_DAY);
  const factor = habitFactor(n, "water", 0.25, 0.2);
  return createRunning(
    n,
    [mode],
    (view, demand) => {
      const share = view.driving ? 0 : shareOfDay(USE, view.clockH, dtH);
      if (share === 0) return false;
      fillAll(demand, 1);
      const habit = factor(view);
      for (let i = 0; i < n; i++) {
        const litres = perDayL * share * habit[i]!;
        mode.needs[0]![i] = litres;
        mode.needs[1]![i] = litres * pumpWhPerL;
        mode.gives[0]![i] = litres * TO_WASTE;
      }
      return true;
    },
    { times: USE },
  );
}

/** Water by habit, through the pump, into the waste tank. Settings of the hire: `litresPerPersonDay`. */
export const physics: SystemPhysics<FreshWaterSpec> = {
  stores: (spec) => [{ store: "freshWater", capacity: spec.litres, initial: 1 }],
  start: (spec, context) => [startWater(spec, context)],
  read: (spec, value, unit, sd) => readTank(spec.litres, "L", value, unit, sd),
};
