import { type ChildProcess, spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { type Line, lineOf, median } from "./line.ts";
import { ROOT } from "./root.ts";

const STARTS = 5;
const PATIENCE_MS = 120_000;

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(0, "127.0.0.1", resolve);
  });
  const address = server.address();
  await new Promise<void>((resolve) => server.close(() => resolve()));
  if (address === null || typeof address === "string") throw new Error("expected a port");
  return address.port;
}

const answers = async (port: number): Promise<boolean> => {
  try {
    return (await fetch(`http://127.0.0.1:${port}/api/health`)).ok;
  } catch {
    return false;
  }
};

/** Asks the process to end, and sees that it has. */
async function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return;
  const gone = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  child.kill("SIGTERM");
  await gone;
}

/** Milliseconds from the command to the first answer. */
async function startOnce(dataFolder: string): Promise<number> {
  const port = await freePort();
  const start = performance.now();
  const { SETFAIR_DATABASE_URL: _, ...env } = process.env;
  const child = spawn(process.execPath, [join(ROOT, "cli/bin/setfair.mjs"), "serve"], {
    cwd: ROOT,
    env: { ...env, PORT: String(port), SETFAIR_DATA: dataFolder },
    stdio: ["ignore", "ignore", "inherit"],
  });
  try {
    while (!(await answers(port))) {
      if (child.exitCode !== null) throw new Error(`serve ended with ${child.exitCode}`);
      if (performance.now() - start > PATIENCE_MS) throw new Error("serve did not answer");
      await sleep(10);
    }
    return performance.now() - start;
  } finally {
    await end(child);
  }
}

/** From the command to the first answer: on an empty folder, and again on the folder it made. */
export async function benchServeStart(): Promise<readonly Line[]> {
  const line = lineOf("time to serve, from the built command to the first answer");
  const [first, again]: [number[], number[]] = [[], []];
  for (let k = 0; k < STARTS; k++) {
    const folder = await mkdtemp(join(tmpdir(), "setfair-bench-"));
    try {
      first.push(await startOnce(folder));
      again.push(await startOnce(folder));
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
  }
  return [
    line(
      "empty data folder",
      median(first),
      "ms",
      `median of ${STARTS}; makes the tables and loads the invented firm`,
    ),
    line("the same folder again", median(again), "ms", `median of ${STARTS}`),
    line("empty over again", median(first) / median(again), "ratio"),
  ];
}
