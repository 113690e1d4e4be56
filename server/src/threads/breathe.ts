import { setImmediate as letOthersIn } from "node:timers/promises";

/** Milliseconds for which one answer may hold this thread before others are let in. */
const HELD_MS = 10;
let turnedAt = 0;

/**
 * Lets other requests in where this thread was held for a while: an answer that is put together from many small
 * steps, none of them worth a thread, takes its breath between them. Every query on SQLite does, since none of them
 * ever waits; loops that ask nothing do it themselves.
 */
export async function breathe(): Promise<void> {
  if (performance.now() - turnedAt < HELD_MS) return;
  await letOthersIn();
  turnedAt = performance.now();
}
