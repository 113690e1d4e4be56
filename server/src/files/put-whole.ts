import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import type { Scope } from "../store/types.ts";
import type { PhotographFiles } from "./types.ts";

/** Puts a file where photographs are kept; false where it is not the photograph that its name says. */
export async function putWhole(
  files: PhotographFiles,
  { scope, sha256 }: { readonly scope: Scope; readonly sha256: string },
  path: string,
): Promise<boolean> {
  const total = (await stat(path)).size;
  const answer = await files.put({ scope, sha256, from: 0, total, body: createReadStream(path) });
  return answer.state === "kept";
}
