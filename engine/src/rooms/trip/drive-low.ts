import { figure } from "../../base/figure.ts";
import type { Finding, Mend } from "../../base/finding.ts";
import type { TripPlan } from "./plan-trip.ts";
import type { StoreForecast } from "./types.ts";

/** Below this share of a traction battery an inverter and what hangs on it have stopped, as the inverter takes it. */
const DRIVE_LOW_SHARE = 0.21;

/** The battery that drives does not run out, since it is charged on the way, but the living part may have stopped for want of it. */
export function driveLow(
  { input, timeline }: TripPlan,
  store: StoreForecast,
  mends: () => readonly Mend[],
): Finding[] {
  if (store.store !== "tractionBattery") return [];
  const { p10 } = store.band;
  const least = Math.min(...p10);
  if (least > DRIVE_LOW_SHARE * store.capacity.value) return [];
  return [
    {
      code: "trip.tractionBatteryLow",
      gate: "resources",
      severity: "condition",
      basis: "physics",
      about: store.store,
      facts: {
        left: figure(
          Math.round((least / store.capacity.value) * 100),
          "%",
          "-",
          { runs: input.runs, share: 0.1 },
          "computed",
        ),
        at: timeline.localAt(Math.min(p10.indexOf(least), timeline.steps * timeline.dtH)),
        usable: store.capacity,
        usePerDay: store.usePerDay,
      },
      sources: [],
      mends: mends(),
    },
  ];
}
