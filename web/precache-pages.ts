import { existsSync, readFileSync } from "node:fs";

interface Chunk {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
  readonly css?: readonly string[];
  readonly assets?: readonly string[];
}
type Manifest = Readonly<Record<string, Chunk>>;

/** Pages that work offline, with the entry of each. */
const PAGES = { yard: "yard.html", guide: "guide.html" } as const;

/** The files that a page needs, its chunks, styles and fonts, from Vite's own manifest. */
function filesOf(manifest: Manifest, entry: string): ReadonlySet<string> {
  const files = new Set<string>([entry]);
  const seen = new Set<string>();
  const visit = (key: string): void => {
    const chunk = manifest[key];
    if (chunk === undefined || seen.has(key)) return;
    seen.add(key);
    for (const file of [chunk.file, ...(chunk.css ?? []), ...(chunk.assets ?? [])]) files.add(file);
    for (const next of [...(chunk.imports ?? []), ...(chunk.dynamicImports ?? [])]) visit(next);
  };
  visit(entry);
  return files;
}

/** Says of each file to keep offline which page needs it; files that neither needs are left out. */
export function markPages(manifestPath: string) {
  return (entries: readonly { url: string; revision: string | null; size: number }[]) => {
    // without it the build of the pages has failed already: to throw here would hide why
    if (!existsSync(manifestPath)) return { manifest: [], warnings: [`${manifestPath} is missing`] };
    const manifest = JSON.parse(readFileSync(manifestPath, "utf8")) as Manifest;
    const needs = Object.entries(PAGES).map(([page, entry]) => ({ page, files: filesOf(manifest, entry) }));
    const shared = /(worker|woff2$|icon\.svg$)/;
    return {
      manifest: entries
        .map((entry) => ({
          ...entry,
          pages: needs.filter(({ files }) => files.has(entry.url)).map(({ page }) => page),
        }))
        .map((entry) => {
          if (/worker|early-guide/.test(entry.url)) return { ...entry, pages: ["guide"] };
          return shared.test(entry.url) ? { ...entry, pages: ["yard", "guide"] } : entry;
        })
        .filter(({ pages }) => pages.length > 0),
      warnings: [],
    };
  };
}
