import { asDocument, type DepotDocument, type VehicleDocument } from "../../desk/documents.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import type { HireRow, Store } from "../../store/types.ts";
import { badField, Refusal } from "../refusal.ts";

/** Puts a vehicle on a hire; where the hire is booked, its booking moves with it or the change is refused. */
export async function chooseVehicle(
  store: Store,
  row: HireRow,
  vehicleId: string,
  by: string,
  now: Date,
): Promise<void> {
  const depot = await store.depot.get();
  const versions = await store.vehicles.versions(vehicleId);
  const version =
    (await store.vehicles.on(vehicleId, dateOf(localOf(row.from, depot.timeZone)))) ?? versions.at(-1);
  if (version === undefined || version === null)
    throw badField("vehicleId", "expected a vehicle of this depot");
  const { description } = asDocument<VehicleDocument>(version.document);
  if (row.stage === "booked") {
    const { turnaroundMinutes } = asDocument<DepotDocument>(depot.document);
    const answer = await store.bookings.book({
      hireId: row.id,
      vehicleId,
      from: row.from,
      to: row.to,
      turnaroundMinutes,
    });
    if (!answer.ok)
      throw new Refusal("taken", {
        problems: [{ path: "vehicleId", expected: "a vehicle that is free then" }],
      });
  }
  const saved = await store.hires.update(
    row.id,
    { vehicleId, registration: description.registration },
    row.version,
  );
  if (!saved.ok) throw new Refusal("stale");
  await store.audit.add({
    by,
    act: "hire.vehicleChosen",
    about: row.id,
    document: { vehicleId, name: description.name, on: now.toISOString() },
  });
}
