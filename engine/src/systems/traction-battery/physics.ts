import { fillAll } from "../../stores/fill-all.ts";
import type { MainsUse, PhysicsContext, Running, Setting, SystemPhysics } from "../contract.ts";
import { readTank } from "../read-level.ts";
import { createMode, createRunning, habitFactor, postFiller } from "../running.ts";
import type { TractionBatterySpec } from "./spec.ts";

const POST_V = 230;
/** of the charger aboard and of the converter to 12 V: from memory */
const CHARGER_EFFICIENCY = 0.88;
const CONVERTER_EFFICIENCY = 0.92;
/** more is used in the cold, by kelvin below 20 °C, up to a third: from memory */
const COLD_PER_K = 0.009;
const COLD_MOST = 1.35;
/** what is left in the battery when the hirer charges on the way, and below which it is not drawn for the living part: practice */
const CHARGES_AT_SHARE = 0.3;

/** How much more the road takes at an outside temperature than at 20 °C. */
export function coldFactor(outsideC: number): number {
  return Math.min(COLD_MOST, 1 + COLD_PER_K * Math.max(0, 20 - outsideC));
}

const capacityWh = (spec: TractionBatterySpec) => spec.usableKwh * 1000;

/** Wh charged on the way in a step, by the level at its start and what the road takes: enough to keep a third. */
function chargeOnTheWay(
  spec: TractionBatterySpec,
  dtH: number,
  setting: Setting,
): (levelWh: number, driveWh: number) => number {
  const keepWh = CHARGES_AT_SHARE * capacityWh(spec);
  const mostWh = setting.chargeOnTheWay === false ? 0 : spec.fastChargeKw * 1000 * dtH;
  return (levelWh, driveWh) => Math.min(Math.max(0, keepWh - levelWh + driveWh), mostWh);
}

/** The road, and the charge points along it: with `chargeOnTheWay` the hirer never drives below a third. */
function startRoad(spec: TractionBatterySpec, { n, dtH, setting }: PhysicsContext): Running[] {
  const drive = createMode("drive", n, ["tractionBattery"], []);
  const charge = createMode("chargePoint", n, [], ["tractionBattery"]);
  const perKmWh = spec.kwhPer100Km * 10;
  const chargeOf = chargeOnTheWay(spec, dtH, setting);
  const factor = habitFactor(n, "driving", 0.08, 0.05);
  const driveWh = drive.needs[0]!;
  const chargeWh = charge.gives[0]!;
  const charging = createRunning(n, [charge], (view, demand) => {
    if (!view.driving) return false;
    fillAll(demand, 1);
    const habit = factor(view);
    const level = view.level("tractionBattery");
    for (let i = 0; i < n; i++) {
      driveWh[i] = view.distanceKm * perKmWh * habit[i]! * coldFactor(view.outsideC[i]!);
      chargeWh[i] = chargeOf(level[i]!, driveWh[i]!);
    }
    return true;
  });
  const driving = createRunning(n, [drive], (view, demand) => {
    if (view.driving) fillAll(demand, 1);
    return view.driving;
  });
  return [charging, driving];
}

/** Shares of the battery between which the vehicle sheds the converter: from memory. */
const SHEDS_FROM = 0.2;
const SHEDS_TO = 0.05;

/** Into the battery of the living part, as much as that takes, less and less as the battery runs low in the middle of the step. */
function startConverter(spec: TractionBatterySpec, { n, dtH, setting }: PhysicsContext): Running {
  const mode = createMode("converter", n, ["tractionBattery"], ["battery12"]);
  const needWh = (spec.dcdcW * dtH) / CONVERTER_EFFICIENCY;
  mode.needs[0]!.fill(needWh);
  mode.gives[0]!.fill(spec.dcdcW * dtH);
  const perKmWh = spec.kwhPer100Km * 10;
  const chargeOf = chargeOnTheWay(spec, dtH, setting);
  const parked = spec.dcdcWhen === "always";
  const fullAt = SHEDS_FROM * capacityWh(spec);
  const noneAt = SHEDS_TO * capacityWh(spec);
  const running = createRunning(n, [mode], (view, demand) => {
    if (!view.driving && !parked) return false;
    const level = view.level("tractionBattery");
    const driveWh = view.distanceKm * perKmWh;
    for (let i = 0; i < n; i++) {
      const charged = view.driving ? chargeOf(level[i]!, driveWh) - driveWh : 0;
      const middle = level[i]! + charged / 2;
      const share = (middle - noneAt) / (fullAt - noneAt);
      demand[i] = share > 0 ? Math.min(1, share) : 0;
    }
    return true;
  });
  return { ...running, afterAll: true };
}

/** currents that a charging lead can be set to, A: from 6 A (IEC 61851-1, from memory) by the usual steps (practice) */
const LEAD_A = [6, 8, 10, 13, 16, 20, 25] as const;

/** What it may draw from a post, W, rising. */
function stagesOf({ postChargeA }: TractionBatterySpec): number[] {
  return [...LEAD_A.filter((amperes) => amperes < postChargeA), postChargeA].map(
    (amperes) => amperes * POST_V,
  );
}

function startPost(spec: TractionBatterySpec, { n, dtH, setting, post }: PhysicsContext): Running {
  const mode = createMode("post", n, ["mains230"], ["tractionBattery"]);
  const fromPostWh = spec.postChargeA * POST_V * dtH;
  mode.needs[0]!.fill(fromPostWh);
  mode.gives[0]!.fill(fromPostWh * CHARGER_EFFICIENCY);
  const on = setting.chargeAtPost !== false && fromPostWh > 0;
  const fillPost = postFiller(post, spec.postChargeA * POST_V, spec.postChargeA * POST_V, mode.limit);
  return createRunning(n, [mode], (view, demand) => {
    if (!on || view.postAmperes <= 0) return false;
    fillPost(view);
    fillAll(demand, 1);
    return true;
  });
}

function mainsOf(spec: TractionBatterySpec, setting: Setting): MainsUse {
  if (spec.postChargeA === 0 || setting.chargeAtPost === false) return { loads: [] };
  return { loads: [{ stagesW: stagesOf(spec), lasts: "hours", instead: "waits", wanted: "always" }] };
}

/**
 * The battery that drives the vehicle: usable energy, drawn by the road (more in the cold), by the converter to 12 V
 * and by an inverter behind it; charged at charge points on the way and, at the current that fits beside all else, at the post of a pitch.
 * Settings of the hire: `chargeOnTheWay` (true), `chargeAtPost` (true).
 */
export const physics: SystemPhysics<TractionBatterySpec> = {
  stores: (spec) => [{ store: "tractionBattery", capacity: capacityWh(spec), initial: 1 }],
  start: (spec, context) => [
    ...startRoad(spec, context),
    ...(spec.dcdcW > 0 ? [startConverter(spec, context)] : []),
    startPost(spec, context),
  ],
  mains: mainsOf,
  // at 20 °C: the forecast itself counts the cold
  road: ({ kwhPer100Km, reserveShare }) => ({
    store: "tractionBattery",
    perKm: kwhPer100Km * 10,
    reserveShare,
  }),
  read: (spec, value, unit, sd) => readTank(capacityWh(spec), "Wh", value, unit, sd),
};
