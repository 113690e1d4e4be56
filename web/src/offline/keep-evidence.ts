import type { DepotRecord, JsonObject } from "@setfair/records";
import type { DeviceDatabase } from "./database.ts";
import { deviceId } from "./device.ts";
import { keepPhotograph } from "./keep-photograph.ts";
import { keepRecord, type RecordToKeep } from "./keep-record.ts";

export interface Evidence {
  readonly pictures: readonly Uint8Array<ArrayBuffer>[];
  /** what each picture shows, but for its hash */
  readonly shows: JsonObject & { readonly about: string };
  /** the record that names them; `content` is given their hashes as `photographs` */
  readonly record: Omit<RecordToKeep, "photographs">;
}

/** Keeps a record with the pictures that it names: all of it, or nothing where this device has no room. */
export async function keepEvidence(
  db: DeviceDatabase,
  { pictures, shows, record }: Evidence,
): Promise<DepotRecord> {
  // made before, so that what follows is one transaction
  await deviceId(db);
  const { refs, chain, via } = record;
  return db.transaction("rw", [db.records, db.photographs, db.rounds, db.settings], async () => {
    const photographs: string[] = [];
    for (const bytes of pictures)
      photographs.push(await keepPhotograph(db, { bytes, content: shows, refs, chain, via }));
    return keepRecord(db, { ...record, content: { ...record.content, photographs }, photographs });
  });
}
