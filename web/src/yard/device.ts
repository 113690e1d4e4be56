import { DeviceDatabase } from "../offline/database.ts";
import { askToKeep, type DeviceCare } from "../offline/device.ts";
import { type Flusher, startFlusher } from "../offline/flusher.ts";
import { startForgetting } from "./start-forgetting.ts";

/** The one store, the one sender and what the browser answered, for this page. */
export interface Device {
  readonly db: DeviceDatabase;
  readonly flusher: Flusher;
  readonly care: Promise<DeviceCare>;
}

let made: Device | undefined;

export function device(): Device {
  if (made === undefined) {
    const db = new DeviceDatabase();
    made = { db, flusher: startFlusher(db), care: askToKeep() };
    startForgetting(db, made.flusher);
  }
  return made;
}
