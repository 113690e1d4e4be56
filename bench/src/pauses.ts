import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { DEMO_SIGN_INS, highlandsTrip, loadForTwo, twoAdults } from "@setfair/demo";
import { addDays, Temporal, toInstant } from "@setfair/engine";
import { openDatabase, type Store, toJson } from "@setfair/server";
import { startBuilt } from "./built-server.ts";
import { fillLargeDiary } from "./large-diary.ts";
import { type Line, lineOf, median } from "./line.ts";
import { signIn } from "./sign-in.ts";

const ZONE = "Europe/London";
/** Hires that leave on one day. */
const LEAVING = 26;
const DAYS_AHEAD = 3;
const BETWEEN_MS = 4;
/** Two desks and a hirer's phone, each asking for little, again and again. */
const LIGHT = ["/session", "/terms/versions", "/health"] as const;

/** A day on which many leave, each with a trip that nobody has lived yet; gives the day and one of the hires. */
async function fillBusyDay(dataFolder: string): Promise<{ readonly day: string; readonly hireId: string }> {
  const now = new Date();
  const database = await openDatabase({ dataFolder, now: () => now });
  try {
    const manager = await database.system.accountByLogin(DEMO_SIGN_INS[0].login);
    if (manager === null) throw new Error("bench: expected the manager of the invented firm");
    const store = database.storeFor({ firmId: manager.firmId, depotId: manager.depotId });
    const today = Temporal.Instant.from(now.toISOString()).toZonedDateTimeISO(ZONE).toPlainDate().toString();
    const day = addDays(today, DAYS_AHEAD);
    const ids: string[] = [];
    for (let k = 0; k < LEAVING; k++)
      ids.push(await store.within((inner) => addLeaving(inner, { k, day, by: manager.id })));
    return { day, hireId: ids[0] ?? "" };
  } finally {
    await database.close();
  }
}

async function addLeaving(
  store: Store,
  { k, day, by }: { readonly k: number; readonly day: string; readonly by: string },
): Promise<string> {
  const back = addDays(day, 7);
  const customer = await store.customers.create({
    name: `Invented Leaving ${k}`,
    document: toJson({ telephone: "07700 900199", email: "nobody@example.org" }),
  });
  const row = await store.hires.create({
    from: toInstant(`${day}T14:00`, ZONE),
    to: toInstant(`${back}T10:00`, ZONE),
    customerId: customer.id,
  });
  const parts = [
    ["party", twoAdults()],
    ["trip", highlandsTrip(day)],
    ["load", loadForTwo()],
  ] as const;
  for (const [name, document] of parts) await store.hires.putPart(row.id, name, toJson(document), 0, by);
  const registration = `ZZ${String(k).padStart(2, "0")} INV`;
  await store.hires.update(row.id, { stage: "booked", vehicleId: `large${k}`, registration }, row.version);
  return row.id;
}

/** Asks for little by turns until told to stop; gives how long each answer took, milliseconds. */
function askLightly(ask: (path: string) => Promise<number>) {
  let isOver = false;
  const loops = LIGHT.map(async (path) => {
    const waits: number[] = [];
    while (!isOver) {
      waits.push(await ask(path));
      await sleep(BETWEEN_MS);
    }
    return waits;
  });
  return async () => {
    isOver = true;
    return (await Promise.all(loops)).flat();
  };
}

/** How long light requests wait while the server works at something long. */
export async function benchPauses(): Promise<readonly Line[]> {
  const line = lineOf("light requests of three, while the built server");
  const folder = await mkdtemp(join(tmpdir(), "setfair-bench-"));
  await fillLargeDiary(folder);
  const { day, hireId } = await fillBusyDay(folder);
  const server = await startBuilt(folder);
  try {
    const cookie = await signIn(server.url);
    const timed = async (path: string): Promise<number> => {
      const begun = performance.now();
      const answer = await fetch(`${server.url}/api${path}`, { headers: { cookie } });
      if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
      await answer.arrayBuffer();
      return performance.now() - begun;
    };
    const lines: Line[] = [];
    for (const [what, path] of [
      ["has nothing else to do (1 s)", null],
      ["lives one trip", `/hires/${hireId}`],
      [`lists a day of ${LEAVING} trips not lived`, `/today?date=${day}`],
      [`draws a day's papers for ${LEAVING} hires`, `/day-pack?date=${day}`],
      ["sets returns beside their forecasts", "/forecast-outcomes"],
      ["tidies 120 days of 60 vehicles", `/diary/tidy?from=${day}&to=${addDays(day, 120)}`],
      ["lists 100 hires", "/hires?limit=100"],
      ["answers the diary of 60 days", `/diary?from=${day}&to=${addDays(day, 60)}`],
    ] as const) {
      for (const light of LIGHT) await timed(light);
      const stop = askLightly(timed);
      const took = path === null ? await sleep(1000).then(() => 1000) : await timed(path);
      const waits = await stop();
      const note = `median ${median(waits).toFixed(1)} ms of ${waits.length}; the work itself ${took.toFixed(0)} ms`;
      lines.push(line(`${what}: the longest`, Math.max(...waits), "ms", note));
    }
    return lines;
  } finally {
    await server.end();
    await rm(folder, { recursive: true, force: true });
  }
}
