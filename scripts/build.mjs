// Builds every package: the pure ones and the command as bundles, the web application with Vite.
// `node scripts/build.mjs --if-stale` does nothing when no source changed since the last build.
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { binary, ensureInstalled, root, run, sourceHash } from "./lib.mjs";

const stamp = join(root, "cli", "dist", ".built-from");
const want = () => sourceHash();

/** True when the last build was made from these very sources. */
export function isBuilt() {
  return (
    existsSync(stamp) &&
    existsSync(join(root, "web", "dist", "index.html")) &&
    readFileSync(stamp, "utf8") === want()
  );
}

export async function build() {
  ensureInstalled();
  const { build: bundle } = await import("esbuild");
  const common = {
    absWorkingDir: root,
    bundle: true,
    format: "esm",
    target: "node20",
    conditions: ["setfair-source"],
    sourcemap: true,
    legalComments: "none",
    logLevel: "warning",
  };
  for (const name of ["engine", "records", "drawing", "words"]) {
    rmSync(join(root, name, "dist"), { recursive: true, force: true });
    await bundle({
      ...common,
      // engine and words also open light doors, for the hirer's phone and for the drawings
      entryPoints: {
        index: `${name}/src/index.ts`,
        ...(name === "engine"
          ? {
              trip: "engine/src/rooms/trip/index.ts",
              diagnosis: "engine/src/rooms/diagnosis/index.ts",
              systems: "engine/src/systems/registry.ts",
            }
          : {}),
        ...(name === "words" ? { guide: "words/src/guide.ts" } : {}),
      },
      outdir: `${name}/dist`,
      platform: "neutral",
      mainFields: ["module", "main"],
    });
  }
  rmSync(join(root, "cli", "dist"), { recursive: true, force: true });
  mkdirSync(join(root, "cli", "dist"), { recursive: true });
  await bundle({
    ...common,
    // what a thread runs stands beside what starts it
    entryPoints: {
      setfair: "cli/src/main.ts",
      "run-task": "server/src/threads/run-task.ts",
    },
    outdir: "cli/dist",
    splitting: true,
    platform: "node",
    external: ["piscina", "better-sqlite3", "sharp", "@node-rs/argon2", "pg-native", "pdfmake"],
    // bundled CommonJS packages ask for these
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module';import { fileURLToPath as __toPath } from 'node:url';import { dirname as __dirnameOf } from 'node:path';const require = __createRequire(import.meta.url);const __filename = __toPath(import.meta.url);const __dirname = __dirnameOf(__filename);",
    },
  });
  const code = run(binary("vite"), ["build", "--logLevel", "warn"], { cwd: join(root, "web") });
  if (code !== 0) process.exit(code);
  writeFileSync(stamp, want());
}

if (process.argv[1]?.endsWith("build.mjs")) {
  if (!(process.argv.includes("--if-stale") && isBuilt())) await build();
}
