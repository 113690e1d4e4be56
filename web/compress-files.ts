import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";
import type { Plugin } from "vite";

/** Smaller files gain nothing by it. */
const FROM_BYTES = 1000;

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) =>
    /\.(js|css|html|svg)$/.test(file),
  );

/**
 * Lays a brotli and a gzip copy beside every script, style and page, pressed as hard as it goes, once, when the
 * application is built: a phone on a slow line waits for bytes, and the server need not press on every visit.
 */
export function compressFiles(folder: string): Plugin {
  return {
    name: "setfair-compress",
    apply: "build",
    enforce: "post",
    closeBundle: {
      // after the worker's list of files is written
      order: "post",
      sequential: true,
      handler() {
        for (const file of filesIn(folder)) {
          const path = join(folder, file);
          const bytes = readFileSync(path);
          if (bytes.length < FROM_BYTES) continue;
          const params = { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
          writeFileSync(`${path}.br`, brotliCompressSync(bytes, { params }));
          writeFileSync(`${path}.gz`, gzipSync(bytes, { level: 9 }));
        }
      },
    },
  };
}
