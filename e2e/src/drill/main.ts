// `npm run drill:walkround`: 200 walk-rounds from 8 simulated tablets at once with random cuts and restarts,
// on SQLite and on PostgreSQL. Prints the figures; ends with 1 where anything was lost or doubled.
import { startPostgres } from "../../../scripts/postgres.mjs";
import { type DrillFigures, runDrill } from "./run-drill.ts";

const numberFrom = (name: string, usual: number) => Number(process.env[name] ?? usual);
const walks = numberFrom("DRILL_WALKS", 200);
const seed = numberFrom("DRILL_SEED", 1);
const command = process.env.DRILL_COMMAND?.split(" ");

const isWhole = (figures: DrillFigures) =>
  figures.lost === 0 &&
  figures.doubled === 0 &&
  figures.strange === 0 &&
  figures.awaited === 0 &&
  figures.leftOnDevices === 0 &&
  figures.chainsHold;

function print(figures: DrillFigures): void {
  const { trouble } = figures;
  console.log(
    [
      `${figures.store}: ${figures.walks} walk-rounds from ${figures.tablets} tablets in ${figures.seconds} s`,
      `  at the depot    ${figures.records} records, ${figures.photographs} photographs, ${figures.signatures} signatures`,
      `  what went wrong ${trouble.cutBefore + trouble.cutWithin + trouble.cutAfter} of ${trouble.requests} requests cut (${trouble.cutWithin} on the way, ${trouble.cutAfter} with the answer lost), ${trouble.deathsWithin + trouble.deathsAfter} tabs died (${trouble.deathsWithin} within an act), server killed with -9 ${figures.serverKills} times`,
      `  lost ${figures.lost}, doubled ${figures.doubled}, not meant by anybody ${figures.strange}, left on a tablet ${figures.leftOnDevices}`,
      `  chains ${figures.chainsHold ? "hold" : "BROKEN"}, listed and not arrived ${figures.awaited}, head ${figures.head}`,
    ].join("\n"),
  );
}

const postgres = await startPostgres();
try {
  const options = { walks, tablets: 8, kills: 6, seed, ...(command === undefined ? {} : { command }) };
  const all = [await runDrill(options)];
  if (postgres === null) console.log("PostgreSQL: none can be had here; that half was left out");
  else all.push(await runDrill({ ...options, databaseUrl: postgres.url }));
  for (const figures of all) print(figures);
  process.exitCode = all.every(isWhole) ? 0 : 1;
} finally {
  postgres?.stop();
}
