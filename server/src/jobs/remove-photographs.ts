import { ruleFigure, withRules } from "@setfair/engine";
import { readRuleBook } from "../desk/rule-book.ts";
import type { PhotographFiles } from "../files/types.ts";
import { REMOVE_PHOTOGRAPHS } from "../store/remove-photographs.ts";
import type { Store } from "../store/types.ts";
import type { JobHandler } from "./handlers.ts";

/** Years for which photographs of a vehicle stay after a hire whose hirer was erased. */
const KEPT_YEARS = "settlement.photographsKeptYears";
/** The first instant that the tables take is in 1900; a longer time is for ever. */
const FIRST_YEAR = 1900;

/**
 * Removes the files of photographs that were removed, wherever they lie, and lets go what was kept until its time was
 * over. Comes again each day, also while a store does not answer; doing it twice comes to the same.
 */
export function photographRemover(context: {
  readonly files: PhotographFiles;
  readonly now: () => Date;
}): JobHandler {
  return async (_job, store, isStopping) => {
    const now = context.now();
    await comeAgain(store, now);
    const endedUntil = await lastEndLetGo(store, now);
    if (endedUntil !== null) await store.photographs.letGo(endedUntil);
    for (const sha256 of await store.photographs.removed({ withBytes: true })) {
      if (isStopping()) return;
      await context.files.remove(store.scope, sha256);
      await store.photographs.bytesGone(sha256);
    }
  };
}

/** One job for each day, whoever adds it. */
async function comeAgain(store: Store, now: Date): Promise<void> {
  const runAt = new Date(now.getTime() + 86_400_000).toISOString();
  const dedupeKey = `${REMOVE_PHOTOGRAPHS}:${runAt.slice(0, 10)}`;
  await store.jobs.add({ kind: REMOVE_PHOTOGRAPHS, payload: {}, runAt, dedupeKey });
}

/** Hires that ended until then are past their time, by the depot's own rules of today; null where none can be. */
async function lastEndLetGo(store: Store, now: Date): Promise<string | null> {
  const today = now.toISOString().slice(0, 10);
  const { value } = withRules(await readRuleBook(store), () => ruleFigure(KEPT_YEARS, today));
  const end = new Date(now);
  end.setUTCMonth(end.getUTCMonth() - Math.round(value * 12));
  return end.getUTCFullYear() >= FIRST_YEAR ? end.toISOString() : null;
}
