// A throw-away PostgreSQL server on loopback for the tests, in a temporary folder.
import { spawnSync } from "node:child_process";
import { chmodSync, chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { installSystemPackages } from "./lib.mjs";

function findBinaries() {
  const base = "/usr/lib/postgresql";
  const versions = existsSync(base) ? readdirSync(base).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [
    ...versions.map((version) => join(base, version, "bin")),
    ...(process.env.PATH ?? "").split(":"),
  ];
  return (
    folders.find((folder) => existsSync(join(folder, "initdb")) && existsSync(join(folder, "postgres"))) ??
    null
  );
}

function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

/** Starts a server; `{ url, stop }`, or null with the reason on stderr where no PostgreSQL can be had. */
export async function startPostgres() {
  const binaries = findBinaries() ?? (installSystemPackages(["postgresql"]) ? findBinaries() : null);
  if (!binaries) return null;
  const folder = mkdtempSync(join(tmpdir(), "setfair-pg-"));
  const data = join(folder, "data");
  const asRoot = process.getuid?.() === 0;
  const account = { uid: undefined, gid: undefined };
  if (asRoot) {
    const id = (flag) => Number(spawnSync("id", [flag, "postgres"], { encoding: "utf8" }).stdout.trim());
    Object.assign(account, { uid: id("-u"), gid: id("-g") });
    chmodSync(folder, 0o755);
    chownSync(folder, account.uid, account.gid);
  }
  const call = (program, args) => {
    const answer = spawnSync(join(binaries, program), args, {
      encoding: "utf8",
      cwd: folder,
      ...(asRoot ? account : {}),
      stdio: ["ignore", "pipe", "pipe"],
    });
    if (answer.status !== 0) throw new Error(`${program}: ${answer.stderr || answer.stdout}`);
  };
  const port = await freePort();
  call("initdb", ["-D", data, "-U", "setfair", "-A", "trust", "-E", "UTF8", "--no-sync"]);
  call("pg_ctl", [
    "-D",
    data,
    "-w",
    "-l",
    join(folder, "log"),
    "-o",
    `-p ${port} -c listen_addresses=127.0.0.1 -c unix_socket_directories=${folder} -c fsync=off`,
    "start",
  ]);
  return {
    url: `postgres://setfair@127.0.0.1:${port}/postgres`,
    stop() {
      call("pg_ctl", ["-D", data, "-m", "immediate", "-w", "stop"]);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
