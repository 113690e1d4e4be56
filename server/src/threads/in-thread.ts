import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { fileURLToPath, pathToFileURL } from "node:url";
import { BadInput } from "@setfair/engine";
import type { Piscina } from "piscina";
import type { Answered, Asked } from "./run-task.ts";
import type { TaskName, Tasks } from "./tasks.ts";

/** A thread that has had nothing to do for so long is let go. */
const IDLE_MS = 60_000;
/** Two even where there is one processor, so that a forecast of half a second does not wait for a plan of two. */
const MOST_THREADS = Math.max(2, Math.min(4, availableParallelism() - 1));
/** Threads give way to the one that answers requests (nice value on Linux, where each thread has its own). */
const GIVES_WAY = 10;

/** The file of a thread: beside this one as built, and its source where this is source. */
function threadFile(): { readonly file: URL; readonly execArgv: readonly string[] } | null {
  if (!import.meta.url.endsWith(".ts")) {
    const file = new URL("./run-task.js", import.meta.url);
    return existsSync(file) ? { file, execArgv: [] } : null;
  }
  try {
    const loader = pathToFileURL(createRequire(import.meta.url).resolve("tsx")).href;
    const execArgv = ["--conditions=setfair-source", "--import", loader];
    return { file: new URL("./run-task.ts", import.meta.url), execArgv };
  } catch {
    return null;
  }
}

interface Threads {
  readonly pool: Piscina<Asked, Answered>;
  /** how many servers of this process use them */
  users: number;
}
let threads: Threads | null = null;
let opening: Promise<unknown> = Promise.resolve();

/** Processors belong to the process, so its servers share the threads. */
async function open(): Promise<void> {
  if (threads !== null) {
    threads.users += 1;
    return;
  }
  const found = threadFile();
  if (found === null) return;
  const { Piscina } = await import("piscina");
  const pool = new Piscina<Asked, Answered>({
    filename: fileURLToPath(found.file),
    execArgv: [...found.execArgv],
    // one stands ready, so that the first trip of the day does not wait for the engine to be read
    minThreads: 1,
    maxThreads: MOST_THREADS,
    idleTimeout: IDLE_MS,
    niceIncrement: GIVES_WAY,
    // without it a thread that waits sleeps so soundly that nothing else in it moves
    atomics: "disabled",
  });
  threads = { pool, users: 1 };
}

async function leave(): Promise<void> {
  if (threads === null) return;
  threads.users -= 1;
  if (threads.users > 0) return;
  const { pool } = threads;
  threads = null;
  await pool.destroy();
}

/**
 * Opens threads for long work until what this gives is called. Without them, as in a script or a test of one part,
 * {@link inThread} works in the thread that asks.
 */
export async function openThreads(): Promise<() => Promise<void>> {
  const inTurn = (work: () => Promise<void>): Promise<void> => {
    const mine = opening.then(work);
    opening = mine.catch(() => undefined);
    return mine;
  };
  await inTurn(open);
  let isOpen = true;
  return async () => {
    if (!isOpen) return;
    isOpen = false;
    await inTurn(leave);
  };
}

/**
 * Does a long piece of work without holding others up.
 * @throws what the task throws: BadInput with its fields, anything else with its message
 */
export async function inThread<Name extends TaskName>(
  name: Name,
  ...args: Parameters<Tasks[Name]>
): Promise<Awaited<ReturnType<Tasks[Name]>>> {
  const asked: Asked = { name, args };
  const answered =
    threads === null ? await (await import("./run-task.ts")).default(asked) : await threads.pool.run(asked);
  if ("problems" in answered) throw new BadInput(answered.problems);
  return answered.value as Awaited<ReturnType<Tasks[Name]>>;
}
