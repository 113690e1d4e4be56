import { fillAll } from "../../stores/fill-all.ts";
import type {
  MainsUse,
  Mode,
  PhysicsContext,
  Running,
  Setting,
  StepView,
  SystemPhysics,
} from "../contract.ts";
import {
  askedAtOnce,
  createMode,
  createRunning,
  DIESEL_NET_KWH_L,
  easedShare,
  easeInto,
  fitsPost,
  LPG_NET_KWH_KG,
  numberSetting,
} from "../running.ts";
import type { HeatingSpec } from "./spec.ts";

/** hours in which people sleep and the thermostat is at its night setting: common practice, no source */
const NIGHT_FROM_H = 23;
const NIGHT_TO_H = 7;
/** the pipe by which a diesel heater drinks ends at this share of the tank, so that one can still drive: practice */
const PIPE_ENDS_AT = 0.25;
/** the burner goes no lower than this share of its full output, then it cycles: from memory */
const LOWEST_STAGE = 0.25;
/** how differently people set a thermostat, K: common practice, no source */
const SET_SD_K = 0.8;

/** Settings of the hire: `on` (true), `electricW` (the electric stage it is set to, W; the highest that fits the post), `source` (`auto`, `gas`, `diesel`, `electric`, `mix`), `dayC` (19), `nightC` (14). */
interface HeatingSetting {
  readonly on: boolean;
  readonly source: string;
  readonly dayC: number;
  readonly nightC: number;
  /** the electric stage it is set to, W; infinite where nobody says */
  readonly electricW: number;
}

function readSetting({ setting }: { readonly setting: Setting }): HeatingSetting {
  return {
    on: setting.on !== false,
    source: typeof setting.source === "string" ? setting.source : "auto",
    dayC: numberSetting(setting.dayC, 19),
    nightC: numberSetting(setting.nightC, 14),
    electricW: Math.max(0, numberSetting(setting.electricW, Number.POSITIVE_INFINITY)),
  };
}

/** Full output of the appliance, W: what activity 1 stands for in every mode. */
function fullW(spec: HeatingSpec): number {
  return Math.max(spec.source === "electric" ? 0 : spec.gasKw * 1000, electricW(spec), 1);
}

function electricW({ source, electricW: watts }: HeatingSpec): number {
  return source === "gas" || source === "diesel" ? 0 : watts;
}

function startHeat(spec: HeatingSpec, context: PhysicsContext): Running {
  const { n, dtH, people } = context;
  const set = readSetting(context);
  const full = fullW(spec) * dtH;
  const fuel = spec.source.startsWith("diesel") ? "fuel" : "lpg";
  const kwhPerUnit = fuel === "fuel" ? DIESEL_NET_KWH_L : LPG_NET_KWH_KG;
  const electric = createMode("electric", n, ["mains230", "battery12"], ["cabinHeat"]);
  const burner = createMode(fuel, n, [fuel, "battery12"], ["cabinHeat"]);
  electric.needs[0]!.fill(full);
  burner.needs[0]!.fill(full / (kwhPerUnit * 1000 * spec.efficiency));
  for (const mode of [electric, burner]) mode.gives[0]!.fill(full);
  const burns = spec.source !== "electric" && set.source !== "electric";
  const burnerShare = burns ? (spec.gasKw * 1000 * dtH) / full : 0;
  const fillStage = stageFiller(stagesOf(spec, set), context, full, electric.limit);
  burner.limit.fill(burnerShare);
  const eased = easedShare(dtH);
  const holding = new Float64Array(n);
  const wanted = new Float64Array(n);
  const targetC = new Float64Array(n);
  const [electricFan, burnerFan] = [electric.needs[1]!, burner.needs[1]!];
  const fanWhFull = spec.fanW * dtH * full;
  let filledFor = Number.NaN;
  return createRunning(n, [electric, burner], (view, demand) => {
    if (!set.on || view.driving) return false;
    const setC = isNight(view.clockH) || view.people < people ? set.nightC : set.dayC;
    if (setC !== filledFor) {
      fillTarget(view, setC, targetC);
      filledFor = setC;
    }
    fillStage(view);
    if (fuel === "fuel") fillPipeLimit(view, burner, burnerShare);
    view.heatToReach(targetC, wanted);
    view.heatToHold(targetC, holding);
    let isCold = false;
    for (let i = 0; i < n; i++) {
      const heat = Math.min(easeInto(holding[i]!, wanted[i]!, eased), full);
      demand[i] = heat / full;
      if (!(heat > 0)) continue;
      isCold = true;
      // per unit of activity, so that the whole comes out, and as much for its heat where it gets less than it asks for
      const asked = Math.min(askedAtOnce(holding[i]!, wanted[i]!, dtH), full);
      const fan = (fanWhFull * runningShare(asked, holding[i]!, full)) / asked;
      electricFan[i] = fan;
      burnerFan[i] = fan;
    }
    return isCold;
  });
}

