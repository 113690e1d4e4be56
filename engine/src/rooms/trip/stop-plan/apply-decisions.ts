import type { Stop, Trip } from "../../situation.ts";
import type { Decision } from "./decisions.ts";
import { POST_WHEN_ASKED } from "./post-when-asked.ts";
import type { Act, PitchNeed } from "./types.ts";

/** a cooler night and evening, °C: common practice, no source */
export const COOL = { dayC: 17, nightC: 10 } as const;
type Setting = NonNullable<Stop["settings"]>[string];
/** acts in the order in which they are done on a pitch */
const ORDER: readonly Act[] = [
  "fillFuel",
  "fillDef",
  "plugIn",
  "exchangeLpg",
  "fillWater",
  "emptyWaste",
  "emptyCassette",
];

/** The trip with these decisions and no others; acts that nobody decides on stay as asked. */
export function applyDecisions(trip: Trip, open: readonly Decision[], chosen: ReadonlySet<Decision>): Trip {
  const decided = (stop: number, act: Act) =>
    open.some((one) => one.kind === "act" && one.stop === stop && one.act === act);
  const stops = trip.stops.map((stop, index): Stop => {
    const kept = stop.acts.filter((act) => !decided(index, act));
    let pitch = stop.pitch;
    let settings = stop.settings;
    for (const one of chosen) {
      if (one.kind === "fullGas" || one.stop !== index) continue;
      if (one.kind === "act") {
        kept.push(one.act);
        if (one.missing !== null) pitch = offering(pitch, one.missing);
      } else {
        settings = { ...settings, [one.heater]: { ...settings?.[one.heater], ...COOL } };
      }
    }
    const acts = ORDER.filter((act) => kept.includes(act));
    return { ...stop, pitch, acts, ...(settings === undefined ? {} : { settings }) };
  });
  const full = [...chosen].some(({ kind }) => kind === "fullGas");
  return { ...trip, stops, departWith: { ...trip.departWith, ...(full ? { lpg: 1 } : {}) } };
}

function offering(pitch: Stop["pitch"], need: PitchNeed): Stop["pitch"] {
  return need === "post" ? { ...pitch, postAmperes: POST_WHEN_ASKED } : { ...pitch, [need]: true };
}

const isCool = (set: Setting | undefined): boolean =>
  set !== undefined && Object.entries(COOL).every(([name, celsius]) => set[name] === celsius);

/** Whether the trip as asked already does what would be decided. */
export function isAsked(trip: Trip, one: Decision): boolean {
  if (one.kind === "fullGas") return false;
  const stop = trip.stops[one.stop]!;
  return one.kind === "act"
    ? one.missing === null && stop.acts.includes(one.act)
    : isCool(stop.settings?.[one.heater]);
}

/** The trip without the cooler nights and the water by leg of a plan that was taken before: they are decided anew. */
export function withoutPlan(trip: Trip, heater: string | undefined): Trip {
  const stops = trip.stops.map(({ leaveWithWaterL: _, settings, ...stop }): Stop => {
    const kept = Object.entries(settings ?? {}).flatMap(([id, set]) => {
      const rest = id === heater && isCool(set) ? without(set, Object.keys(COOL)) : set;
      return Object.keys(rest).length === 0 ? [] : [[id, rest] as const];
    });
    return kept.length === 0 ? stop : { ...stop, settings: Object.fromEntries(kept) };
  });
  return { ...trip, stops };
}

function without(set: Setting, names: readonly string[]): Setting {
  return Object.fromEntries(Object.entries(set).filter(([name]) => !names.includes(name)));
}
