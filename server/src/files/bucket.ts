import { setTimeout as sleep } from "node:timers/promises";
import { Refusal } from "../api/refusal.ts";
import type { BucketAccess } from "./read-bucket-access.ts";
import { signRequest, type ToSign } from "./sign-request.ts";

/** Milliseconds in which an answer is whole. */
const TIMES = {
  /** a question with a short answer */
  shortMs: 10_000,
  /** what carries a photograph: so long, and a second more for each {@link BYTES_PER_SECOND} */
  longMs: 30_000,
} as const;
/** The slowest line that is waited for, 1.6 Mbit/s. */
const BYTES_PER_SECOND = 200_000;
const MOST_BYTES = 25_000_000;
/** Pauses before it is tried again, milliseconds; every request here may be made twice. */
const PAUSES_MS = [200, 1_000] as const;

export interface Listed {
  readonly key: string;
  readonly bytes: number;
}

/** Objects of one bucket under one prefix, by key. Every call ends within its time, and throws where the store fails. */
export interface Bucket {
  /** the metadata it was put with; null where there is no such object */
  head(key: string): Promise<{ readonly bytes: number; readonly about: string } | null>;
  get(key: string): Promise<Buffer | null>;
  /** `sha256` in hex is signed, so that the store can refuse what changed on the way; `about` is kept beside it */
  put(key: string, body: Buffer, sha256: string, about?: string): Promise<void>;
  /** Removing what is not there is no failure. */
  remove(key: string): Promise<void>;
  /** Objects whose key begins so, in the order of their keys; `bytes` as stored. */
  list(prefix: string): AsyncIterable<Listed>;
}

/** The store could not do it: whoever asked hears that something outside failed, the log what it said, never a key. */
class StoreFailed extends Refusal {
  constructor(what: string, cause?: unknown) {
    super("outsideFailed");
    this.message = `SETFAIR_FILES_URL: ${what}`;
    this.cause = cause;
  }
}

interface Asked extends ToSign {
  readonly body?: Buffer;
  readonly ms: number;
}
interface Answer {
  readonly status: number;
  readonly headers: Headers;
  readonly body: Buffer;
}

const ABOUT = "x-amz-meta-about";

/**
 * Speaks to an S3-compatible store: each request is signed with Signature Version 4, and tried again
 * after a failure of the line or of the store (5xx, 429).
 * @param pauses between tries, milliseconds
 * @param times in which an answer has to be whole, milliseconds
 */
