import { type JsonObject, type RecordRefs, sha256Hex } from "@setfair/records";
import type { DeviceDatabase, Via } from "./database.ts";
import { keepRecord } from "./keep-record.ts";

export interface PhotographToKeep {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** what it shows, with the view and the part */
  readonly content: JsonObject & { readonly about: string };
  readonly refs: RecordRefs;
  readonly chain: string;
  readonly via: Via;
}

/**
 * Keeps a photograph unaltered under the SHA-256 of its bytes, together with the record that names it and
 * whatever `also` writes, in one transaction. The same picture twice is kept once.
 */
export async function keepPhotograph(
  db: DeviceDatabase,
  input: PhotographToKeep,
  also: (sha256: string) => Promise<unknown> = async () => undefined,
): Promise<string> {
  const sha256 = sha256Hex(input.bytes);
  const takenAt = new Date().toISOString();
  await keepRecord(
    db,
    {
      kind: "photograph",
      refs: input.refs,
      chain: input.chain,
      content: { ...input.content, sha256 },
      via: input.via,
      photographs: [sha256],
      at: takenAt,
    },
    async () => {
      if ((await db.photographs.get(sha256)) === undefined) {
        await db.photographs.add({
          sha256,
          chain: input.chain,
          bytes: input.bytes,
          takenAt,
          state: "waiting",
        });
      }
      await also(sha256);
    },
  );
  return sha256;
}
