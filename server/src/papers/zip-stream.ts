import { Readable } from "node:stream";
import { Zip, ZipDeflate, ZipPassThrough } from "fflate";

/** One file of an archive; bytes are asked for only when their turn has come. */
export interface ZipEntry {
  /** with `/` between folders, never beginning with one */
  readonly path: string;
  readonly modified: Date;
  /** left as it is, because it is packed already, as a JPEG is */
  readonly asIs: boolean;
  open(): Promise<AsyncIterable<Uint8Array>>;
}

/** Packs files one after the other as they are read, so that only one piece is in memory at a time. */
export function zipStream(entries: AsyncIterable<ZipEntry>): Readable {
  return Readable.from(pieces(entries), { objectMode: false });
}

async function* pieces(entries: AsyncIterable<ZipEntry>): AsyncGenerator<Uint8Array> {
  let ready: Uint8Array[] = [];
  let failed: Error | null = null;
  const zip = new Zip((error, piece) => {
    if (error !== null) failed = error;
    else ready.push(piece);
  });
  const take = (): Uint8Array[] => {
    if (failed !== null) throw failed;
    const taken = ready;
    ready = [];
    return taken;
  };
  for await (const { path, modified, asIs, open } of entries) {
    const file = asIs ? new ZipPassThrough(path) : new ZipDeflate(path, { level: 6 });
    file.mtime = modified;
    zip.add(file);
    for await (const chunk of await open()) {
      file.push(chunk);
      yield* take();
    }
    file.push(new Uint8Array(), true);
    yield* take();
  }
  zip.end();
  yield* take();
}
