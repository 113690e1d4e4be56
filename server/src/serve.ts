import { readFileSync } from "node:fs";
import type { AddressInfo } from "node:net";
import type { FastifyInstance } from "fastify";
import { buildApp } from "./app.ts";
import { makeSetUpLink } from "./auth/set-up.ts";
import type { AppContext } from "./context.ts";
import { openFiles } from "./files/open-files.ts";
import { startJobs, storeJobs } from "./jobs/index.ts";
import { openDatabase } from "./store/open-database.ts";
import type { Database } from "./store/types.ts";
import { findWebFolder } from "./web-pages.ts";

/** A sign-in of the invented firm, to be printed. */
export interface DemoSignIn {
  readonly login: string;
  readonly password: string;
  readonly name: string;
  readonly role: string;
}
/** Fills an empty store with the invented firm. Handed in, since the server does not know it. */
export type LoadDemo = (database: Database, now: Date) => Promise<readonly DemoSignIn[]>;

export interface ServeOptions {
  /** 0 takes any free port; 4600 where left out */
  readonly port?: number;
  /** 127.0.0.1 where left out: only this machine */
  readonly host?: string;
  /** `./data` where left out */
  readonly dataDir?: string;
  /** PostgreSQL instead of the embedded file */
  readonly databaseUrl?: string;
  /** an S3-compatible store instead of the folder */
  readonly filesUrl?: string;
  /** certificate and key as files in PEM: pages are then secure, so that devices work offline */
  readonly cert?: string;
  readonly key?: string;
  /** origin for links, e.g. `https://hire.example.org`; this address where left out */
  readonly url?: string;
  /** load the invented firm even when not bound to this machine alone */
  readonly demo?: boolean;
  readonly loadDemo?: LoadDemo;
  readonly webFolder?: string | null;
  readonly log?: boolean;
  /** the clock, for tests */
  readonly now?: () => Date;
}

export interface Served {
  readonly url: string;
  /** sign-ins of the invented firm, where it is loaded */
  readonly demoSignIns: readonly DemoSignIn[];
  /** one-time link that makes the firm; null once there is one */
  readonly setUpLink: string | null;
  readonly app: FastifyInstance;
  readonly database: Database;
  close(): Promise<void>;
}

const isThisMachine = (host: string) => host === "127.0.0.1" || host === "localhost" || host === "::1";

/** Options from the environment; PORT, SETFAIR_DATA, SETFAIR_DATABASE_URL, SETFAIR_FILES_URL, SETFAIR_URL, SETFAIR_HOST, SETFAIR_DEMO. */
export function serveOptionsFromEnvironment(
  environment: Readonly<Record<string, string | undefined>>,
): ServeOptions {
  const text = (name: string) =>
    environment[name] === undefined || environment[name] === "" ? undefined : environment[name];
  const port = text("PORT");
  if (port !== undefined && !/^\d{1,5}$/.test(port))
    throw new Error("PORT: expected a number from 0 to 65535");
  return {
    ...(port === undefined ? {} : { port: Number(port) }),
    ...named("host", text("SETFAIR_HOST")),
    ...named("dataDir", text("SETFAIR_DATA")),
    ...named("databaseUrl", text("SETFAIR_DATABASE_URL")),
    ...named("filesUrl", text("SETFAIR_FILES_URL")),
    ...named("url", text("SETFAIR_URL")),
    ...(text("SETFAIR_DEMO") === "1" ? { demo: true } : {}),
  };
}
const named = <Name extends string>(name: Name, value: string | undefined) =>
  (value === undefined ? {} : { [name]: value }) as { readonly [K in Name]?: string };

/**
 * Opens store and files, loads the invented firm where the store is empty and that is allowed, and listens.
 * @throws where cert and key are not given together, the store cannot be opened, or the port is taken
 */
export async function serve(options: ServeOptions = {}): Promise<Served> {
  const { port = 4600, host = "127.0.0.1", dataDir = "./data", now = () => new Date() } = options;
  const https = readCertificate(options);
  const database = await openDatabase({
    dataFolder: dataDir,
    now,
    ...(options.databaseUrl === undefined ? {} : { url: options.databaseUrl }),
  });
  try {
    const files = openFiles({
      dataFolder: dataDir,
      ...(options.filesUrl === undefined ? {} : { url: options.filesUrl }),
    });
    const mayDemo = options.loadDemo !== undefined && (options.demo === true || isThisMachine(host));
    const empty = (await database.system.firmCount()) === 0;
    const demoSignIns = empty && mayDemo ? await (options.loadDemo as LoadDemo)(database, now()) : [];
    const context: Mutable<AppContext> = {
      database,
      files,
      now,
      publicUrl: options.url?.replace(/\/+$/, "") ?? "",
      secure: https !== undefined,
      demo: await isDemo(database),
    };
    const app = await buildApp(context, {
      webFolder: options.webFolder === undefined ? findWebFolder() : options.webFolder,
      log: options.log ?? false,
      ...(https === undefined ? {} : { https }),
    });
    await app.listen({ port, host });
    const { port: taken } = app.server.address() as AddressInfo;
    const url = `${https === undefined ? "http" : "https"}://${host.includes(":") ? `[${host}]` : host}:${taken}`;
    if (context.publicUrl === "") context.publicUrl = url;
    const jobs = startJobs(database, storeJobs, (error) =>
      app.log.error({ err: error }, "a job could not be run"),
    );
    const link = (await database.system.firmCount()) === 0 ? await makeSetUpLink(database, now()) : null;
    return {
      url,
      demoSignIns,
      setUpLink: link === null ? null : `${context.publicUrl}/setup/${link.token}`,
      app,
      database,
      async close() {
        await jobs.stop();
        await app.close();
        await database.close();
      },
    };
  } catch (error) {
    await database.close();
    throw error;
  }
}
type Mutable<T> = { -readonly [K in keyof T]: T[K] };

function readCertificate({
  cert,
  key,
}: ServeOptions): { readonly cert: string; readonly key: string } | undefined {
  if (cert === undefined && key === undefined) return undefined;
  if (cert === undefined || key === undefined) throw new Error("cert and key: expected both or neither");
  return { cert: readFileSync(cert, "utf8"), key: readFileSync(key, "utf8") };
}

/** Whether the firm in the store is the invented one. */
async function isDemo(database: Database): Promise<boolean> {
  const depot = (await database.system.depots()).at(0);
  if (depot === undefined) return false;
  const firm = await database.storeFor({ firmId: depot.firmId, depotId: depot.id }).firm.get();
  return firm.document.demo === true;
}
