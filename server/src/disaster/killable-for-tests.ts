/** For tests only: starts a server in a process of its own and ends it as a power cut does. */
import { type ChildProcess, spawn } from "node:child_process";
import { createRequire } from "node:module";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { pathToFileURL } from "node:url";

export interface StartOptions {
  readonly dataDir: string;
  readonly databaseUrl?: string | undefined;
  readonly smtpUrl?: string | undefined;
  /** its clock at the start, ISO instant */
  readonly at: string;
  /** only opens the store */
  readonly onlyOpens?: boolean;
}

export interface Killable {
  /** where it answers; waits until it does */
  readonly url: () => Promise<string>;
  /** once the process is about to open the store */
  readonly opening: () => Promise<void>;
  /** no chance to tidy up; gives what it printed */
  kill(): Promise<string>;
  stop(): Promise<void>;
}

const READY_MS = 120_000;

export function startKillable(options: StartOptions): Killable {
  const { dataDir, databaseUrl, smtpUrl, at, onlyOpens = false } = options;
  const loader = pathToFileURL(createRequire(import.meta.url).resolve("tsx")).href;
  const command = ["--conditions=setfair-source", "--import", loader];
  const child: ChildProcess = spawn(
    process.execPath,
    [...command, join(import.meta.dirname, onlyOpens ? "opening-child-for-tests.ts" : "child-for-tests.ts")],
    {
      env: {
        ...process.env,
        DRILL_DATA: dataDir,
        DRILL_AT: at,
        DRILL_DATABASE_URL: databaseUrl ?? "",
        DRILL_SMTP: smtpUrl ?? "",
      },
      stdio: ["ignore", "pipe", "pipe"],
    },
  );
  let printed = "";
  for (const stream of [child.stdout, child.stderr]) stream?.on("data", (chunk) => (printed += chunk));
  const end = async (signal: "SIGKILL" | "SIGTERM") => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    const ended = new Promise((resolve) => child.once("exit", resolve));
    child.kill(signal);
    await ended;
  };
  async function find(pattern: RegExp): Promise<string> {
    for (const until = Date.now() + READY_MS; Date.now() < until; await sleep(2)) {
      const found = pattern.exec(printed);
      if (found !== null) return found[1] ?? "";
      if (child.exitCode !== null || child.signalCode !== null) break;
    }
    throw new Error(`the server did not say ${pattern}:\n${printed}`);
  }
  return {
    url: () => find(/^ready (\S+)$/m),
    opening: async () => void (await find(/^opening$/m)),
    async kill() {
      await end("SIGKILL");
      return printed;
    },
    stop: () => end("SIGTERM"),
  };
}
