/** For tests only: one depot whose server is ended in the middle of everything that must not be left half done. */
import { makeDepot, type TestDepot } from "../api/depot-for-tests.ts";
import { bookHire } from "../api/lived-hire-for-tests.ts";
import { startKillable } from "./killable-for-tests.ts";
import { killErasure, killKeys, killMail, killRecords, killUpload } from "./kills-for-tests.ts";
import { openMailbox } from "./mailbox-for-tests.ts";
import { makeRandom } from "./random-for-tests.ts";
import { type Life, MORNING } from "./served-life-for-tests.ts";

/** How often the server was ended, and where the thing in hand stood then. */
export interface LifeFigures {
  readonly kills: number;
  /** by what was in hand: how it was found after the restart, in words */
  readonly found: readonly string[];
}

const KILLS = {
  upload: killUpload,
  records: killRecords,
  keys: killKeys,
  mail: killMail,
  erasure: killErasure,
};
type KillName = keyof typeof KILLS;
const KILL_NAMES = Object.keys(KILLS) as readonly KillName[];

const SETTINGS = {
  fromName: "Invented Hire",
  fromAddress: "desk@example.org",
  replyTo: "",
  automatic: [],
  version: 0,
};

/**
 * Books a hire, then ends the server in the middle of an upload, of a signed walk-round's arrival, of the handover's
 * sealing, of a mail and of an erasure; starts it again each time and goes on.
 * @throws where anything is half done, lost or done twice
 */
export async function runLife(
  kind: "sqlite" | "postgres",
  seed: number,
  kills: readonly KillName[] = KILL_NAMES,
): Promise<LifeFigures> {
  const depot = await makeDepot(kind);
  const mailbox = await openMailbox(150);
  const { dataFolder: dataDir, databaseUrl } = depot;
  const hireId = await prepare(depot);
  const clock = makeClock();
  const begin = () => startKillable({ dataDir, databaseUrl, smtpUrl: mailbox.url, at: clock.now() });
  const life: Life = {
    depot,
    hireId,
    mailbox,
    random: makeRandom(seed),
    server: begin(),
    kills: 0,
    async restart(aheadMinutes = 0) {
      await life.server.kill();
      life.kills += 1;
      clock.forward(aheadMinutes);
      life.server = begin();
      return life.server.url();
    },
  };
  try {
    const found: string[] = [];
    for (const name of kills) found.push(`${name}: ${await KILLS[name](life)}`);
    return { kills: life.kills, found };
  } finally {
    await life.server.kill();
    await mailbox.close();
    await depot.close();
  }
}

/** Goes on from the morning of the handover as time goes on, and never back: what is due stays due after a restart. */
function makeClock() {
  const started = Date.now();
  let aheadMs = 0;
  return {
    now: () => new Date(Date.parse(MORNING) + Date.now() - started + aheadMs).toISOString(),
    forward(minutes: number) {
      aheadMs += minutes * 60_000;
    },
  };
}

async function prepare(depot: TestDepot): Promise<string> {
  const hireId = await bookHire(depot);
  depot.at(MORNING);
  const { status } = await depot.call("manager", "PUT", "/message-settings", SETTINGS);
  if (status !== 200) throw new Error(`message settings: ${status}`);
  return hireId;
}
