/** For tests only: an S3-compatible store on this machine, which checks signatures, and a line to it that can fail. */
import { mkdtemp, rm } from "node:fs/promises";
import { createServer, type IncomingMessage, request, type ServerResponse } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { AwsV4Signer } from "aws4fetch";
import { isSignedWith } from "./check-signature-for-tests.ts";
import type { BucketAccess } from "./read-bucket-access.ts";

interface StoreServer {
  run(): Promise<AddressInfo>;
  close(): Promise<void>;
}
type StoreClass = new (options: {
  readonly port: number;
  readonly address: string;
  readonly silent: boolean;
  readonly directory: string;
  readonly configureBuckets: readonly { readonly name: string }[];
}) => StoreServer;

export interface TestStore {
  readonly access: BucketAccess;
  /** the next requests of a method are answered with these, and do not reach the store; 0 breaks the line */
  failNext(method: string, ...statuses: readonly number[]): void;
  /** every request that came, as `METHOD /path?query` */
  readonly asked: string[];
  /** the Host of each */
  readonly hosts: string[];
  readonly port: number;
  close(): Promise<void>;
}

/** The bucket, where it is named before the host of the store. */
const inHost = (host: string | undefined): string | null =>
  /^([a-z0-9-]+)\.s3\.localhost(:\d+)?$/.exec(host ?? "")?.[1] ?? null;

/** To the store behind; it knows only buckets in the path, so what names one in the host is checked here and signed anew. */
async function send(incoming: IncomingMessage, outgoing: ServerResponse, port: number): Promise<void> {
  const { method = "", url = "", headers } = incoming;
  const bucket = inHost(headers.host);
  if (bucket !== null && !isSignedWith(SECRET, { method, url, headers })) {
    incoming.resume();
    outgoing.writeHead(403).end("<Error><Code>SignatureDoesNotMatch</Code></Error>");
    return;
  }
  const asked = bucket === null ? { path: url, headers } : await inPath(bucket, incoming, port);
  const onward = request({ host: "127.0.0.1", port, method, ...asked }, (answer) => {
    outgoing.writeHead(answer.statusCode ?? 500, answer.headers);
    answer.pipe(outgoing);
  });
  onward.on("error", () => outgoing.destroy());
  incoming.pipe(onward);
}

const SECRET = "S3RVER";

async function inPath(bucket: string, { method = "", url = "", headers }: IncomingMessage, port: number) {
  const { authorization: _, host: __, connection: ___, ...rest } = headers;
  const kept = Object.entries(rest).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, String(value)] as const],
  );
  const signer = new AwsV4Signer({
    method,
    url: `http://127.0.0.1:${port}/${bucket}${url.replace(/^\/(?=\?|$)/, "")}`,
    headers: Object.fromEntries(kept),
    accessKeyId: SECRET,
    secretAccessKey: SECRET,
    service: "s3",
    region: "eu-west-2",
  });
  const signed = await signer.sign();
  const path = `${signed.url.pathname}${signed.url.search}`;
  return { path, headers: { ...Object.fromEntries(kept), ...Object.fromEntries(signed.headers) } };
}

/** A store with one empty bucket, and a line of ours before it. */
export async function startStore(): Promise<TestStore> {
  const directory = await mkdtemp(join(tmpdir(), "setfair-bucket-"));
  const Store = createRequire(import.meta.url)("@20minutes/s3rver") as StoreClass;
  const server = new Store({
    port: 0,
    address: "127.0.0.1",
    silent: true,
    directory,
    configureBuckets: [{ name: "photographs" }],
  });
  const { port } = await server.run();
  const asked: string[] = [];
  const hosts: string[] = [];
  const failures = new Map<string, number[]>();
  const line = createServer((incoming, outgoing) => {
    const { method = "", url = "", headers } = incoming;
    asked.push(`${method} ${url}`);
    hosts.push(headers.host ?? "");
    const failure = failures.get(method)?.shift();
    if (failure === 0) return incoming.socket.destroy();
    if (failure !== undefined) {
      incoming.resume();
      return outgoing.writeHead(failure).end("<Error><Code>SlowDown</Code></Error>");
    }
    void send(incoming, outgoing, port);
  });
  await new Promise<void>((resolve) => line.listen(0, "127.0.0.1", resolve));
  const { port: linePort } = line.address() as AddressInfo;
  return {
    access: {
      endpoint: `http://127.0.0.1:${linePort}`,
      bucket: "photographs",
      style: "path",
      prefix: "depot-a/",
      region: "eu-west-2",
      keyId: SECRET,
      secret: SECRET,
    },
    asked,
    hosts,
    port: linePort,
    failNext: (method, ...statuses) => void failures.set(method, [...statuses]),
    async close() {
      line.closeAllConnections();
      await new Promise((resolve) => line.close(resolve));
      await server.close();
      await rm(directory, { recursive: true, force: true });
    },
  };
}
