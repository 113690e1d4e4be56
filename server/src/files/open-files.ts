import { join } from "node:path";
import { localFiles } from "./local-files.ts";
import type { PhotographFiles } from "./types.ts";

const MEGABYTE = 1_000_000;
const USUAL_MAX_MB = 25;

/**
 * Opens where photographs are kept: `photographs` in the data folder.
 * @param maxMb the most that one photograph may have, in MB (SETFAIR_PHOTOGRAPH_MB), 1 to 200
 * @throws where `url` (SETFAIR_FILES_URL) is given: the S3-compatible store is not built yet, and saying so beats losing a photograph
 */
export function openFiles(options: {
  readonly dataFolder: string;
  readonly url?: string;
  readonly maxMb?: number;
}): PhotographFiles {
  const { dataFolder, url, maxMb = USUAL_MAX_MB } = options;
  if (url !== undefined && url !== "") {
    throw new Error(
      "SETFAIR_FILES_URL: keeping photographs in an S3-compatible store is not built yet; leave it out to keep them in the data folder",
    );
  }
  if (!(maxMb >= 1 && maxMb <= 200)) throw new Error("SETFAIR_PHOTOGRAPH_MB: expected 1 to 200");
  return localFiles(join(dataFolder, "photographs"), Math.round(maxMb * MEGABYTE));
}