export function openBucket(
  access: BucketAccess,
  pauses: readonly number[] = PAUSES_MS,
  times: { readonly shortMs: number; readonly longMs: number } = TIMES,
): Bucket {
  const { prefix } = access;
  const { shortMs, longMs } = times;
  const timeFor = (bytes: number) => longMs + Math.round((1000 * bytes) / BYTES_PER_SECOND);

  async function once(asked: Asked): Promise<Answer> {
    const { method, body, ms } = asked;
    const signed = await signRequest(access, asked);
    const response = await fetch(signed.url, {
      method,
      headers: signed.headers,
      redirect: "error",
      signal: AbortSignal.timeout(ms),
      ...(body === undefined ? {} : { body: body as Uint8Array<ArrayBuffer> }),
    });
    return {
      status: response.status,
      headers: response.headers,
      body: Buffer.from(await response.arrayBuffer()),
    };
  }

  async function ask(asked: Asked): Promise<Answer> {
    for (let tried = 0; ; tried++) {
      const pause = pauses[tried];
      try {
        const answer = await once(asked);
        if (pause === undefined || !(answer.status >= 500 || answer.status === 429)) return answer;
      } catch (error) {
        // what had minutes to come is not waited for again: whoever asked would have gone
        if (pause === undefined || (isLate(error) && asked.ms > shortMs))
          throw new StoreFailed(`${asked.method}: ${reasonOf(error, asked.ms)}`, error);
      }
      await sleep(pause + Math.random() * pause);
    }
  }

  const refuse = ({ method }: Asked, { status, body }: Answer): never => {
    const code = /<Code>([A-Za-z]{1,60})<\/Code>/.exec(body.toString("utf8", 0, 4000))?.[1];
    throw new StoreFailed(`${method}: ${status}${code === undefined ? "" : ` ${code}`}`);
  };
  /** Null for 404. A bucket that is not there answers 404 too, and must not pass for an absent photograph. */
  async function find(asked: Asked): Promise<Answer | null> {
    const answer = await ask(asked);
    if (answer.status === 200) return answer;
    if (answer.status === 404 && !answer.body.includes("NoSuchBucket")) return null;
    return refuse(asked, answer);
  }

  return {
    async head(key) {
      const answer = await find({ method: "HEAD", key: `${prefix}${key}`, ms: shortMs });
      if (answer === null) return null;
      const bytes = Number(answer.headers.get("content-length"));
      return { bytes, about: answer.headers.get(ABOUT) ?? "" };
    },
    async get(key) {
      const answer = await find({
        method: "GET",
        key: `${prefix}${key}`,
        ms: timeFor(MOST_BYTES),
      });
      return answer?.body ?? null;
    },
    async put(key, body, sha256, about = "") {
      const headers = {
        "content-type": "image/jpeg",
        "x-amz-content-sha256": sha256,
        ...(about === "" ? {} : { [ABOUT]: about }),
      };
      const ms = timeFor(body.length);
      const asked: Asked = { method: "PUT", key: `${prefix}${key}`, headers, body, ms };
      const answer = await ask(asked);
      if (answer.status !== 200) refuse(asked, answer);
    },
    async remove(key) {
      const asked: Asked = { method: "DELETE", key: `${prefix}${key}`, ms: shortMs };
      const answer = await ask(asked);
      if (answer.status !== 204 && answer.status !== 200 && answer.status !== 404) refuse(asked, answer);
    },
    async *list(under) {
      let token: string | undefined;
      do {
        const query = {
          "list-type": "2",
          prefix: `${prefix}${under}`,
          ...(token === undefined ? {} : { "continuation-token": token }),
        };
        const asked: Asked = { method: "GET", key: "", query, ms: shortMs };
        const answer = await ask(asked);
        if (answer.status !== 200) refuse(asked, answer);
        const page = readListing(answer.body.toString("utf8"));
        for (const { key, bytes } of page.objects) yield { key: key.slice(prefix.length), bytes };
        token = page.next;
      } while (token !== undefined);
    },
  };
}

const isLate = (error: unknown): boolean => error instanceof Error && error.name === "TimeoutError";

function reasonOf(error: unknown, ms: number): string {
  if (!(error instanceof Error)) return "no answer";
  if (isLate(error)) return `no answer within ${Math.round(ms / 1000)} s`;
  const { cause } = error;
  const code = cause instanceof Error && "code" in cause ? String(cause.code) : error.message;
  return `no answer (${code})`;
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&amp;": "&",
  "&lt;": "<",
  "&gt;": ">",
  "&quot;": '"',
  "&apos;": "'",
};
const plain = (xml: string) =>
  xml.replaceAll(/&(amp|lt|gt|quot|apos);/g, (entity) => ENTITIES[entity] ?? entity);
const inside = (xml: string, tag: string) => {
  const found = new RegExp(`<${tag}>([^<]*)</${tag}>`).exec(xml)?.[1];
  return found === undefined ? undefined : plain(found);
};

/** One page of a listing (ListObjectsV2). Our keys are letters, digits, `.`, `-`, `_` and `/`, so nothing in it is nested. */
function readListing(xml: string): {
  readonly objects: readonly Listed[];
  readonly next: string | undefined;
} {
  if (!xml.includes("<ListBucketResult")) throw new StoreFailed("GET: an answer that is no listing");
  const objects = [...xml.matchAll(/<Contents>(.*?)<\/Contents>/gs)].flatMap(([, each = ""]) => {
    const [key, bytes] = [inside(each, "Key"), Number(inside(each, "Size"))];
    return key === undefined || !Number.isSafeInteger(bytes) ? [] : [{ key, bytes }];
  });
  const isCut = inside(xml, "IsTruncated") === "true";
  const next = isCut ? inside(xml, "NextContinuationToken") : undefined;
  if (isCut && next === undefined)
    throw new StoreFailed("GET: a listing that was cut and cannot be gone on with");
  return { objects, next };
}
