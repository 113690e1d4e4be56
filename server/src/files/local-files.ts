import { createHash, randomBytes } from "node:crypto";
import { createReadStream } from "node:fs";
import { type FileHandle, mkdir, open, readdir, rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, join, relative, sep } from "node:path";
import { fileTypeFromFile } from "file-type";
import type { Scope } from "../store/types.ts";
import { measureJpeg, shrinkJpeg } from "./derive.ts";
import { isPhotographName, pathOfOriginal, scopeOfPath } from "./names.ts";
import { makeQueues } from "./queues.ts";
import type { PhotographAnswer, PhotographFiles, PhotographPut, PhotographSize } from "./types.ts";

interface Place {
  readonly original: string;
  readonly part: string;
  readonly smaller: (size: PhotographSize) => string;
}

/** Where a photograph lies; null for a name that is none. */
function placeOf(folder: string, scope: Scope, sha256: string): Place | null {
  if (!isPhotographName(scope, sha256)) return null;
  const original = join(folder, pathOfOriginal(scope, sha256));
  return {
    original,
    part: join(folder, scope.firmId, scope.depotId, "incoming", `${sha256}.part`),
    smaller: (size) => original.replace(/jpg$/, `${size}.jpg`),
  };
}

/** Size in bytes; -1 where there is no such file. */
async function sizeOf(path: string): Promise<number> {
  try {
    return (await stat(path)).size;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return -1;
    throw error;
  }
}

/** Appends what comes, at most up to `total`; what came before it breaks off stays, on the disk. False where more came. */
async function appendPart(file: FileHandle, part: PhotographPut): Promise<boolean> {
  let at = part.from;
  try {
    for await (const chunk of part.body) {
      if (at + chunk.length > part.total) return false;
      await file.write(chunk, 0, chunk.length, at);
      at += chunk.length;
    }
  } catch (error) {
    // what stopped it is what is told, not that the disk could not be reached afterwards either
    await file.sync().catch(() => undefined);
    throw error;
  }
  await file.sync();
  return true;
}

async function hashOfFile(path: string): Promise<string> {
  const hash = createHash("sha256");
  for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
  return hash.digest("hex");
}

/** The new name stands even after a power cut. */
async function moveInto(from: string, to: string): Promise<void> {
  await mkdir(dirname(to), { recursive: true, mode: 0o700 });
  await rename(from, to);
  const folder = await open(dirname(to), "r");
  try {
    await folder.sync();
  } finally {
    await folder.close();
  }
}

/** Photographs in a folder, apart for each depot, the original unaltered under its hash. One server process owns the folder. */
export function localFiles(folder: string, maxBytes: number): PhotographFiles {
  const inTurn = makeQueues();

  const kept = async (place: Place, again: boolean): Promise<PhotographAnswer> => {
    const picture = await measureJpeg(place.original);
    if (picture === null) throw new Error(`${place.original}: kept before, and cannot be read now`);
    return { state: "kept", again, bytes: await sizeOf(place.original), ...picture };
  };

  async function take(place: Place, part: PhotographPut): Promise<PhotographAnswer> {
    if ((await sizeOf(place.original)) >= 0) return kept(place, true);
    const received = Math.max(0, await sizeOf(place.part));
    const refuse = (why: Extract<PhotographAnswer, { state: "refused" }>["why"], stays: number) =>
      ({ state: "refused", why, received: stays, maxBytes }) as const;
    if (!Number.isSafeInteger(part.total) || part.total > maxBytes) return refuse("tooLarge", received);
    if (part.total < 1 || (part.from !== 0 && part.from !== received)) return refuse("badRange", received);
    await mkdir(dirname(place.part), { recursive: true, mode: 0o700 });
    const file = await open(place.part, part.from === 0 ? "w" : "r+", 0o600);
    const fits = await appendPart(file, part).finally(() => file.close());
    if (!fits) {
      await rm(place.part, { force: true });
      return refuse("badRange", 0);
    }
    const now = await sizeOf(place.part);
    if (now < part.total) return { state: "partial", received: now };
    const why = await whyNot(place.part, part);
    if (why !== null) {
      await rm(place.part, { force: true });
      return refuse(why, 0);
    }
    await moveInto(place.part, place.original);
    return kept(place, false);
  }

  async function whyNot(path: string, part: PhotographPut): Promise<"hashDiffers" | "notJpeg" | null> {
    if ((await hashOfFile(path)) !== part.sha256) return "hashDiffers";
    if ((await fileTypeFromFile(path))?.mime !== "image/jpeg") return "notJpeg";
    return (await measureJpeg(path)) === null ? "notJpeg" : null;
  }

  async function pathOf(place: Place, size: PhotographSize): Promise<string | null> {
    if ((await sizeOf(place.original)) < 0) return null;
    if (size === "original") return place.original;
    const smaller = place.smaller(size);
    if ((await sizeOf(smaller)) >= 0) return smaller;
    const fresh = `${smaller}.${randomBytes(6).toString("hex")}`;
    await writeFile(fresh, await shrinkJpeg(place.original, Number(size)), { mode: 0o600 });
    await rename(fresh, smaller);
    return smaller;
  }

  return {
    maxBytes,
    async put(part) {
      const place = placeOf(folder, part.scope, part.sha256);
      if (place === null) return { state: "refused", why: "badHash", received: 0, maxBytes };
      return inTurn(place.original, () => take(place, part));
    },
    async status(scope, sha256) {
      const place = placeOf(folder, scope, sha256);
      if (place === null) return { state: "absent", received: 0 };
      const whole = await sizeOf(place.original);
      if (whole >= 0) return { state: "kept", received: whole };
      const received = await sizeOf(place.part);
      return received < 0 ? { state: "absent", received: 0 } : { state: "partial", received };
    },
    async open(scope, sha256, size) {
      const place = placeOf(folder, scope, sha256);
      if (place === null) return null;
      const path = await inTurn(place.original, () => pathOf(place, size));
      if (path === null) return null;
      return { stream: createReadStream(path), bytes: await sizeOf(path), type: "image/jpeg" };
    },
    async remove(scope, sha256) {
      const place = placeOf(folder, scope, sha256);
      if (place === null) return false;
      return inTurn(place.original, async () => {
        const was = (await sizeOf(place.original)) >= 0;
        for (const path of [place.original, place.part, place.smaller("1600"), place.smaller("320")]) {
          await rm(path, { force: true });
        }
        return was;
      });
    },
    async *each() {
      for (const path of await filesBelow(folder)) {
        const named = scopeOfPath(relative(folder, path).split(sep).join("/"));
        if (named !== null) yield named;
      }
    },
  };
}

/** Paths of all files, in order; none where there is no such folder. */
async function filesBelow(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code === "ENOENT") return [];
      throw error;
    },
  );
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}
