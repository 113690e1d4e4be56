import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";
// @ts-expect-error plain JavaScript, no types
import { guideFiles } from "../words/generate-index.mjs";
import { isFirstWord } from "../words/src/first-words.ts";

type Messages = Readonly<Record<string, string>>;

const read = (file: string): Messages =>
  JSON.parse(readFileSync(fileURLToPath(new URL(`../words/src/en/${file}`, import.meta.url)), "utf8"));

/**
 * Cuts the guide's messages in two when the application is built, so that a phone fetches first only what its
 * first card says. In source the two modules choose from the whole catalogue and say the same.
 */
export function guideWords(): Plugin {
  const module = /\/words\/src\/en\/guide-(first|rest)\.ts$/;
  return {
    name: "setfair-guide-words",
    apply: "build",
    load: {
      filter: { id: module },
      handler(id) {
        const part = module.exec(id)?.[1];
        const files: readonly string[] = guideFiles();
        const all: Messages = Object.assign({}, ...files.map(read));
        const own = Object.entries(all).filter(([name]) => isFirstWord(name) === (part === "first"));
        const text = JSON.stringify(JSON.stringify(Object.fromEntries(own)));
        // a browser reads a text as JSON faster than it reads an object
        return `export const GUIDE_${part?.toUpperCase()} = JSON.parse(${text});`;
      },
    },
  };
}
