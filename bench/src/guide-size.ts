import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";
import { type Line, lineOf } from "./line.ts";
import { ROOT } from "./root.ts";

const DIST = join(ROOT, "web/dist");
/** Rooms that belong to the desk: nothing of them may reach the hirer's phone. */
const PLANNERS = ["loading", "quote", "diary", "rules", "settlement", "condition", "glass", "yard", "upkeep"];

interface Chunk {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
  readonly css?: readonly string[];
  readonly assets?: readonly string[];
}

/** What the page itself asks for, and what its scripts import before they run. */
function firstVisit(): { readonly files: ReadonlySet<string>; readonly later: ReadonlySet<string> } {
  const manifest = JSON.parse(readFileSync(join(DIST, ".vite/manifest.json"), "utf8")) as Record<
    string,
    Chunk
  >;
  const page = readFileSync(join(DIST, "guide.html"), "utf8");
  const files = new Set([
    "guide.html",
    ...[...page.matchAll(/(?:src|href)="\/(assets\/[^"]+)"/g)].map(([, file]) => file as string),
  ]);
  const later = new Set<string>();
  const visit = (key: string, into: Set<string>): void => {
    const chunk = manifest[key];
    if (chunk === undefined || (into === later && files.has(chunk.file))) return;
    if (into === later && later.has(chunk.file)) return;
    for (const file of [chunk.file, ...(chunk.css ?? [])]) into.add(file);
    for (const next of chunk.imports ?? []) visit(next, into);
    for (const next of chunk.dynamicImports ?? []) visit(next, later);
  };
  visit("guide.html", files);
  for (const file of files) {
    const text = readFileSync(join(DIST, file), "utf8");
    for (const [, worker] of text.matchAll(/["'`]\/(assets\/[\w.-]*worker[\w.-]*\.js)["'`]/g))
      later.add(worker as string);
  }
  return { files, later };
}

const gzipKb = (file: string) => gzipSync(readFileSync(join(DIST, file)), { level: 9 }).length / 1000;
const brotliKb = (file: string) => brotliCompressSync(readFileSync(join(DIST, file))).length / 1000;
const sum = (files: Iterable<string>) => [...files].reduce((total, file) => total + gzipKb(file), 0);

/** Modules of the desk's rooms that went into a chunk, by its source map. */
function plannersIn(file: string): readonly string[] {
  const map = join(DIST, `${file}.map`);
  if (!file.endsWith(".js") || !existsSync(map)) return [];
  const { sources } = JSON.parse(readFileSync(map, "utf8")) as { readonly sources: readonly string[] };
  return sources.filter((source) => PLANNERS.some((room) => source.includes(`engine/src/rooms/${room}/`)));
}

/** Fonts that the styles name; a phone fetches only those whose letters it shows. */
function fontsOf(files: Iterable<string>): readonly string[] {
  const styles = [...files].filter((file) => file.endsWith(".css"));
  const found = styles.flatMap((file) =>
    [...readFileSync(join(DIST, file), "utf8").matchAll(/\/(assets\/[^)"']+\.woff2)/g)].map(
      ([, font]) => font as string,
    ),
  );
  return [...new Set(found)];
}

/** What the hirer's phone fetches, gzipped, and whether anything of the desk's planners is in it. */
export async function benchGuideSize(): Promise<readonly Line[]> {
  const line = lineOf("the hirer's page, gzipped");
  const { files, later } = firstVisit();
  const scripts = [...files].filter((file) => file.endsWith(".js"));
  const fonts = fontsOf(files);
  const rest = [...files].filter((file) => !file.endsWith(".js"));
  const largest = scripts.toSorted((a, b) => gzipKb(b) - gzipKb(a));
  const planners = [...files, ...later].flatMap(plannersIn);
  const unmapped = [...files, ...later].filter(
    (file) =>
      file.endsWith(".js") && !/rolldown-runtime/.test(file) && !existsSync(join(DIST, `${file}.map`)),
  );
  return [
    line("first visit, without fonts", sum(files), "kB", `${files.size} files`),
    line(
      "the same as the build presses it",
      [...files].reduce((total, file) => total + brotliKb(file), 0),
      "kB",
      "brotli, over TLS",
    ),
    line(
      "scripts",
      sum(scripts),
      "kB",
      largest.map((file) => `${nameOf(file)} ${gzipKb(file).toFixed(0)}`).join(", "),
    ),
    line("page and styles", sum(rest), "kB"),
    line(
      "fonts that the styles name",
      fonts.reduce((total, font) => total + readFileSync(join(DIST, font)).length / 1000, 0),
      "kB",
      `${fonts.length} files, not compressed again`,
    ),
    line(
      "once the first card is drawn, and for the forecast",
      sum(later),
      "kB",
      [...later].map(nameOf).join(", "),
    ),
    line(
      "modules of the desk's rooms in it",
      unmapped.length > 0 ? null : planners.length,
      "modules",
      unmapped.length > 0
        ? `no source map for ${unmapped.join(", ")}`
        : planners.map((source) => source.replace(/^.*engine\/src\//, "")).join(", ") ||
            `searched for ${PLANNERS.join(", ")}`,
    ),
  ];
}

const nameOf = (file: string) => file.replace(/^assets\//, "").replace(/-[\w-]{8}\.js$/, "");
