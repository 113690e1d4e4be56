/** For tests only: an S3-compatible store on this machine, which checks signatures, and a line to it that can fail. */
import { mkdtemp, rm } from "node:fs/promises";
import { createServer, request } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
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
  close(): Promise<void>;
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
  const failures = new Map<string, number[]>();
  const line = createServer((incoming, outgoing) => {
    const { method = "", url = "", headers } = incoming;
    asked.push(`${method} ${url}`);
    const failure = failures.get(method)?.shift();
    if (failure === 0) return incoming.socket.destroy();
    if (failure !== undefined) {
      incoming.resume();
      return outgoing.writeHead(failure).end("<Error><Code>SlowDown</Code></Error>");
    }
    const onward = request({ host: "127.0.0.1", port, method, path: url, headers }, (answer) => {
      outgoing.writeHead(answer.statusCode ?? 500, answer.headers);
      answer.pipe(outgoing);
    });
    onward.on("error", () => outgoing.destroy());
    incoming.pipe(onward);
  });
  await new Promise<void>((resolve) => line.listen(0, "127.0.0.1", resolve));
  const { port: linePort } = line.address() as AddressInfo;
  return {
    access: {
      endpoint: `http://127.0.0.1:${linePort}`,
      bucket: "photographs",
      prefix: "depot-a/",
      region: "eu-west-2",
      keyId: "S3RVER",
      secret: "S3RVER",
    },
    asked,
    failNext: (method, ...statuses) => void failures.set(method, [...statuses]),
    async close() {
      line.closeAllConnections();
      await new Promise((resolve) => line.close(resolve));
      await server.close();
      await rm(directory, { recursive: true, force: true });
    },
  };
}
