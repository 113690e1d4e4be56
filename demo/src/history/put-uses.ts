import { toInstant } from "@setfair/engine";
import { toJson } from "@setfair/server";
import type { DemoDepot } from "../demo-depot.ts";
import type { PastUse } from "./past-hires.ts";

/** Writes down what an invented hire used, to be set beside its forecast by the server like any other. */
export async function putUse(
  { store, timeZone }: Pick<DemoDepot, "store" | "timeZone">,
  { vehicle, party, trip, measured, returned }: PastUse,
  hireId: string | null,
): Promise<void> {
  const travellers = party.travellers.map(({ id, kind }) => ({ id, kind }));
  const sheet = {
    added: measured.added,
    readings: measured.readings,
    distanceKm: measured.distanceKm ?? null,
  };
  await store.uses.put({
    vehicleId: vehicle.id,
    hireId,
    returnedAt: toInstant(returned, timeZone),
    document: toJson({ party: { ...party, travellers }, trip, measured, sheet }),
  });
}
