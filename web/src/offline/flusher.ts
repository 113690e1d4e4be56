import type { DeviceDatabase } from "./database.ts";
import { type FlushAnswer, flushOutbox, type Sender } from "./flush.ts";
import { httpSender } from "./sender.ts";

/** sending now, waits for signal, waits for somebody to sign in, or nothing more to send */
export type FlushState = "sending" | FlushAnswer;

export interface Flusher {
  /** sends now, or right after the sending that is under way */
  now(): Promise<FlushAnswer>;
  state(): FlushState;
  subscribe(listener: () => void): () => void;
  stop(): void;
}

const EVERY_MS = 20_000;

/** One sender at a time, over all open pages of this device where the browser has locks. */
async function alone<T>(work: () => Promise<T>): Promise<T> {
  return navigator.locks === undefined ? work() : navigator.locks.request("setfair-outbox", work);
}

/**
 * Sends the outbox on start, when the device comes online, when the page is looked at again, and on a
 * timer. Needs no Background Sync, which not every browser has.
 */
export function startFlusher(db: DeviceDatabase, sender: Sender = httpSender()): Flusher {
  let state: FlushState = "empty";
  let running: Promise<FlushAnswer> | null = null;
  let again = false;
  const listeners = new Set<() => void>();
  const set = (next: FlushState) => {
    if (next === state) return;
    state = next;
    for (const listener of listeners) listener();
  };
  const run = async (): Promise<FlushAnswer> => {
    let answer: FlushAnswer;
    do {
      again = false;
      answer = await alone(async () => {
        const waits = await db.records.where("state").equals("waiting").count();
        if (waits > 0) set("sending");
        return flushOutbox(db, sender);
      }).catch((): FlushAnswer => "later");
    } while (again);
    set(answer);
    return answer;
  };
  const now = (): Promise<FlushAnswer> => {
    if (running !== null) {
      again = true;
      return running;
    }
    running = run().finally(() => {
      running = null;
    });
    return running;
  };
  const kick = () => void now();
  const seen = () => {
    if (document.visibilityState === "visible") kick();
  };
  const timer = setInterval(kick, EVERY_MS);
  addEventListener("online", kick);
  document.addEventListener("visibilitychange", seen);
  kick();
  return {
    now,
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    stop: () => {
      clearInterval(timer);
      removeEventListener("online", kick);
      document.removeEventListener("visibilitychange", seen);
    },
  };
}
