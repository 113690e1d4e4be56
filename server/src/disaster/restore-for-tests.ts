/** For tests only: what a stranger does who loses a machine: backs up while it works, restores, moves, and compares. */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { cp, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import {
  alike,
  differences,
  type Held,
  photographsIn,
  rowsOfPostgres,
  rowsOfSqlite,
} from "../store/compare-for-tests.ts";
import { mustBe } from "./served-life-for-tests.ts";

const root = join(import.meta.dirname, "../../..");
const COMMAND = ["--conditions=setfair-source", "--import", "tsx", "cli/src/main.ts"];

function setfair(env: Readonly<Record<string, string>>, ...args: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, [...COMMAND, ...args], {
    cwd: root,
    encoding: "utf8",
    env: { ...process.env, ...env },
  });
  mustBe(`setfair ${args[0]} ends well`, status === 0, `${status}: ${stderr}${stdout}`);
  return stdout;
}

/** `setfair serve` on a free port; gives where it answers, and ends it as a power cut does. */
async function serve(data: string, env: Readonly<Record<string, string>> = {}) {
  const child: ChildProcess = spawn(process.execPath, [...COMMAND, "serve", "--data", data, "--port", "0"], {
    cwd: root,
    env: { ...process.env, ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let printed = "";
  for (const stream of [child.stdout, child.stderr]) stream?.on("data", (chunk) => (printed += chunk));
  const kill = async () => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    const ended = new Promise((resolve) => child.once("exit", resolve));
    child.kill("SIGKILL");
    await ended;
  };
  for (const end = Date.now() + 90_000; Date.now() < end; await sleep(20)) {
    const url = /http:\/\/127\.0\.0\.1:\d+/.exec(printed)?.[0];
    if (url !== undefined) return { url, kill };
    if (child.exitCode !== null) break;
  }
  await kill();
  throw new Error(`setfair serve: not ready\n${printed}`);
}

/** Pages as the desk sees them, without what the clock changes. */
async function pagesOf(url: string, password: string): Promise<readonly string[]> {
  const signed = await fetch(`${url}/api/session`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ login: "manager", password }),
  });
  mustBe("the manager signs in", signed.ok, signed.status);
  const cookie = signed.headers
    .getSetCookie()
    .map((each) => each.split(";")[0])
    .join("; ");
  const get = async (path: string) => (await fetch(`${url}/api${path}`, { headers: { cookie } })).text();
  const hires = await get("/hires");
  const ids = (JSON.parse(hires) as { hires: { id: string }[] }).hires.map(({ id }) => id);
  mustBe("there are hires", ids.length > 0, hires);
  const records = await Promise.all(ids.slice(0, 10).map((id) => get(`/hires/${id}/records`)));
  return [hires, await get("/vehicles"), ...records];
}

/** Sessions come with each sign-in, jobs with each start. */
const MOVING = ["session", "job"];

export interface RestoreFigures {
  readonly tables: number;
  readonly rows: number;
  readonly photographs: number;
  /** the same, once it is in PostgreSQL; null where none could be had */
  readonly postgresRows: number | null;
}

const countOf = (held: Held, but: readonly string[] = []): number =>
  [...held].reduce((sum, [name, rows]) => (but.includes(name) ? sum : sum + rows.length), 0);

/**
 * The invented firm in a fresh folder, backed up while it is served; the server is ended and its folder destroyed; the
 * backup is restored, verified and served, then moved to PostgreSQL where an address is given. Everything is compared.
 * @throws where anything is not as it was
 */
export async function drillRestore(databaseUrl: string | null): Promise<RestoreFigures> {
  const folder = await mkdtemp(join(tmpdir(), "setfair-restore-"));
  const [data, backup, restored] = ["data", "backup", "restored"].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  try {
    const printed = setfair({}, "demo", "--data", data);
    const password = /manager, password (\S+)/.exec(printed)?.[1] ?? "";
    const first = await serve(data);
    const pages = await pagesOf(first.url, password);
    setfair({}, "backup", backup, "--data", data);
    const before = rowsOfSqlite(data);
    const pictures = await photographsIn(data);
    await first.kill();
    const key = join(folder, "apart.key");
    await cp(join(data, "setfair.key"), key);
    await rm(data, { recursive: true, force: true });

    setfair({}, "restore", backup, "--data", restored, "--key", key);
    const after = rowsOfSqlite(restored);
    const lost = [
      ...differences(before, after, MOVING),
      ...differences(pictures, await photographsIn(restored)),
    ];
    mustBe("the restored folder holds the same", lost.length === 0, lost.join("\n"));
    setfair({}, "verify", restored);
    const second = await serve(restored);
    const same = JSON.stringify(await pagesOf(second.url, password)) === JSON.stringify(pages);
    await second.kill();
    mustBe("the desk sees the same", same);
    const postgresRows = databaseUrl === null ? null : await move(databaseUrl, restored, { pages, password });
    const photographs = countOf(pictures);
    return { tables: before.size, rows: countOf(before, MOVING), photographs, postgresRows };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function move(
  url: string,
  folder: string,
  { pages, password }: { readonly pages: readonly string[]; readonly password: string },
): Promise<number> {
  const env = { SETFAIR_DATABASE_URL: url };
  const before = rowsOfSqlite(folder);
  setfair(env, "move", "--data", folder);
  const after = await rowsOfPostgres(url);
  const lost = differences(alike(before), alike(after));
  mustBe("PostgreSQL holds the same", lost.length === 0, lost.join("\n"));
  setfair(env, "verify", folder);
  const third = await serve(folder, env);
  const same = JSON.stringify(await pagesOf(third.url, password)) === JSON.stringify(pages);
  await third.kill();
  mustBe("the desk sees the same on PostgreSQL", same);
  return countOf(after);
}
