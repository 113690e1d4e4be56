import { join } from "node:path";
import { pathOfOriginal } from "../files/names.ts";
import { openFiles } from "../files/open-files.ts";
import { putWhole } from "../files/put-whole.ts";
import type { BucketAccess } from "../files/read-bucket-access.ts";

export interface MovedPhotographs {
  readonly copied: number;
  /** were there before */
  readonly there: number;
  /** no longer what their names say: paths in the data folder */
  readonly damaged: readonly string[];
}

/**
 * Copies every photograph from the data folder into a store, under the same names. May be done again, and goes on
 * where it broke off; the folder stays as it is.
 * @throws where the store does not answer
 */
export async function movePhotographs(dataFolder: string, bucket: BucketAccess): Promise<MovedPhotographs> {
  const [from, to] = [openFiles({ dataFolder }), openFiles({ dataFolder, bucket })];
  let copied = 0;
  let there = 0;
  const damaged: string[] = [];
  for await (const photograph of from.each()) {
    const { scope, sha256 } = photograph;
    const path = join(dataFolder, "photographs", pathOfOriginal(scope, sha256));
    if ((await to.status(scope, sha256)).state === "kept") there += 1;
    else if (await putWhole(to, photograph, path)) copied += 1;
    else damaged.push(path);
  }
  return { copied, there, damaged };
}
