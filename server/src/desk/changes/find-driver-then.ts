import type { HireRow, Store } from "../../store/types.ts";
import { asDocument, type ReadinessDocument, type VehicleDocument } from "../documents.ts";
import { dateOf, localOf } from "../local-time.ts";

export interface HireThen {
  readonly row: HireRow;
  /** keys out and keys back as they were; back is null while it is on the road */
  readonly out: string;
  readonly back: string | null;
}

const plain = (registration: string): string => registration.replaceAll(/[^A-Za-z0-9]/g, "").toUpperCase();
const LONGEST_MS = 400 * 86_400_000;

/** The vehicle with this registration on that day; null where the depot had none. */
export async function vehicleThen(
  store: Store,
  registration: string,
  at: string,
  timeZone: string,
): Promise<string | null> {
  const versions = await store.vehicles.allOn(dateOf(localOf(at, timeZone)));
  const found = versions.find(
    ({ document }) =>
      plain(asDocument<VehicleDocument>(document).description.registration) === plain(registration),
  );
  return found?.of ?? null;
}

/** The hire whose keys were out at that minute; null where the vehicle was with the firm. */
export async function hireThen(store: Store, vehicleId: string, at: string): Promise<HireThen | null> {
  const rows = await store.hires.all({
    vehicleId,
    stages: ["handedOver", "onHire", "returned", "settled", "closed"],
    touchesFrom: new Date(Date.parse(at) - LONGEST_MS).toISOString(),
    touchesTo: new Date(Date.parse(at) + LONGEST_MS).toISOString(),
  });
  for (const row of rows) {
    const part = await store.hires.part(row.id, "readiness");
    const readiness = part === null ? null : asDocument<ReadinessDocument>(part.document);
    const out = readiness?.keysOutAt ?? row.from;
    const away = row.stage === "handedOver" || row.stage === "onHire";
    const back = readiness?.keysBackAt ?? (away ? null : row.to);
    if (out <= at && (back === null || at < back)) return { row, out, back };
  }
  return null;
}
