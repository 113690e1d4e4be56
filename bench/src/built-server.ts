import { type ChildProcess, spawn } from "node:child_process";
import { createServer } from "node:net";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { ROOT } from "./root.ts";

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

export interface BuiltServer {
  readonly url: string;
  /** milliseconds from the command to the first answer */
  readonly readyMs: number;
  end(): Promise<void>;
}

/** The built command in a process of its own, on this data folder and a free port. */
export async function startBuilt(dataFolder: string): Promise<BuiltServer> {
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
  } catch (error) {
    await end(child);
    throw error;
  }
  const readyMs = performance.now() - start;
  return { url: `http://127.0.0.1:${port}`, readyMs, end: () => end(child) };
}
