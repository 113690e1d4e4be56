import { type FeasibleInput, feasibleVehicles, type Party, type VehicleFeasibility } from "@setfair/engine";
import type { DepotRow, Store } from "../store/types.ts";
import { asDocument, type DepotDocument, type VehicleDocument } from "./documents.ts";
import { fleetVehicle } from "./fleet.ts";
import { dateOf, localOf } from "./local-time.ts";
import { hoursAnswer } from "./opening-hours.ts";
import { withBook } from "./vehicle-upkeep.ts";

export interface TakeQuestion {
  readonly party: Party;
  /** civil times in the depot's zone */
  readonly from: string;
  readonly to: string;
  /** does not stand in its own way */
  readonly hireId?: string;
}
export interface VehicleThatMay {
  readonly id: string;
  readonly document: VehicleDocument;
  readonly answer: VehicleFeasibility;
}

const DAY_MS = 86_400_000;
/** How far around the dates we look for what holds a vehicle, so that a nearby start can be offered. */
const AROUND_DAYS = 30;

export interface Fleet {
  /** by vehicle, in the order of the input */
  readonly documents: ReadonlyMap<string, VehicleDocument>;
  readonly input: FeasibleInput;
}

/** Every vehicle of the depot with what holds it around these days, as the diary's rooms take it. */
export async function fleetFor(
  store: Store,
  depot: DepotRow,
  now: Date,
  asked: TakeQuestion,
): Promise<Fleet> {
  const today = dateOf(localOf(now.toISOString(), depot.timeZone));
  const versions = await store.vehicles.allOn([dateOf(asked.from), today].sort().at(-1) ?? today);
  const entries = await store.upkeep.ofVehicles(versions.map(({ of }) => of));
  const documents = new Map(
    versions.map(({ of, document }) => [
      of,
      withBook(
        asDocument<VehicleDocument>(document),
        entries.filter(({ vehicleId }) => vehicleId === of),
      ),
    ]),
  );
  const around = (local: string, days: number) =>
    new Date(Date.parse(`${local}Z`) + days * DAY_MS).toISOString();
  const span = [around(asked.from, -AROUND_DAYS), around(asked.to, AROUND_DAYS)] as const;
  const bookings = await store.bookings.between(...span);
  const blocks = await store.blocks.between(...span);
  const { turnaroundMinutes, hours } = asDocument<DepotDocument>(depot.document);
  const input: FeasibleInput = {
    vehicles: [...documents].map(([id, document]) => {
      const mine = ({ vehicleId }: { readonly vehicleId: string }) => vehicleId === id;
      return fleetVehicle(document, bookings.filter(mine), depot.timeZone, blocks.filter(mine));
    }),
    party: asked.party,
    from: asked.from,
    to: asked.to,
    today,
    turnaroundMinutes,
    hours: hoursAnswer(hours),
    timeZone: depot.timeZone,
    ...(asked.hireId === undefined ? {} : { hireId: asked.hireId }),
  };
  return { documents, input };
}

/** Every vehicle of the depot: whether it can take this, or why not and what would have to change. */
export async function vehiclesFor(
  store: Store,
  depot: DepotRow,
  now: Date,
  asked: TakeQuestion,
): Promise<readonly VehicleThatMay[]> {
  return judgeFleet(await fleetFor(store, depot, now, asked));
}

export function judgeFleet({ documents, input }: Fleet): readonly VehicleThatMay[] {
  const { result } = feasibleVehicles(input);
  return [...documents].flatMap(([id, document], k) => {
    const answer = result.vehicles[k];
    return answer === undefined ? [] : [{ id, document, answer }];
  });
}
