/** For tests only: an invented depot with one vehicle of its own, behind the real API on a real store. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { sameEveryDay, type VehicleDescription } from "@setfair/engine";
import { type ChainEnd, type DepotRecord, makeRecord, type NewRecord } from "@setfair/records";
import type { FastifyInstance } from "fastify";
import { buildApp } from "../app.ts";
import { hashPassword } from "../auth/passwords.ts";
import { newToken } from "../auth/tokens.ts";
import type { AppContext } from "../context.ts";
import { toJson } from "../desk/documents.ts";
import { openFiles } from "../files/open-files.ts";
import { makePlace } from "../store/stores-for-tests.ts";
import type { Scope, Store } from "../store/types.ts";

import { SESSION_COOKIE } from "./guard.ts";

const root = join(import.meta.dirname, "../../..");
const read = (path: string): Record<string, unknown> => JSON.parse(readFileSync(join(root, path), "utf8"));
export const heron = (): VehicleDescription => read("examples/pv2.json") as VehicleDescription;

export interface Answer {
  readonly status: number;
  // what a test reads of an answer is checked by the test itself
  // biome-ignore lint/suspicious/noExplicitAny: answers of every operation come through here
  readonly body: any;
}
export type As = "manager" | "desk" | "yard" | null;

export interface TestDepot {
  readonly app: FastifyInstance;
  readonly context: AppContext;
  readonly scope: Scope;
  readonly store: Store;
  readonly dataFolder: string;
  /** of its database on PostgreSQL, for another process */
  readonly databaseUrl: string | undefined;
  /** sets the clock */
  at(instant: string): void;
  call(
    as: As,
    method: "GET" | "POST" | "PUT" | "DELETE" | "HEAD",
    path: string,
    body?: unknown,
  ): Promise<Answer>;
  /** the cookie of someone signed in */
  cookie(as: "manager" | "desk" | "yard"): string;
  close(): Promise<void>;
}

export const PASSWORD = "a password for tests";

export async function makeDepot(
  kind: "sqlite" | "postgres",
  start = "2026-07-01T08:00:00.000Z",
): Promise<TestDepot> {
  const place = await makePlace(kind);
  const clock = { now: new Date(start) };
  const now = () => clock.now;
  const database = await place.open({ now });
  const passwordHash = await hashPassword(PASSWORD);
  const { scope } = await database.system.createFirm({
    firm: { name: "Invented Hire" },
    depot: {
      name: "Invented Depot",
      timeZone: "Europe/London",
      document: {
        telephone: "01632 960000",
        country: "GB",
        latitudeDeg: 54.4,
        longitudeDeg: -2.9,
        hours: sameEveryDay({ opens: "08:00", closes: "18:00" }),
        turnaroundMinutes: 240,
      },
    },
    terms: [
      { of: "hire", validFrom: "2026-01-01", document: read("demo/src/terms.json") },
      { of: "insurance", validFrom: "2026-01-01", document: read("demo/src/insurance.json") },
    ],
    manager: { login: "manager", name: "Pat Manager", passwordHash },
  });
  const store = database.storeFor(scope);
  await store.accounts.create({ login: "desk", name: "Dee Desk", role: "desk", passwordHash });
  await store.accounts.create({ login: "yard", name: "Yo Yard", role: "yard", passwordHash });
  await putVehicles(store);
  const context = {
    database,
    files: openFiles({ dataFolder: place.dataFolder }),
    now,
    publicUrl: "http://test",
    secure: false,
    demo: false,
  };
  const app = await buildApp(context, { webFolder: null });
  const cookies = new Map<string, string>();
  const send: TestDepot["call"] = async (as, method, path, body) => {
    const answer = await app.inject({
      method,
      url: `/api${path}`,
      ...(as === null ? {} : { headers: { cookie: cookies.get(as) ?? "" } }),
      ...(body === undefined ? {} : { payload: body as object }),
    });
    return { status: answer.statusCode, body: answer.body === "" ? null : JSON.parse(answer.body) };
  };
  for (const account of await store.accounts.list()) {
    // a session of its own, longer than a shift: these tests move the clock by days
    const { token, tokenHash } = newToken();
    await database.system.createSession({
      tokenHash,
      accountId: account.id,
      scope,
      expiresAt: "2030-01-01T00:00:00.000Z",
    });
    cookies.set(account.login, `${SESSION_COOKIE}=${token}`);
  }
  return {
    app,
    context,
    scope,
    store,
    dataFolder: place.dataFolder,
    databaseUrl: place.url,
    at: (instant) => {
      clock.now = new Date(instant);
    },
    call: send,
    cookie: (as) => cookies.get(as) ?? "",
    async close() {
      await app.close();
      await place.remove();
    },
  };
}

async function putVehicles(store: Store): Promise<void> {
  const dueDates = ["tax", "insurance", "lpgCheck"].map((kind) => ({ kind, dueOn: "2027-12-31" }));
  for (const description of [
    heron(),
    { ...heron(), id: "pv2-b", name: "Siskin", registration: "SF26 SKN" },
  ]) {
    const document = toJson({ description, dueDates, maxDogs: 1, vehicleClass: "panelVan" });
    await store.vehicles.put({ of: description.id, validFrom: "2026-03-01", document });
  }
}

/** A device that keeps its own chain. */
export function makeDevice(deviceId: string, chain: string, refs: NewRecord["refs"], at: () => Date) {
  let end: ChainEnd = null;
  return (kind: NewRecord["kind"], content: NewRecord["content"]): DepotRecord => {
    const record = makeRecord({ deviceId, deviceTime: at().toISOString(), kind, refs, chain, content }, end);
    end = { seq: record.seq, hash: record.hash };
    return record;
  };
}
