/** Small parts from which the physics of the systems are built; see the contract. */
import { lpgEnergyKwh } from "../formulas/lpg.ts";
import type { StoreId } from "../stores/stores.ts";
import type { Mode, PostShare, Running, StepView, Window } from "./contract.ts";

/** A mode with fresh arrays for its needs, gives and limit; the limit starts at 1. */
export function createMode(
  id: string,
  n: number,
  needStores: readonly StoreId[],
  giveStores: readonly StoreId[],
): Mode {
  return {
    id,
    needStores,
    needs: needStores.map(() => new Float64Array(n)),
    giveStores,
    gives: giveStores.map(() => new Float64Array(n)),
    limit: new Float64Array(n).fill(1),
  };
}

/** @param when where or at which times of the day it is never wanted otherwise: what stands still most of the time is then not asked at every step */
export function createRunning(
  n: number,
  modes: readonly Mode[],
  prepare: Running["prepare"],
  when: Pick<Running, "only" | "times"> = {},
): Running {
  return { modes, demand: new Float64Array(n), prepare, ...when };
}

/**
 * A factor around 1 for each life, e^(sdTrip z₁ + sdDay z₂): its middle is 1, so that with no spread it is 1.
 * z₁ is drawn once per trip (this appliance, these people), z₂ each day.
 */
export function habitFactor(
  n: number,
  purpose: string,
  sdTrip: number,
  sdDay: number,
): (view: StepView) => Float64Array {
  const factor = new Float64Array(n);
  let filledFor = -1;
  return (view) => {
    if (filledFor === view.day || (filledFor >= 0 && sdDay === 0)) return factor;
    filledFor = view.day;
    const trip = view.tripNormal(purpose);
    const day = sdDay === 0 ? null : view.dayNormal(purpose);
    for (let i = 0; i < n; i++) {
      factor[i] = Math.exp(sdTrip * trip[i]! + (day === null ? 0 : sdDay * day[i]!));
    }
    return factor;
  };
}

/** Share of the day's use that falls into a step, by overlap of the step with the windows, so that any step length adds up to the same day. */
export function shareOfDay(windows: readonly Window[], clockH: number, dtH: number): number {
  const from = clockH - dtH / 2;
  const to = from + dtH;
  let share = 0;
  for (let k = 0; k < windows.length; k++) {
    const window = windows[k]!;
    const { fromH, toH } = window;
    // most steps lie outside: asked many times in each
    if (to <= fromH || from >= toH) continue;
    const overlap = Math.min(to, toH) - Math.max(from, fromH);
    share += (window.share * overlap) / (toH - fromH);
  }
  return share;
}

/** Colder than this outside, °C, what is wanted only in the cold counts at a post: practice */
export const COLD_OUTSIDE_C = 12;

/** Whether a load of so many W may be on at a post of so many A, in the cold or not; any may where nobody sized the post. */
export function fitsPost(
  post: PostShare | undefined,
  watts: number,
  postAmperes: number,
  isCold: boolean,
): boolean {
  return post === undefined || postAmperes <= 0 || post.stageW(postAmperes, isCold) >= watts;
}

/**
 * Holds a mode of up to `mostW`, at activity 1 `fullW`, to what a post leaves it, life by life: less while things for
 * the cold are on.
 */
export function postFiller(
  post: PostShare | undefined,
  mostW: number,
  fullW: number,
  limit: Float64Array,
): (view: StepView) => void {
  let filledAt = Number.NaN;
  let [cold, warm] = [0, 0];
  limit.fill(mostW / fullW);
  // apart from what is asked at every step: that would make room for what this closes over each time
  const sizeTo = (postAmperes: number) => {
    const stageW = (isCold: boolean) =>
      post === undefined || postAmperes <= 0 ? mostW : post.stageW(postAmperes, isCold);
    cold = Math.min(mostW, stageW(true)) / fullW;
    warm = Math.min(mostW, stageW(false)) / fullW;
    filledAt = postAmperes;
  };
  return (view) => {
    const { outsideC } = view;
    if (view.postAmperes !== filledAt) sizeTo(view.postAmperes);
    else if (cold === warm) return;
    for (let i = 0; i < limit.length; i++) limit[i] = outsideC[i]! < COLD_OUTSIDE_C ? cold : warm;
  };
}

/** Whether any life's value is below a limit. */
export function isAnyBelow(values: Float64Array, limit: number): boolean {
  for (let i = 0; i < values.length; i++) if (values[i]! < limit) return true;
  return false;
}

/** A setting of the hire as a number, where it is one. */
export function numberSetting(value: number | string | boolean | undefined, fallback: number): number {
  return typeof value === "number" ? value : fallback;
}

/** net heat of combustion of LPG, kWh/kg; appliances are rated on it. Butane gives 1 % less, which is left out. */
export const LPG_NET_KWH_KG = lpgEnergyKwh("propane", 1, "net");
/** net heat of combustion of diesel, kWh/L: 837 kg/m³ (Staffell 2011) at 42.9 MJ/kg (from memory) */
export const DIESEL_NET_KWH_L = 9.97;

/** h in which a thermostat makes up most of what is missing, once the appliance could do more: common practice, no source */
const EASE_H = 0.5;

/** Share of what is missing that a thermostat makes up in `dtH` hours: its pace does not hang on the step's length. */
export function easedShare(dtH: number): number {
  return 1 - Math.exp(-dtH / EASE_H);
}

/** What it asks for at the first moment of a step, as Wh over the whole of it: hangs on the step's length by nothing else. */
export function askedAtOnce(holdWh: number, reachWh: number, dtH: number): number {
  return reachWh <= holdWh ? reachWh : holdWh + ((reachWh - holdWh) * dtH) / EASE_H;
}

/**
 * Heat that a thermostat asks for in a step, Wh: what holds the temperature, and of what is missing beyond that
 * the share made up at a pace of its own ({@link easedShare}), so that half the step asks for half the heat. A
 * thing warmer than its target gets only what it still needs.
 */
export function easeInto(holdWh: number, reachWh: number, eased: number): number {
  return reachWh <= holdWh ? reachWh : holdWh + (reachWh - holdWh) * eased;
}
