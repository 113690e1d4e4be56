// The documents name only what is there: links to files, folders of the tree, commands of npm, and words of the code.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { root, sourceFiles } from "./lib.mjs";

const packages = ["engine", "records", "drawing", "words", "server", "web", "cli", "demo", "bench", "e2e"];
const documents = [
  ...readdirSync(root).filter((name) => name.endsWith(".md")),
  ...["docs", "examples", "demo/src"].flatMap((folder) =>
    sourceFiles(join(root, folder))
      .filter((path) => path.endsWith(".md"))
      .map((path) => path.slice(root.length + 1)),
  ),
];
const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const problems = [];
for (const document of documents) {
  const text = readFileSync(join(root, document), "utf8");
  for (const [, to] of text.matchAll(/\]\(([^)#:]+)(?:#[^)]*)?\)/g))
    if (!existsSync(join(root, dirname(document), to))) problems.push(`${document}: no file ${to}`);
  for (const [, path] of text.matchAll(/`([a-z0-9]+\/[\w./-]+)`/g))
    if (packages.includes(path.split("/")[0]) && !path.includes("/dist") && !existsSync(join(root, path)))
      problems.push(`${document}: no file ${path}`);
  for (const [, name] of text.matchAll(/npm run ([\w:]+)/g))
    if (!(name in scripts)) problems.push(`${document}: no npm run ${name}`);
}

const sources = packages
  .flatMap((name) => sourceFiles(join(root, name)))
  .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path))
  .map((path) => readFileSync(path, "utf8"))
  .join("\n");
const known = new Set(sources.split(/\W+/));
for (const line of readFileSync(join(root, "docs/words.md"), "utf8").split("\n")) {
  const inCode = line.split("|")[2] ?? "";
  for (const [, name] of inCode.matchAll(/`(\w+)`/g))
    if (!known.has(name)) problems.push(`docs/words.md: no ${name} in the code`);
}

const verbs = [
  ...readFileSync(join(root, "cli/src/run-command.ts"), "utf8").matchAll(/^ {2}(\w+): async \(\)/gm),
]
  .map(([, verb]) => verb)
  .sort();
const [, told = ""] = readFileSync(join(root, "README.md"), "utf8").match(/setfair (trip(?:\|\w+)+)/) ?? [];
if (told.split("|").sort().join() !== verbs.join())
  problems.push(`README.md: tells the verbs ${told}, the command has ${verbs.join("|")}`);

for (const problem of problems) console.error(problem);
console.log(
  problems.length === 0
    ? `${documents.length} documents name only what is there`
    : `${problems.length} problems`,
);
process.exit(problems.length === 0 ? 0 : 1);
