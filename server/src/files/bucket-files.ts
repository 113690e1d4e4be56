import { createHash } from "node:crypto";
import { Readable } from "node:stream";
import { fileTypeFromBuffer } from "file-type";
import type { Scope } from "../store/types.ts";
import type { Bucket } from "./bucket.ts";
import { measureJpeg, shrinkJpeg } from "./derive.ts";
import { isPhotographName, pathOfOriginal, scopeOfPath } from "./names.ts";
import { makeQueues } from "./queues.ts";
import type { PhotographAnswer, PhotographFiles, PhotographPut, PhotographSize } from "./types.ts";

/** What came so far of photographs; nothing under it is needed once no upload is under way. */
const INCOMING = "incoming/";
const SIZES: readonly PhotographSize[] = ["1600", "320"];
const sha256Of = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");

interface Piece {
  readonly key: string;
  readonly from: number;
  readonly to: number;
}

/** Keys of one photograph. */
interface Place {
  readonly original: string;
  readonly incoming: string;
  readonly smaller: (size: PhotographSize) => string;
}

function placeOf(scope: Scope, sha256: string): Place | null {
  if (!isPhotographName(scope, sha256)) return null;
  const original = pathOfOriginal(scope, sha256);
  return {
    original,
    incoming: `${INCOMING}${scope.firmId}/${scope.depotId}/${sha256}/`,
    smaller: (size) => original.replace(/jpg$/, `${size}.jpg`),
  };
}

const piecesSchema = /\/(\d{12})-(\d{12})$/;

/** Pieces that follow each other from the first byte; those behind a gap, or within another, are of no use. */
export function chainOf(pieces: readonly Piece[]): readonly Piece[] {
  const chain: Piece[] = [];
  for (let at = 0; ; ) {
    const next = pieces
      .filter(({ from, to }) => from <= at && to > at)
      .reduce<Piece | null>((best, each) => (best === null || each.to > best.to ? each : best), null);
    if (next === null) return chain;
    chain.push(next);
    at = next.to;
  }
}

/** Reads at most so many bytes; what came before it breaks off is there with what broke it. */
async function readBody(body: AsyncIterable<Uint8Array>, most: number) {
  const chunks: Uint8Array[] = [];
  let length = 0;
  try {
    for await (const chunk of body) {
      length += chunk.length;
      if (length > most) return { bytes: Buffer.alloc(0), isTooMuch: true, broken: undefined };
      chunks.push(chunk);
    }
  } catch (broken) {
    return { bytes: Buffer.concat(chunks), isTooMuch: false, broken };
  }
  return { bytes: Buffer.concat(chunks), isTooMuch: false, broken: undefined };
}

/**
 * Photographs in a bucket, under the names that they have in a folder. What comes of a photograph that breaks off is
 * put there as a piece, so that another server may take what follows. Several processes may share a bucket: a
 * photograph is its hash, so whoever writes it twice writes the same. One photograph at a time is in memory for each
 * upload, at most `maxBytes`.
 */
