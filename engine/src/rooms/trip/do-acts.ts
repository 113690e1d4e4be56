/** What people do at the stores between the steps: fill, empty, change, buy fuel, read the panel. */
import { keyedNormal, purposeKey } from "../../base/random.ts";
import { type Ensemble, indexOf, setLevel } from "../../stores/ensemble.ts";
import { STORES, type StoreId } from "../../stores/stores.ts";
import { FUEL_RESERVE_SHARE } from "../../systems/fuel/physics.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import type { Stop, Trip } from "../situation.ts";
import type { FittedPhysics } from "./fit-systems.ts";
import type { Timeline } from "./timeline.ts";

/** A level set from a reading in the middle of the trip. */
export interface Restart {
  readonly step: number;
  readonly store: StoreId;
  readonly level: number;
  readonly sd: number;
}

type Act = Stop["acts"][number];
const ACTS: Readonly<
  Record<Exclude<Act, "plugIn">, { readonly store: StoreId; readonly onLeaving: boolean }>
> = {
  fillWater: { store: "freshWater", onLeaving: false },
  emptyWaste: { store: "wasteWater", onLeaving: true },
  emptyCassette: { store: "cassette", onLeaving: true },
  exchangeLpg: { store: "lpg", onLeaving: false },
  fillFuel: { store: "fuel", onLeaving: false },
  fillDef: { store: "def", onLeaving: false },
};

/** Whether the pitch offers what an act needs; fuel and DEF are had on the way. */
export function isOffered({ pitch }: Pick<Stop, "pitch">, act: Act): boolean {
  switch (act) {
    case "plugIn":
      return pitch.postAmperes > 0;
    case "fillWater":
      return pitch.freshWater;
    case "emptyWaste":
      return pitch.wasteDrain;
    case "emptyCassette":
      return pitch.cassettePoint;
    case "exchangeLpg":
      return pitch.lpgExchange;
    default:
      return true;
  }
}

/** Fills and empties on arriving and each morning of a longer stay; waste and cassette once more before leaving. */
export function doActs(trip: Trip, timeline: Timeline, step: number, ensemble: Ensemble): void {
  const at = timeline.actsAt.get(step);
  if (at === undefined) return;
  const stop = trip.stops[at.stop]!;
  for (const act of stop.acts) {
    if (act === "plugIn" || !isOffered(stop, act)) continue;
    const { store, onLeaving } = ACTS[act];
    const s = indexOf(store);
    if (!ensemble.present[s] || (at.why === "leave" && !onLeaving)) continue;
    const full = STORES[store].trouble === "empty";
    for (let i = 0; i < ensemble.n; i++) setLevel(ensemble, s, i, full ? ensemble.capacity[s]![i]! : 0);
  }
  if (at.why === "leave") drainWater(stop, ensemble);
}

/** Water that the next legs do not need is not driven about: it is let out before leaving, and where there is a tap filled up to that. */
function drainWater(stop: Stop, ensemble: Ensemble): void {
  const water = indexOf("freshWater");
  const to = stop.leaveWithWaterL;
  if (to === undefined || !ensemble.present[water]) return;
  const fills = stop.acts.includes("fillWater") && isOffered(stop, "fillWater");
  for (let i = 0; i < ensemble.n; i++) {
    if (fills || ensemble.level[water]![i]! > to) setLevel(ensemble, water, i, to);
  }
}

/** a drive begins with its own need and a fifth more above the reserve, else the tank is filled first: practice */
const FUEL_MARGIN = 1.2;
/** share of the tank by which it may hold more than that and something is put in all the same, less the more there is: practice */
const FUEL_BAND = 0.15;

/** Fuel is bought on the way: a tank that would not do the drive, or its next hours, is filled as these begin, unless the fuel system's setting `fillOnTheWay` is false. */
export function fillOnTheWay(
  vehicle: VehicleDescription,
  systems: readonly FittedPhysics[],
  trip: Trip,
  driveKm: number,
  ensemble: Ensemble,
): void {
  const fuel = indexOf("fuel");
  if (driveKm === 0 || !ensemble.present[fuel]) return;
  const tank = systems.find(({ kind }) => kind === "fuel");
  if (tank === undefined || trip.settings[tank.id]?.fillOnTheWay === false) return;
  const perKm = (vehicle.consumption.litresPer100Km * (tank.rates.fuel?.times ?? 1)) / 100;
  const need = driveKm * perKm * FUEL_MARGIN;
  for (let i = 0; i < ensemble.n; i++) {
    const capacity = ensemble.capacity[fuel]![i]!;
    const level = ensemble.level[fuel]![i]!;
    const over = (level - need) / capacity - FUEL_RESERVE_SHARE;
    // else a millilitre would decide over a tank
    const share = Math.min(1, 1 - over / FUEL_BAND);
    if (share > 0) setLevel(ensemble, fuel, i, level + share * (capacity - level));
  }
}

export function restartLevels(
  {
    restarts,
    seed,
    spread,
  }: { readonly restarts: readonly Restart[]; readonly seed: number; readonly spread: boolean },
  step: number,
  ensemble: Ensemble,
): void {
  for (const restart of restarts) {
    if (restart.step !== step) continue;
    const key = purposeKey(`reading.${restart.store}`);
    const s = indexOf(restart.store);
    for (let i = 0; i < ensemble.n; i++) {
      const error = spread ? restart.sd * keyedNormal(seed, i, step, key) : 0;
      setLevel(ensemble, s, i, restart.level + error);
    }
  }
}
