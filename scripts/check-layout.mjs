// The layout: folders of systems = registry, the same six files in each, the engine pure, one door a package.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { root, sourceFiles } from "./lib.mjs";

const problems = [];
const systems = join(root, "engine/src/systems");
const folders = readdirSync(systems, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);
const registry = readFileSync(join(systems, "registry.ts"), "utf8");
const registered = [...registry.matchAll(/from "\.\/([a-z0-9-]+)\/index\.ts"/g)].map((match) => match[1]);
for (const folder of folders)
  if (!registered.includes(folder)) problems.push(`engine/src/systems/${folder} is not in the registry`);
for (const name of registered)
  if (!folders.includes(name)) problems.push(`the registry names ${name}, which has no folder`);
for (const folder of folders) {
  for (const file of ["spec", "physics", "briefing", "checks", "faults", "index"]) {
    if (!existsSync(join(systems, folder, `${file}.ts`)))
      problems.push(`engine/src/systems/${folder}/${file}.ts is missing`);
  }
}

const impure = [
  [
    /\bnew Date(\(\)|(?!\w|\())|\bDate\.now\b|\bDate\(\)|\bTemporal\.Now\b|\bperformance\.now\b/,
    "reads the clock",
  ],
  [/\bMath\.random\(/, "draws unkeyed random numbers"],
  [/\bprocess\.|\bfetch\(|from "node:/, "does input or output"],
];
for (const folder of ["engine/src", "records/src", "drawing/src", "words/src"]) {
  for (const path of sourceFiles(join(root, folder))) {
    if (!path.endsWith(".ts") || path.endsWith(".test.ts")) continue;
    const code = readFileSync(path, "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");
    for (const [pattern, what] of impure)
      if (pattern.test(code)) problems.push(`${relative(root, path)} ${what}`);
    // the engine counts in civil dates and Temporal; a Date would bring the machine's own time zone in
    if (folder === "engine/src" && /\bnew Date\b|\bDate[.(]/.test(code))
      problems.push(`${relative(root, path)} uses Date`);
  }
}

// One door a package. Engine and words have light ones besides, for the hirer's phone; the server one for tests, through
// which the bench fills a depot on either database as the tests do (it is no part of what is built); the pages' one opens
// their own store, so that a drill can be many tablets.
const doorsOf = {
  engine: [".", "./trip", "./diagnosis", "./systems"],
  records: ["."],
  drawing: ["."],
  words: [".", "./guide"],
  server: [".", "./for-tests"],
  demo: ["."],
  web: ["./offline"],
  cli: [],
  bench: [],
  e2e: [],
};
for (const [name, wanted] of Object.entries(doorsOf)) {
  const doors = Object.keys(JSON.parse(readFileSync(join(root, name, "package.json"), "utf8")).exports ?? {});
  if (doors.join() !== wanted.join())
    problems.push(
      `${name} has the doors ${doors.join(", ") || "none"}, expected ${wanted.join(", ") || "none"}`,
    );
}
// only the bench goes through the door for tests
for (const folder of ["demo", "cli", "web"]) {
  for (const path of sourceFiles(join(root, folder)))
    if (
      /\.tsx?$/.test(path) &&
      !/\.test\.tsx?$/.test(path) &&
      readFileSync(path, "utf8").includes("@setfair/server/for-tests")
    )
      problems.push(`${relative(root, path)} uses the server's door for tests`);
}

for (const problem of problems) console.error(problem);
console.log(
  problems.length === 0
    ? `${folders.length} systems, each registered with its six files; the pure packages are pure`
    : `${problems.length} problems`,
);
process.exit(problems.length === 0 ? 0 : 1);
