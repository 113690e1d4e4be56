import { randomUUID } from "node:crypto";
import { open, rm } from "node:fs/promises";
import { join } from "node:path";
import { makeFolder } from "./make-folder.ts";
import { checkSqlite } from "./store/check-sqlite.ts";
import { SQLITE_FILE } from "./store/open-database.ts";

/** Room that a start needs at least: empty tables and a log, in bytes. */
const ROOM_BYTES = 1_000_000;

/**
 * Makes the data folder where there is none, and looks whether it can be written to, has room, and holds a whole
 * database or none: a start on a folder that cannot be used ends here and not at the first thing that is to be kept.
 * @param withDatabase false where the database is elsewhere
 * @throws the system's or the database's error, with its code (`start-problem.ts` puts it in words)
 */
export async function checkDataFolder(dataFolder: string, withDatabase: boolean): Promise<void> {
  await makeFolder(dataFolder);
  await tryWriting(join(dataFolder, `.start-${randomUUID()}`));
  if (withDatabase) checkSqlite(join(dataFolder, SQLITE_FILE));
}

async function tryWriting(path: string): Promise<void> {
  const file = await open(path, "wx", 0o600);
  try {
    await file.writeFile(Buffer.alloc(ROOM_BYTES));
    await file.sync();
  } finally {
    await file.close();
    await rm(path, { force: true });
  }
}
