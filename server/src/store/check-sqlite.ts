import { existsSync } from "node:fs";
import SqliteDatabase from "better-sqlite3";

/**
 * Looks whether a file of the embedded database is whole: one that is broken is not written to any more.
 * @throws the database's error with its code; nothing where there is no file yet
 */
export function checkSqlite(path: string): void {
  if (!existsSync(path)) return;
  const file = new SqliteDatabase(path, { fileMustExist: true });
  try {
    const found = file.pragma("quick_check(1)", { simple: true });
    if (found !== "ok") throw Object.assign(new Error(String(found)), { code: "SQLITE_CORRUPT" });
  } finally {
    file.close();
  }
}
