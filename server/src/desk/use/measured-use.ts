import type { Added, Measured, Party, Reading, Trip } from "@setfair/engine";
import { type HireData, partOf } from "../hire-data.ts";
import { conditionRecords, type Direction, panelReadings } from "../record-facts.ts";

/** What the desk wrote down of a return beside the records: by the till, the scale, the can. */
export interface UseSheet {
  readonly added: readonly Added[];
  readonly readings: readonly Reading[];
  /** by the odometer, where the walk-rounds do not say it */
  readonly distanceKm: number | null;
}
export const NO_SHEET: UseSheet = { added: [], readings: [], distanceKm: null };

/** A hire that is over as it is kept for the rates. Travellers are counted, not named. */
export interface UseDocument {
  readonly party: Party;
  readonly trip: Trip;
  readonly measured: Measured;
  readonly sheet: UseSheet;
}

/** Checks of the walk-rounds that read a store; a share full is read as per cent. */
const READ_BY_CHECK: Readonly<Record<string, Pick<Reading, "store" | "unit"> & { readonly times: number }>> =
  {
    "lpg.content": { store: "lpg", unit: "kg", times: 1 },
    "fuel.gauge": { store: "fuel", unit: "%", times: 100 },
    "freshWater.level": { store: "freshWater", unit: "%", times: 100 },
    "leisureBattery.charge": { store: "battery12", unit: "%", times: 100 },
    "leisureBattery.restVolts": { store: "battery12", unit: "V", times: 1 },
  };
const ODOMETER = "cab.odometer";
/** more than a party reads on one hire; beyond it the first count */
const MOST_READINGS = 300;

function readByCheck({ records }: HireData, direction: Direction): ReadonlyMap<string, number> {
  return new Map(
    conditionRecords(records, direction).flatMap(({ content }): [string, number][] =>
      content.kind === "reading" && typeof content.value === "number"
        ? [[content.checkId, content.value]]
        : [],
    ),
  );
}

/**
 * What is known of the use of a hire that is over: readings of both walk-rounds, of the panel on the road, and what
 * the desk wrote on its sheet. Null while vehicle, party or trip is missing.
 */
export function useOfHire(data: HireData, sheet: UseSheet): UseDocument | null {
  const party = partOf(data, "party");
  const trip = partOf(data, "trip");
  if (data.vehicle === null || party === null || trip === null) return null;
  const [out, back] = [readByCheck(data, "out"), readByCheck(data, "back")];
  const ofWalk = (read: ReadonlyMap<string, number>, at: string): Reading[] =>
    [...read].flatMap(([checkId, value]): Reading[] => {
      const meant = READ_BY_CHECK[checkId];
      return meant === undefined
        ? []
        : [{ store: meant.store, unit: meant.unit, value: value * meant.times, at }];
    });
  const onRoad = [...panelReadings(data.records, data.depot.timeZone), ...sheet.readings];
  const readings = [
    ...ofWalk(out, trip.depart),
    ...onRoad.filter(({ at }) => at >= trip.depart && at <= trip.return),
    ...ofWalk(back, trip.return),
  ].slice(0, MOST_READINGS);
  const [kmOut, kmBack] = [out.get(ODOMETER), back.get(ODOMETER)];
  const driven = kmOut !== undefined && kmBack !== undefined && kmBack > kmOut ? kmBack - kmOut : null;
  const distanceKm = sheet.distanceKm ?? driven;
  const added = sheet.added.map((each) => ({ ...each, at: within(each.at, trip) }));
  return {
    party: { ...party, travellers: party.travellers.map(({ id, kind }) => ({ id, kind })) },
    trip,
    measured: { readings, added, ...(distanceKm === null ? {} : { distanceKm }) },
    sheet,
  };
}

/** What was filled up after the return belongs to the trip's end. */
function within(at: string, { depart, return: back }: Trip): string {
  if (at < depart) return depart;
  return at > back ? back : at;
}
