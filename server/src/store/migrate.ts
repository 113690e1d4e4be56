import { type Kysely, type Migration, Migrator } from "kysely";
import type { StoreKind } from "./dialects.ts";
import { firstTables } from "./migrations/0001-first-tables.ts";
import { weighbridge } from "./migrations/0010-weighbridge.ts";
import { diary } from "./migrations/0011-diary.ts";
import { upkeep } from "./migrations/0012-upkeep.ts";
import { money } from "./migrations/0020-money.ts";
import { messages } from "./migrations/0021-messages.ts";
import { changes } from "./migrations/0022-changes.ts";
import { stock } from "./migrations/0023-stock.ts";
import { rulesAndNotes } from "./migrations/0024-rules-and-notes.ts";
import { settlementEntries } from "./migrations/0026-settlement-entries.ts";
import { useReturns } from "./migrations/0031-use-returns.ts";
import { openingHours } from "./migrations/0040-opening-hours.ts";
import { removedPhotographs } from "./migrations/0044-removed-photographs.ts";
import { tablets } from "./migrations/0053-tablets.ts";

/** In this order, for ever; a migration that was released is never changed. */
export function migrationsFor(kind: StoreKind): Record<string, Migration> {
  return {
    "0001-first-tables": { up: (db) => firstTables(db, kind) },
    "0010-weighbridge": { up: (db) => weighbridge(db, kind) },
    "0011-diary": { up: (db) => diary(db, kind) },
    "0012-upkeep": { up: (db) => upkeep(db, kind) },
    "0020-money": { up: (db) => money(db, kind) },
    "0021-messages": { up: (db) => messages(db, kind) },
    "0022-changes": { up: (db) => changes(db, kind) },
    "0023-stock": { up: (db) => stock(db, kind) },
    "0024-rules-and-notes": { up: (db) => rulesAndNotes(db, kind) },
    "0026-settlement-entries": { up: (db) => settlementEntries(db, kind) },
    "0031-use-returns": { up: (db) => useReturns(db, kind) },
    "0040-opening-hours": { up: (db) => openingHours(db) },
    "0044-removed-photographs": { up: (db) => removedPhotographs(db, kind) },
    "0053-tablets": { up: (db) => tablets(db, kind) },
  };
}

/** Brings the tables up to date, all or nothing. @throws the migration's own error; nothing of the batch is left behind */
export async function migrate(
  db: Kysely<unknown>,
  migrations: Record<string, Migration>,
): Promise<readonly string[]> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => migrations } });
  const { error, results } = await migrator.migrateToLatest();
  if (error !== undefined) throw error;
  return (results ?? []).map(({ migrationName }) => migrationName);
}
