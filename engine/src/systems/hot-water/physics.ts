import { fillAll } from "../../stores/fill-all.ts";
import type {
  Keeping,
  MainsUse,
  PhysicsContext,
  Running,
  Setting,
  StepView,
  SystemPhysics,
  Window,
} from "../contract.ts";
import {
  createMode,
  createRunning,
  DIESEL_NET_KWH_L,
  easedShare,
  easeInto,
  habitFactor,
  LPG_NET_KWH_KG,
  numberSetting,
  postFiller,
  shareOfDay,
} from "../running.ts";
import { COLD_C, filledShare, shutFromC, startFrostValve, staysShare, WATER_WH_L_K } from "./frost-valve.ts";
import type { HotWaterSpec } from "./spec.ts";

/** temperature of mixed water at the tap, °C: common practice, no source */
const MIXED_C = 38;
/** hotter than any setting */
const TOP_C = 85;
/** mixed hot water per person and day, L: common practice, no source */
const LITRES_PER_PERSON_DAY = 5;
const EFFICIENCY = 0.9;
/** loss of the insulated store to the cabin, W/K for 10 L: from memory */
const LOSS_W_K_10L = 0.6;
const USE: readonly Window[] = [
  { fromH: 7, toH: 9, share: 0.45 },
  { fromH: 18.5, toH: 21, share: 0.55 },
];
/** when the hirer is told to have it on */
const HEAT: readonly Window[] = [
  { fromH: 6.5, toH: 9, share: 1 },
  { fromH: 17.5, toH: 21, share: 1 },
];

function startHeating(spec: HotWaterSpec, { n, dtH, setting, post, elementWh }: PhysicsContext): Running {
  const setC = numberSetting(setting.setC, 50);
  const source = typeof setting.source === "string" ? setting.source : "auto";
  const hasElectric = spec.source !== "gas" && spec.source !== "diesel";
  const burns = spec.source !== "electric";
  const full = Math.max(burns ? spec.gasKw * 1000 : 0, hasElectric ? spec.electricW : 0, 1) * dtH;
  const fuel = spec.source.startsWith("diesel") ? "fuel" : "lpg";
  const kwhPerUnit = fuel === "fuel" ? DIESEL_NET_KWH_L : LPG_NET_KWH_KG;
  const electric = createMode("electric", n, ["mains230"], ["hotWaterHeat"]);
  const burner = createMode(fuel, n, [fuel], ["hotWaterHeat"]);
  electric.needs[0]!.fill(full);
  burner.needs[0]!.fill(full / (kwhPerUnit * 1000 * EFFICIENCY));
  electric.gives[0]!.fill(full);
  burner.gives[0]!.fill(full);
  const electricW = hasElectric && source !== "gas" && source !== "diesel" ? spec.electricW : 0;
  const fillPost = postFiller(post, electricW, full / dtH, electric.limit);
  burner.limit.fill(burns && source !== "electric" ? (spec.gasKw * 1000 * dtH) / full : 0);
  const eased = easedShare(dtH);
  const targetPerL = setC * WATER_WH_L_K;
  const on = setting.on !== false;
  return createRunning(
    n,
    [electric, burner],
    (view, demand) => {
      if (elementWh !== undefined) fillAll(elementWh, 0);
      if (!on || view.driving || shareOfDay(HEAT, view.clockH, dtH) === 0) return false;
      fillPost(view);
      const level = view.level("hotWaterHeat");
      const there = view.level("heaterWater");
      let isCold = false;
      for (let i = 0; i < n; i++) {
        const missing = easeInto(0, targetPerL * there[i]! - level[i]!, eased) / full;
        demand[i] = missing > 0 ? Math.min(missing, 1) : 0;
        if (missing > 0) isCold = true;
        if (elementWh !== undefined) elementWh[i] = Math.min(demand[i]!, electric.limit[i]!) * full;
      }
      return isCold;
    },
    { times: HEAT },
  );
}

