/** For tests only: what every way of ending a server needs. */
import { request } from "node:http";
import { setTimeout as sleep } from "node:timers/promises";
import { verifyRecords } from "@setfair/records";
import type { TestDepot } from "../api/depot-for-tests.ts";
import type { Killable } from "./killable-for-tests.ts";
import type { Mailbox } from "./mailbox-for-tests.ts";

/** Longer than the lease of a job: what a process had in hand when it was ended is taken up by the next. */
export const LEASE_MINUTES = 10;
/** The morning of the handover. */
export const MORNING = "2026-07-03T10:30:00.000Z";

export interface Life {
  /** the same store, seen from a process that lives on */
  readonly depot: TestDepot;
  readonly hireId: string;
  readonly mailbox: Mailbox;
  readonly random: () => number;
  server: Killable;
  kills: number;
  /** ends it and starts it again, its clock so many minutes further; gives where it answers */
  restart(aheadMinutes?: number): Promise<string>;
}

type As = Parameters<TestDepot["cookie"]>[0];

export interface Sent {
  readonly status: number;
  // what is read of an answer is checked by whoever reads it
  // biome-ignore lint/suspicious/noExplicitAny: answers of every operation come through here
  readonly body: any;
}

/** Asks the server over HTTP. */
export async function ask(
  life: Life,
  as: As,
  method: "GET" | "POST",
  path: string,
  body?: unknown,
): Promise<Sent> {
  const answer = await fetch(`${await life.server.url()}/api${path}`, {
    method,
    headers: {
      cookie: life.depot.cookie(as),
      ...(body === undefined ? {} : { "content-type": "application/json" }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const text = await answer.text();
  return { status: answer.status, body: text === "" ? null : JSON.parse(text) };
}

/** Asks, ends the server within so many milliseconds, and starts it again; whether an answer came before. */
export async function askAndKill(
  life: Life,
  asked: readonly [As, "POST", string, unknown?],
  withinMs: number,
  aheadMinutes = 0,
): Promise<boolean> {
  // what a process does for its first request only is done before
  mustBe("the hire can be read", (await ask(life, "desk", "GET", `/hires/${life.hireId}`)).status === 200);
  let hasAnswer = false;
  const answer = ask(life, ...asked).then(
    ({ status }) => {
      if (status !== 200) throw new Error(`${asked[2]}: ${status}`);
      hasAnswer = true;
    },
    () => undefined, // the line broke, as it must
  );
  await sleep(life.random() * withinMs);
  await life.restart(aheadMinutes);
  await answer;
  return hasAnswer;
}

export interface PhotoPart {
  readonly sha256: string;
  readonly bytes: Buffer;
  readonly from: number;
  /** where this part ends */
  readonly to: number;
}

/** Sends a part of a photograph in pieces; ends with its status, or null where the line broke. */
export async function putPart(
  life: Life,
  { sha256, bytes, from, to }: PhotoPart,
  pauseMs: number,
): Promise<number | null> {
  const url = new URL(`/api/photos/${sha256}?hire=${life.hireId}`, await life.server.url());
  return new Promise((resolve) => {
    const asked = request(
      url,
      {
        method: "PUT",
        headers: {
          cookie: life.depot.cookie("yard"),
          "content-type": "image/jpeg",
          "content-length": to - from,
          "content-range": from === to ? `bytes */${to}` : `bytes ${from}-${to - 1}/${bytes.length}`,
        },
      },
      (answer) => {
        answer.resume();
        resolve(answer.statusCode ?? null);
      },
    );
    asked.on("error", () => resolve(null));
    void writeSlowly(asked, bytes.subarray(from, to), pauseMs);
  });
}

async function writeSlowly(asked: ReturnType<typeof request>, bytes: Buffer, pauseMs: number): Promise<void> {
  for (let at = 0; at < bytes.length && !asked.destroyed; at += 65_536) {
    asked.write(bytes.subarray(at, at + 65_536));
    if (pauseMs > 0) await sleep(pauseMs);
  }
  if (!asked.destroyed) asked.end();
}

export function mustBe(what: string, holds: boolean, more: unknown = ""): void {
  if (!holds) throw new Error(`${what} ${typeof more === "string" ? more : JSON.stringify(more)}`);
}

/** Every chain of the depot holds, whatever was in hand. */
export async function mustVerify({ depot }: Life): Promise<void> {
  const verified = verifyRecords(await depot.store.records.export());
  mustBe("the chain of records holds", verified.ok, verified.firstBroken);
}

/** Waits for what a job does: jobs are looked for every few seconds. */
export async function until<T>(
  what: string,
  look: () => Promise<T>,
  holds: (seen: T) => boolean,
): Promise<void> {
  let seen = await look();
  for (const end = Date.now() + WAIT_MS; !holds(seen); seen = await look()) {
    if (Date.now() > end) throw new Error(`${what}: not within ${WAIT_MS / 1000} s, ${JSON.stringify(seen)}`);
    await sleep(100);
  }
}
const WAIT_MS = 60_000;
