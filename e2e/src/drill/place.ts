import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { hashPassword, openDatabase, type Scope } from "@setfair/server";
import { everyDay } from "../every-day.ts";

const PASSWORD = "a password for the drill";

export interface Place {
  readonly dataDir: string;
  readonly scope: Scope;
  readonly hires: readonly string[];
  readonly signIn: { readonly login: string; readonly password: string };
  remove(): void;
}

/** An invented depot with so many hires, in a folder of its own. */
export async function makePlace(hires: number, databaseUrl: string | undefined): Promise<Place> {
  const dataDir = mkdtempSync(join(tmpdir(), "setfair-drill-"));
  const database = await openDatabase({
    dataFolder: dataDir,
    ...(databaseUrl === undefined ? {} : { url: databaseUrl }),
  });
  try {
    const { scope } = await database.system.createFirm({
      firm: { name: "Invented Hire" },
      depot: {
        name: "Invented Depot",
        timeZone: "Europe/London",
        document: {
          telephone: "01632 960000",
          country: "GB",
          latitudeDeg: 54.4,
          longitudeDeg: -2.9,
          hours: everyDay("08:00", "18:00"),
          turnaroundMinutes: 240,
        },
      },
      terms: [],
      manager: { login: "drill", name: "Pat Invented", passwordHash: await hashPassword(PASSWORD) },
    });
    const store = database.storeFor(scope);
    const ids: string[] = [];
    for (let n = 0; n < hires; n++) {
      const { id } = await store.hires.create({
        from: "2026-07-03T11:00:00.000Z",
        to: "2026-07-10T09:00:00.000Z",
        stage: "booked",
      });
      ids.push(id);
    }
    return {
      dataDir,
      scope,
      hires: ids,
      signIn: { login: "drill", password: PASSWORD },
      remove: () => rmSync(dataDir, { recursive: true, force: true }),
    };
  } finally {
    await database.close();
  }
}
