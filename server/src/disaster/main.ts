/**
 * `npm run drill:disaster`: the invented firm is backed up, destroyed, restored and moved, and everything compared;
 * then servers are ended (SIGKILL) in the middle of uploads, arriving records, handovers, mails, erasures and
 * migrations, on SQLite and on PostgreSQL. DRILL_LIVES and DRILL_SEED say how many and which. Ends with 1 where
 * anything was lost, half done or done twice.
 */
import { startPostgres } from "../../../scripts/postgres.mjs";
import { drillRestore } from "./restore-for-tests.ts";

const say = (text: string) => process.stdout.write(`${text}\n`);
const numberFrom = (name: string, usual: number) => Number(process.env[name] ?? usual);
const lives = numberFrom("DRILL_LIVES", 5);
const seed = numberFrom("DRILL_SEED", 1);
const migrations = numberFrom("DRILL_MIGRATIONS", 12);

const postgres = await startPostgres();
if (postgres === null) say("no PostgreSQL here: its half is left out");
else process.env.SETFAIR_TEST_DATABASE_URL = postgres.url;
// they read the setting when they are loaded
const { runLife } = await import("./life-for-tests.ts");
const { killMigrations } = await import("../store/kill-migrations-for-tests.ts");
const { makePlace } = await import("../store/stores-for-tests.ts");

try {
  const place = postgres === null ? null : await makePlace("postgres");
  const { tables, rows, photographs, postgresRows } = await drillRestore(place?.url ?? null);
  await place?.remove();
  say(`restore: ${rows} rows of ${tables} tables and ${photographs} photographs are the same`);
  if (postgresRows !== null) say(`PostgreSQL: ${postgresRows} rows are the same`);
  const { kills, old, done } = await killMigrations(migrations, seed);
  say(`migrations: ended ${kills} times, found as before ${old} times and done ${done} times`);
  for (const kind of postgres === null ? (["sqlite"] as const) : (["sqlite", "postgres"] as const))
    for (let n = 0; n < lives; n++) {
      const figures = await runLife(kind, seed + n);
      say(`${kind}, seed ${seed + n}: ended ${figures.kills} times; ${figures.found.join("; ")}`);
    }
  say("nothing was lost, half done or done twice");
} catch (error) {
  say(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
} finally {
  postgres?.stop();
}