function startUse(spec: HotWaterSpec, { n, dtH, people, setting }: PhysicsContext): Running {
  const mode = createMode("use", n, ["hotWaterHeat"], []);
  const need = mode.needs[0]!;
  const litres = numberSetting(setting.litresPerPersonDay, LITRES_PER_PERSON_DAY) * people;
  const perDayWh = litres * WATER_WH_L_K * (MIXED_C - COLD_C);
  const factor = habitFactor(n, "hotWater", 0.25, 0.2);
  return createRunning(
    n,
    [mode],
    (view, demand) => {
      const share = spec.litres > 0 && !view.driving ? shareOfDay(USE, view.clockH, dtH) : 0;
      if (share === 0) return false;
      fillAll(demand, 1);
      const habit = factor(view);
      for (let i = 0; i < n; i++) need[i] = perDayWh * share * habit[i]!;
      return true;
    },
    { times: USE },
  );
}

/** What the frost valve lets go of goes at any temperature, what flows from the tap is warmer than what comes in. */
function outOfOpened(spec: HotWaterSpec, view: StepView, i: number, cold: number): number {
  const heat = view.level("hotWaterHeat")[i]!;
  const there = view.level("heaterWater")[i]!;
  const filled = filledShare(spec, there);
  const stays = staysShare(spec, view, there, view.cabinC[i]!);
  return heat - (stays > 0 ? stays * Math.min(cold, heat / filled) : 0);
}

function keepWarm(spec: HotWaterSpec, { n, dtH }: PhysicsContext): Keeping {
  const whPerK = WATER_WH_L_K * spec.litres;
  const decay = Math.exp((-LOSS_W_K_10L * (spec.litres / 10) ** (2 / 3) * dtH) / whPerK);
  const cold = COLD_C * whPerK;
  const shutC = shutFromC(spec);
  return {
    store: "hotWaterHeat",
    limitOut: (view, mostOut) => {
      const level = view.level("hotWaterHeat");
      const there = view.level("heaterWater");
      const { cabinC } = view;
      for (let i = 0; i < n; i++) {
        if (there[i]! >= spec.litres && cabinC[i]! >= shutC)
          mostOut[i] = level[i]! > cold ? level[i]! - cold : 0;
        else mostOut[i] = outOfOpened(spec, view, i, cold);
      }
      return true;
    },
    lose: (view, netIn, loss) => {
      const level = view.level("hotWaterHeat");
      const there = view.level("heaterWater");
      const { cabinC } = view;
      for (let i = 0; i < n; i++) {
        // what was there at the start of the step cools towards the cabin; what came in is new
        const before = Math.min(level[i]!, level[i]! - netIn[i]!);
        const cabin = Math.max(0, cabinC[i]!) * WATER_WH_L_K * there[i]!;
        loss[i] = (before - cabin) * (1 - decay);
      }
    },
  };
}

function mainsOf(spec: HotWaterSpec, setting: Setting): MainsUse {
  const isElectric = spec.source !== "gas" && spec.source !== "diesel";
  const told = setting.source;
  if (!isElectric || setting.on === false || told === "gas" || told === "diesel") return { loads: [] };
  const burns = spec.source !== "electric" && told !== "electric";
  const instead = !burns ? "waits" : spec.source.startsWith("diesel") ? "fuel" : "gas";
  return { loads: [{ stagesW: [spec.electricW], lasts: "hours", instead, wanted: "always" }] };
}

/** The store of hot water: heat above 0 °C, drawn by habit, made by electricity first where the pitch gives it, then gas or diesel; emptied by its frost valve. Settings of the hire: `on`, `setC` (50), `source`, `litresPerPersonDay`, `pumpOffAtNight` (false). */
export const physics: SystemPhysics<HotWaterSpec> = {
  stores: (spec) => [
    { store: "hotWaterHeat", capacity: TOP_C * WATER_WH_L_K * spec.litres, initial: COLD_C / TOP_C },
    { store: "heaterWater", capacity: spec.litres, initial: 1 },
  ],
  start: (spec, context) => [
    ...startFrostValve(spec, context),
    startHeating(spec, context),
    startUse(spec, context),
  ],
  keep: keepWarm,
  mains: mainsOf,
};
