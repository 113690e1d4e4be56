import type { Measured, Party, Terms, Trip, VehicleDescription } from "@setfair/engine";
import { addDays } from "../dates.ts";
import type { DemoHire } from "../demo-hire.ts";
import { drawsFrom } from "../season/draws.ts";
import { makeSeason } from "../season/make-season.ts";
import type { DemoVehicle } from "../vehicles.ts";
import { measuredUse, seedOf } from "./measured-use.ts";
import { pastTrip } from "./past-trip.ts";

const CAME_BACK: readonly DemoHire["stage"][] = ["returned", "settled", "closed"];
/** A season of the demo reaches so far back; the ones before it are further such steps. */
const SEASON_DAYS = 160;
const SEASONS_BEFORE = 4;

interface Demo {
  readonly today: string;
  readonly terms: Terms;
  readonly vehicles: readonly DemoVehicle[];
}

/** One hire that is over, with what was written down of its use. */
export interface PastUse {
  readonly vehicle: VehicleDescription;
  readonly party: Party;
  readonly trip: Trip;
  readonly measured: Measured;
  /** civil time */
  readonly returned: string;
}

function waterLitres({ systems }: VehicleDescription): number {
  const litres = systems.find(({ kind }) => kind === "freshWater")?.spec.litres;
  return typeof litres === "number" ? litres : 0;
}

/** The trip of an invented hire that came back, where it has none of its own. */
export function withPastTrip(hire: DemoHire, vehicles: Demo["vehicles"]): DemoHire {
  const vehicle = vehicles.find(({ id }) => id === hire.vehicleId)?.document.description;
  if (vehicle === undefined || hire.trip !== null || !CAME_BACK.includes(hire.stage)) return hire;
  const draws = drawsFrom(seedOf(`trip ${vehicle.id} ${hire.from}`));
  const people = hire.party.travellers.length;
  const asked = { from: hire.from, to: hire.to, people, waterLitres: waterLitres(vehicle) };
  return { ...hire, trip: pastTrip(draws, asked) };
}

/** What was used on a hire that came back; null for any other. */
export function pastUse(hire: DemoHire, vehicles: Demo["vehicles"]): PastUse | null {
  const { trip, party, stage, to } = withPastTrip(hire, vehicles);
  const vehicle = vehicles.find(({ id }) => id === hire.vehicleId)?.document.description;
  if (vehicle === undefined || trip === null || !CAME_BACK.includes(stage)) return null;
  return { vehicle, party, trip, measured: measuredUse({ vehicle, party, trip }), returned: to };
}

/** Returns of the almost two years before the season, oldest first: of them only their use is known. */
export function earlierUses({ today, terms, vehicles }: Demo): readonly PastUse[] {
  const seasons = Array.from({ length: SEASONS_BEFORE }, (_, k) => addDays(today, -SEASON_DAYS * (k + 1)));
  const uses = seasons.flatMap((day, k) => {
    const until = addDays(today, -SEASON_DAYS * k - SEASON_DAYS);
    return makeSeason({ today: day, terms, vehicles, taken: [] })
      .filter(({ to }) => to.slice(0, 10) < until)
      .flatMap((hire) => pastUse(hire, vehicles) ?? []);
  });
  return uses.sort((a, b) => (a.returned < b.returned ? -1 : 1));
}