export function bucketFiles(bucket: Bucket, maxBytes: number): PhotographFiles {
  const inTurn = makeQueues();

  async function piecesOf(place: Place): Promise<readonly Piece[]> {
    const pieces: Piece[] = [];
    for await (const { key } of bucket.list(place.incoming)) {
      const match = piecesSchema.exec(key);
      if (match !== null) pieces.push({ key, from: Number(match[1]), to: Number(match[2]) });
    }
    return pieces;
  }
  const receivedOf = (pieces: readonly Piece[]) => chainOf(pieces).at(-1)?.to ?? 0;

  async function dropPieces(place: Place): Promise<void> {
    for (const { key } of await piecesOf(place)) await bucket.remove(key);
  }

  async function keepPiece(place: Place, from: number, bytes: Buffer): Promise<void> {
    if (bytes.length === 0) return;
    const digits = (n: number) => String(n).padStart(12, "0");
    await bucket.put(
      `${place.incoming}${digits(from)}-${digits(from + bytes.length)}`,
      bytes,
      sha256Of(bytes),
    );
  }

  /** What lies before `from`; null where another process took it away meanwhile. */
  async function readPieces(chain: readonly Piece[], from: number): Promise<Buffer | null> {
    const parts: Buffer[] = [];
    let at = 0;
    for (const piece of chain) {
      if (at >= from) break;
      const bytes = await bucket.get(piece.key);
      if (bytes === null || bytes.length !== piece.to - piece.from) return null;
      parts.push(bytes.subarray(at - piece.from, Math.min(piece.to, from) - piece.from));
      at = Math.min(piece.to, from);
    }
    return at === from ? Buffer.concat(parts) : null;
  }

  async function keptBefore(place: Place): Promise<PhotographAnswer | null> {
    const head = await bucket.head(place.original);
    if (head === null) return null;
    const [widthPx = Number.NaN, heightPx = Number.NaN] = head.about.split("x").map(Number);
    if (widthPx > 0 && heightPx > 0)
      return { state: "kept", again: true, bytes: head.bytes, widthPx, heightPx };
    // copied there by other means, which brought no metadata
    const bytes = await bucket.get(place.original);
    if (bytes === null) return null;
    const picture = await measureJpeg(bytes);
    if (picture === null) throw new Error(`${place.original}: kept before, and cannot be read now`);
    return { state: "kept", again: true, bytes: bytes.length, ...picture };
  }

  async function take(place: Place, part: PhotographPut): Promise<PhotographAnswer> {
    const before = await keptBefore(place);
    if (before !== null) return before;
    const chain = chainOf(await piecesOf(place));
    const received = chain.at(-1)?.to ?? 0;
    const refuse = (why: Extract<PhotographAnswer, { state: "refused" }>["why"], stays: number) =>
      ({ state: "refused", why, received: stays, maxBytes }) as const;
    if (!Number.isSafeInteger(part.total) || part.total > maxBytes) return refuse("tooLarge", received);
    if (part.total < 1 || (part.from !== 0 && part.from !== received)) return refuse("badRange", received);
    if (part.from === 0 && received > 0) await dropPieces(place);
    const { bytes, isTooMuch, broken } = await readBody(part.body, part.total - part.from);
    if (isTooMuch) {
      await dropPieces(place);
      return refuse("badRange", 0);
    }
    const now = part.from + bytes.length;
    if (now < part.total || broken !== undefined) {
      await keepPiece(place, part.from, bytes);
      if (broken !== undefined) throw broken;
      return { state: "partial", received: now };
    }
    const first = await readPieces(chain, part.from);
    if (first === null) return refuse("badRange", receivedOf(await piecesOf(place)));
    return keepWhole(place, part.sha256, Buffer.concat([first, bytes]));
  }

  async function keepWhole(place: Place, sha256: string, whole: Buffer): Promise<PhotographAnswer> {
    const picture = await measureJpeg(whole);
    const isJpeg = (await fileTypeFromBuffer(whole))?.mime === "image/jpeg";
    const why = sha256Of(whole) !== sha256 ? "hashDiffers" : isJpeg && picture !== null ? null : "notJpeg";
    if (why === null && picture !== null)
      await bucket.put(place.original, whole, sha256, `${picture.widthPx}x${picture.heightPx}`);
    await dropPieces(place);
    if (why !== null || picture === null)
      return { state: "refused", why: why ?? "notJpeg", received: 0, maxBytes };
    return { state: "kept", again: false, bytes: whole.length, ...picture };
  }

  /** Where the original went while this was made, what was made goes too: another process may have removed it. */
  async function bytesOf(place: Place, size: PhotographSize): Promise<Buffer | null> {
    if (size === "original") return bucket.get(place.original);
    const key = place.smaller(size);
    const made = await bucket.get(key);
    if (made !== null) return made;
    const original = await bucket.get(place.original);
    if (original === null) return null;
    const small = await shrinkJpeg(original, Number(size));
    await bucket.put(key, small, sha256Of(small));
    if ((await bucket.head(place.original)) !== null) return small;
    await bucket.remove(key);
    return null;
  }

  return {
    maxBytes,
    async put(part) {
      const place = placeOf(part.scope, part.sha256);
      if (place === null) return { state: "refused", why: "badHash", received: 0, maxBytes };
      return inTurn(place.original, () => take(place, part));
    },
    async status(scope, sha256) {
      const place = placeOf(scope, sha256);
      if (place === null) return { state: "absent", received: 0 };
      const head = await bucket.head(place.original);
      if (head !== null) return { state: "kept", received: head.bytes };
      const received = receivedOf(await piecesOf(place));
      return received === 0 ? { state: "absent", received } : { state: "partial", received };
    },
    async open(scope, sha256, size) {
      const place = placeOf(scope, sha256);
      if (place === null) return null;
      const bytes = await inTurn(place.original, () => bytesOf(place, size));
      if (bytes === null) return null;
      return { stream: Readable.from([bytes]), bytes: bytes.length, type: "image/jpeg" };
    },
    async remove(scope, sha256) {
      const place = placeOf(scope, sha256);
      if (place === null) return false;
      return inTurn(place.original, async () => {
        const was = (await bucket.head(place.original)) !== null;
        // the original first: whoever makes a smaller one meanwhile looks for it afterwards
        await bucket.remove(place.original);
        for (const size of SIZES) await bucket.remove(place.smaller(size));
        await dropPieces(place);
        return was;
      });
    },
    async *each() {
      for await (const { key } of bucket.list("")) {
        const named = scopeOfPath(key);
        if (named !== null) yield named;
      }
    },
  };
}