/**
 * Holds the electric mode to the highest of the stages that fits the post (behind an inverter, without a post, to the
 * highest of all), less what hot water out of the same elements takes of it first. `full`: Wh at activity 1.
 */
function stageFiller(
  stagesW: readonly number[],
  { dtH, post, elementWh }: PhysicsContext,
  full: number,
  limit: Float64Array,
): (view: StepView) => void {
  let filledAt = Number.NaN;
  let stageWh = (stagesW.at(-1) ?? 0) * dtH;
  limit.fill(stageWh / full);
  // apart from what is asked at every step: that would make room for what this closes over each time
  const sizeTo = (postAmperes: number) => {
    stageWh = (stagesW.findLast((watts) => fitsPost(post, watts, postAmperes, true)) ?? 0) * dtH;
    fillAll(limit, stageWh / full);
    filledAt = postAmperes;
  };
  return (view) => {
    if (view.postAmperes !== filledAt) sizeTo(view.postAmperes);
    if (elementWh === undefined) return;
    for (let i = 0; i < limit.length; i++) limit[i] = Math.max(0, stageWh - elementWh[i]!) / full;
  };
}

/** A diesel heater burns only what lies above the end of its pipe. */
function fillPipeLimit(view: StepView, burner: Mode, burnerShare: number): void {
  const level = view.level("fuel");
  const capacity = view.capacity("fuel");
  for (let i = 0; i < level.length; i++) {
    const above = Math.max(0, level[i]! - PIPE_ENDS_AT * capacity[i]!);
    burner.limit[i] = Math.min(burnerShare, above / burner.needs[0]![i]!);
  }
}

/**
 * Share of a step in which the heater runs, fan and all: at full output until the cabin is warm, then to hold
 * it; a cabin that is still above the target needs it only for the last part. Holding takes the burner's lowest
 * stage in turns where that is more than needed. All in heat per step, so that the step's length does not matter.
 */
export function runningShare(heat: number, holding: number, full: number): number {
  const holdingShare = Math.min(holding / (LOWEST_STAGE * full), 1);
  if (heat >= full || holding >= full) return heat / full;
  if (heat < holding) return (heat / holding) * holdingShare;
  const warming = (heat - holding) / (full - holding);
  return warming + (1 - warming) * holdingShare;
}

function fillTarget(view: StepView, setC: number, targetC: Float64Array): void {
  const normal = view.tripNormal("thermostat");
  for (let i = 0; i < targetC.length; i++) targetC[i] = setC + SET_SD_K * normal[i]!;
}

function isNight(clockH: number): boolean {
  return clockH >= NIGHT_FROM_H || clockH < NIGHT_TO_H;
}

function startStandby(spec: HeatingSpec, context: PhysicsContext): Running {
  const on = readSetting(context).on;
  const mode = createMode("standby", context.n, ["battery12"], []);
  mode.needs[0]!.fill(spec.standbyW * context.dtH);
  return createRunning(context.n, [mode], (_view, demand) => {
    if (on) fillAll(demand, 1);
    return on;
  });
}

/** The electric stages that it may run at as it is set, W, rising: all, and half of it as is usual; none above the one it is told. */
function stagesOf(spec: HeatingSpec, { source, electricW: told }: HeatingSetting): readonly number[] {
  const most = electricW(spec);
  if (most < 1 || source === "gas" || source === "diesel") return [];
  return [most / 2, most].filter((watts) => watts <= told);
}

/** With hot water in one appliance its elements serve both. */
function mainsOf(spec: HeatingSpec, setting: Setting): MainsUse {
  const set = readSetting({ setting });
  const stagesW = stagesOf(spec, set);
  if (!set.on || stagesW.length === 0) return { loads: [] };
  const instead = set.source === "electric" || spec.source === "electric" ? "waits" : fuelOf(spec);
  const sameAs = spec.withHotWater ? ["hotWater"] : [];
  return { loads: [{ stagesW, lasts: "hours", instead, wanted: "cold", sameAs }] };
}

const fuelOf = ({ source }: HeatingSpec) =>
  source.startsWith("diesel") ? ("fuel" as const) : ("gas" as const);

/**
 * The heater of the living part: the highest electric stage that fits first, where the pitch gives it and the hire
 * allows it (on for a share of the step, to hold the temperature), then gas or diesel; every mode also needs 12 V for fan and control and stops without it. Off while driving: the
 * cab's own heater serves then and the gas is shut off.
 */
export const physics: SystemPhysics<HeatingSpec> = {
  stores: () => [],
  start: (spec, context) => [startHeat(spec, context), startStandby(spec, context)],
  mains: mainsOf,
};
