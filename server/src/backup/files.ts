import { createHash } from "node:crypto";
import { createReadStream, createWriteStream } from "node:fs";
import { mkdir, open, readdir, stat } from "node:fs/promises";
import { dirname } from "node:path";
import type { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import type { ListedFile } from "./types.ts";

/** Whether there is nothing at this path, or a folder with nothing in it. */
export async function isFree(folder: string): Promise<boolean> {
  try {
    return (await readdir(folder)).length === 0;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return true;
    if ((error as NodeJS.ErrnoException).code === "ENOTDIR") return false;
    throw error;
  }
}

export const isThere = async (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );

/** Copies a file and gives what was read, by its hash; the copy is on the disk when this ends. */
export const copyHashed = (from: string, to: string): Promise<Pick<ListedFile, "sha256" | "bytes">> =>
  writeHashed(createReadStream(from), to);

/** Likewise for what comes from anywhere. */
export async function writeHashed(from: Readable, to: string): Promise<Pick<ListedFile, "sha256" | "bytes">> {
  await mkdir(dirname(to), { recursive: true, mode: 0o700 });
  const hash = createHash("sha256");
  let bytes = 0;
  await pipeline(
    from,
    async function* (source: AsyncIterable<Buffer>) {
      for await (const chunk of source) {
        hash.update(chunk);
        bytes += chunk.length;
        yield chunk;
      }
    },
    createWriteStream(to, { mode: 0o600 }),
  );
  const file = await open(to, "r");
  await file.sync().finally(() => file.close());
  return { sha256: hash.digest("hex"), bytes };
}

export async function hashOf(path: string): Promise<string> {
  const hash = createHash("sha256");
  for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
  return hash.digest("hex");
}
