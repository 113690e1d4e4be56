import { createHash } from "node:crypto";
import { type AnyRecord, isErased, type RecordsExport, verifyRecords } from "@setfair/records";
import { openDatabase, openFiles } from "@setfair/server";
import type { Place } from "./place.ts";
import type { Intent } from "./walk.ts";

/** What arrived at the depot, against what people meant to keep. */
export interface Account {
  readonly records: number;
  readonly photographs: number;
  readonly signatures: number;
  /** meant to be kept and not here */
  readonly lost: number;
  /** here more than once */
  readonly doubled: number;
  /** here though nobody meant it */
  readonly strange: number;
  readonly chainsHold: boolean;
  /** records that a signature lists and that did not arrive */
  readonly awaited: number;
  readonly head: string | null;
}

const keyOf = ({ chain, kind, about }: Pick<Intent, "chain" | "kind" | "about">, device: string) =>
  JSON.stringify([device, chain, kind, about]);

/** Opens the depot's own store and files, with the server stopped, and counts. */
export async function auditDepot(
  place: Place,
  databaseUrl: string | undefined,
  meant: readonly Intent[],
): Promise<Account> {
  const database = await openDatabase({
    dataFolder: place.dataDir,
    ...(databaseUrl === undefined ? {} : { url: databaseUrl }),
  });
  try {
    const all = await database.storeFor(place.scope).records.export();
    const pictures = await countPhotographs(place, meant);
    const counted = countRecords(all, meant);
    const verified = verifyRecords(all);
    return {
      ...counted,
      photographs: pictures.here,
      lost: counted.lost + pictures.lost,
      chainsHold: verified.ok,
      awaited: verified.awaited.length,
      head: verified.head,
    };
  } finally {
    await database.close();
  }
}

/** Each intent by device, chain, kind and what it is about, against the records that are here. */
function countRecords(all: RecordsExport, meant: readonly Intent[]) {
  const here = new Map<string, number>();
  const devices = devicesOf(all.records, meant);
  for (const record of all.records) {
    if (isErased(record)) continue;
    const { kind, chain, content, deviceId } = record;
    const about = String(kind === "signature" ? content.purpose : content.about);
    const key = keyOf({ chain, kind, about }, devices.get(deviceId) ?? deviceId);
    here.set(key, (here.get(key) ?? 0) + 1);
  }
  const wanted = new Set(meant.map((intent) => keyOf(intent, intent.device)));
  const twiceReceived = all.receipts.length - new Set(all.receipts.map(({ recordId }) => recordId)).size;
  return {
    records: all.records.length,
    signatures: all.records.filter(({ kind }) => kind === "signature").length,
    lost: [...wanted].filter((key) => !here.has(key)).length,
    doubled: [...here.values()].reduce((sum, count) => sum + count - 1, 0) + twiceReceived,
    strange: [...here.keys()].filter((key) => !wanted.has(key)).length,
  };
}

/** Which tablet a device id belongs to, by the photographs that only it took. */
function devicesOf(records: readonly AnyRecord[], meant: readonly Intent[]): ReadonlyMap<string, string> {
  const taken = new Map(meant.flatMap(({ sha256, device }) => (sha256 ? [[sha256, device] as const] : [])));
  const devices = new Map<string, string>();
  for (const record of records) {
    if (isErased(record) || record.kind !== "photograph") continue;
    const device = taken.get(String(record.content.sha256));
    if (device !== undefined) devices.set(record.deviceId, device);
  }
  return devices;
}

/** Every photograph must lie here whole: its bytes are hashed again. */
async function countPhotographs(place: Place, meant: readonly Intent[]) {
  const files = openFiles({ dataFolder: place.dataDir });
  let here = 0;
  let lost = 0;
  for (const sha256 of new Set(meant.flatMap((intent) => intent.sha256 ?? []))) {
    const opened = await files.open(place.scope, sha256, "original");
    const hash = createHash("sha256");
    if (opened !== null) for await (const chunk of opened.stream) hash.update(chunk as Buffer);
    if (opened !== null && hash.digest("hex") === sha256) here += 1;
    else lost += 1;
  }
  return { here, lost };
}
