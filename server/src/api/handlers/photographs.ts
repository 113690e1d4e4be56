import { Readable } from "node:stream";
import { createWords } from "@setfair/words";
import type { FastifyReply, FastifyRequest } from "fastify";
import { may } from "../../auth/roles.ts";
import type { AppContext } from "../../context.ts";
import { removedText } from "../../desk/removed-text.ts";
import { readContentRange } from "../../files/content-range.ts";
import type { PhotographAnswer, PhotographSize } from "../../files/types.ts";
import type { Removed, Scope, Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";

const words = createWords();
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

const whyRemoved = (removed: Removed): Refusal =>
  new Refusal("photographRemoved", { problems: [{ path: "sha256", expected: removedText(removed, words) }] });

/** What the device has of it is not wanted any more. */
const NOT_KEPT = { state: "removed" as const, received: 0, again: true };

interface Keeper {
  readonly scope: Scope;
  readonly store: Store;
  readonly hireId: string | null;
}

/** Takes the bytes that follow what is here of a photograph, under the hash of the whole. */
export async function takePhotograph(
  context: AppContext,
  { scope, store, hireId }: Keeper,
  sha256: string,
  { body, request }: { readonly body: unknown; readonly request: FastifyRequest },
) {
  if (!(body instanceof Readable)) throw badField("content-type", "expected image/jpeg");
  const length = request.headers["content-length"];
  const range = readContentRange(
    request.headers["content-range"],
    length === undefined ? undefined : Number(length),
  );
  if (range === null)
    throw badField(
      "content-range",
      "expected bytes first-last/total, bytes */total with no body where all came, or a Content-Length",
    );
  if (await wasRemoved(store, sha256)) {
    body.resume();
    return NOT_KEPT;
  }
  const answer = await context.files.put({ scope, sha256, ...range, body });
  if (answer.state === "refused") throw refusalOfPhotograph(answer);
  if (answer.state === "partial")
    return { state: "partial" as const, received: answer.received, again: false };
  const { bytes, widthPx, heightPx } = answer;
  const row = await store.photographs.add({ sha256, bytes, widthPx, heightPx, hireId, takenAt: null });
  if (row.removed !== null) {
    // removed while it came
    await context.files.remove(scope, sha256);
    return NOT_KEPT;
  }
  return { state: "kept" as const, received: bytes, again: answer.again };
}

const wasRemoved = async (store: Store, sha256: string): Promise<boolean> =>
  ((await store.photographs.get(sha256))?.removed ?? null) !== null;

/** How long a browser may show a photograph without asking again, seconds: a day, so that what was removed goes there too. */
const SHOWN_SECONDS = 86_400;

/** Sends a photograph that is here, in a size for screens or as it came. */
export async function sendPhotograph(
  context: AppContext,
  store: Store,
  sha256: string,
  size: keyof typeof SIZES,
  reply: FastifyReply,
): Promise<undefined> {
  const removed = (await store.photographs.get(sha256))?.removed ?? null;
  if (removed !== null) throw whyRemoved(removed);
  const found = await context.files.open(store.scope, sha256, SIZES[size]);
  if (found === null) throw new Refusal("notFound");
  reply
    .header("cache-control", `private, max-age=${SHOWN_SECONDS}`)
    .header("content-length", found.bytes)
    .type(found.type);
  await reply.send(found.stream);
  return undefined;
}

export const photographHandlers = {
  /** Kept unaltered under its hash; sent again, nothing happens twice. */
  async putPhoto({ context, signed, params, query, body, request }) {
    if (query.hire !== undefined && (await signed.store.hires.get(query.hire)) === null)
      throw badField("hire", "expected a hire of this depot");
    const { scope, store } = signed;
    return takePhotograph(context, { scope, store, hireId: query.hire ?? null }, params.sha256, {
      body,
      request,
    });
  },

  /** A photograph of a bill or a fine tells of sums and of who drove. */
  async readPhoto({ context, signed, params, query, reply }) {
    const isKept =
      !may(signed.account.role, "customer.see") && (await signed.store.photographs.isPaper(params.sha256));
    if (isKept) throw new Refusal("notAllowed");
    return sendPhotograph(context, signed.store, params.sha256, query.size, reply);
  },

  /** 200 when all of it is here; else 404, with how many bytes came in `setfair-received`. */
  async headPhoto({ context, signed, params, reply }) {
    const { state, received } = await context.files.status(signed.scope, params.sha256);
    const row = await signed.store.photographs.get(params.sha256);
    // a process that was ended after the file and before the row: sent again, it becomes known
    const isKnown = row !== null && row.removed === null;
    await reply
      .status(state === "kept" && isKnown ? 200 : 404)
      .header("setfair-received", state === "partial" ? received : isKnown ? received : 0)
      .send();
    return undefined;
  },
} satisfies Partial<Handlers>;
