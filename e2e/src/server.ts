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

/** Starts the built command as a stranger would, on a free loopback port with an empty data folder. */
export async function startServer(options: { tls?: boolean } = {}): Promise<RunningServer> {
  const port = await freePort();
  const dataDir = mkdtempSync(join(tmpdir(), "setfair-e2e-"));
  const pair = options.tls === true ? await makeCertificate(dataDir) : null;
  const tls = pair === null ? [] : ["--cert", pair.cert, "--key", pair.key];
  const started = performance.now();
  const child: ChildProcess = spawn(process.execPath, ["cli/bin/setfair.mjs", "serve", ...tls], {
    cwd: root,
    env: { ...process.env, PORT: String(port), SETFAIR_DATA: dataDir },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let text = "";
  child.stdout?.on("data", (chunk) => (text += chunk));
  child.stderr?.on("data", (chunk) => (text += chunk));
  const scheme = pair === null ? "http" : "https";
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
    trust: pair === null ? [] : [`--ignore-certificate-errors-spki-list=${keyHash(pair.cert)}`],
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
