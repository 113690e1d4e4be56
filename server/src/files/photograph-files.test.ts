import { createHash, randomBytes } from "node:crypto";
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openBucket } from "./bucket.ts";
import { readContentRange } from "./content-range.ts";
import { openFiles } from "./open-files.ts";
import { startStore } from "./store-for-tests.ts";
import type { PhotographFiles } from "./types.ts";

const scope = { firmId: "firm-1", depotId: "depot-1" };
const hashOf = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");

/** A picture of noise, so that it is of some size, with a place and a turn in its metadata. */
async function photograph(width = 400, height = 300): Promise<Buffer> {
  return sharp(randomBytes(width * height * 3), { raw: { width, height, channels: 3 } })
    .withExif({ IFD0: { Model: "INVENTED-CAMERA" } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
}

async function* inChunks(bytes: Buffer, size = 1000): AsyncGenerator<Buffer> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}
async function* breaking(bytes: Buffer): AsyncGenerator<Buffer> {
  yield bytes;
  throw new Error("line broke off");
}
async function readAll(stream: AsyncIterable<unknown>): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

interface TestFiles {
  /** opened as often as needed, as by another process */
  open(): PhotographFiles;
  /** names of everything that is there, what is arriving too */
  names(): Promise<readonly string[]>;
  close(): Promise<void>;
}

async function inFolder(): Promise<TestFiles> {
  const folder = await mkdtemp(join(tmpdir(), "setfair-files-"));
  const files = openFiles({ dataFolder: folder, maxMb: 1 });
  return {
    // one process owns the folder
    open: () => files,
    async names() {
      const found = await readdir(folder, { recursive: true, withFileTypes: true });
      return found.filter((each) => each.isFile()).map((each) => join(each.parentPath, each.name));
    },
    close: () => rm(folder, { recursive: true, force: true }),
  };
}

async function inStore(): Promise<TestFiles> {
  const store = await startStore();
  return {
    open: () => openFiles({ dataFolder: "/nonexistent", bucket: store.access, maxMb: 1 }),
    async names() {
      const names: string[] = [];
      for await (const { key } of openBucket(store.access).list("")) names.push(key);
      return names;
    },
    close: () => store.close(),
  };
}

describe.each([
  ["in a folder", inFolder],
  ["in an S3-compatible store", inStore],
])("photographs %s", (_name, start) => {
  let place: TestFiles;
  let files: PhotographFiles;
  let jpeg: Buffer;
  let sha256: string;

  beforeAll(async () => {
    place = await start();
    files = place.open();
    jpeg = await photograph();
    sha256 = hashOf(jpeg);
  });
  afterAll(() => place.close());

  const put = (bytes: Buffer, more: Partial<Parameters<PhotographFiles["put"]>[0]> = {}) =>
    files.put({ scope, sha256: hashOf(bytes), from: 0, total: bytes.length, body: inChunks(bytes), ...more });

  test("one is kept unaltered, and sent again is the same one", async () => {
    expect(await put(jpeg)).toEqual({
      state: "kept",
      again: false,
      bytes: jpeg.length,
      widthPx: 300,
      heightPx: 400,
    });
    expect(await put(jpeg)).toMatchObject({ state: "kept", again: true });
    const opened = await files.open(scope, sha256, "original");
    expect(opened?.bytes).toBe(jpeg.length);
    expect((await readAll(opened!.stream)).equals(jpeg)).toBe(true);
    expect(await files.status(scope, sha256)).toEqual({ state: "kept", received: jpeg.length });
  });

  test("smaller pictures are turned the right way and carry nothing of the original's metadata", async () => {
    expect((await sharp(jpeg).metadata()).exif).toBeDefined();
    for (const size of ["320", "1600"] as const) {
      const small = await readAll((await files.open(scope, sha256, size))!.stream);
      const { width, height, exif, format } = await sharp(small).metadata();
      expect({ width, height, exif, format }).toEqual({
        width: size === "320" ? 240 : 300,
        height: size === "320" ? 320 : 400,
        exif: undefined,
        format: "jpeg",
      });
      expect(small.includes("INVENTED-CAMERA")).toBe(false);
    }
  });

  test("another depot does not see it", async () => {
    const other = { firmId: "firm-1", depotId: "depot-2" };
    expect(await files.open(other, sha256, "original")).toBeNull();
    expect(await files.status(other, sha256)).toEqual({ state: "absent", received: 0 });
  });

  test("what is no photograph is refused, and nothing of it stays", async () => {
    const before = (await place.names()).length;
    const text = Buffer.from("this is a text file");
    expect(await put(text)).toMatchObject({ state: "refused", why: "notJpeg" });
    const png = await sharp({ create: { width: 9, height: 9, channels: 3, background: "red" } })
      .png()
      .toBuffer();
    expect(await put(png)).toMatchObject({ state: "refused", why: "notJpeg" });
    const half = jpeg.subarray(0, jpeg.length >> 1);
    expect(await put(half)).toMatchObject({ state: "refused", why: "notJpeg" });
    const onlyBegins = Buffer.concat([jpeg.subarray(0, 20), randomBytes(5000)]);
    expect(await put(onlyBegins)).toMatchObject({ state: "refused", why: "notJpeg" });
    const other = await photograph(50, 50);
    expect(await put(other, { sha256: "0".repeat(64) })).toMatchObject({
      state: "refused",
      why: "hashDiffers",
      received: 0,
    });
    expect(await put(other, { sha256: "../../../etc/passwd" })).toMatchObject({
      state: "refused",
      why: "badHash",
    });
    expect(await put(other, { total: 2_000_000 })).toMatchObject({
      state: "refused",
      why: "tooLarge",
      maxBytes: 1_000_000,
    });
    expect(await put(other, { total: 0 })).toMatchObject({ state: "refused", why: "badRange" });
    expect(await put(other, { total: 100 })).toMatchObject({
      state: "refused",
      why: "badRange",
      received: 0,
    });
    expect((await place.names()).length).toBe(before);
  });

  test("a line that breaks off loses nothing that came, and nothing is seen until all is there", async () => {
    const other = await photograph(60, 40);
    const name = hashOf(other);
    const first = other.subarray(0, 700);
    await expect(put(other, { body: breaking(first) })).rejects.toThrow("line broke off");
    expect(await files.status(scope, name)).toEqual({ state: "partial", received: 700 });
    expect(await files.open(scope, name, "320")).toBeNull();
    expect(await put(other, { from: 300, body: inChunks(other.subarray(300)) })).toMatchObject({
      why: "badRange",
      received: 700,
    });
    expect(await put(other, { from: 700, body: inChunks(other.subarray(700)) })).toMatchObject({
      state: "kept",
      again: false,
    });
  });

  test("in whatever parts it comes, begun anew or broken off, it ends whole", async () => {
    const other = await photograph(40, 40);
    const name = hashOf(other);
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.record({ size: fc.integer({ min: 1, max: 900 }), anew: fc.boolean(), breaks: fc.boolean() }),
          { maxLength: 6 },
        ),
        async (parts) => {
          await files.remove(scope, name);
          for (const { size, anew, breaks } of parts) {
            const { state, received } = await files.status(scope, name);
            if (state === "kept") break;
            const from = anew ? 0 : received;
            const bytes = other.subarray(from, from + size);
            await put(other, { from, body: breaks ? breaking(bytes) : inChunks(bytes, 100) }).catch(
              () => undefined,
            );
          }
          const { state, received } = await files.status(scope, name);
          const from = state === "kept" ? 0 : received;
          expect(await put(other, { from, body: inChunks(other.subarray(from)) })).toMatchObject({
            state: "kept",
            bytes: other.length,
          });
          expect((await readAll((await files.open(scope, name, "original"))!.stream)).equals(other)).toBe(
            true,
          );
        },
      ),
      { numRuns: 20 },
    );
  });

  test("sent by two at once it is kept once", async () => {
    const other = await photograph(70, 40);
    const answers = await Promise.all([put(other), put(other), put(other)]);
    expect(answers.map((answer) => answer.state)).toEqual(["kept", "kept", "kept"]);
    expect(answers.filter((answer) => answer.state === "kept" && !answer.again)).toHaveLength(1);
  });

  test("that came whole and was not taken, since the process ended, is taken with the rest of nothing", async () => {
    const other = await photograph(75, 40);
    const lines = breaking(other);
    await put(other, { body: lines }).catch(() => undefined);
    expect(await files.status(scope, hashOf(other))).toEqual({ state: "partial", received: other.length });
    expect(await put(other, { from: other.length, body: inChunks(Buffer.alloc(0)) })).toMatchObject({
      state: "kept",
      again: false,
    });
  });

  test("removed, it is gone with everything made of it", async () => {
    const other = await photograph(80, 40);
    await put(other);
    await files.open(scope, hashOf(other), "320").then((opened) => readAll(opened!.stream));
    expect(await files.remove(scope, hashOf(other))).toBe(true);
    expect(await files.remove(scope, hashOf(other))).toBe(false);
    expect((await place.names()).filter((name) => name.includes(hashOf(other)))).toEqual([]);
  });

  test("every original is named once, with its depot; nothing else is", async () => {
    const own = { firmId: "firm-9", depotId: "depot-9" };
    const some = await Promise.all([photograph(30, 20), photograph(31, 20)]);
    for (const each of some) await put(each, { scope: own });
    await readAll((await files.open(own, hashOf(some[0]!), "320"))!.stream);
    await put(await photograph(32, 20), { scope: own, body: breaking(Buffer.from([255])) }).catch(
      () => undefined,
    );
    const found: string[] = [];
    for await (const { scope: of, sha256: name } of files.each())
      if (of.depotId === own.depotId) found.push(`${of.firmId} ${name}`);
    expect(found.sort()).toEqual(some.map((each) => `firm-9 ${hashOf(each)}`).sort());
  });

  test("a part that came to one process is gone on with by another, and seen by both", async () => {
    const other = await photograph(90, 40);
    const [here, there] = [place.open(), place.open()];
    const part = { scope, sha256: hashOf(other), total: other.length };
    await here.put({ ...part, from: 0, body: inChunks(other.subarray(0, 900)) });
    expect(await there.status(scope, hashOf(other))).toEqual({ state: "partial", received: 900 });
    await there.put({ ...part, from: 900, body: inChunks(other.subarray(900)) });
    expect((await here.status(scope, hashOf(other))).state).toBe("kept");
    expect((await place.names()).filter((name) => name.includes("incoming"))).toHaveLength(
      // the part of the test before is still arriving
      1,
    );
  });
});

