import type { UseRates } from "@setfair/engine";
import type { Store } from "../../store/types.ts";
import { asDocument } from "../documents.ts";

/** The rates of a vehicle that has none of its own. */
export const ANY_VEHICLE = "*";

/** The rates that forecasts of each vehicle take; of one that has none, the depot's. */
export async function readRates(store: Store): Promise<(vehicleId: string) => UseRates> {
  const rows = await store.uses.rates();
  const byVehicle = new Map(
    rows.map(({ vehicleId, document }) => [vehicleId, asDocument<UseRates>(document)]),
  );
  return (vehicleId) => byVehicle.get(vehicleId) ?? byVehicle.get(ANY_VEHICLE) ?? {};
}
