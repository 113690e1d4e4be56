import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

export interface RunningServer {
  readonly url: string;
  /** everything that the process printed */
  readonly printed: () => string;
  readonly dataDir: string;
  readonly readyMs: number;
  stop(): Promise<void>;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      if (address === null || typeof address === "string") return reject(new Error("no port"));
      probe.close(() => resolve(address.port));
    });
  });
}

/** Starts the built command as a stranger would, on a free loopback port with an empty data folder. */
export async function startServer(
  options: { env?: Record<string, string>; args?: string[]; scheme?: "http" | "https" } = {},
): Promise<RunningServer> {
  const port = await freePort();
  const dataDir = mkdtempSync(join(tmpdir(), "setfair-e2e-"));
  const started = performance.now();
  const child: ChildProcess = spawn(
    process.execPath,
    ["cli/bin/setfair.mjs", "serve", ...(options.args ?? [])],
    {
      cwd: root,
      env: { ...process.env, PORT: String(port), SETFAIR_DATA: dataDir, ...options.env },
      stdio: ["ignore", "pipe", "pipe"],
    },
  );
  let text = "";
  child.stdout?.on("data", (chunk) => (text += chunk));
  child.stderr?.on("data", (chunk) => (text += chunk));
  const scheme = options.scheme ?? "http";
  const url = `${scheme}://127.0.0.1:${port}`;
  const isReady = async () => {
    if (scheme === "https") return /https:\/\//.test(text);
    return fetch(`${url}/api/health`).then(
      (answer) => answer.ok,
      () => false,
    );
  };
  for (;;) {
    if (child.exitCode !== null) throw new Error(`the server ended with ${child.exitCode}:\n${text}`);
    if (await isReady()) break;
    if (performance.now() - started > 30_000) throw new Error(`the server is not ready after 30 s:\n${text}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  return {
    url,
    dataDir,
    readyMs: performance.now() - started,
    printed: () => text,
    stop: async () => {
      const ended = new Promise((resolve) => child.once("exit", resolve));
      child.kill("SIGTERM");
      await ended;
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}
