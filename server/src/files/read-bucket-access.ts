/** Where photographs are kept in an S3-compatible store, and who asks. */
export interface BucketAccess {
  /** origin, without a slash at the end */
  readonly endpoint: string;
  readonly bucket: string;
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
  "expected https://host/bucket or https://host/bucket/folder, with ?region=… where the store has regions (http:// on this machine only)";
const LOOPBACK = new Set(["127.0.0.1", "localhost", "[::1]"]);

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
  const { endpoint, bucket, prefix, region } = readAddress(address);
  const [keyId, secret] = [text("AWS_ACCESS_KEY_ID"), text("AWS_SECRET_ACCESS_KEY")];
  if (keyId === undefined || secret === undefined)
    throw new Error("SETFAIR_FILES_URL: expected AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY beside it");
  const sessionToken = text("AWS_SESSION_TOKEN");
  return {
    endpoint,
    bucket,
    prefix,
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
  if (url.protocol === "http:" && !LOOPBACK.has(url.hostname)) throw wrong(EXPECTED);
  const region = url.searchParams.get("region") ?? undefined;
  const others = [...url.searchParams.keys()].filter((name) => name !== "region");
  if (others.length > 0 || url.hash !== "" || (region !== undefined && !/^[a-z0-9-]{1,40}$/.test(region)))
    throw wrong(EXPECTED);
  const [bucket = "", ...folders] = url.pathname.split("/").filter((part) => part !== "");
  if (!/^[a-z0-9][a-z0-9.-]{1,61}[a-z0-9]$/.test(bucket)) throw wrong(EXPECTED);
  if (folders.some((folder) => !/^[A-Za-z0-9_-][A-Za-z0-9._-]*$/.test(folder))) throw wrong(EXPECTED);
  return { endpoint: url.origin, bucket, prefix: folders.map((folder) => `${folder}/`).join(""), region };
}
