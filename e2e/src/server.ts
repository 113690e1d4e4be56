import { type ChildProcess, spawn } from "node:child_process";
import { createHash, X509Certificate } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { generate } from "selfsigned";

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

export interface RunningServer {
  readonly url: string;
  /** everything that the process printed */
  readonly printed: () => string;
  readonly dataDir: string;
  /** arguments that make Chromium take this server's own certificate for good */
  readonly trust: readonly string[];
  readonly readyMs: number;
  stop(): Promise<void>;
  /** ends the process as a power cut does, with no chance to tidy up, and starts it again on the same data and port */
  killAndStartAgain(): Promise<void>;
}

/** A certificate for the loopback address. */
export async function makeCertificate(folder: string): Promise<{ cert: string; key: string }> {
  const pair = await generate([{ name: "commonName", value: "127.0.0.1" }], { keySize: 2048 });
  const files = { cert: join(folder, "cert.pem"), key: join(folder, "key.pem") };
  writeFileSync(files.cert, pair.cert);
  writeFileSync(files.key, pair.private);
  return files;
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

/** SHA-256 of the certificate's public key, as Chromium names it. */
function keyHash(certificate: string): string {
  const key = new X509Certificate(readFileSync(certificate)).publicKey.export({
    type: "spki",
    format: "der",
  });
  return createHash("sha256").update(key).digest("base64");
}

export interface StartOptions {
  readonly tls?: boolean;
  /** a data folder that is there already; it then stays after the end */
  readonly dataDir?: string;
  /** PostgreSQL instead of the embedded file */
  readonly databaseUrl?: string;
  /** the command to run where it is not the built one */
  readonly command?: readonly string[];
}

/** Starts the built command as a stranger would, on a free loopback port with an empty data folder. */
export async function startServer(options: StartOptions = {}): Promise<RunningServer> {
  const port = await freePort();
  const dataDir = options.dataDir ?? mkdtempSync(join(tmpdir(), "setfair-e2e-"));
  const pair = options.tls === true ? await makeCertificate(dataDir) : null;
  const tls = pair === null ? [] : ["--cert", pair.cert, "--key", pair.key];
  const started = performance.now();
  const scheme = pair === null ? "http" : "https";
  const url = `${scheme}://127.0.0.1:${port}`;
  const run = { url, port, dataDir, tls, options };
  let running = await startProcess(run);
  return {
    url,
    dataDir,
    trust: pair === null ? [] : [`--ignore-certificate-errors-spki-list=${keyHash(pair.cert)}`],
    readyMs: performance.now() - started,
    printed: () => running.printed(),
    stop: async () => {
      await end(running.child, "SIGTERM");
      if (options.dataDir === undefined) rmSync(dataDir, { recursive: true, force: true });
    },
    killAndStartAgain: async () => {
      await end(running.child, "SIGKILL");
      running = await startProcess(run);
    },
  };
}

async function end(child: ChildProcess, signal: "SIGTERM" | "SIGKILL"): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = new Promise((resolve) => child.once("exit", resolve));
  child.kill(signal);
  await ended;
}

interface Run {
  readonly url: string;
  readonly port: number;
  readonly dataDir: string;
  readonly tls: readonly string[];
  readonly options: StartOptions;
}

/** Starts the process and waits until it answers. */
async function startProcess({ url, port, dataDir, tls, options }: Run) {
  const started = performance.now();
  const command = options.command ?? ["cli/bin/setfair.mjs"];
  const child: ChildProcess = spawn(process.execPath, [...command, "serve", ...tls], {
    cwd: root,
    env: {
      ...process.env,
      PORT: String(port),
      SETFAIR_DATA: dataDir,
      ...(options.databaseUrl === undefined ? {} : { SETFAIR_DATABASE_URL: options.databaseUrl }),
    },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let text = "";
  child.stdout?.on("data", (chunk) => (text += chunk));
  child.stderr?.on("data", (chunk) => (text += chunk));
  const isReady = async () => {
    if (url.startsWith("https")) return /https:\/\//.test(text);
    return fetch(`${url}/api/health`).then(
      (answer) => answer.ok,
      () => false,
    );
  };
  for (;;) {
    if (child.exitCode !== null) throw new Error(`the server ended with ${child.exitCode}:\n${text}`);
    if (await isReady()) return { child, printed: () => text };
    if (performance.now() - started > 60_000) throw new Error(`the server is not ready after 60 s:\n${text}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
