import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliCompressSync, brotliDecompressSync } from "node:zlib";
import Fastify from "fastify";
import { afterAll, describe, expect, it } from "vitest";
import { registerWeb } from "./web-pages.ts";

const folder = mkdtempSync(join(tmpdir(), "setfair-web-"));
afterAll(() => rmSync(folder, { recursive: true }));
const script = "export const words = 1;";
mkdirSync(join(folder, "assets"));
for (const page of ["index.html", "yard.html", "guide.html"])
  writeFileSync(join(folder, page), `<title>${page}</title>`);
writeFileSync(join(folder, "assets/a-1234abcd.js"), script);
writeFileSync(join(folder, "assets/a-1234abcd.js.br"), brotliCompressSync(script));
writeFileSync(join(folder, "guide.html.br"), brotliCompressSync("<title>guide.html</title>"));
const app = Fastify();
await registerWeb(app, folder);
const get = (url: string, encoding = "") => app.inject({ url, headers: { "accept-encoding": encoding } });

describe("files of the built application", () => {
  it("come as the build pressed them where the browser takes that, else as they are", async () => {
    const url = "/assets/a-1234abcd.js";
    const pressed = await get(url, "gzip, br");
    expect(pressed.headers["content-encoding"]).toBe("br");
    expect(pressed.headers["content-type"]).toContain("javascript");
    expect(brotliDecompressSync(pressed.rawPayload).toString()).toBe(script);
    const plain = await get(url);
    expect(plain.headers["content-encoding"]).toBeUndefined();
    expect(plain.body).toBe(script);
    for (const answer of [pressed, plain]) {
      expect(answer.headers.vary).toContain("accept-encoding");
      expect(answer.headers["cache-control"]).toBe("public, max-age=31536000, immutable");
    }
  });

  it("answer an address of the hirer's link with the guide, asked for anew each time", async () => {
    const pressed = await get("/g/some-token", "br");
    expect(brotliDecompressSync(pressed.rawPayload).toString()).toContain("guide.html");
    expect(pressed.headers["cache-control"]).toBe("no-cache");
    expect((await get("/yard/day")).body).toContain("yard.html");
    expect((await get("/assets/none.js")).statusCode).toBe(404);
  });
});
