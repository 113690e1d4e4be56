import { isIP } from "node:net";

const STYLES = ["path", "virtual-hosted"] as const;
export type BucketStyle = (typeof STYLES)[number];

/** Where photographs are kept in an S3-compatible store, and who asks. */
export interface BucketAccess {
  /** origin of the store, without the bucket and without a slash at the end */
  readonly endpoint: string;
  readonly bucket: string;
  /** where requests name the bucket: in the path, or as the first part of the host's name */
  readonly style: BucketStyle;
  /** before every key: empty, or ending with a slash */
  readonly prefix: string;
  readonly region: string;
  readonly keyId: string;
  readonly secret: string;
  readonly sessionToken?: string;
}

/** Makers of stores other than the first take any region; this is the one that most of them expect. */
const USUAL_REGION = "us-east-1";
const EXPECTED =
  "expected https://host/bucket or https://host/bucket/folder, with ?region=… where the store has regions and ?style=virtual-hosted where it wants the bucket in the host's name (http:// on this machine only)";
const LOOPBACK = /^(127\.0\.0\.1|\[::1\]|(.+\.)?localhost)$/;

/**
 * Reads SETFAIR_FILES_URL, with the key from AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY (and AWS_SESSION_TOKEN), the
 * region from the address or AWS_REGION. Null where no store is named: photographs are then in the data folder.
 * @throws Error that names the setting; never with a key in it
 */
export function readBucketAccess(
  environment: Readonly<Record<string, string | undefined>>,
): BucketAccess | null {
  const text = (name: string) => environment[name]?.trim() || undefined;
  const address = text("SETFAIR_FILES_URL");
  if (address === undefined) return null;
  const { region, ...place } = readAddress(address);
  const [keyId, secret] = [text("AWS_ACCESS_KEY_ID"), text("AWS_SECRET_ACCESS_KEY")];
  if (keyId === undefined || secret === undefined)
    throw new Error("SETFAIR_FILES_URL: expected AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY beside it");
  const sessionToken = text("AWS_SESSION_TOKEN");
  return {
    ...place,
    region: region ?? text("AWS_REGION") ?? USUAL_REGION,
    keyId,
    secret,
    ...(sessionToken === undefined ? {} : { sessionToken }),
  };
}

function readAddress(address: string) {
  const wrong = (what: string) => new Error(`SETFAIR_FILES_URL: ${what}`);
  const url = URL.canParse(address) ? new URL(address) : null;
  if (url === null || (url.protocol !== "https:" && url.protocol !== "http:")) throw wrong(EXPECTED);
  if (url.username !== "" || url.password !== "")
    throw wrong("expected no key in the address: it belongs in AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY");
  if (url.protocol === "http:" && !LOOPBACK.test(url.hostname)) throw wrong(EXPECTED);
  const region = url.searchParams.get("region") ?? undefined;
  const others = [...url.searchParams.keys()].filter((name) => name !== "region" && name !== "style");
  if (others.length > 0 || url.hash !== "" || (region !== undefined && !/^[a-z0-9-]{1,40}$/.test(region)))
    throw wrong(EXPECTED);
  const [bucket = "", ...folders] = url.pathname.split("/").filter((part) => part !== "");
  if (!/^[a-z0-9][a-z0-9.-]{1,61}[a-z0-9]$/.test(bucket)) throw wrong(EXPECTED);
  if (folders.some((folder) => !/^[A-Za-z0-9_-][A-Za-z0-9._-]*$/.test(folder))) throw wrong(EXPECTED);
  const style = readStyle(url, bucket, wrong);
  const prefix = folders.map((folder) => `${folder}/`).join("");
  return { endpoint: url.origin, bucket, style, prefix, region };
}

function readStyle(url: URL, bucket: string, wrong: (what: string) => Error): BucketStyle {
  const asked = url.searchParams.get("style") ?? "path";
  const style = STYLES.find((known) => known === asked);
  if (style === undefined) throw wrong(`style: expected ${STYLES.join(" or ")}`);
  if (style === "path") return style;
  if (url.hostname.startsWith("[") || isIP(url.hostname) !== 0)
    throw wrong("style=virtual-hosted: expected the name of a host, since the bucket is put before it");
  // a certificate for *.host covers one part of a name: RFC 9525, section 6.3
  if (url.protocol === "https:" && bucket.includes("."))
    throw wrong("style=virtual-hosted: expected a bucket whose name has no dot, or style=path");
  return style;
}
