/** For tests only: devices with a store of their own, and what is recorded on them. */
import { DeviceDatabase } from "./database.ts";

export const refs = { hireId: "h1", vehicleId: "v1" };
export const look = (chain: string, about: string) => ({
  kind: "look" as const,
  refs,
  chain,
  content: { about, saw: "same", direction: "out" },
  via: "staff" as const,
});

/** Devices of one test file; close what it opened after each test. */
export function devices(name: string) {
  const open: DeviceDatabase[] = [];
  let made = 0;
  return {
    /** a new one, or one of before by its name, as after a reload */
    open(known = `${name}-${made++}`): DeviceDatabase {
      const db = new DeviceDatabase(known);
      open.push(db);
      return db;
    },
    close(): void {
      for (const db of open.splice(0)) db.close();
    },
  };
}
