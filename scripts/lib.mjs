// Small helpers shared by the scripts; Node built-ins only, so that they run before anything is installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

export const root = dirname(dirname(fileURLToPath(import.meta.url)));
export const binary = (name) => join(root, "node_modules", ".bin", name);

/** Runs a command in the repository's root and lets it speak; returns its exit code. */
export function run(command, args, options = {}) {
  const answer = spawnSync(command, args, { cwd: root, stdio: "inherit", ...options });
  if (answer.error) throw answer.error;
  return answer.status ?? 1;
}

/** Every file below `folder` that is a source, not a product. */
export function sourceFiles(folder) {
  const found = [];
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (["node_modules", "dist", ".git", ".tmp"].includes(entry.name)) continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) found.push(...sourceFiles(path));
    else found.push(path);
  }
  return found;
}

/** A hash over the sources that a build depends on. */
export function sourceHash() {
  const hash = createHash("sha256").update(process.version);
  const folders = ["engine", "records", "drawing", "words", "server", "web", "cli", "demo"].map((name) =>
    join(root, name),
  );
  for (const path of folders.flatMap(sourceFiles).sort()) {
    if (/\.test\.tsx?$/.test(path)) continue;
    hash.update(relative(root, path)).update(readFileSync(path));
  }
  return hash.update(readFileSync(join(root, "package-lock.json"))).digest("hex");
}

/** Installs the packages when they are missing or older than the lock file. */
export function ensureInstalled() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(`Setfair needs Node.js 20.19 or later; this is ${process.version}.`);
    process.exit(2);
  }
  const marker = join(root, "node_modules", ".package-lock.json");
  const lock = join(root, "package-lock.json");
  if (existsSync(marker) && statSync(marker).mtimeMs >= statSync(lock).mtimeMs - 1000) return;
  console.log("Installing packages …");
  const code = run("npm", ["ci", "--no-audit", "--no-fund"]);
  if (code !== 0) process.exit(code);
}

/** Tries an install from the system's packages; only as root on a machine with apt-get. */
export function installSystemPackages(names) {
  if (process.getuid?.() !== 0 || spawnSync("apt-get", ["--version"]).status !== 0) return false;
  console.log(`Installing from the system's packages: ${names.join(" ")}`);
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  run("apt-get", ["update", "-q"], { env, stdio: ["ignore", "ignore", "inherit"] });
  return (
    run("apt-get", ["install", "-y", "-q", "--no-install-recommends", ...names], {
      env,
      stdio: ["ignore", "ignore", "inherit"],
    }) === 0
  );
}

const CHROMIUM_PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/snap/bin/chromium",
];

/** Path of a Chromium, installed from the system's packages where none is found and that may be done; null otherwise. */
export function ensureChromium() {
  const look = () =>
    [process.env.SETFAIR_CHROMIUM, ...CHROMIUM_PLACES].find((path) => path && existsSync(path)) ?? null;
  const found = look();
  if (found) return found;
  return installSystemPackages(["chromium", "fonts-dejavu-core"]) ? look() : null;
}