test("one that was copied into a store by other means, without its size, is there and is not taken anew", async () => {
  const store = await startStore();
  try {
    const files = openFiles({ dataFolder: "/nowhere", bucket: store.access });
    const bytes = await photograph(40, 30);
    const sha256 = hashOf(bytes);
    await openBucket(store.access).put(
      `${scope.firmId}/${scope.depotId}/${sha256.slice(0, 2)}/${sha256}.jpg`,
      bytes,
      sha256,
    );
    const again = await files.put({
      scope,
      sha256,
      from: 0,
      total: bytes.length,
      body: inChunks(bytes) as never,
    });
    // turned as its metadata says
    expect(again).toEqual({ state: "kept", again: true, bytes: bytes.length, widthPx: 30, heightPx: 40 });
    expect(store.asked.filter((each) => each.startsWith("PUT"))).toHaveLength(1);
  } finally {
    await store.close();
  }
});

test("the most bytes that are taken is a setting with bounds", () => {
  expect(() => openFiles({ dataFolder: "/nonexistent", maxMb: 0 })).toThrow(/1 to 200/);
});

describe("Content-Range", () => {
  test.each([
    ["bytes 0-99/1000", 100, { from: 0, total: 1000 }],
    ["bytes 100-999/1000", undefined, { from: 100, total: 1000 }],
    [undefined, 55, { from: 0, total: 55 }],
    [undefined, undefined, null],
    ["bytes 0-99/*", 100, null],
    ["bytes 5-4/10", 0, null],
    ["bytes 0-10/10", 11, null],
    ["bytes 0-9/10", 9, null],
    ["items 0-9/10", 10, null],
    ["bytes */1000", 0, { from: 1000, total: 1000 }],
    ["bytes */1000", undefined, null],
  ])("%s with a body of %s bytes", (header, length, expected) => {
    expect(readContentRange(header, length)).toEqual(expected);
  });
});
