import { Readable } from "node:stream";
import { readContentRange } from "../../files/content-range.ts";
import type { PhotographAnswer, PhotographSize } from "../../files/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";

const SIZES = { small: "320", large: "1600", original: "original" } as const satisfies Record<
  string,
  PhotographSize
>;

const WRONG = {
  badHash: ["sha256", "expected 64 lower-case hexadecimal digits"],
  badRange: ["content-range", "expected the bytes that follow what is here"],
  notJpeg: ["body", "expected a JPEG photograph"],
  hashDiffers: ["sha256", "expected the hash of these very bytes"],
} as const;

function refusalOfPhotograph(answer: Extract<PhotographAnswer, { state: "refused" }>): Refusal {
  if (answer.why === "tooLarge") {
    const most = Math.floor(answer.maxBytes / 1_000_000);
    return new Refusal("tooLarge", { problems: [{ path: "body", expected: `at most ${most} MB` }] });
  }
  const [path, expected] = WRONG[answer.why];
  return new Refusal("notAPhotograph", { problems: [{ path, expected }] });
}

export const photographHandlers = {
  /** Kept unaltered under its hash; sent again, nothing happens twice. */
  async putPhoto({ context, signed, params, query, body, request }) {
    const stream: unknown = body;
    if (!(stream instanceof Readable)) throw badField("content-type", "expected image/jpeg");
    const length = request.headers["content-length"];
    const range = readContentRange(
      request.headers["content-range"],
      length === undefined ? undefined : Number(length),
    );
    if (range === null)
      throw badField("content-range", "expected bytes first-last/total, or a Content-Length");
    if (query.hire !== undefined && (await signed.store.hires.get(query.hire)) === null)
      throw badField("hire", "expected a hire of this depot");
    const answer = await context.files.put({
      scope: signed.scope,
      sha256: params.sha256,
      ...range,
      body: stream,
    });
    if (answer.state === "refused") throw refusalOfPhotograph(answer);
    if (answer.state === "partial") return { state: "partial", received: answer.received, again: false };
    await signed.store.photographs.add({
      sha256: params.sha256,
      bytes: answer.bytes,
      widthPx: answer.widthPx,
      heightPx: answer.heightPx,
      hireId: query.hire ?? null,
      takenAt: null,
    });
    return { state: "kept", received: answer.bytes, again: answer.again };
  },

  async readPhoto({ context, signed, params, query, reply }) {
    const found = await context.files.open(signed.scope, params.sha256, SIZES[query.size]);
    if (found === null) throw new Refusal("notFound");
    reply
      .header("cache-control", "private, max-age=31536000, immutable")
      .header("content-length", found.bytes)
      .type(found.type);
    await reply.send(found.stream);
    return undefined;
  },

  /** 200 when all of it is here; else 404, with how many bytes came in `setfair-received`. */
  async headPhoto({ context, signed, params, reply }) {
    const { state, received } = await context.files.status(signed.scope, params.sha256);
    await reply
      .status(state === "kept" ? 200 : 404)
      .header("setfair-received", received)
      .send();
    return undefined;
  },
} satisfies Partial<Handlers>;
