import type { z } from "zod";
import type { markSchema } from "../api/schemas/vehicles.ts";
import type { Store } from "../store/types.ts";
import { mendedMarks } from "./mended-marks.ts";
import { conditionRecords, wholeRecords } from "./record-facts.ts";

export type KnownMark = z.input<typeof markSchema>;

/** Marks of a vehicle from walk-rounds so far, each place once; without those of `exceptHire`. */
export async function knownMarks(
  store: Store,
  vehicleId: string,
  exceptHire: string | null,
): Promise<KnownMark[]> {
  const kept = wholeRecords(
    (await store.records.list({ vehicleId, kind: "mark" })).map(({ record }) => record),
  ).filter(({ refs }) => exceptHire === null || refs.hireId !== exceptHire);
  const byId = new Map(kept.map((record) => [record.id, record]));
  const marks = (["out", "back"] as const).flatMap((direction) => conditionRecords(kept, direction));
  const mended = marks.length === 0 ? null : await mendedMarks(store, vehicleId);
  const known = new Map<string, KnownMark>();
  for (const { recordId, content } of marks) {
    if (content.kind !== "mark" || mended?.has(recordId) === true) continue;
    const place = `${content.part} ${content.markKind} ${content.xShare.toFixed(1)} ${content.yShare.toFixed(1)}`;
    if (known.has(place)) continue;
    const record = byId.get(recordId);
    known.set(place, {
      recordId,
      hireId: record?.refs.hireId ?? null,
      since: record?.deviceTime ?? "",
      part: content.part,
      view: content.view,
      xShare: content.xShare,
      yShare: content.yShare,
      markKind: content.markKind,
      sizeMm: content.sizeMm ?? null,
      note: content.note ?? null,
      photographs: [...content.photographs],
    });
  }
  return [...known.values()];
}
