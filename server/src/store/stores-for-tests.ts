/** For tests only: the same test on every store that can be had. */
import { randomBytes } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { makeRecord } from "@setfair/records";
import pg from "pg";
import { openDatabase } from "./open-database.ts";
import type { Database, FirstFirm, OpenOptions, Scope, Store } from "./types.ts";

export const TEST_DATABASE_URL = process.env.SETFAIR_TEST_DATABASE_URL ?? "";

export interface TestPlace {
  /** open it as often as needed: the same data each time */
  open(options?: Partial<OpenOptions>): Promise<Database>;
  readonly dataFolder: string;
  readonly url: string | undefined;
  /** what a server in use does by itself within a minute: tells the planner how the tables are filled */
  gatherStatistics(): Promise<void>;
  /** closes what was opened and removes everything */
  remove(): Promise<void>;
}

async function runOn(connectionString: string, statement: string): Promise<void> {
  const client = new pg.Client({ connectionString });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}

async function makePostgres() {
  const name = `setfair_test_${randomBytes(6).toString("hex")}`;
  await runOn(TEST_DATABASE_URL, `create database ${name}`);
  const made = new URL(TEST_DATABASE_URL);
  made.pathname = `/${name}`;
  const url = made.toString();
  return {
    url,
    analyze: () => runOn(url, "analyze"),
    drop: () => runOn(TEST_DATABASE_URL, `drop database ${name} with (force)`),
  };
}

/** An empty place for one test file: a folder, and a database of its own on PostgreSQL. */
export async function makePlace(kind: "sqlite" | "postgres"): Promise<TestPlace> {
  const dataFolder = await mkdtemp(join(tmpdir(), "setfair-store-"));
  const postgres = kind === "postgres" ? await makePostgres() : null;
  const opened: Database[] = [];
  return {
    dataFolder,
    url: postgres?.url,
    async open(options = {}) {
      const database = await openDatabase({
        dataFolder,
        ...(postgres === null ? {} : { url: postgres.url }),
        ...options,
      });
      opened.push(database);
      return database;
    },
    gatherStatistics: async () => postgres?.analyze(),
    async remove() {
      for (const database of opened) await database.close();
      await postgres?.drop();
      await rm(dataFolder, { recursive: true, force: true });
    },
  };
}

/**
 * Every store, for `describe.each`. Without SETFAIR_TEST_DATABASE_URL the PostgreSQL half is left out with a
 * word; in CI (CI=true) that is a failure, not a gap.
 */
export function testedStores(): { readonly kind: "sqlite" | "postgres" }[] {
  if (TEST_DATABASE_URL !== "") return [{ kind: "sqlite" }, { kind: "postgres" }];
  if (process.env.CI === "true")
    throw new Error("SETFAIR_TEST_DATABASE_URL is not set: the PostgreSQL half may not be left out in CI");
  console.warn("store tests: PostgreSQL left out, SETFAIR_TEST_DATABASE_URL is not set");
  return [{ kind: "sqlite" }];
}

/** An invented firm with one depot. */
export function inventedFirm(login = "manager@example.org"): FirstFirm {
  return {
    firm: { name: "Invented Hire" },
    depot: { name: "Invented Depot", timeZone: "Europe/London", document: { hours: "9 to 5" } },
    terms: [{ of: "hire", validFrom: "2026-01-01", document: { excessPence: 100_000 } }],
    manager: { login, name: "Pat Invented", passwordHash: "not-a-hash" },
  };
}

export async function addDepot(database: Database, login: string): Promise<Scope> {
  return (await database.system.createFirm(inventedFirm(login))).scope;
}

export interface TwoDepots {
  readonly place: TestPlace;
  readonly database: Database;
  readonly here: Store;
  readonly scopeHere: Scope;
  /** a depot of another firm, which must see nothing of the first */
  readonly there: Store;
}

export async function twoDepots(
  kind: "sqlite" | "postgres",
  options: Partial<OpenOptions> = {},
): Promise<TwoDepots> {
  const place = await makePlace(kind);
  const database = await place.open(options);
  const scopeHere = await addDepot(database, "here@example.org");
  const there = database.storeFor(await addDepot(database, "there@example.org"));
  return { place, database, here: database.storeFor(scopeHere), scopeHere, there };
}

/** The next record of a tablet at a hire's vehicle: the odometer, or what is given instead. */
export const makeReading = (hireId: string, after: Parameters<typeof makeRecord>[1], extra = {}) =>
  makeRecord(
    {
      deviceId: "tablet",
      deviceTime: "2026-07-04T14:05:00Z",
      kind: "reading",
      refs: { hireId },
      chain: `walk-${hireId}`,
      content: { about: "odometer", value: 41_234, unit: "km" },
      ...extra,
    },
    after,
  );
