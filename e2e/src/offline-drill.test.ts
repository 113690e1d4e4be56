import { expect, test } from "vitest";
import { startPostgres } from "../../scripts/postgres.mjs";
import { runDrill } from "./drill/run-drill.ts";

// The short form of `npm run drill:walkround`.

const WHOLE = { lost: 0, doubled: 0, strange: 0, awaited: 0, leftOnDevices: 0, chainsHold: true };
const SHORT = { walks: 12, tablets: 4, kills: 2, seed: 5, trouble: { cut: 0.12, death: 0.06 } };

test("walk-rounds of four tablets over cut lines and a killed server arrive once each, on the embedded store", async () => {
  expect(await runDrill(SHORT)).toMatchObject({ ...WHOLE, walks: 12, serverKills: 2 });
});

test("and on PostgreSQL", async (context) => {
  const postgres = await startPostgres();
  if (postgres === null) return context.skip();
  try {
    expect(await runDrill({ ...SHORT, databaseUrl: postgres.url })).toMatchObject({ ...WHOLE, walks: 12 });
  } finally {
    postgres.stop();
  }
});
