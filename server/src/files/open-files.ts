import { join } from "node:path";
import { openBucket } from "./bucket.ts";
import { bucketFiles } from "./bucket-files.ts";
import { localFiles } from "./local-files.ts";
import type { BucketAccess } from "./read-bucket-access.ts";
import type { PhotographFiles } from "./types.ts";

const MEGABYTE = 1_000_000;
const USUAL_MAX_MB = 25;

/**
 * Opens where photographs are kept: `photographs` in the data folder, or an S3-compatible store.
 * @param maxMb the most that one photograph may have, in MB, 1 to 200
 */
export function openFiles(options: {
  readonly dataFolder: string;
  readonly bucket?: BucketAccess | null;
  readonly maxMb?: number;
}): PhotographFiles {
  const { dataFolder, bucket = null, maxMb = USUAL_MAX_MB } = options;
  if (!(maxMb >= 1 && maxMb <= 200)) throw new Error("maxMb: expected 1 to 200");
  const maxBytes = Math.round(maxMb * MEGABYTE);
  if (bucket === null) return localFiles(join(dataFolder, "photographs"), maxBytes);
  return bucketFiles(openBucket(bucket), maxBytes);
}
