import {
  type CustodyLine,
  HOLDERS,
  type Holder,
  type KeysPassed,
  readCustody,
  type Seen,
} from "@setfair/engine";
import type { Store } from "../store/types.ts";
import { asDocument, type ReadinessDocument } from "./documents.ts";
import { wholeRecords } from "./record-facts.ts";

/** Hires of a vehicle whose keys its custody looks at, newest. */
const LAST = 40;
/** Stages of a hire whose keys have gone out. */
const LEFT = ["handedOver", "onHire", "returned", "settled", "closed"] as const;
const SEEN: Readonly<Record<string, Seen["kind"]>> = {
  mark: "mark",
  photograph: "photograph",
  reading: "reading",
  count: "reading",
};
/** Instants in one spelling, so that they sort as text. */
const instant = (text: string): string => new Date(text).toISOString();
const isHolder = (said: unknown): said is Holder => HOLDERS.some((holder) => holder === said);
const textOf = (said: unknown): string | null => (typeof said === "string" && said !== "" ? said : null);

function timeOf(said: unknown): string | null {
  const text = textOf(said);
  return text === null || Number.isNaN(Date.parse(text)) ? null : instant(text);
}

/** Keys out and back of the hires of a vehicle: to the hirer, and to the depot again. */
async function byHires(store: Store, vehicleId: string, depot: string): Promise<KeysPassed[]> {
  const { rows } = await store.hires.list({ vehicleId, stages: LEFT, order: "newest", limit: LAST });
  const parts = await store.hires.partsOf(
    rows.map(({ id }) => id),
    ["readiness"],
  );
  return rows.flatMap(({ id, customerName }) => {
    const part = parts.get(id)?.readiness;
    if (part === undefined) return [];
    const { keysOutAt, keysBackAt } = asDocument<ReadinessDocument>(part.document);
    const base = { note: null, hireId: id, recordId: null };
    return [
      ...(keysOutAt === null
        ? []
        : [{ ...base, at: instant(keysOutAt), holder: "hirer" as const, who: customerName }]),
      ...(keysBackAt === null
        ? []
        : [{ ...base, at: instant(keysBackAt), holder: "depot" as const, who: depot }]),
    ];
  });
}

/** Who had the keys of a vehicle, newest first: from its hires and from what was written down between them. */
export async function custodyOf(store: Store, vehicleId: string): Promise<readonly CustodyLine[]> {
  const depot = await store.depot.get();
  const records = wholeRecords((await store.records.list({ vehicleId })).map(({ record }) => record));
  const written = records.flatMap(({ id, kind, content, deviceTime, refs }): KeysPassed[] => {
    if (kind !== "keys" || !isHolder(content.holder)) return [];
    return [
      {
        at: timeOf(content.at) ?? instant(deviceTime),
        holder: content.holder,
        who: textOf(content.who) ?? "",
        note: textOf(content.seen),
        hireId: refs.hireId ?? null,
        recordId: id,
      },
    ];
  });
  const seen = records.flatMap(({ kind, deviceTime }): Seen[] => {
    const as = SEEN[kind];
    return as === undefined ? [] : [{ at: instant(deviceTime), kind: as }];
  });
  return readCustody([...(await byHires(store, vehicleId, depot.name)), ...written], seen).toReversed();
}
