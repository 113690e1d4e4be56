import { type Finding, figure } from "@setfair/engine";
import { isErased, type Receipt } from "@setfair/records";
import type { StoredRecord } from "../store/types.ts";
import { directionOf } from "./record-facts.ts";

interface Kept {
  readonly record: StoredRecord;
  readonly receipt: Receipt;
}

/** More than this is no longer the usual drift of a clock and the way to the server: common practice, no source. */
const DRIFT_MS = 10 * 60_000;
const HOUR_MS = 3_600_000;

/**
 * Devices whose clock cannot have been right, one finding each: a record dated after it arrived, or a look at the
 * return dated before the keys went out. Both times are kept with the record; the depot's own time is what counts.
 */
export function clockFindings(kept: readonly Kept[], keysOutAt: string | null): readonly Finding[] {
  const off = new Map<string, number>();
  for (const { record, receipt } of kept) {
    if (isErased(record)) continue;
    const ahead = Date.parse(record.deviceTime) - Date.parse(receipt.at);
    const behind =
      keysOutAt !== null && directionOf(record) === "back"
        ? Date.parse(record.deviceTime) - Date.parse(keysOutAt)
        : 0;
    const ms = ahead > DRIFT_MS ? ahead : behind < -DRIFT_MS ? behind : 0;
    if (Math.abs(ms) > Math.abs(off.get(record.deviceId) ?? 0)) off.set(record.deviceId, ms);
  }
  return [...off].map(([deviceId, ms]) => ({
    code: "condition.clock",
    gate: "defects",
    severity: "note",
    basis: "policy",
    about: deviceId,
    facts: {
      way: ms > 0 ? "ahead" : "behind",
      hours: figure(Math.round(Math.abs(ms) / HOUR_MS), "h", "-", { deviceId }, "measured"),
    },
    sources: [],
    mends: [],
  }));
}
