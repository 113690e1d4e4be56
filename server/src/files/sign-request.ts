import { AwsV4Signer } from "aws4fetch";
import type { BucketAccess } from "./read-bucket-access.ts";

/** SHA-256 of nothing: what a request without a body is signed with. */
const OF_NOTHING = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

export interface ToSign {
  readonly method: "GET" | "HEAD" | "PUT" | "DELETE";
  /** whole key of an object; empty for the bucket itself */
  readonly key: string;
  readonly query?: Readonly<Record<string, string>>;
  readonly headers?: Readonly<Record<string, string>>;
}

/** Where the objects of a bucket lie, without a slash at the end: the bucket in the path, or in the name of the host. */
export function rootOf({ endpoint, bucket, style }: BucketAccess): string {
  if (style === "path") return `${endpoint}/${bucket}`;
  const url = new URL(endpoint);
  return `${url.protocol}//${bucket}.${url.host}`;
}

/**
 * Address and headers of a request, signed with Signature Version 4; the host, and with it the bucket where that
 * stands there, is signed too.
 * @param at YYYYMMDDTHHMMSSZ; the machine's clock where left out
 * @source Signature Version 4 for the S3 interface, "Authenticating Requests: Using the Authorization Header"
 */
export async function signRequest(access: BucketAccess, request: ToSign, at?: string) {
  const { region, keyId, secret, sessionToken } = access;
  const { method, key, query, headers } = request;
  const search = query === undefined ? "" : `?${new URLSearchParams(query)}`;
  const signer = new AwsV4Signer({
    method,
    url: `${rootOf(access)}${key === "" ? "" : `/${key}`}${search}`,
    headers: { "x-amz-content-sha256": OF_NOTHING, ...headers },
    accessKeyId: keyId,
    secretAccessKey: secret,
    ...(sessionToken === undefined ? {} : { sessionToken }),
    service: "s3",
    region,
    ...(at === undefined ? {} : { datetime: at }),
  });
  return signer.sign();
}
