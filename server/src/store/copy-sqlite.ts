import SqliteDatabase from "better-sqlite3";

/**
 * Copies the embedded database while it is in use (SQLite's online backup) into one file by itself, and checks it.
 * Read only, and no migration: a running server of another version is left as it is.
 * @throws where it cannot be read, or the copy is not whole
 */
export async function copySqlite(from: string, to: string): Promise<void> {
  const file = new SqliteDatabase(from, { readonly: true, fileMustExist: true });
  try {
    await file.backup(to);
  } finally {
    file.close();
  }
  const copy = new SqliteDatabase(to);
  try {
    // nothing beside it that a copy of the copy could miss
    copy.pragma("journal_mode = DELETE");
    const [state] = copy.pragma("integrity_check") as readonly { readonly integrity_check: string }[];
    if (state?.integrity_check !== "ok") throw new Error(`${from}: ${state?.integrity_check}`);
  } finally {
    copy.close();
  }
}
