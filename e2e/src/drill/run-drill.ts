import "fake-indexeddb/auto";
import { type RunningServer, startServer } from "../server.ts";
import { type Account, auditDepot } from "./audit-depot.ts";
import { makePlace } from "./place.ts";
import { seeded } from "./random.ts";
import { Tablet, type TabletCounts, type Trouble } from "./tablet.ts";
import { type Intent, type Walk, walkRound } from "./walk.ts";

export interface DrillOptions {
  readonly walks: number;
  readonly tablets: number;
  /** how often the server is killed with -9 and started again while they send */
  readonly kills: number;
  readonly seed: number;
  readonly trouble?: Trouble;
  /** PostgreSQL; the embedded file where left out */
  readonly databaseUrl?: string;
  readonly command?: readonly string[];
}

export interface DrillFigures extends Account {
  readonly store: "SQLite" | "PostgreSQL";
  readonly walks: number;
  readonly tablets: number;
  readonly serverKills: number;
  readonly trouble: TabletCounts;
  readonly seconds: number;
  /** records that a device could not send; none may stay */
  readonly leftOnDevices: number;
}

const DAY_MS = 86_400_000;

/** Every fifth vehicle is walked round by two tablets at once. */
function planWalks({ walks, tablets }: DrillOptions, hires: readonly string[]): readonly Walk[] {
  const planned: Walk[] = [];
  for (let n = 0; planned.length < walks; n++) {
    const hireId = hires[Math.floor(n / 2)]!;
    const walk = { hireId, direction: n % 2 === 0 ? ("out" as const) : ("back" as const) };
    planned.push({ ...walk, tablet: n % tablets });
    if (n % 5 === 0 && planned.length < walks) planned.push({ ...walk, tablet: (n + 1) % tablets });
  }
  return planned;
}

/** Many walk-rounds from several tablets at once, over lines that break, tabs that die and a server that is killed. */
export async function runDrill(options: DrillOptions): Promise<DrillFigures> {
  const started = performance.now();
  const place = await makePlace(options.walks, options.databaseUrl);
  const store = options.databaseUrl === undefined ? {} : ({ databaseUrl: options.databaseUrl } as const);
  const server = await startServer({
    dataDir: place.dataDir,
    ...store,
    ...(options.command === undefined ? {} : { command: options.command }),
  });
  const tablets: Tablet[] = [];
  try {
    tablets.push(...makeTablets(options, server.url, await signIn(server.url, place.signIn)));
    const walks = planWalks(options, place.hires);
    const { meant, kills } = await walkAll(options, walks, tablets, server);
    const left = await sendAll(tablets);
    await server.stop();
    const account = await auditDepot(place, options.databaseUrl, meant);
    return {
      store: options.databaseUrl === undefined ? "SQLite" : "PostgreSQL",
      walks: walks.length,
      tablets: tablets.length,
      serverKills: kills,
      trouble: sum(tablets.map(({ counts }) => counts)),
      seconds: Math.round((performance.now() - started) / 100) / 10,
      leftOnDevices: left,
      ...account,
    };
  } finally {
    await server.stop();
    for (const tablet of tablets) tablet.close();
    place.remove();
  }
}

function makeTablets(options: DrillOptions, url: string, cookie: string): Tablet[] {
  const trouble = options.trouble ?? { cut: 0.08, death: 0.03 };
  const run = `${options.seed}-${options.databaseUrl === undefined ? "s" : "p"}-${Date.now()}`;
  return Array.from(
    { length: options.tablets },
    (_, n) =>
      new Tablet({
        name: `drill-${run}-${n}`,
        url,
        cookie,
        random: seeded(options.seed * 1000 + n),
        trouble,
        // one clock is two days slow, one two days fast
        clockOffMs: n === 1 ? -2 * DAY_MS : n === 2 ? 2 * DAY_MS : 0,
      }),
  );
}

/** All tablets at once, each its own walk-rounds one after the other, while the server is killed now and then. */
async function walkAll(
  options: DrillOptions,
  walks: readonly Walk[],
  tablets: readonly Tablet[],
  server: RunningServer,
): Promise<{ readonly meant: readonly Intent[]; readonly kills: number }> {
  const meant: Intent[] = [];
  let done = 0;
  let kills = 0;
  const kill = async () => {
    while (kills < options.kills) {
      await pause(20);
      if (done < ((kills + 1) * walks.length) / (options.kills + 1)) continue;
      await server.killAndStartAgain();
      kills += 1;
    }
  };
  const walk = async (tablet: Tablet, n: number) => {
    const random = seeded(options.seed * 7919 + n);
    for (const one of walks.filter((each) => each.tablet === n)) {
      meant.push(...(await walkRound(tablet, `${n}`, one, random)));
      done += 1;
    }
  };
  await Promise.all([kill(), ...tablets.map(walk)]);
  return { meant, kills };
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function signIn(url: string, body: object): Promise<string> {
  const answer = await fetch(`${url}/api/session`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
  if (!answer.ok) throw new Error(`sign-in: ${answer.status} ${await answer.text()}`);
  return (answer.headers.get("set-cookie") ?? "").split(";")[0] ?? "";
}

/** The signal is back: everything that waits goes; gives what could not. */
async function sendAll(tablets: readonly Tablet[]): Promise<number> {
  let left = 0;
  for (const tablet of tablets) {
    tablet.calmDown();
    for (let tries = 0; tries < 20 && (await tablet.flush()) !== "empty"; tries++) await pause(100);
    const { waiting, refused } = await tablet.outbox();
    left += waiting + refused;
    for (const problem of await tablet.problems()) console.error(problem);
  }
  return left;
}

const sum = (all: readonly TabletCounts[]): TabletCounts =>
  all.reduce((total, one) => ({
    cutBefore: total.cutBefore + one.cutBefore,
    cutAfter: total.cutAfter + one.cutAfter,
    cutWithin: total.cutWithin + one.cutWithin,
    deathsWithin: total.deathsWithin + one.deathsWithin,
    deathsAfter: total.deathsAfter + one.deathsAfter,
    requests: total.requests + one.requests,
  }));
