// What nobody asks for: messages of the catalogue, classes and variables of the style sheets that no source names.
// A name put together from pieces counts when each piece stands somewhere in the sources or the data.
import { readFileSync } from "node:fs";
import { join, relative } from "node:path";
import ts from "typescript";
import { root, sourceFiles } from "./lib.mjs";

const packages = ["engine", "records", "drawing", "words", "server", "web", "cli", "demo"];
const all = packages.flatMap((name) => sourceFiles(join(root, name)));
const isSource = (path) =>
  /\.(tsx?|html)$/.test(path) && !/\.test\.tsx?$|\.generated\.ts$|-for-tests\.ts$/.test(path);
const isData = (path) => /engine\/src\/rules\/data\/.*\.json$|demo\/src\/.*\.json$/.test(path);

/** every text in quotes, every word in one, every name, every template with its gaps */
const texts = new Set();
const names = new Set();
const templates = new Map();

function addText(text) {
  texts.add(text);
  for (const word of text.split(/[^\w-]+/)) names.add(word);
}

const GAP = "\u0000";

/** Words with gaps, each by itself: `part part-${kind}` is a word and a word with a gap. */
function addTemplate(whole) {
  for (const word of whole.split(/\s+/)) {
    if (!word.includes(GAP)) {
      addText(word);
      continue;
    }
    for (const piece of word.split(/[^\w-]+/)) names.add(piece);
    // one that is all gaps would fit everything
    if (!/[A-Za-z]{2}/.test(word)) continue;
    const pattern = word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&").replaceAll(/\0+/g, "(.+)");
    templates.set(word, { pattern: new RegExp(`^${pattern}$`), isJoined: word.includes(GAP + GAP) });
  }
}

function read(node) {
  if (ts.isStringLiteralLike(node) || ts.isJsxText(node)) addText(node.text);
  else if (ts.isIdentifier(node)) names.add(node.text);
  else if (ts.isTemplateExpression(node))
    addTemplate([node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join(GAP));
  ts.forEachChild(node, read);
}

for (const path of all) {
  if (isData(path)) for (const [, text] of readFileSync(path, "utf8").matchAll(/"([^"\n]*)"/g)) addText(text);
  if (!isSource(path)) continue;
  if (path.endsWith(".html")) addText(readFileSync(path, "utf8"));
  else read(ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true));
}

/** Two names put together, as `panel` and `Nearside` are. */
const isTwo = (piece, isKnown) =>
  [...piece].some((_, k) => k > 0 && isKnown(piece.slice(0, k)) && isKnown(piece.slice(k)));
const fits = (name, isKnown) =>
  [...templates.values()].some(({ pattern, isJoined }) =>
    pattern
      .exec(name)
      ?.slice(1)
      .every((piece) => isKnown(piece) || (isJoined && isTwo(piece, isKnown))),
  );
const isPiece = (piece) => texts.has(piece) || piece.split(/[.:]/).every((word) => names.has(word));
const isAsked = (id) => texts.has(id) || fits(id, (piece) => isPiece(piece) || fits(piece, isPiece));

// a mend is told by the template that tells findings too, which is all gaps
addTemplate(`mend.${GAP}`);

const problems = [];
for (const path of all.filter((name) => /words\/src\/en\/.*\.json$/.test(name))) {
  for (const id of Object.keys(JSON.parse(readFileSync(path, "utf8"))))
    if (!isAsked(id)) problems.push(`${relative(root, path)}: nobody asks for the message ${id}`);
}
for (const path of all.filter((name) => name.endsWith(".css"))) {
  const css = readFileSync(path, "utf8").replace(/\/\*[\s\S]*?\*\/|"[^"]*"|url\([^)]*\)/g, "");
  const classes = new Set([...css.matchAll(/\.(-?[A-Za-z_][\w-]*)/g)].map(([, name]) => name));
  // react-aria-… are the component library's own
  for (const name of classes)
    if (!name.startsWith("react-aria-") && !names.has(name) && !fits(name, (piece) => names.has(piece)))
      problems.push(`${relative(root, path)}: nothing has the class ${name}`);
}

const sheets = all
  .filter((name) => name.endsWith(".css"))
  .map((path) => readFileSync(path, "utf8"))
  .join("\n");
const spoken = [
  sheets,
  ...all.filter((name) => /\.tsx?$/.test(name)).map((path) => readFileSync(path, "utf8")),
].join("\n");
const used = new Set([...spoken.matchAll(/var\(\s*(--[\w-]+)/g)].map(([, name]) => name));
for (const [, name] of sheets.matchAll(/^\s*(--[\w-]+):/gm))
  if (!used.has(name)) problems.push(`nobody uses ${name} of the style sheets`);

for (const problem of problems) console.error(problem);
console.log(
  problems.length === 0 ? "every message, class and variable is asked for" : `${problems.length} unused`,
);
process.exit(problems.length === 0 ? 0 : 1);
