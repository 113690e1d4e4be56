import { windowsOf } from "@setfair/engine";
import type { DepotRecord } from "@setfair/records";
import { isErased } from "@setfair/records";
import type { Store } from "../store/types.ts";
import { type HireData, partOf } from "./hire-data.ts";

/** Chain of what the hirer adds to the walk-round from their own phone. */
export const missedChain = (hireId: string): string => `${hireId}.missed`;

export interface AdditionsWindow {
  /** instant */
  readonly until: string;
  readonly isOver: boolean;
}

/**
 * Until when the hirer may add what both missed: the hours of the terms that they booked under, counted from the
 * keys, and not longer than they have the vehicle. Null before the keys went.
 */
export function additionsWindow(data: HireData): AdditionsWindow | null {
  const readiness = partOf(data, "readiness");
  const out = readiness?.keysOutAt ?? null;
  if (out === null) return null;
  const { additionsHours } = windowsOf(data.terms?.document ?? null);
  const end = Date.parse(out) + additionsHours * 3_600_000;
  const back = readiness?.keysBackAt ?? null;
  const until = new Date(back === null ? end : Math.min(end, Date.parse(back))).toISOString();
  return { until, isOver: data.now > until };
}

/** A mark that the hirer added, as the desk sees it. */
export interface HirerAddition {
  readonly recordId: string;
  /** by the phone's clock */
  readonly at: string;
  /** by ours */
  readonly receivedAt: string;
  /** arrived after the window: made in time only by the phone's own clock */
  readonly isLate: boolean;
  readonly part: string;
  readonly view: string;
  readonly markKind: string;
  readonly note: string;
  readonly photographs: string[];
}

/** What the hirer added from their phone, oldest first. */
export async function hirerAdditions(store: Store, data: HireData): Promise<HirerAddition[]> {
  const window = additionsWindow(data);
  const marks = await store.records.list({ hireIds: [data.row.id], kind: "mark" });
  return marks
    .filter(({ record }) => record.chain === missedChain(data.row.id))
    .flatMap(({ record, receipt }) => (isErased(record) ? [] : [addition(record, receipt.at, window)]));
}

function addition(
  { id, deviceTime, content }: DepotRecord,
  receivedAt: string,
  window: AdditionsWindow | null,
): HirerAddition {
  return {
    recordId: id,
    at: deviceTime,
    receivedAt,
    isLate: window !== null && receivedAt > window.until,
    part: String(content.part ?? content.about),
    view: String(content.view),
    markKind: String(content.markKind),
    note: String(content.note ?? ""),
    photographs: (Array.isArray(content.photographs) ? content.photographs : []).map(String),
  };
}
