import { readdirSync, readFileSync } from "node:fs";

const folder = new URL("../../words/src/en/systems/", import.meta.url);

/** The texts of the systems, by file and by id, read from the catalogue itself. */
export const TEXT_FILES: ReadonlyMap<string, Readonly<Record<string, string>>> = new Map(
  readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .map((name) => [name.replace(".json", ""), JSON.parse(readFileSync(new URL(name, folder), "utf8"))]),
);
export const TEXTS: ReadonlyMap<string, string> = new Map(
  [...TEXT_FILES.values()].flatMap((texts) => Object.entries(texts)),
);

/** Names of the arguments of an ICU message, `{side, select, …}` included; branches of a select are not names. */
export function argumentsOf(text: string): readonly string[] {
  return [...text.matchAll(/\{\s*([A-Za-z_][A-Za-z0-9_]*)\s*(?:\}|,)/g)].map((match) => match[1]!);
}
