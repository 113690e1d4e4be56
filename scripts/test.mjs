// `npm test`: installs what the tests need, then lint, types, layers, unused code, layout, unit, contract,
// store (SQLite and PostgreSQL) and browser tests. Names steps on the command line to run only those.
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { build, isBuilt } from "./build.mjs";
import { binary, ensureChromium, ensureInstalled, root, run } from "./lib.mjs";
import { startPostgres } from "./postgres.mjs";

ensureInstalled();
const ci = process.env.CI === "true";
const { workspaces } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const asked = process.argv.slice(2);
const scratch = join(root, ".tmp");
rmSync(scratch, { recursive: true, force: true });
mkdirSync(scratch, { recursive: true });
const counts = { passed: 0, failed: 0, skipped: 0 };

/** Adds the counts of a vitest report. */
function countReport(name) {
  const report = JSON.parse(readFileSync(join(scratch, `${name}.json`), "utf8"));
  counts.passed += report.numPassedTests;
  counts.failed +=
    report.numFailedTests +
    (report.numFailedTestSuites > 0 && report.numFailedTests === 0 ? report.numFailedTestSuites : 0);
  counts.skipped += report.numPendingTests;
}

function vitest(name, args, env = {}) {
  const code = run(
    binary("vitest"),
    [
      "run",
      "--reporter=default",
      "--reporter=json",
      `--outputFile.json=${join(scratch, `${name}.json`)}`,
      ...args,
    ],
    {
      env: { ...process.env, ...env },
    },
  );
  countReport(name);
  return code;
}

async function unitTests() {
  const postgres = await startPostgres();
  if (!postgres) {
    const word =
      "No PostgreSQL can be had here (install the package postgresql): the PostgreSQL half of the store tests is skipped.";
    if (ci) throw new Error(word);
    console.warn(word);
  }
  try {
    return vitest("unit", [], postgres ? { SETFAIR_TEST_DATABASE_URL: postgres.url } : {});
  } finally {
    postgres?.stop();
  }
}

async function browserTests() {
  const chromium = ensureChromium();
  if (!chromium) {
    console.error("No Chromium was found: install the package chromium, or name one in SETFAIR_CHROMIUM.");
    return 1;
  }
  if (!isBuilt()) await build();
  return vitest("browser", ["--config", "e2e/vitest.config.ts"], { SETFAIR_CHROMIUM: chromium });
}

const types = () => {
  const projects = workspaces.map((name) => `${name}/tsconfig.json`);
  return (
    [...projects, "tsconfig.tests.json"]
      .map((project) => run(binary("tsc"), ["-p", project]))
      .find((code) => code !== 0) ?? 0
  );
};

const steps = {
  lint: () => run(binary("biome"), ["check", "--error-on-warnings"]),
  types,
  layers: () => run(binary("depcruise"), ["--config", ".dependency-cruiser.cjs", ...workspaces]),
  unused: () => run(binary("knip"), []) || run(process.execPath, ["scripts/check-unused.mjs"]),
  layout: () =>
    run(process.execPath, ["scripts/check-layout.mjs"]) || run(process.execPath, ["scripts/check-docs.mjs"]),
  unit: unitTests,
  browser: browserTests,
};

const failed = [];
for (const [name, step] of Object.entries(steps)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  const started = Date.now();
  console.log(`\n── ${name}`);
  const code = await step();
  console.log(
    `── ${name}: ${code === 0 ? "passed" : "FAILED"} in ${((Date.now() - started) / 1000).toFixed(1)} s`,
  );
  if (code !== 0) failed.push(name);
  if (!["unit", "browser"].includes(name)) counts[code === 0 ? "passed" : "failed"] += 1;
}
if (failed.length > 0) console.error(`\nFailed: ${failed.join(", ")}`);
console.log(`\n${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`);
process.exit(failed.length > 0 ? 1 : 0);
