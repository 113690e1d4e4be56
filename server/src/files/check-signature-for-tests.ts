/** For tests only: checks a request as a store does, by the published description and with nothing of what signs. */
import { createHash, createHmac, timingSafeEqual } from "node:crypto";
import type { IncomingHttpHeaders } from "node:http";

const hmac = (key: Buffer | string, text: string) => createHmac("sha256", key).update(text).digest();
const hashOf = (text: string) => createHash("sha256").update(text).digest("hex");
const encoded = (text: string) =>
  encodeURIComponent(text).replaceAll(
    /[!'()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  );

export interface Came {
  readonly method: string;
  /** path and query as they came */
  readonly url: string;
  readonly headers: IncomingHttpHeaders;
}

/**
 * Whether the Authorization header fits the request, by Signature Version 4.
 * @source "Authenticating Requests: Using the Authorization Header" of the S3 interface: canonical request, string to sign, signing key
 */
export function isSignedWith(secret: string, { method, url, headers }: Came): boolean {
  const found =
    /^AWS4-HMAC-SHA256 Credential=[^/]+\/(\d{8})\/([^/]+)\/s3\/aws4_request, ?SignedHeaders=([^,]+), ?Signature=([0-9a-f]{64})$/.exec(
      headers.authorization ?? "",
    );
  if (found === null) return false;
  const [, day = "", region = "", names = "", signature = ""] = found;
  const { pathname, searchParams } = new URL(url, "http://host");
  const query = [...searchParams]
    .map(([name, value]) => `${encoded(name)}=${encoded(value)}`)
    .sort()
    .join("&");
  const signed = names.split(";").map((name) => `${name}:${String(headers[name] ?? "").trim()}\n`);
  const payload = String(headers["x-amz-content-sha256"]);
  const canonical = [method, pathname, query, signed.join(""), names, payload].join("\n");
  const scope = `${day}/${region}/s3/aws4_request`;
  const toSign = ["AWS4-HMAC-SHA256", String(headers["x-amz-date"]), scope, hashOf(canonical)].join("\n");
  const key = [region, "s3", "aws4_request"].reduce(hmac, hmac(`AWS4${secret}`, day));
  return timingSafeEqual(hmac(key, toSign), Buffer.from(signature, "hex"));
}
