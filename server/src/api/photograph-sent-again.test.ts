import { createHash } from "node:crypto";
import { Readable } from "node:stream";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { makeJpeg } from "./lived-hire-for-tests.ts";

describe("a photograph whose server was ended at the very end", () => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());
  const hashOf = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");
  const send = async (
    method: "HEAD" | "PUT",
    sha256: string,
    payload?: Buffer,
    headers: Readonly<Record<string, string>> = {},
  ) => {
    const { statusCode, headers: answered } = await depot.app.inject({
      method,
      url: `/api/photos/${sha256}`,
      headers: { cookie: depot.cookie("yard"), "content-type": "image/jpeg", ...headers },
      ...(payload === undefined ? {} : { payload }),
    });
    return [statusCode, Number(answered["setfair-received"] ?? -1)];
  };

  it("after the file and before it was known, is asked for again and then known", async () => {
    const bytes = await makeJpeg();
    const sha256 = hashOf(bytes);
    const whole = { scope: depot.scope, sha256, from: 0, total: bytes.length };
    await depot.context.files.put({ ...whole, body: Readable.from([bytes]) });
    expect(await send("HEAD", sha256)).toEqual([404, 0]);
    expect((await send("PUT", sha256, bytes))[0]).toBe(200);
    expect(await send("HEAD", sha256)).toEqual([200, bytes.length]);
    expect((await depot.store.photographs.get(sha256))?.bytes).toBe(bytes.length);
  });

  it("after the last byte and before the answer, is taken with no byte more", async () => {
    const bytes = await makeJpeg();
    const sha256 = hashOf(bytes);
    async function* breaking() {
      yield bytes;
      throw new Error("ended");
    }
    const part = { scope: depot.scope, sha256, from: 0, total: bytes.length, body: breaking() };
    await depot.context.files.put(part).catch(() => undefined);
    expect(await send("HEAD", sha256)).toEqual([404, bytes.length]);
    const rest = { "content-range": `bytes */${bytes.length}`, "content-length": "0" };
    expect((await send("PUT", sha256, Buffer.alloc(0), rest))[0]).toBe(200);
    expect(await send("HEAD", sha256)).toEqual([200, bytes.length]);
  });
});
