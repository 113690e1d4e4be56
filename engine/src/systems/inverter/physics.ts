import { fillAll } from "../../stores/fill-all.ts";
import type { PhysicsContext, Running, SystemPhysics, Window } from "../contract.ts";
import { createMode, createRunning, habitFactor, numberSetting, shareOfDay } from "../running.ts";
import type { InverterSpec } from "./spec.ts";

/** Share of its battery at which the inverter cuts out, so that lights and pump go on: from memory. */
const CUTS_OUT_AT = 0.2;
/** people switch it on and off with themselves: `idleW` is drawn in these hours (practice) */
const AWAKE: readonly Window[] = [{ fromH: 7, toH: 23, share: 16 }];
const USE: readonly Window[] = [
  { fromH: 7, toH: 9, share: 0.4 },
  { fromH: 17, toH: 22, share: 0.6 },
];

const batteryOf = ({ source }: InverterSpec) =>
  source === "tractionBattery" ? ("tractionBattery" as const) : ("battery12" as const);

/** Nobody heats from the battery of the living part: behind it the heater's electric stage stays off (practice). */
const heats = ({ runs, source }: InverterSpec) => runs === "everything" && source === "tractionBattery";

/** What stands behind it takes what it needs; what is left goes back. A changeover switch gives the post's own mains instead, where there is a post. */
function startSupply(spec: InverterSpec, { n, dtH, setting }: PhysicsContext): Running {
  const mode = createMode("inverter", n, [batteryOf(spec)], [heats(spec) ? "mains230" : "inverter230"]);
  const fullWh = (spec.ratedW * dtH) / spec.efficiency;
  mode.needs[0]!.fill(fullWh);
  mode.gives[0]!.fill(spec.ratedW * dtH);
  const on = setting.on !== false && spec.runs !== "sockets";
  const running = createRunning(n, [mode], (view, demand) => {
    if (!on || view.postAmperes !== 0 || view.driving) return false;
    fillAll(demand, 1);
    return true;
  });
  const needWh = new Float64Array(n);
  return {
    ...running,
    onDemand: true,
    hold: (view, wanted) => {
      for (let i = 0; i < n; i++) needWh[i] = Math.min(fullWh, wanted[i]! / spec.efficiency);
      view.shareDown(batteryOf(spec), needWh, CUTS_OUT_AT, mode.limit);
      for (let i = 0; i < n; i++) mode.limit[i] = (mode.limit[i]! * needWh[i]!) / fullWh;
    },
  };
}

/** Its own idling, and what the sockets give by the hire's setting. */
function startSockets(spec: InverterSpec, { n, dtH, setting }: PhysicsContext): Running {
  const mode = createMode("sockets", n, [batteryOf(spec)], []);
  const perDayWh = numberSetting(setting.whPerDay, 0) / spec.efficiency;
  const on = setting.on !== false;
  const factor = habitFactor(n, "sockets", 0.25, 0.25);
  return createRunning(
    n,
    [mode],
    (view, demand) => {
      const idleWh = spec.idleW * shareOfDay(AWAKE, view.clockH, dtH);
      const usedWh = view.driving ? 0 : perDayWh * shareOfDay(USE, view.clockH, dtH);
      if (!on || view.postAmperes !== 0 || idleWh + usedWh <= 0) return false;
      fillAll(demand, 1);
      const habit = factor(view);
      for (let i = 0; i < n; i++) mode.needs[0]![i] = idleWh + usedWh * habit[i]!;
      view.shareDown(batteryOf(spec), mode.needs[0]!, CUTS_OUT_AT, mode.limit);
      return true;
    },
    { times: AWAKE },
  );
}

/** Battery to 230 V, off the post only. Settings of the hire: `on` (true), `whPerDay` (0) at the sockets beside the small things counted with the lights. */
export const physics: SystemPhysics<InverterSpec> = {
  stores: () => [],
  start: (spec, context) => [startSockets(spec, context), startSupply(spec, context)],
};
